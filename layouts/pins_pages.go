package layouts

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
)

// Name is what the sheet is called.
func (p Pins) Name() string { return p.Sheet }

// Pages is one page, or two where the longest names leave no room for rows of
// the least height.
func (p Pins) Pages(c *paper.Canvas) []paper.Page {
	if pinsFit(c, p) {
		return []paper.Page{{Shape: p.Head.Shape, Draw: p.draw}}
	}
	first, second := p.halves()
	return append(first.Pages(c), second.Pages(c)...)
}

// pinsFit reports whether rows of the least height find room.
func pinsFit(c *paper.Canvas, p Pins) bool {
	room := p.Head.Below(c, c.Body())
	room.H -= belowHeight(c, p, room.W)
	return len(p.Rows) < 2 || scheduleFor(c, p, room).row > p.leastRow()
}

// halves cuts a sheet in two; the figures stay with the first.
func (p Pins) halves() (first, second Pins) {
	first, second = p, p
	n, from := len(p.Rows)/2, p.Side.From
	first.Rows, second.Rows = p.Rows[:n], p.Rows[n:]
	first.Side.To, second.Side.From = from+n-1, from+n
	second.Bar, second.Strip, second.Figures, second.Notes = "", nil, nil, nil
	second.Above = "cabinet " + p.Rows[n-1].Number + ", on the sheet before"
	return first, second
}

// draw draws one page.
func (p Pins) draw(c *paper.Canvas, room mm.Box) {
	room = p.Head.Draw(c, room)
	below := belowHeight(c, p, room.W)
	upper := mm.BoxAt(room.X, room.Y, room.W, room.H-below)
	s := scheduleFor(c, p, upper)
	left := mm.BoxAt(upper.X, upper.Y, s.width, upper.H)
	c.In("schedule", left, func() { drawSchedule(c, left, p, s) })
	side := mm.BoxAt(left.Right()+4, upper.Y+1, upper.W-s.width-4, upper.H-3)
	c.In("side", side, func() { p.Side.Draw(c, side) })
	drawLower(c, mm.BoxAt(room.X, upper.Bottom(), room.W, below), p)
}

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
		height += l.Height(c, w)
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

// drawFigures draws the figures, and the notes below them.
func drawFigures(c *paper.Canvas, room mm.Box, p Pins) {
	y := room.Y
	for _, l := range p.Figures {
		l.Draw(c, room.X, y+4.4, room.W)
		y += l.Height(c, room.W)
	}
	y += 4
	for _, n := range p.Notes {
		y = c.Paragraph(room.X, y, room.W, paper.Small, n)
	}
}
