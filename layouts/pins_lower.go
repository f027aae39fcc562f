package layouts

import "hangpack/layouts/mm"

// The lower part of a pin sheet: the bar's strip across the page, then the
// figures with their notes to the left and the code to the right.

const (
	ofWidth   = 34.0
	figureGap = 3.0
)

// belowHeight measures the lower part.
func belowHeight(c *canvas, p Pins, w float64) float64 {
	height := 0.0
	if p.Strip != nil {
		height += stripHeight(*p.Strip) + 3
	}
	side := c.codeSide(p.Code)
	return height + max(figuresHeight(c, p, w-side-4), side+5) + 2
}

// figuresHeight measures the figures and notes in a column w wide.
func figuresHeight(c *canvas, p Pins, w float64) float64 {
	height := 0.0
	for _, l := range p.Figures {
		height += lineHeight(c, l, w)
	}
	for _, n := range p.Notes {
		height += float64(len(c.wrap(small, w, n))) * small.lead()
	}
	return height + 2
}

// figureText is what stands beside a figure, in lines.
func figureText(c *canvas, l Line, w float64) []string {
	return c.wrap(small, w-ofWidth-c.width(section, l.Figure)-figureGap, l.Says)
}

func lineHeight(c *canvas, l Line, w float64) float64 {
	rows := max(len(figureText(c, l, w)), len(c.wrap(small, ofWidth-2, l.Of)))
	return max(5.7, float64(rows)*small.lead()+1.2)
}

// drawLower draws the lower part.
func drawLower(c *canvas, room mm.Box, p Pins) {
	y := room.Y
	if p.Strip != nil {
		b := mm.BoxAt(room.X, y, room.W, stripHeight(*p.Strip))
		c.in("strip", b, func() { DrawStrip(c, b, *p.Strip) })
		y += b.H + 3
	}
	side := c.codeSide(p.Code)
	left := mm.BoxAt(room.X, y, room.W-side-4, room.Bottom()-y)
	c.in("figures", left, func() { drawFigures(c, left, p) })
	right := mm.BoxAt(room.Right()-side, y, side, side+5)
	c.in("code", right, func() {
		c.code(right.X, right.Y, side, p.Code)
		c.centre(right.X+side/2, right.Bottom()-1.4, small, "this stack's pins")
	})
}

// drawLine writes a figure with what it is of and what is said of it, on one
// baseline.
func drawLine(c *canvas, x, y, w float64, l Line) {
	c.lines(x, y, small, c.wrap(small, ofWidth-2, l.Of))
	c.text(x+ofWidth, y, section, l.Figure)
	c.lines(x+ofWidth+c.width(section, l.Figure)+figureGap, y, small, figureText(c, l, w))
}

func drawFigures(c *canvas, room mm.Box, p Pins) {
	y := room.Y
	for _, l := range p.Figures {
		drawLine(c, room.X, y+4.4, room.W, l)
		y += lineHeight(c, l, room.W)
	}
	y += 4
	for _, n := range p.Notes {
		y = c.paragraph(room.X, y, room.W, small, n)
	}
}
