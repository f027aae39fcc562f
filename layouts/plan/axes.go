package plan

import (
	"math"

	"hangpack/layouts/drawings"
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/tagging"
)

// The names of the lines through the datum. Whether one of them is the centre
// line of anything is for the job to say.
const (
	acrossNought = "0 across"
	upDownNought = "0 up/down"
)

// ground lays out what a drawing has besides its tags: marks, outlines, axes
// and the words beside them.
func (w *drawing) ground(c *paper.Canvas) *tagging.Ground {
	g := tagging.NewGround(w.room)
	d := w.frame.At(drawings.Place{})
	g.Mark(tagging.Dot{Spot: d, R: datumRadius})
	for _, i := range w.own {
		g.Mark(tagging.Dot{Spot: w.spot(i), R: markRadius})
	}
	for _, i := range w.others() {
		g.Mark(tagging.Dot{Spot: w.spot(i), R: paleRadius, Pale: true})
	}
	for _, i := range w.stacks {
		lo, hi := mm.Bounds(w.corners(i))
		g.Outline(mm.BoxAt(lo.X, lo.Y, hi.X-lo.X, hi.Y-lo.Y))
	}
	w.axes = axes{datum: d}
	nameAxes(c, w, g)
	ruleAxes(c, w, g)
	g.Take(mm.BoxAt(d.X-0.5, w.room.Y, 1, w.room.H))
	g.Take(mm.BoxAt(w.room.X, d.Y-0.5, w.room.W, 1))
	g.Settle()
	return g
}

// axisText writes a word beside an axis at the first of some places that is
// free. Where none is, the key under the drawing has to do.
func axisText(c *paper.Canvas, w *drawing, g *tagging.Ground, f paper.Face, says string, at ...mm.Spot) {
	for _, p := range at {
		if g.Word(mm.BoxAt(p.X, p.Y-f.Em()*0.75, c.Width(f, says), f.Em()*0.96)) {
			w.axes.words = append(w.axes.words, axisWord{p, says})
			return
		}
	}
}

// nameAxes writes the names of the two lines, from their ends inwards.
func nameAxes(c *paper.Canvas, w *drawing, g *tagging.Ground) {
	d, r := w.axes.datum, w.room
	var up, across []mm.Spot
	for y := r.Y + 3; y < r.Bottom(); y += 4 {
		up = append(up, mm.At(d.X+1.5, y), mm.At(d.X-1.5-c.Width(paper.SmallBold, acrossNought), y))
	}
	last := r.Right() - c.Width(paper.SmallBold, upDownNought) - 0.4
	for x := 0.4; x < r.W/2; x += 4 {
		for _, x := range []float64{r.X + x, last - x} {
			across = append(across, mm.At(x, d.Y-2), mm.At(x, d.Y+3.8))
		}
	}
	axisText(c, w, g, paper.SmallBold, acrossNought, up...)
	axisText(c, w, g, paper.SmallBold, upDownNought, across...)
}

// ruleAxes writes how far ticks are from the datum, in all four directions.
func ruleAxes(c *paper.Canvas, w *drawing, g *tagging.Ground) {
	m, says := w.plan.Ruler.Step(w.frame.Scale)
	d, r := w.axes.datum, w.room
	w.axes.ticks = m * 1000 / float64(w.frame.Scale)
	for n := 1; float64(n)*w.axes.ticks < max(r.W, r.H); n++ {
		s, k := says(n), float64(n)*w.axes.ticks
		half := c.Width(paper.Small, s) / 2
		for _, x := range []float64{d.X - k, d.X + k} {
			axisText(c, w, g, paper.Small, s, mm.At(x-half, d.Y+4.4))
		}
		for _, y := range []float64{d.Y - k, d.Y + k} {
			axisText(c, w, g, paper.Small, s, mm.At(d.X+1.8, y+1.1))
		}
	}
}

// drawAxes draws both lines with their ticks, and the datum.
func drawAxes(c *paper.Canvas, w drawing) {
	a, r := w.axes, w.room
	c.Chain(a.datum.X, r.Y, a.datum.X, r.Bottom())
	c.Dashed(2, 1.4, func() { c.Line(r.X, a.datum.Y, r.Right(), a.datum.Y, paper.Light) })
	drawTicks(c, a, r)
	drawDatum(c, a.datum)
}

// drawAxisWords writes the words beside the axes, on white: lines may run there.
func drawAxisWords(c *paper.Canvas, a axes) {
	for _, word := range a.words {
		f := paper.Small
		if word.says == acrossNought || word.says == upDownNought {
			f = paper.SmallBold
		}
		c.OnWhite(word.X, word.Y, f, word.says)
		c.Text(word.X, word.Y, f, word.says)
	}
}

// drawTicks draws the ticks of both axes.
func drawTicks(c *paper.Canvas, a axes, r mm.Box) {
	const half = 1.0
	for n := math.Ceil((r.X - a.datum.X) / a.ticks); a.datum.X+n*a.ticks <= r.Right(); n++ {
		c.Line(a.datum.X+n*a.ticks, a.datum.Y-half, a.datum.X+n*a.ticks, a.datum.Y+half, paper.Solid)
	}
	for n := math.Ceil((r.Y - a.datum.Y) / a.ticks); a.datum.Y+n*a.ticks <= r.Bottom(); n++ {
		c.Line(a.datum.X-half, a.datum.Y+n*a.ticks, a.datum.X+half, a.datum.Y+n*a.ticks, paper.Solid)
	}
}

// drawBar draws a scale bar of two steps of the axes: a plan may show half a
// kilometre, for which the bars of other drawings are too short.
func drawBar(c *paper.Canvas, w drawing, x, y float64) {
	_, says := w.plan.Ruler.Step(w.frame.Scale)
	l := w.axes.ticks
	c.Line(x, y, x+2*l, y, paper.Solid)
	for n := range 3 {
		c.Line(x+float64(n)*l, y-1.2, x+float64(n)*l, y+1.2, paper.Solid)
	}
	c.Text(x+2*l+1.5, y+1, paper.Small, says(2))
}
