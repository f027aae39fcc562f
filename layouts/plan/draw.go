package plan

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/tagging"
)

// leaderPen sets leaders off from the lines that they cross.
const leaderPen = 0.3

// drawDrawing draws a sheet's drawing and its words.
func drawDrawing(c *paper.Canvas, w drawing) {
	above := mm.BoxAt(w.sheet.X, w.sheet.Y, w.sheet.W, w.room.Y-w.sheet.Y)
	c.In("plan words", above, func() { drawWords(c, above, w) })
	c.In("plan", w.room, func() { drawInk(c, w) })
	ways := mm.BoxAt(w.sheet.X, w.room.Bottom(), w.sheet.W, waysTall)
	c.In("plan ways", ways, func() { drawWays(c, ways) })
	key := mm.BoxAt(w.sheet.X, ways.Bottom(), w.sheet.W, keyTall)
	c.In("plan key", key, func() { drawKey(c, key, w) })
}

// drawInk draws what is seen from above, then leaders, marks and tags.
func drawInk(c *paper.Canvas, w drawing) {
	drawAxes(c, w)
	for _, i := range w.stacks {
		drawStack(c, w, i)
	}
	for _, i := range w.others() {
		paleMark(c, w.spot(i), w.plan.Points[i])
	}
	for _, i := range w.own {
		drawOffsets(c, w.spot(i), w.axes.datum)
	}
	drawAxisWords(c, w.axes)
	for _, t := range w.tags {
		if len(t.Points) > 1 {
			c.Disc(t.To.X, t.To.Y, t.To.R, leaderPen, paper.None)
		}
		c.Leader(t.Leader, leaderPen)
	}
	for _, i := range w.own {
		drawPoint(c, w.spot(i), w.plan.Points[i])
	}
	for _, t := range w.tags {
		drawTag(c, w, t)
	}
}

// drawOffsets draws the two lengths that a tag's figures are of, dotted: from the
// datum across to a point, and from the datum up or down to it.
func drawOffsets(c *paper.Canvas, p, datum mm.Spot) {
	dotted(c, func() {
		c.Line(datum.X, p.Y, p.X, p.Y, paper.Light)
		c.Line(p.X, datum.Y, p.X, p.Y, paper.Light)
	})
}

// drawStack draws a stack from above: its outline, its front heavy, and
// crossed out if it is held.
func drawStack(c *paper.Canvas, w drawing, i int) {
	s, at := w.plan.Stacks[i], w.corners(i)
	c.Shape("stack plan", at, paper.Light, paper.Grey)
	if s.Held {
		c.Line(at[0].X, at[0].Y, at[2].X, at[2].Y, paper.Light)
		c.Line(at[1].X, at[1].Y, at[3].X, at[3].Y, paper.Light)
	}
	a, b := w.frame.At(onPlan(s.Front[0])), w.frame.At(onPlan(s.Front[1]))
	c.Line(a.X, a.Y, b.X, b.Y, paper.Heavy)
}

// drawTag writes the figures of its points in their frame.
func drawTag(c *paper.Canvas, w drawing, t tagging.Tag) {
	pen := paper.Light
	for _, i := range t.Points {
		if w.plan.Points[i].Held {
			pen = paper.Solid
		}
	}
	c.Round(t.At, 0.8, pen, paper.White)
	f, x, y := w.faces, t.At.X+tagPad+0.4, t.At.Y
	for n, i := range t.Points {
		p := w.plan.Points[i]
		if n > 0 {
			c.Line(t.At.X, y, t.At.Right(), y, paper.Light)
		}
		base := y + tagPad + f.name.Lead()*0.72
		c.Text(x, base, f.name, p.ID)
		if p.Held {
			drawHeld(c, x+c.Width(f.name, p.ID)+2, base, f.name)
		}
		c.Lines(x, y+tagPad+f.name.Lead()+f.figures.Lead()*0.72, f.figures, []string{p.Across, p.UpDown})
		y += f.entry()
	}
}

// drawHeld writes HELD white on black.
func drawHeld(c *paper.Canvas, x, base float64, f paper.Face) {
	c.Rect(mm.BoxAt(x-0.8, base-f.Em()*0.8, c.Width(f, "HELD")+1.6, f.Em()), 0, paper.Black)
	c.Inverse(func() { c.Text(x, base, f, "HELD") })
}
