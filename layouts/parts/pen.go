package parts

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
)

// TickSide is how wide a box for a pencil is, in mm.
const TickSide = 6.0

// Tick draws a box for a pencil.
func Tick(c *paper.Canvas, x, y, side float64) {
	c.Rect(mm.BoxAt(x, y, side, side), paper.Solid, paper.White)
}

// Blank is a word with a line after it for a pen, w wide in all.
func Blank(c *paper.Canvas, x, y, w float64, s string) {
	c.Text(x, y, paper.Small, s)
	c.Line(x+c.Width(paper.Small, s)+1.5, y+0.6, x+w, y+0.6, paper.Light)
}
