package paperwork

import (
	"math"
	"slices"
	"strings"

	"hangpack/paperwork/job"
)

// Changes are what moved from one revision of a job to the next, as data. Splays
// are in degrees, loads in kg, design loads where nothing else is said. A stack that
// is held in either has none of its holes in it.
type Changes struct {
	Move   int           `json:"move"` // joints whose link pins go to another hole
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

	old, new *Job
}

// A JointChange is the joint above a cabinet whose link goes to another hole.
type JointChange struct {
	Stack   string  `json:"stack"`
	Cabinet int     `json:"cabinet"`
	From    float64 `json:"from"`
	To      float64 `json:"to"`
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
	Stack string  `json:"stack"`
	From  []Label `json:"from"`
	To    []Label `json:"to"`
}

// A PointChange is a point of the roof that both revisions have and whose load or
// place is another one.
type PointChange struct {
	ID         string  `json:"id"`
	From       float64 `json:"from_kg"`
	To         float64 `json:"to_kg"`
	FromStatic float64 `json:"from_static_kg"`
	ToStatic   float64 `json:"to_static_kg"`
	FromMost   float64 `json:"from_most_kg"` // design load, at the lift or wherever it is most
	ToMost     float64 `json:"to_most_kg"`
	Moved      bool    `json:"moved"` // in plan or in height
}

// An OtherChange is anything else of a stack, in words, or of the job where Stack
// is "".
type OtherChange struct {
	Stack string `json:"stack"`
	What  string `json:"what"`
	From  string `json:"from"`
	To    string `json:"to"`
}

// Compare finds what moved from an old revision of a job to a new one.
func Compare(old, new *Job) Changes {
	c := Changes{Joints: []JointChange{}, Picks: []PickChange{}, Points: []PointChange{}, Added: []string{}, Gone: []string{},
		CabinetsAdded: []CabinetChange{}, CabinetsGone: []CabinetChange{}, Held: []string{}, WasHeld: []string{}, Others: []OtherChange{}, PointsAdded: []string{}, PointsGone: []string{},
		Old: old.job.Fingerprint, New: new.job.Fingerprint, old: old, new: new}
	c.compareJobs()
	c.compareGear()
	for _, h := range new.stacks {
		was := old.stack(h.ID)
		if was == nil {
			c.Added = append(c.Added, h.ID)
		} else {
			c.compareStacks(was, h)
		}
		if h.held() {
			c.Held = append(c.Held, h.ID)
		}
	}
	for _, h := range old.stacks {
		if new.stack(h.ID) == nil {
			c.Gone = append(c.Gone, h.ID)
		}
	}
	c.comparePoints()
	return c
}

// stack returns the stack of an id, or nil.
func (j *Job) stack(id string) *hung {
	for _, h := range j.stacks {
		if h.ID == id {
			return h
		}
	}
	return nil
}

// compareStacks compares a stack that both revisions have.
func (c *Changes) compareStacks(was, h *hung) {
	for _, d := range partsOf(was, h) {
		c.Others = append(c.Others, OtherChange{h.ID, d.of, d.this, d.other})
	}
	if was.held() && !h.held() {
		c.WasHeld = append(c.WasHeld, h.ID)
	}
	if was.held() || h.held() {
		return
	}
	c.compareJoints(was, h)
	if from, to := was.pickLabels(), h.pickLabels(); !slices.Equal(from, to) {
		c.Picks = append(c.Picks, PickChange{h.ID, from, to})
	}
}

func (h *hung) pickLabels() (labels []Label) {
	for _, hole := range h.holes {
		labels = append(labels, h.label(hole))
	}
	return labels
}

// compareJoints compares joints by the number of the cabinet below them.
func (c *Changes) compareJoints(was, h *hung) {
	for k := range max(len(was.Cabinets), len(h.Cabinets)) {
		switch {
		case k >= len(was.Cabinets):
			c.CabinetsAdded = append(c.CabinetsAdded, CabinetChange{h.ID, k + 1, h.Cabinets[k].Hole.Splay})
		case k >= len(h.Cabinets):
			c.CabinetsGone = append(c.CabinetsGone, CabinetChange{h.ID, k + 1, was.Cabinets[k].Hole.Splay})
		case was.Cabinets[k].Hole != h.Cabinets[k].Hole:
			c.Move++
			c.Joints = append(c.Joints, JointChange{h.ID, k + 1, was.Cabinets[k].Hole.Splay, h.Cabinets[k].Hole.Splay})
		default:
			c.Stay++
		}
	}
}

// partsOf are what two revisions of a stack do not have alike besides joints and
// pick holes: cabinets by type, place, and all that twins are compared by.
func partsOf(was, h *hung) (all []difference) {
	differ := func(of, this, other string) {
		if this != other {
			all = append(all, difference{of: of, this: this, other: other})
		}
	}
	differ("cabinets", was.holdsWords(span{1, len(was.Cabinets)}), h.holdsWords(span{1, len(h.Cabinets)}))
	differ("place", was.placeWords(), h.placeWords())
	for _, d := range was.partDifferences(h) {
		if d.of != "pick holes" && d.of != "number of cabinets" {
			all = append(all, d)
		}
	}
	return all
}

// placeWords write where a stack's bar stands in plan, and its pan.
func (h *hung) placeWords() string {
	words := h.unit().across(h.StageLeft) + ", " + h.unit().upDown(h.Downstage)
	if h.Pan != 0 {
		way := "left"
		if h.Pan < 0 {
			way = "right"
		}
		words += ", pan " + trimmed(math.Abs(degrees(h.Pan))) + "° stage " + way
	}
	return words
}

// A pointAt is where a point is and what it carries.
type pointAt struct {
	id                 string
	left, down, height float64
	most               float64 // design load, kg
	Carried
}

// pointsAt are all points of a job, of held stacks too.
func (j *Job) pointsAt() (all []pointAt) {
	for _, s := range j.Figures.Stacks {
		for _, p := range s.Points {
			all = append(all, pointAt{p.ID, p.StageLeft, p.Downstage, p.PickHeight, p.Most.Design, p.Carried})
		}
	}
	for _, o := range j.Figures.Others {
		all = append(all, pointAt{o.ID, o.StageLeft, o.Downstage, o.Height, o.Design, o.Carried})
	}
	return all
}

// By how much loads in kg may differ and be the same, and by how much a point may
// move in m and stay: half of what its place is printed to.
const (
	loadDust  = 1e-6
	placeDust = 0.005
)

func (p pointAt) movedFrom(q pointAt) bool {
	return math.Abs(p.left-q.left) > placeDust || math.Abs(p.down-q.down) > placeDust || math.Abs(p.height-q.height) > placeDust
}

func (p pointAt) loadedUnlike(q pointAt) bool {
	unlike := func(a, b float64) bool { return math.Abs(a-b) > loadDust }
	return unlike(p.Static, q.Static) || unlike(p.Design, q.Design) || unlike(p.most, q.most)
}

// comparePoints compares the points that both revisions have, and names the others.
func (c *Changes) comparePoints() {
	was := map[string]pointAt{}
	for _, p := range c.old.pointsAt() {
		was[p.id] = p
	}
	for _, p := range c.new.pointsAt() {
		q, both := was[p.id]
		delete(was, p.id)
		switch {
		case !both:
			c.PointsAdded = append(c.PointsAdded, p.id)
		case p.movedFrom(q) || p.loadedUnlike(q):
			c.Points = append(c.Points, PointChange{p.id, q.Design, p.Design, q.Static, p.Static, q.most, p.most, p.movedFrom(q)})
		}
	}
	for _, p := range c.old.pointsAt() {
		if _, left := was[p.id]; left {
			c.PointsGone = append(c.PointsGone, p.id)
		}
	}
}

// compareJobs compares what is of the whole job.
func (c *Changes) compareJobs() {
	words := func(j *job.Job) []string {
		units := "metric"
		if j.Imperial {
			units = "imperial"
		}
		return []string{j.Revision, j.Title, j.Venue, j.Date, given(j.Datum), j.HeightsFrom, units, practiceWords(j.Practice)}
	}
	from, to := words(c.old.job), words(c.new.job)
	for i, what := range strings.Split("revision,title,venue,date,datum,heights above,units,practice", ",") {
		if from[i] != to[i] {
			c.Others = append(c.Others, OtherChange{"", what, from[i], to[i]})
		}
	}
}
