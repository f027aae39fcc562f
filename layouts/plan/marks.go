package plan

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
)

// drawDatum draws the datum: a disc with a cross.
func drawDatum(c *paper.Canvas, p mm.Spot) {
	const r = datumRadius
	c.Record("datum", p.X-r, p.Y-r, p.X+r, p.Y+r)
	c.Disc(p.X, p.Y, r, paper.Solid, paper.White)
	c.Line(p.X-r-1, p.Y, p.X+r+1, p.Y, paper.Solid)
	c.Line(p.X, p.Y-r-1, p.X, p.Y+r+1, paper.Solid)
}

// drawPoint draws the mark of a point whose figures stand on the sheet.
func drawPoint(c *paper.Canvas, p mm.Spot, of Point) {
	const r = markRadius
	c.Record("point", p.X-r, p.Y-r, p.X+r, p.Y+r)
	pointMark(c, p, of)
}

// pointMark draws a disc; a square if the point is not a stack's; a ring with a
// cross if it is held.
func pointMark(c *paper.Canvas, p mm.Spot, of Point) {
	const r = markRadius
	switch {
	case of.Other:
		c.Rect(mm.BoxAt(p.X-r*0.9, p.Y-r*0.9, r*1.8, r*1.8), paper.Solid, paper.White)
	case of.Held:
		c.Disc(p.X, p.Y, r, paper.Solid, paper.White)
	default:
		c.Disc(p.X, p.Y, r, 0, paper.Black)
	}
	if of.Held {
		c.Line(p.X-r*0.6, p.Y-r*0.6, p.X+r*0.6, p.Y+r*0.6, paper.Light)
		c.Line(p.X-r*0.6, p.Y+r*0.6, p.X+r*0.6, p.Y-r*0.6, paper.Light)
	}
}

// paleMark draws a point whose figures stand on another sheet.
func paleMark(c *paper.Canvas, p mm.Spot, of Point) {
	const r = paleRadius
	if of.Other {
		c.Rect(mm.BoxAt(p.X-r, p.Y-r, 2*r, 2*r), paper.Light, paper.White)
		return
	}
	c.Disc(p.X, p.Y, r, paper.Light, paper.Grey)
}

func dotted(c *paper.Canvas, draw func()) { c.Dashed(0.3, 1.2, draw) }

// downArrow draws an arrow down the page from y0 to y1.
func downArrow(c *paper.Canvas, x, y0, y1, size float64) {
	c.Line(x, y0, x, y1-size, 0.5)
	c.Shape("arrow", []mm.Spot{mm.At(x, y1), mm.At(x-size*0.6, y1-size), mm.At(x+size*0.6, y1-size)}, 0, paper.Black)
}
