package changes

import (
	"math"
	"strings"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
	"hangpack/paperwork/worked"
)

// A pointAt is where a point is and what it carries.
type pointAt struct {
	id, hook           string // hook: what its height is of
	stack              string // that it carries, "" for none
	left, down, height float64
	most               float64 // design load, kg
	rig.Carried
}

// pointsAt are all points of a job, of held stacks too.
func pointsAt(j *worked.Job) (all []pointAt) {
	for _, s := range j.Figures.Stacks {
		for _, p := range s.Points {
			all = append(all, pointAt{p.ID, "pick", s.ID, p.StageLeft, p.Downstage, p.PickHeight, p.Most.Design, p.Carried})
		}
	}
	for _, o := range j.Figures.Others {
		all = append(all, pointAt{o.ID, "hook", "", o.StageLeft, o.Downstage, o.Height, o.Design, o.Carried})
	}
	return all
}

// By how much loads in kg may differ and be the same, and by how much a point may
// move in m and stay: half of what its place is printed to.
const (
	loadDust  = 1e-6
	placeDust = 0.005
)

// movedFrom reports whether a point lies elsewhere in plan than it did in q.
func (p pointAt) movedFrom(q pointAt) bool {
	return math.Abs(p.left-q.left) > placeDust || math.Abs(p.down-q.down) > placeDust
}

// raisedFrom reports whether a point's pick is higher or lower than it was in q.
func (p pointAt) raisedFrom(q pointAt) bool { return math.Abs(p.height-q.height) > placeDust }

// loadedUnlike reports whether a point carries something else than it did in q.
func (p pointAt) loadedUnlike(q pointAt) bool {
	unlike := func(a, b float64) bool { return math.Abs(a-b) > loadDust }
	return unlike(p.Static, q.Static) || unlike(p.Design, q.Design) || unlike(p.most, q.most)
}

// change is how a point differs from what it was in q.
func (p pointAt) change(q pointAt) PointChange {
	return PointChange{
		ID: p.id, From: q.Design, To: p.Design, FromStatic: q.Static, ToStatic: p.Static, FromMost: q.most, ToMost: p.most,
		Moved: p.movedFrom(q), StageLeft: p.left - q.left, Downstage: p.down - q.down, Raised: p.height - q.height,
		hook: p.hook, stack: p.stack,
	}
}

// pointCalled finds a point by its id.
func pointCalled(all []pointAt, id string) (p pointAt, found bool) {
	for _, p := range all {
		if p.id == id {
			return p, true
		}
	}
	return p, false
}

// comparePoints compares the points that both revisions have, and names the others.
func (c *List) comparePoints() {
	was, now := pointsAt(c.old), pointsAt(c.new)
	for _, p := range now {
		switch q, both := pointCalled(was, p.id); {
		case !both:
			c.PointsAdded = append(c.PointsAdded, p.id)
		case p.movedFrom(q) || p.raisedFrom(q) || p.loadedUnlike(q):
			c.Points = append(c.Points, p.change(q))
		}
	}
	for _, p := range was {
		if _, both := pointCalled(now, p.id); !both {
			c.PointsGone = append(c.PointsGone, p.id)
		}
	}
}

// placeWords say where a point went: 'pick 0.50 m lower, MOVED 0.40 m to stage left'.
func (p PointChange) placeWords(u say.Units) string {
	var words []string
	move := func(by float64, to, away string) {
		if by < 0 {
			by, to = -by, away
		}
		if by > placeDust {
			words = append(words, moveWords(u, by)+" "+to)
		}
	}
	move(p.StageLeft, "to stage left", "to stage right")
	move(p.Downstage, "downstage", "upstage")
	plan := "same place"
	if p.Moved {
		plan = "MOVED " + strings.Join(words, ", ")
	}
	words = nil
	if move(p.Raised, "higher", "lower"); len(words) == 0 {
		return plan
	}
	return p.hook + " " + words[0] + ", " + plan
}

// moveWords write how far something went, in metres: finer where it would be nothing.
func moveWords(u say.Units, by float64) string {
	if words := u.Length(by); words != u.Length(0) {
		return words
	}
	return u.Fine(by)
}

// compareHooked names other points that carry something else.
func (c *List) compareHooked() {
	was := map[string]string{}
	for _, o := range c.old.OtherPoints {
		was[o.ID] = o.What
	}
	for _, o := range c.new.OtherPoints {
		if what, both := was[o.ID]; both && what != o.What {
			c.Others = append(c.Others, OtherChange{What: "point " + o.ID, From: what, To: o.What, ofPoint: true})
		}
	}
}
