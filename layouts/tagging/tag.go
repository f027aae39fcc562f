package tagging

import (
	"hangpack/layouts/mm"
)

// A Tag is a frame with the names and both offsets of a point, or of a few
// points whose marks would touch, and a leader to the mark. Name and figures
// cannot part in it, as they can on two dimension lines.
type Tag struct {
	Points []int  // whose figures it has, by their numbers
	At     mm.Box // where it stands; before, its size
	To     Dot    // what the leader goes to
	Leader mm.Segment
	whole  mm.Box // of frame and leader
	cost   int    // of its place
}

// A corner is where the top left corner of a tag may stand.
type corner struct {
	mm.Spot
	cost int
}

// Air around tags and leaders, in mm.
const (
	tagAir  = 1.6 // between two tags
	lineAir = 0.9 // between a leader and anything that is not its own
	ringAir = 0.6 // between marks and the ring around them
)

// stand puts a tag at a place and sets its leader: from the nearest point of
// its frame to the rim of the mark.
func (t *Tag) stand(p corner) {
	t.At.X, t.At.Y, t.cost = p.X, p.Y, p.cost
	from, to := t.At.Nearest(t.To.Spot), t.To.Spot
	if l := mm.Distance(from, to); l > 0 {
		to = mm.Segment{A: from, B: to}.Along(max(0, l-t.To.R) / l)
	}
	t.Leader = mm.Segment{A: from, B: to}
	lo := mm.At(min(t.At.X, to.X), min(t.At.Y, to.Y))
	t.whole = mm.BoxAt(lo.X, lo.Y, max(t.At.Right(), to.X)-lo.X, max(t.At.Bottom(), to.Y)-lo.Y)
}

// clearOf reports whether two tags and their leaders can be told apart.
// Leaders to the same mark may come near each other at it.
func (t *Tag) clearOf(o *Tag) bool {
	if !t.whole.Grown(tagAir).Meets(o.whole) {
		return true
	}
	if t.At.Grown(tagAir).Meets(o.At) || t.Leader.Hits(o.At.Grown(lineAir)) || o.Leader.Hits(t.At.Grown(lineAir)) {
		return false
	}
	if mm.Distance(t.To.Spot, o.To.Spot) < t.To.R+o.To.R {
		return !t.Leader.Crosses(o.Leader)
	}
	return t.Leader.Gap(o.Leader) >= lineAir
}

// Together groups marks, counted from 0: those nearer than a distance are one group of
// at most so many.
func Together(marks []mm.Spot, near float64, most int) (groups [][]int) {
	done := map[int]bool{}
	for i := range marks {
		if done[i] {
			continue
		}
		group := []int{i}
		for k := i + 1; k < len(marks); k++ {
			if !done[k] && len(group) < most && mm.Distance(marks[i], marks[k]) < near {
				group, done[k] = append(group, k), true
			}
		}
		groups = append(groups, group)
	}
	return groups
}

// Ring returns what the leader of a tag goes to: a mark with its radius, or the ring
// around a few.
func Ring(marks []mm.Spot, radius float64) Dot {
	if len(marks) == 1 {
		return Dot{Spot: marks[0], R: radius}
	}
	var mid mm.Spot
	for _, p := range marks {
		mid.X += p.X / float64(len(marks))
		mid.Y += p.Y / float64(len(marks))
	}
	r := 0.0
	for _, p := range marks {
		r = max(r, mm.Distance(mid, p))
	}
	return Dot{Spot: mid, R: r + radius + ringAir}
}
