package changes

import (
	"math"
	"slices"

	"hangpack/layouts/parts"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/sheets"
	"hangpack/paperwork/worked"
)

// compareStacks compares a stack that both revisions have.
func (c *List) compareStacks(was, h *rules.Checked) {
	for _, d := range partsOf(was.Hung, h.Hung) {
		c.Others = append(c.Others, OtherChange{h.ID, d.Of, d.This, d.Other})
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

// partsOf are what two revisions of a stack do not have alike besides joints and
// pick holes: cabinets by type, place, and all that twins are compared by.
func partsOf(was, h *rig.Hung) (all []rules.Difference) {
	differ := func(of, this, other string) {
		if this != other {
			all = append(all, rules.Difference{Of: of, This: this, Other: other})
		}
	}
	differ("cabinets", sheets.HoldsWords(was, say.Span{From: 1, To: len(was.Cabinets)}), sheets.HoldsWords(h, say.Span{From: 1, To: len(h.Cabinets)}))
	differ("place", placeWords(was), placeWords(h))
	for _, d := range rules.PartDifferences(was, h) {
		if d.Of != "pick holes" && d.Of != "number of cabinets" {
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
		words += ", pan " + say.Trimmed(math.Abs(say.Degrees(h.Pan))) + "° stage " + way
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

// compareJobs compares what is of the whole job.
func (c *List) compareJobs() {
	u := c.new.Unit()
	now := jobFacts(c.new, u)
	for i, was := range jobFacts(c.old, u) {
		if was.Is != now[i].Is {
			c.Others = append(c.Others, OtherChange{"", was.Of, was.Is, now[i].Is})
		}
	}
}

// jobFacts are what is of the whole job, with practice in some units: the same facts in
// the same order for every job.
func jobFacts(j *worked.Job, u say.Units) []parts.Fact {
	units := "metric"
	if j.Imperial {
		units = "imperial"
	}
	facts := []parts.Fact{{Of: "revision", Is: j.Revision}, {Of: "title", Is: j.Title}, {Of: "venue", Is: j.Venue}, {Of: "date", Is: j.Date},
		{Of: "datum", Is: say.Given(j.Datum)}, {Of: "heights above", Is: j.HeightsFrom}, {Of: "units", Is: units}}
	for _, p := range sheets.PracticeWords(u, j.Practice) {
		facts = append(facts, parts.Fact{Of: "practice, " + p.Of, Is: p.Is})
	}
	return facts
}
