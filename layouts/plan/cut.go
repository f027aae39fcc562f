package plan

import (
	"cmp"
	"math"
	"slices"

	"hangpack/layouts/drawings"
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/tagging"
)

// views cuts a plan into as many drawings as its tags need.
func (v Sheet) views(c *paper.Canvas, sheet mm.Box) (views []drawing) {
	all := make([]int, len(v.Points))
	for i := range all {
		all[i] = i
	}
	slices.SortStableFunc(all, func(a, b int) int { return cmp.Compare(reach(v.Points[a].At), reach(v.Points[b].At)) })
	for _, group := range v.groups(all, sheet) {
		whole := v.near(reach(v.Points[group[len(group)-1]].At), group[len(group)-1] == all[len(all)-1])
		whole.sheet, whole.room = sheet, drawingRoom(c, v, sheet)
		slices.Sort(group)
		views = append(views, whole.cut(c, group)...)
	}
	return views
}

// reach returns how far a place is from the datum across or down, in metres,
// and at least 10 m, within which a plan needs no second scale.
func reach(p drawings.Place) float64 { return max(10, math.Abs(p.X), math.Abs(p.Z)) }

// groups parts far points from near ones where one drawing of both would be so
// small that marks touch: delays in a field, say. all is in the order of reach.
func (v Sheet) groups(all []int, room mm.Box) [][]int {
	const farther = 2.0 // times as far as the last of the near ones
	at, most := 0, farther
	for i := 1; i < len(all); i++ {
		if ratio := reach(v.Points[all[i]].At) / reach(v.Points[all[i-1]].At); ratio > most {
			at, most = i, ratio
		}
	}
	if at == 0 || !v.touch(all, room) {
		return [][]int{all}
	}
	return append(v.groups(all[:at:at], room), v.groups(all[at:], room)...)
}

// touch reports whether marks of points that stand apart would touch in one
// drawing.
func (v Sheet) touch(points []int, room mm.Box) bool {
	places := []drawings.Place{{}}
	for _, i := range points {
		places = append(places, onPlan(v.Points[i].At))
	}
	lo, hi := drawings.Extent(places...)
	per := touching / 1000 * float64(drawings.FrameFor(v.Ruler, lo, hi, room).Scale)
	for n, a := range places[1:] {
		for _, b := range places[1 : n+1] {
			if d := math.Hypot(a.X-b.X, a.Z-b.Z); d > 0.05 && d < per {
				return true
			}
		}
	}
	return false
}

// near gathers what a drawing shows that reaches so far, in metres; the last
// one shows all.
func (v Sheet) near(most float64, last bool) (view drawing) {
	view.plan = v
	for i, p := range v.Points {
		if last || reach(p.At) <= most {
			view.shown = append(view.shown, i)
		}
	}
	view.outside = len(v.Points) - len(view.shown)
	for i, s := range v.Stacks {
		const body = 6.0 // metres that an outline may reach past its points
		if last || reach(s.Front[0]) <= most+body {
			view.stacks = append(view.stacks, i)
		}
	}
	return view
}

// cut shares points among the fewest drawings that hold their tags, with the
// largest scale and type at which they do. One drawing may be a scale smaller
// than two. Where no number of drawings helps, smaller scales do: they leave
// more white.
func (w drawing) cut(c *paper.Canvas, points []int) []drawing {
	lo, hi := w.extent()
	scale := drawings.FrameFor(w.plan.Ruler, lo, hi, w.room.Grown(-frameAir)).Scale
	for ; scale < drawings.ScaleMost; scale = w.plan.Ruler.Next(scale) {
		for n := 1; n <= len(points); n += 1 + n/8 {
			if views := w.at(scale, lo, hi).shared(c, points, n); views != nil {
				return views
			}
			if n > 1 {
				continue
			}
			if views := w.at(w.plan.Ruler.Next(scale), lo, hi).shared(c, points, n); views != nil {
				return views
			}
		}
	}
	c.Fault("plan: no drawing has room for the figures of %d points", len(points))
	return nil
}

// shared tries to share points evenly among n drawings, in their order, with
// the largest type that holds all tags; nil if even the smallest does not.
func (w drawing) shared(c *paper.Canvas, points []int, n int) []drawing {
	last := len(tagSizes) - 1
	if largest := w.inType(c, points, n, tagSizes[0]); largest != nil {
		return largest
	}
	smallest := w.inType(c, points, n, tagSizes[last])
	if smallest == nil {
		return nil // no larger one needs a try
	}
	for _, f := range tagSizes[1:last] {
		if set := w.inType(c, points, n, f); set != nil {
			return set
		}
	}
	return smallest
}

// inType shares points evenly among n drawings with tags in one type, or
// returns nil.
func (w drawing) inType(c *paper.Canvas, points []int, n int, f tagFaces) (views []drawing) {
	for i := range n {
		view := w
		view.faces, view.own = f, points[i*len(points)/n:(i+1)*len(points)/n]
		if !view.tagged(c) {
			return nil
		}
		views = append(views, view)
	}
	return views
}

// tagged places the tags of a drawing's own points, or reports false.
func (w *drawing) tagged(c *paper.Canvas) bool {
	tags, ok := tagging.Place(w.ground(c), w.frame.At(drawings.Place{}), w.faces != tagSizes[len(tagSizes)-1], w.untagged(c))
	w.tags = tags
	return ok
}

// untagged makes the tags, one for each point or for a few whose marks would
// touch.
func (w *drawing) untagged(c *paper.Canvas) (tags []tagging.Tag) {
	var marks []mm.Spot
	for _, i := range w.own {
		marks = append(marks, w.spot(i))
	}
	for _, group := range tagging.Together(marks, touching, tagMost) {
		var t tagging.Tag
		var around []mm.Spot
		for _, n := range group {
			t.Points, around = append(t.Points, w.own[n]), append(around, marks[n])
		}
		t.At, t.To = w.plan.tagBox(c, w.faces, t.Points), tagging.Ring(around, markRadius)
		tags = append(tags, t)
	}
	return tags
}
