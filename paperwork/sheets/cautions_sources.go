package sheets

import "strings"

// A source is where a general caution or a criterion comes from, as it prints: a
// law, a standard or a book whose words were read for this sheet, in full or as
// quoted, or 'common practice' where no such source was read.
type source string

// common is what the trade does and no published source was found for.
var common = []source{"common practice"}

// read is sources whose words were read. What each was read in: the OSHA rules
// in copies of the code of 2007 and later and in the agency's letters; the WAC
// rules and the LOLER regulations where the law is published; the DGUV rules in
// copies of the editions of 2013 (54) and 2020 (215-313); the ASME standards in
// extracts of the editions of 2005 (B30.10) and 2010 (B30.26); EM 385-1-1 in a
// course's extract of section 15; IGVW SQP2 and 1926.251(a) only as others quote
// them.
func read(cites ...string) (all []source) {
	for _, c := range cites {
		all = append(all, source(c))
	}
	return all
}

// cited writes sources for paper.
func cited(all []source) string {
	var words []string
	for _, s := range all {
		words = append(words, string(s))
	}
	return strings.Join(words, "; ")
}

// sourceKey says what the sources are, and what they are cited for.
const sourceKey = "OSHA, ASME: United States (1926.1417 and .1425: for cranes). WAC: Washington State. EM 385-1-1: United States Army. DGUV, IGVW: Germany. LOLER (NI): Northern Ireland. None need be law here; nothing claims that any is kept."
