package sheets

import (
	"strings"

	"hangpack/layouts"
)

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

// A criterion is a thing, and what puts it out of use.
type criterion struct {
	thing, out string
	from       []source
}

// when says when to look, and what is done with what fails.
var when = criterion{"On each shift, before use.", "Out of use at once: what shows one of these, is past its date or in doubt. Mark it and put it away. A tick: looked at, none seen.",
	read("OSHA 29 CFR 1926.251(a)(1), (a)(6); 1910.184(d)")}

// criteria are in the order of the line, from the cabinets up. Which of the
// things are in a job is not known: rigging has a mass and a length there. No
// public standard was found for the pins of cabinets.
var criteria = []criterion{
	{"Bar, cabinet ironwork:", "crack at a weld or hole, hole oval, bend, loose fastener, rust.", common},
	{"Pins, whatever locks them:", "not this cabinet's own; bent; needs force; lock, balls or spring slow; lanyard gone; crack at the shoulder; a tenth of its thickness worn.", common},
	{"Shackles:", "maker or rating not to be read; heat, weld, deep rust; bent, cracked, gouged; a tenth of body or pin gone; worn thread; pin not fully home.",
		read("ASME B30.26, 26-1.8.4", "WAC 296-155-33900")},
	{"Hooks:", "crack, bend, twist; throat 5 % or 6 mm wider; a tenth worn; latch does not close.",
		read("ASME B30.10", "EM 385-1-1, 15.E.07")},
	{"Hoist, run with no load:", "wrong way; a limit or the stop fails; brake slips; noise; cable or plug hurt.",
		common},
	{"Hoist's chain:", "twist, bend, gouge, weld spatter, rust; dry, stiff or worn; longer than its maker allows.",
		common},
	{"Wire rope:", "in one lay ten broken wires, or five in one strand; outer wires worn by a third; kink, crushed, birdcage; heat; rust; end cracked or worn.",
		read("OSHA 29 CFR 1910.184(f)(5)")},
	{"Web, round sling:", "tag gone; acid or alkali burn; melted, charred; hole, cut, tear, snag; round sling's core seen; broken stitches; knot; stiff, faded.",
		read("WAC 296-155-55820, 296-155-33825")},
	{"Chain sling:", "tag gone; crack; bad weld; bent, twisted or longer link; worn past its table; heat; does not hinge freely.",
		read("OSHA 29 CFR 1910.184(e)", "WAC 296-155-55800")},
	{"Load cell:", "past its date; not at nought with no load; pulled from the side.", common},
	{"Cables:", "not tied where the job says; one carries another; can catch on something.", common},
}

func (c criterion) check() layouts.Inspection {
	return layouts.Inspection{Thing: c.thing, Out: c.out, From: cited(c.from)}
}

// checkList is what to look at before use.
func checkList() layouts.CheckList {
	l := layouts.CheckList{
		Head: "Look at, with eyes and hands: where used", When: when.check(),
		Signed: []string{"looked at by", "date, time", "put out of use"},
	}
	for _, c := range criteria {
		l.Items = append(l.Items, c.check())
	}
	return l
}

// roles are who answers for what. Sources: LOLER 1998, 8(1), read: a lift is
// planned by a competent person and supervised; OSHA 29 CFR 1926.32(f), read as
// quoted: a competent person sees hazards and may put them right at once; the
// rest is common practice.
var roles = []layouts.Role{
	{Is: "Competent person", Does: "accepts the plan or forbids it; puts right what is dangerous"},
	{Is: "Venue's head rigger", Does: "answers for the steel, the points and what hangs there"},
	{Is: "Rigger in charge of the lift", Does: "the one voice: what moves, when, and when it is over"},
	{Is: "Runs the hoists (motors)", Does: "moves nothing without that voice, and nothing unseen"},
}

var anyone = layouts.Advice{
	Do:   "Anyone may stop the lift, and everyone stops.",
	Says: "Questions come after; only the rigger in charge starts it again.",
	From: cited(read("OSHA 29 CFR 1926.1417(y)")),
}

var precedence = []string{
	"Makers' instructions, local rules and the venue's competent person come first: each may forbid what this pack shows. It approves nothing; its figures are no better than the masses and places in the job.",
}
