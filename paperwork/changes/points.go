package changes

import (
	"math"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/worked"
)

// A pointAt is where a point is and what it carries.
type pointAt struct {
	id                 string
	left, down, height float64
	most               float64 // design load, kg
	rig.Carried
}

// pointsAt are all points of a job, of held stacks too.
func pointsAt(j *worked.Job) (all []pointAt) {
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

// movedFrom reports whether a point lies elsewhere than it did in q.
func (p pointAt) movedFrom(q pointAt) bool {
	return math.Abs(p.left-q.left) > placeDust || math.Abs(p.down-q.down) > placeDust || math.Abs(p.height-q.height) > placeDust
}

// loadedUnlike reports whether a point carries something else than it did in q.
func (p pointAt) loadedUnlike(q pointAt) bool {
	unlike := func(a, b float64) bool { return math.Abs(a-b) > loadDust }
	return unlike(p.Static, q.Static) || unlike(p.Design, q.Design) || unlike(p.most, q.most)
}

// change is how a point differs from what it was in q.
func (p pointAt) change(q pointAt) PointChange {
	return PointChange{p.id, q.Design, p.Design, q.Static, p.Static, q.most, p.most, p.movedFrom(q)}
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
		case p.movedFrom(q) || p.loadedUnlike(q):
			c.Points = append(c.Points, p.change(q))
		}
	}
	for _, p := range was {
		if _, both := pointCalled(now, p.id); !both {
			c.PointsGone = append(c.PointsGone, p.id)
		}
	}
}
