package paperwork

import "strings"

// A source is where a general caution or a criterion comes from. On paper it is
// a law, a standard or a book, or 'common practice' where no such source is
// known; of what was only remembered no clause is given.
type source struct {
	cite string // as it prints
	read bool   // its text was read for this sheet, in full or as quoted
}

// common is what the trade does and no published source was found for.
var common = []source{{"common practice", true}}

// read is sources whose words were read. What each was read in: the OSHA rules
// in copies of the code of 2007 and later and in the agency's letters; the WAC
// rules and the LOLER regulations where the law is published; the DGUV rules in
// copies of the editions of 2013 (54) and 2020 (215-313); the ASME standards in
// extracts of the editions of 2005 (B30.10) and 2010 (B30.26); EM 385-1-1 in a
// course's extract of section 15.
func read(cites ...string) (all []source) {
	for _, c := range cites {
		all = append(all, source{c, true})
	}
	return all
}

// remembered is sources that were not read again.
func remembered(cites ...string) (all []source) {
	for _, c := range cites {
		all = append(all, source{cite: c})
	}
	return all
}

// cited writes sources for paper.
func cited(all []source) string {
	var words []string
	for _, s := range all {
		if !s.read {
			s.cite += " (from memory)"
		}
		words = append(words, s.cite)
	}
	return strings.Join(words, "; ")
}

// sourceKey says what the sources are, and what they are cited for.
const sourceKey = "OSHA, ASME: United States (1926.1417 and .1425: for cranes). WAC: Washington State. EM 385-1-1: United States Army. DGUV, IGVW: Germany. LOLER (NI): Northern Ireland. None need be law here; nothing claims that any is kept."
