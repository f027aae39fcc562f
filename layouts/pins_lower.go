package layouts

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
)

// The lower part of a pin sheet: the bar's strip across the page, then the
// figures with their notes to the left and the code to the right.

const (
	ofWidth   = 34.0
	figureGap = 3.0
)

// belowHeight measures the lower part.
func belowHeight(c *paper.Canvas, p Pins, w float64) float64 {
	height := 0.0
	if p.Strip != nil {
		height += stripHeight(*p.Strip) + 3
	}
	side := c.CodeSide(p.Code)
	return height + max(figuresHeight(c, p, w-side-4), side+5) + 2
}

// figuresHeight measures the figures and notes in a column w wide.
func figuresHeight(c *paper.Canvas, p Pins, w float64) float64 {
	height := 0.0
	for _, l := range p.Figures {
		height += lineHeight(c, l, w)
	}
	for _, n := range p.Notes {
		height += float64(len(c.Wrap(paper.Small, w, n))) * paper.Small.Lead()
	}
	return height + 2
}

// figureText is what stands beside a figure, in lines.
func figureText(c *paper.Canvas, l Line, w float64) []string {
	return c.Wrap(paper.Small, w-ofWidth-c.Width(paper.Section, l.Figure)-figureGap, l.Says)
}

func lineHeight(c *paper.Canvas, l Line, w float64) float64 {
	rows := max(len(figureText(c, l, w)), len(c.Wrap(paper.Small, ofWidth-2, l.Of)))
	return max(5.7, float64(rows)*paper.Small.Lead()+1.2)
}

// drawLower draws the lower part.
func drawLower(c *paper.Canvas, room mm.Box, p Pins) {
	y := room.Y
	if p.Strip != nil {
		b := mm.BoxAt(room.X, y, room.W, stripHeight(*p.Strip))
		c.In("strip", b, func() { DrawStrip(c, b, *p.Strip) })
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

// drawLine writes a figure with what it is of and what is said of it, on one
// baseline.
func drawLine(c *paper.Canvas, x, y, w float64, l Line) {
	c.Lines(x, y, paper.Small, c.Wrap(paper.Small, ofWidth-2, l.Of))
	c.Text(x+ofWidth, y, paper.Section, l.Figure)
	c.Lines(x+ofWidth+c.Width(paper.Section, l.Figure)+figureGap, y, paper.Small, figureText(c, l, w))
}

func drawFigures(c *paper.Canvas, room mm.Box, p Pins) {
	y := room.Y
	for _, l := range p.Figures {
		drawLine(c, room.X, y+4.4, room.W, l)
		y += lineHeight(c, l, room.W)
	}
	y += 4
	for _, n := range p.Notes {
		y = c.Paragraph(room.X, y, room.W, paper.Small, n)
	}
}
