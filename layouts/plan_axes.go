package layouts

import (
	"fmt"
	"math"
	"strconv"
)

// The names of the lines through the datum. Whether one of them is the centre
// line of anything is for the job to say.
const (
	acrossNought = "0 across"
	upDownNought = "0 up/down"
)

// axes are the two lines through the datum, ruled like tapes from the
// datum, with the words that had room beside them.
type axes struct {
	datum spot
	ticks float64 // mm from tick to tick
	words []axisWord
}

// An axisWord is a word beside an axis: its left end and its baseline.
type axisWord struct {
	spot
	says string
}

const (
	datumRadius = 2.2
	tickApart   = 13.0 // mm, at least
)

// step returns how far it is from tick to tick of an axis, in metres, and how
// the n-th of them says it.
func (r Ruler) step(scale int) (m float64, says func(n int) string) {
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

// ground lays out what a drawing has besides its tags: marks, outlines, axes
// and the words beside them.
func (w *planView) ground(c *canvas) *ground {
	g := &ground{room: w.room}
	d := w.frame.at(Place{})
	g.dot(dot{d, datumRadius})
	own := map[int]bool{}
	for _, i := range w.own {
		own[i] = true
		g.dot(dot{w.spot(i), markRadius})
	}
	for _, i := range w.pale {
		if !own[i] {
			g.dot(dot{w.spot(i), paleRadius})
		}
	}
	for _, i := range w.stacks {
		lo, hi := bounds(w.corners(i))
		b := box{lo.x, lo.y, hi.x - lo.x, hi.y - lo.y}
		g.outlines = append(g.outlines, b)
		g.take(b.grown(1))
	}
	w.axes = axes{datum: d}
	nameAxes(c, w, g)
	ruleAxes(c, w, g)
	g.take(box{d.x - 0.5, w.room.y, 1, w.room.h})
	g.take(box{w.room.x, d.y - 0.5, w.room.w, 1})
	g.settle()
	return g
}

// corners returns an outline on paper.
func (w *planView) corners(stack int) (at []spot) {
	for _, p := range w.plan.Stacks[stack].Corners {
		at = append(at, w.frame.at(onPlan(p)))
	}
	return at
}

// bounds returns the corners of the least upright rectangle around spots.
func bounds(at []spot) (lo, hi spot) {
	lo, hi = at[0], at[0]
	for _, p := range at {
		lo = spot{min(lo.x, p.x), min(lo.y, p.y)}
		hi = spot{max(hi.x, p.x), max(hi.y, p.y)}
	}
	return lo, hi
}

// axisText writes a word beside an axis at the first of some places that is
// free. Where none is, the key under the drawing has to do.
func axisText(c *canvas, w *planView, g *ground, f face, says string, at ...spot) {
	for _, p := range at {
		if g.word(box{p.x, p.y - f.em()*0.75, c.width(f, says), f.em() * 0.96}) {
			w.axes.words = append(w.axes.words, axisWord{p, says})
			return
		}
	}
}

// nameAxes writes the names of the two lines, from their ends inwards.
func nameAxes(c *canvas, w *planView, g *ground) {
	d, r := w.axes.datum, w.room
	var up, across []spot
	for y := r.y + 3; y < r.bottom(); y += 4 {
		up = append(up, spot{d.x + 1.5, y}, spot{d.x - 1.5 - c.width(smallB, acrossNought), y})
	}
	last := r.right() - c.width(smallB, upDownNought) - 0.4
	for x := 0.4; x < r.w/2; x += 4 {
		for _, x := range []float64{r.x + x, last - x} {
			across = append(across, spot{x, d.y - 2}, spot{x, d.y + 3.8})
		}
	}
	axisText(c, w, g, smallB, acrossNought, up...)
	axisText(c, w, g, smallB, upDownNought, across...)
}

// ruleAxes writes how far ticks are from the datum, in all four directions.
func ruleAxes(c *canvas, w *planView, g *ground) {
	m, says := w.plan.Ruler.step(w.frame.scale)
	d, r := w.axes.datum, w.room
	w.axes.ticks = m * 1000 / float64(w.frame.scale)
	for n := 1; float64(n)*w.axes.ticks < max(r.w, r.h); n++ {
		s, k := says(n), float64(n)*w.axes.ticks
		half := c.width(small, s) / 2
		for _, x := range []float64{d.x - k, d.x + k} {
			axisText(c, w, g, small, s, spot{x - half, d.y + 4.4})
		}
		for _, y := range []float64{d.y - k, d.y + k} {
			axisText(c, w, g, small, s, spot{d.x + 1.8, y + 1.1})
		}
	}
}

// drawAxes draws both lines with their ticks, and the datum.
func drawAxes(c *canvas, w planView) {
	a, r := w.axes, w.room
	c.chain(a.datum.x, r.y, a.datum.x, r.bottom())
	c.dashed(2, 1.4, func() { c.line(r.x, a.datum.y, r.right(), a.datum.y, light) })
	drawTicks(c, a, r)
	drawDatum(c, a.datum)
}

// axisWords writes the words beside the axes, on white: lines may run there.
func axisWords(c *canvas, a axes) {
	for _, word := range a.words {
		f := small
		if word.says == acrossNought || word.says == upDownNought {
			f = smallB
		}
		c.onWhite(word.x, word.y, f, word.says)
		c.text(word.x, word.y, f, word.says)
	}
}

// drawTicks draws the ticks of both axes.
func drawTicks(c *canvas, a axes, r box) {
	const half = 1.0
	for n := math.Ceil((r.x - a.datum.x) / a.ticks); a.datum.x+n*a.ticks <= r.right(); n++ {
		c.line(a.datum.x+n*a.ticks, a.datum.y-half, a.datum.x+n*a.ticks, a.datum.y+half, solid)
	}
	for n := math.Ceil((r.y - a.datum.y) / a.ticks); a.datum.y+n*a.ticks <= r.bottom(); n++ {
		c.line(a.datum.x-half, a.datum.y+n*a.ticks, a.datum.x+half, a.datum.y+n*a.ticks, solid)
	}
}

// planBar draws a scale bar of two steps of the axes: a plan may show half a
// kilometre, for which the bars of other drawings are too short.
func planBar(c *canvas, w planView, x, y float64) {
	_, says := w.plan.Ruler.step(w.frame.scale)
	l := w.axes.ticks
	c.line(x, y, x+2*l, y, solid)
	for n := range 3 {
		c.line(x+float64(n)*l, y-1.2, x+float64(n)*l, y+1.2, solid)
	}
	c.text(x+2*l+1.5, y+1, small, says(2))
}

// drawDatum draws the datum: a disc with a cross.
func drawDatum(c *canvas, p spot) {
	const r = datumRadius
	c.record("datum", p.x-r, p.y-r, p.x+r, p.y+r)
	c.disc(p.x, p.y, r, solid, white)
	c.line(p.x-r-1, p.y, p.x+r+1, p.y, solid)
	c.line(p.x, p.y-r-1, p.x, p.y+r+1, solid)
}

// pointsWords counts points.
func pointsWords(n int) string {
	if n == 1 {
		return "1 point"
	}
	return fmt.Sprintf("%d points", n)
}
