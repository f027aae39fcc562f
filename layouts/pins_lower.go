package layouts

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
)

// The lower part of a pin sheet: the bar's strip across the page, then the
// figures with their notes to the left and the code to the right.

// belowHeight measures the lower part.
func belowHeight(c *paper.Canvas, p Pins, w float64) float64 {
	height := 0.0
	if p.Strip != nil {
		height += p.Strip.Height() + 3
	}
	side := c.CodeSide(p.Code)
	return height + max(figuresHeight(c, p, w-side-4), side+5) + 2
}

// figuresHeight measures the figures and notes in a column w wide.
func figuresHeight(c *paper.Canvas, p Pins, w float64) float64 {
	height := 0.0
	for _, l := range p.Figures {
		height += parts.FigureHeight(c, l, w)
	}
	for _, n := range p.Notes {
		height += float64(len(c.Wrap(paper.Small, w, n))) * paper.Small.Lead()
	}
	return height + 2
}

// drawLower draws the lower part.
func drawLower(c *paper.Canvas, room mm.Box, p Pins) {
	y := room.Y
	if p.Strip != nil {
		b := mm.BoxAt(room.X, y, room.W, p.Strip.Height())
		c.In("strip", b, func() { p.Strip.Draw(c, b) })
		y += b.H + 3
	}
	side := c.CodeSide(p.Code)
	left := mm.BoxAt(room.X, y, room.W-side-4, room.Bottom()-y)
	c.In("figures", left, func() { drawFigures(c, left, p) })
	right := mm.BoxAt(room.Right()-side, y, side, side+5)
	c.In("code", right, func() {
		c.Code(right.X, right.Y, side, p.Code)
		c.Centre(right.X+side/2, right.Bottom()-1.4, paper.Small, "this stack's pins")
	})
}

func drawFigures(c *paper.Canvas, room mm.Box, p Pins) {
	y := room.Y
	for _, l := range p.Figures {
		parts.DrawFigure(c, room.X, y+4.4, room.W, l)
		y += parts.FigureHeight(c, l, room.W)
	}
	y += 4
	for _, n := range p.Notes {
		y = c.Paragraph(room.X, y, room.W, paper.Small, n)
	}
}
