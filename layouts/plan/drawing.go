package plan

import (
	"slices"

	"hangpack/layouts/drawings"
	"hangpack/layouts/mm"
	"hangpack/layouts/tagging"
)

// A drawing is one drawing of a plan: everything near enough, and tags for
// its own points.
type drawing struct {
	plan    Sheet
	sheet   mm.Box // all that the drawing and its words take
	room    mm.Box // the drawing's own
	frame   drawings.Frame
	faces   tagFaces
	own     []int // points that have their tags here, ascending: in the job's order
	shown   []int // all points in the drawing, its own included
	stacks  []int // outlines in the drawing
	tags    []tagging.Tag
	axes    axes
	outside int // points that are not in the drawing
}

// Marks of points, in mm.
const (
	datumRadius = 2.2
	markRadius  = 1.0
	paleRadius  = 0.7
	touching    = 2*markRadius + 0.8 // marks nearer than this share a tag
	frameAir    = 5.0                // between the outermost marks and the drawing's edge
)

// axes are the two lines through the datum, ruled like tapes from the
// datum, with the words that had room beside them.
type axes struct {
	datum mm.Spot
	ticks float64 // mm from tick to tick
	words []axisWord
}

// An axisWord is a word beside an axis: its left end and its baseline.
type axisWord struct {
	mm.Spot
	says string
}

// onPlan turns a place of the plan, downstage positive, into one of a frame,
// which is positive up the page.
func onPlan(p drawings.Place) drawings.Place { return drawings.Place{X: p.X, Z: -p.Z} }

// spot returns where a point stands on paper.
func (w drawing) spot(i int) mm.Spot { return w.frame.At(onPlan(w.plan.Points[i].At)) }

// corners returns an outline on paper.
func (w *drawing) corners(stack int) (at []mm.Spot) {
	for _, p := range w.plan.Stacks[stack].Corners {
		at = append(at, w.frame.At(onPlan(p)))
	}
	return at
}

// others are the points in the drawing that have their tags elsewhere.
func (w drawing) others() []int {
	return slices.DeleteFunc(slices.Clone(w.shown), func(i int) bool {
		_, own := slices.BinarySearch(w.own, i)
		return own
	})
}

// extent returns the corners of what a drawing shows, with at least a metre
// around the datum.
func (w drawing) extent() (lo, hi drawings.Place) {
	places := []drawings.Place{{X: -1, Z: -1}, {X: 1, Z: 1}}
	for _, i := range w.shown {
		places = append(places, onPlan(w.plan.Points[i].At))
	}
	for _, i := range w.stacks {
		for _, p := range w.plan.Stacks[i].Corners {
			places = append(places, onPlan(p))
		}
	}
	return drawings.Extent(places...)
}

// at sets a drawing's scale and stands what it shows in the middle of its room.
func (w drawing) at(scale int, lo, hi drawings.Place) drawing {
	k := 1000 / float64(scale)
	w.frame = drawings.Frame{Scale: scale, Lo: lo, Origin: mm.At(w.room.X+(w.room.W-(hi.X-lo.X)*k)/2, w.room.Y+(w.room.H+(hi.Z-lo.Z)*k)/2)}
	return w
}
