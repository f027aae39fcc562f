package changes

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"hangpack/calc"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/sheets"
)

// compareStacks compares a stack that both revisions have.
func (c *List) compareStacks(was, h *rules.Checked) {
	c.differ(h.ID, partsOf(was.Hung, h.Hung))
	c.compareFindings(was, h)
	if was.Held() && !h.Held() {
		c.WasHeld = append(c.WasHeld, h.ID)
	}
	if was.Held() || h.Held() {
		return
	}
	c.differ(h.ID, unlessHeld(was.Hung, h.Hung))
	c.compareJoints(was.Hung, h.Hung)
	if from, to := pickLabels(was.Hung), pickLabels(h.Hung); !slices.Equal(from, to) {
		c.Picks = append(c.Picks, PickChange{h.ID, from, to})
	}
}

// differ keeps what differs of a stack.
func (c *List) differ(stack string, by []rules.Difference) {
	for _, d := range by {
		c.Others = append(c.Others, OtherChange{Stack: stack, What: d.Of, From: d.This, To: d.Other})
	}
}

// What of a stack has changed, besides what twins are compared by.
const (
	ofCabinets = "cabinets"
	ofPlace    = "place"
)

// partsOf are what two revisions of a stack do not have alike besides joints and
// pick holes: cabinets by type, place, and all that twins are compared by.
func partsOf(was, h *rig.Hung) (all []rules.Difference) {
	all = written(was, h, []stackFact{
		{"name", func(h *rig.Hung) string { return h.Name }},
		{"side mark", func(h *rig.Hung) string { return cmp.Or(string(h.Shape), "none") }},
		{"twin of", func(h *rig.Hung) string { return cmp.Or(h.TwinOf, "none") }},
		{ofCabinets, func(h *rig.Hung) string { return sheets.HoldsWords(h, say.Span{From: 1, To: len(h.Cabinets)}) }},
		{"pins per joint", pinWords},
		{ofPlace, placeWords},
	})
	for _, d := range rules.PartDifferences(was, h) {
		if d.Of != rules.OfPickHoles && d.Of != rules.OfCount {
			all = append(all, d)
		}
	}
	return all
}

// A stackFact is something of a stack in words that differ where it does.
type stackFact struct {
	of string
	is func(*rig.Hung) string
}

// written are those facts that two revisions of a stack do not have alike.
func written(was, h *rig.Hung, facts []stackFact) (all []rules.Difference) {
	for _, f := range facts {
		if this, other := f.is(was), f.is(h); this != other {
			all = append(all, rules.Difference{Of: f.of, This: this, Other: other})
		}
	}
	return all
}

// unlessHeld are what may tell holes, of stacks that are not held.
func unlessHeld(was, h *rig.Hung) []rules.Difference {
	return written(was, h, []stackFact{
		{"truck holes", truckWords},
		{"note", func(h *rig.Hung) string { return cmp.Or(h.Note, "none") }},
	})
}

// truckWords write the truck hole of each type of cabinet.
func truckWords(h *rig.Hung) string {
	var all []string
	for _, t := range h.Types() {
		hole := say.NotGiven
		if t.Transport != nil {
			hole = say.Hole(t.Transport.Label, t.Transport.Splay)
		}
		all = append(all, t.Name+" "+hole)
	}
	return strings.Join(all, ", ")
}

// pinWords write how many pins the joints have, run by run.
func pinWords(h *rig.Hung) string {
	like := func(n int) bool {
		a, b := h.Cabinets[n-1], h.Cabinets[n-2]
		return a.HingePins == b.HingePins && a.LinkPins == b.LinkPins
	}
	var all []string
	for _, run := range say.Runs(say.Span{From: 1, To: len(h.Cabinets)}, like) {
		c := h.Cabinets[run.From-1]
		all = append(all, fmt.Sprintf("joints %s %d hinge, %d link", run.Dashed(), c.HingePins, c.LinkPins))
	}
	return strings.Join(all, "; ")
}

// placeWords write where a stack's bar stands in plan, and its pan.
func placeWords(h *rig.Hung) string {
	words := h.Unit().Across(h.StageLeft) + ", " + h.Unit().UpDown(h.Downstage)
	if h.Pan != 0 {
		way := "left"
		if h.Pan < 0 {
			way = "right"
		}
		words += ", pan " + say.Trimmed(math.Abs(calc.Degrees(h.Pan))) + "° stage " + way
	}
	return words
}

func pickLabels(h *rig.Hung) (labels []rig.Label) {
	for _, hole := range h.Holes {
		labels = append(labels, h.Label(hole))
	}
	return labels
}
