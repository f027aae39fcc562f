package changes

import (
	"math"
	"slices"

	"hangpack/calc"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/sheets"
)

// compareStacks compares a stack that both revisions have.
func (c *List) compareStacks(was, h *rules.Checked) {
	for _, d := range partsOf(was.Hung, h.Hung) {
		c.Others = append(c.Others, OtherChange{Stack: h.ID, What: d.Of, From: d.This, To: d.Other})
	}
	if was.Held() && !h.Held() {
		c.WasHeld = append(c.WasHeld, h.ID)
	}
	if was.Held() || h.Held() {
		return
	}
	c.compareJoints(was.Hung, h.Hung)
	if from, to := pickLabels(was.Hung), pickLabels(h.Hung); !slices.Equal(from, to) {
		c.Picks = append(c.Picks, PickChange{h.ID, from, to})
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
	differ := func(of, this, other string) {
		if this != other {
			all = append(all, rules.Difference{Of: of, This: this, Other: other})
		}
	}
	differ(ofCabinets, sheets.HoldsWords(was, say.Span{From: 1, To: len(was.Cabinets)}), sheets.HoldsWords(h, say.Span{From: 1, To: len(h.Cabinets)}))
	differ(ofPlace, placeWords(was), placeWords(h))
	for _, d := range rules.PartDifferences(was, h) {
		if d.Of != rules.OfPickHoles && d.Of != rules.OfCount {
			all = append(all, d)
		}
	}
	return all
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

// compareJoints compares joints by the number of the cabinet below them. A cabinet of
// another type is another cabinet, whose joint is set anew.
func (c *List) compareJoints(was, h *rig.Hung) {
	for k := range max(len(was.Cabinets), len(h.Cabinets)) {
		old, new := k < len(was.Cabinets), k < len(h.Cabinets)
		if both := old && new && was.Cabinets[k].Key == h.Cabinets[k].Key; both {
			c.compareJoint(h.ID, k+1, was.Cabinets[k].Hole, h.Cabinets[k].Hole)
			continue
		}
		if old {
			c.CabinetsGone = append(c.CabinetsGone, CabinetChange{h.ID, k + 1, was.Cabinets[k].Hole.Splay})
		}
		if new {
			c.CabinetsAdded = append(c.CabinetsAdded, CabinetChange{h.ID, k + 1, h.Cabinets[k].Hole.Splay})
		}
	}
}

// compareJoint compares the hole of the joint above cabinet n.
func (c *List) compareJoint(stack string, n int, was, now job.Hole) {
	if was == now {
		c.Stay++
		return
	}
	c.Move++
	c.Joints = append(c.Joints, JointChange{stack, n, was.Splay, now.Splay})
}
