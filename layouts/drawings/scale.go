// Package drawings draws the real thing to a scale that is stated: a stack from the
// side, large with its labels or small on a card, and the bar with its pick holes.
//
// What is drawn is given in metres.
package drawings

import (
	"fmt"
	"math"
	"strconv"

	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
)

// A Place is a place in a drawing of the real thing, in metres: X to the right
// of the page, Z up.
type Place struct{ X, Z float64 }

// A Ruler is in which units a drawing tells its scale: which scales it may take, and how
// long its scale bar may be.
type Ruler struct{ Imperial bool }

const footM = 0.3048

// Scales of drawings, largest first.
var (
	metricScales   = []int{5, 10, 20, 25, 50, 100, 200}
	imperialScales = []int{6, 12, 24, 48, 96, 192}
)

// scales are the scales that a drawing may take, largest first.
func (r Ruler) scales() []int {
	if r.Imperial {
		return imperialScales
	}
	return metricScales
}

// Next returns the next smaller scale after one: of the usual ones, else twice as small.
func (r Ruler) Next(scale int) int {
	for _, s := range r.scales() {
		if s > scale {
			return s
		}
	}
	return 2 * scale
}

// A barLength is how long a scale bar may be, in metres, and its words.
type barLength struct {
	m    float64
	says string
}

// bars are the lengths that a scale bar may have, longest first.
func (r Ruler) bars() []barLength {
	if r.Imperial {
		return []barLength{{20 * footM, "20 ft"}, {10 * footM, "10 ft"}, {5 * footM, "5 ft"}, {2 * footM, "2 ft"}, {footM, "1 ft"}, {footM / 2, "6 in"}}
	}
	return []barLength{{10, "10 m"}, {5, "5 m"}, {2, "2 m"}, {1, "1 m"}, {0.5, "0.5 m"}, {0.2, "0.2 m"}, {0.1, "0.1 m"}}
}

const tickApart = 13.0 // mm, at least

// Step returns how far it is from tick to tick of an axis, in metres, and how
// the n-th of them says it.
func (r Ruler) Step(scale int) (m float64, says func(n int) string) {
	unit, name, steps := 1.0, "m", []float64{0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000}
	if r.Imperial {
		unit, name = footM, "ft"
	}
	step := steps[len(steps)-1]
	for _, s := range steps {
		if s*unit*1000/float64(scale) >= tickApart && (!r.Imperial || s >= 1) {
			step = s
			break
		}
	}
	return step * unit, func(n int) string { return strconv.FormatFloat(float64(n)*step, 'g', 6, 64) + " " + name }
}

// A Frame is a drawing's room and the real room it shows.
type Frame struct {
	Scale  int     // 1 to so many
	Lo     Place   // bottom left corner of what is shown
	Origin mm.Spot // where Lo stands on paper
}

// At returns where a place of the drawing stands on paper.
func (f Frame) At(p Place) mm.Spot {
	k := 1000 / float64(f.Scale)
	return mm.At(f.Origin.X+(p.X-f.Lo.X)*k, f.Origin.Y-(p.Z-f.Lo.Z)*k)
}

// ScaleMost is where a drawing gives up looking for a smaller scale: its ink
// then leaves its block, and the pack fails.
const ScaleMost = 100_000

// FrameFor returns the largest scale at which places from lo to hi fit into a
// room, and stands them in its middle from its top. If none of the usual
// scales is small enough it goes on doubling the last.
func FrameFor(r Ruler, lo, hi Place, room mm.Box) Frame {
	w, h := (hi.X-lo.X)*1000, (hi.Z-lo.Z)*1000
	scales := r.scales()
	scale := scales[len(scales)-1]
	for _, s := range scales {
		if w/float64(s) <= room.W && h/float64(s) <= room.H {
			scale = s
			break
		}
	}
	for scale < ScaleMost && (w/float64(scale) > room.W || h/float64(scale) > room.H) {
		scale *= 2
	}
	k := float64(scale)
	return Frame{scale, lo, mm.At(room.X+(room.W-w/k)/2, room.Y+h/k)}
}

// Extent returns the corners of the least upright rectangle around places, at least one.
func Extent(places ...Place) (lo, hi Place) {
	lo, hi = Place{math.Inf(1), math.Inf(1)}, Place{math.Inf(-1), math.Inf(-1)}
	for _, p := range places {
		lo = Place{min(lo.X, p.X), min(lo.Z, p.Z)}
		hi = Place{max(hi.X, p.X), max(hi.Z, p.Z)}
	}
	return lo, hi
}

// ScaleWords writes a scale: '1:50'.
func ScaleWords(f Frame) string { return fmt.Sprintf("1:%d", f.Scale) }

// scaleBar draws a bar that stays true when a copier shrinks the page: the
// longest that takes at most w.
func scaleBar(c *paper.Canvas, r Ruler, f Frame, x, y, w float64) {
	bars := r.bars()
	bar := bars[len(bars)-1]
	for _, b := range bars {
		if b.m*1000/float64(f.Scale) <= w {
			bar = b
			break
		}
	}
	l := bar.m * 1000 / float64(f.Scale)
	c.Line(x, y, x+l, y, paper.Solid)
	for _, at := range []float64{0, 0.5, 1} {
		c.Line(x+at*l, y-1.2, x+at*l, y+1.2, paper.Solid)
	}
	c.Text(x+l+1.5, y+1, paper.Small, bar.says)
}
