// Package changes finds what moved from one revision of a job to the next, and
// writes it for a terminal and for paper.
package changes

import (
	"sync"

	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/worked"
)

// A List is what moved from one revision of a job to the next, as data. Splays are in
// degrees, loads in kg, design loads where nothing else is said. A stack that is held in
// either has none of its holes in it.
type List struct {
	Move   int           `json:"move"`     // joints of both revisions that are set anew
	Set    int           `json:"set"`      // all joints that are: with those that only the new revision has
	Pins   int           `json:"pins"`     // link pins that go into all those
	Out    int           `json:"pins_out"` // link pins that come out of stacks that both revisions have
	Stay   int           `json:"stay"`
	Joints []JointChange `json:"joints"`
	Picks  []PickChange  `json:"picks"`
	Points []PointChange `json:"points"`
	Added  []string      `json:"stacks_added"`
	Gone   []string      `json:"stacks_gone"`
	Old    string        `json:"old"` // fingerprints
	New    string        `json:"new"`

	CabinetsAdded []CabinetChange `json:"cabinets_added"`
	CabinetsGone  []CabinetChange `json:"cabinets_gone"`
	Held          []string        `json:"held"`     // in the new revision
	WasHeld       []string        `json:"was_held"` // in the old one alone
	Others        []OtherChange   `json:"others"`
	PointsAdded   []string        `json:"points_added"`
	PointsGone    []string        `json:"points_gone"`

	Holds         []FoundChange `json:"holds"` // of the new revision, all of them
	HoldsGone     []FoundChange `json:"holds_gone"`
	CautionsAdded []FoundChange `json:"cautions_added"`
	CautionsGone  []FoundChange `json:"cautions_gone"`

	old, new *worked.Job
	papers   func() (papers, error) // of both packs, which are cut once
}

// A JointChange is the joint above a cabinet that is set anew: its link goes to another
// hole, or one of its two bodies is another.
type JointChange struct {
	Stack     string   `json:"stack"`
	Cabinet   int      `json:"cabinet"`
	From      float64  `json:"from"`
	To        float64  `json:"to"`
	FromLabel string   `json:"from_label"`
	ToLabel   string   `json:"to_label"`
	Why       []string `json:"why"` // hole, above, below: what of it is another

	out, in int // its link pins
}

// A CabinetChange is a cabinet that only one revision has, with the splay of the
// joint above it.
type CabinetChange struct {
	Stack   string  `json:"stack"`
	Cabinet int     `json:"cabinet"`
	Splay   float64 `json:"splay_deg"`
}

// A PickChange is a stack that hangs from other pick holes, front first.
type PickChange struct {
	Stack string      `json:"stack"`
	From  []rig.Label `json:"from"`
	To    []rig.Label `json:"to"`
}

// A PointChange is a point of the roof that both revisions have and whose load or place
// has changed.
type PointChange struct {
	ID         string  `json:"id"`
	From       float64 `json:"from_kg"`
	To         float64 `json:"to_kg"`
	FromStatic float64 `json:"from_static_kg"`
	ToStatic   float64 `json:"to_static_kg"`
	FromMost   float64 `json:"from_most_kg"` // design load, at the lift or wherever it is most
	ToMost     float64 `json:"to_most_kg"`
	Moved      bool    `json:"moved"`        // in plan
	StageLeft  float64 `json:"stage_left_m"` // by how much, to stage left
	Downstage  float64 `json:"downstage_m"`  // and downstage
	Raised     float64 `json:"raised_m"`     // its pick, or the hook of another point

	hook  string // which of them
	stack string // that the point carries, "" for none
}

// A FoundChange is a hold or a caution, with the stack that it is of.
type FoundChange struct {
	Stack string `json:"stack"`
	rules.Finding
}

// An OtherChange is anything else of a stack, in words, or of the job where Stack
// is "".
type OtherChange struct {
	Stack string `json:"stack"`
	What  string `json:"what"`
	From  string `json:"from"`
	To    string `json:"to"`

	ofGear, ofPoint bool // the figures of an entry of the gear; what another point carries
}

// Compare finds what moved from an old revision of a job to a new one, in the order of
// the new one. It keeps both.
func Compare(old, new *worked.Job) List {
	c := unchanged(old, new)
	c.compareJobs()
	c.compareGear()
	in := inUnitsOf(old, new)
	for _, h := range new.Stacks {
		if was := in.Stack(h.ID); was != nil {
			c.compareStacks(was, h)
		} else {
			c.Added = append(c.Added, h.ID)
			c.findingsOf(h)
		}
		if h.Held() {
			c.Held = append(c.Held, h.ID)
		}
		c.countNew(in.Stack(h.ID), h)
	}
	for _, h := range old.Stacks {
		if new.Stack(h.ID) == nil {
			c.Gone = append(c.Gone, h.ID)
		}
	}
	c.comparePoints()
	c.compareHooked()
	return c
}

// unchanged has every list, empty: as data none of them is null.
func unchanged(old, new *worked.Job) List {
	return List{
		Joints: []JointChange{}, Picks: []PickChange{}, Points: []PointChange{},
		Added: []string{}, Gone: []string{}, CabinetsAdded: []CabinetChange{}, CabinetsGone: []CabinetChange{},
		Held: []string{}, WasHeld: []string{}, Others: []OtherChange{}, PointsAdded: []string{}, PointsGone: []string{},
		Holds: []FoundChange{}, HoldsGone: []FoundChange{}, CautionsAdded: []FoundChange{}, CautionsGone: []FoundChange{},
		Old: old.Fingerprint, New: new.Fingerprint, old: old, new: new,
		papers: sync.OnceValues(func() (papers, error) { return comparePapers(old, new) }),
	}
}

// inUnitsOf is a job with the words of its stacks in the units of another one, so that
// only what differs reads differently. The job itself stays as it is.
func inUnitsOf(j, other *worked.Job) *worked.Job {
	if j.Imperial == other.Imperial {
		return j
	}
	read, same := *j.Job, *j
	read.Imperial = other.Imperial
	same.Job, same.Stacks = &read, nil
	for _, h := range j.Stacks {
		again := *h
		again.Hung = hungInUnits(h.Hung, &read)
		same.Stacks = append(same.Stacks, &again)
	}
	for _, h := range same.Stacks {
		if h.Twin != nil {
			h.Twin = same.Stack(h.Twin.ID)
		}
	}
	return &same
}

// hungInUnits is a stack as it hangs, and as it would with its unknown centres of
// gravity elsewhere, of another copy of its job.
func hungInUnits(h *rig.Hung, of *job.Job) *rig.Hung {
	again := *h
	again.Job, again.Corners = of, nil
	for _, corner := range h.Corners {
		again.Corners = append(again.Corners, hungInUnits(corner, of))
	}
	return &again
}
