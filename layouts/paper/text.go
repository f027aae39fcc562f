package paper

import (
	"math"

	"github.com/go-pdf/fpdf"

	"hangpack/layouts/mm"
)

// Width returns how wide a text is, in mm.
func (c *Canvas) Width(f Face, s string) float64 {
	return float64(c.units(f.advances(), s)) / perEm * f.Em()
}

// units returns how wide a text is, in units of its em: the font has no kerning, so
// that a text is as wide as its characters together.
func (c *Canvas) units(of []uint16, s string) (units int) {
	for _, r := range s {
		units += c.advance(of, r)
	}
	return units
}

// advance returns how far the pen moves after a character, and faults one that the
// font lacks: it would print an empty box.
func (c *Canvas) advance(of []uint16, r rune) int {
	units := advanceOf(of, r)
	if units == 0 {
		c.Fault("page %d: the paper's font has no %q", c.page, r)
	}
	return units
}

// unitsIn returns how many units of its em a face has in w mm.
func (f Face) unitsIn(w float64) int { return int(math.Floor(w/f.Em()*perEm + 1e-6)) }

// Text writes s with its left end at x and its baseline at y.
func (c *Canvas) Text(x, y float64, f Face, s string) {
	if s == "" {
		return
	}
	m := c.ink("text", x, y-f.Em()*0.75, x+c.Width(f, s), y+f.Em()*0.21)
	m.Text, m.Pt, m.Bold, m.White = s, f.Pt, f.Bold, c.now.letters == White
	c.now.letter(f, func(p *fpdf.Fpdf) { p.Text(x, y, s) })
}

// Right writes s with its right end at x.
func (c *Canvas) Right(x, y float64, f Face, s string) { c.Text(x-c.Width(f, s), y, f, s) }

// Centre writes s with its middle at x.
func (c *Canvas) Centre(x, y float64, f Face, s string) { c.Text(x-c.Width(f, s)/2, y, f, s) }

// upwards writes s turned to the left by a right angle, its baseline at x, its
// left end at y.
func (c *Canvas) upwards(x, y float64, f Face, s string) {
	m := c.ink("text", x-f.Em()*0.75, y-c.Width(f, s), x+f.Em()*0.21, y)
	m.Text, m.Pt, m.Bold, m.White = s, f.Pt, f.Bold, c.now.letters == White
	c.now.letter(f, func(p *fpdf.Fpdf) {
		p.TransformBegin()
		p.TransformRotate(90, x, y)
		p.Text(x, y, s)
		p.TransformEnd()
	})
}

// Lines writes lines from the baseline y down and returns the next baseline.
func (c *Canvas) Lines(x, y float64, f Face, lines []string) float64 {
	for _, s := range lines {
		c.Text(x, y, f, s)
		y += f.Lead()
	}
	return y
}

// Paragraph writes s into a column w wide and returns the next baseline.
func (c *Canvas) Paragraph(x, y, w float64, f Face, s string) float64 {
	return c.Lines(x, y, f, c.Wrap(f, w, s))
}

// OnWhite clears the paper for a text, so that no line runs through it.
func (c *Canvas) OnWhite(x, y float64, f Face, s string) {
	const air = 0.3
	left, right := max(x-air, c.room.X), min(x+c.Width(f, s)+air, c.room.Right())
	top, low := max(y-f.Em()*0.75-air, c.room.Y), min(y+f.Em()*0.21+air, c.room.Bottom())
	c.Rect(mm.BoxAt(left, top, right-left, low-top), 0, White)
}
