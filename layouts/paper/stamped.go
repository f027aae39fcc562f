package paper

import (
	"fmt"

	"github.com/go-pdf/fpdf"

	"hangpack/layouts/mm"
)

// Hole writes a text of holes so that a poor copy cannot change it: on the
// ground it stands on, white or black, the slash of each nought is wiped out
// and each point is set as a larger square. The text stays text.
func (c *Canvas) Hole(x, y float64, f Face, ground int, s string) {
	if c.Text(x, y, f, s); s != "" {
		c.marks[len(c.marks)-1].Open = true
	}
	for i, r := range s {
		switch {
		case r == '0':
			c.openCounter(x, y, f, ground)
		case r == '.' && pointOf(s, i):
			const side = 0.2 // em; more than a quarter of a digit's height
			c.now.fill(White - ground)
			left := x + (c.Width(f, ".")-side*f.Em())/2
			c.now.on(func(p *fpdf.Fpdf) { p.Rect(left, y-side*f.Em(), side*f.Em(), side*f.Em(), "F") })
		}
		x += c.Width(f, string(r))
	}
}

// pointOf reports whether the point at s[i] is that of a figure, and not the
// end of a sentence.
func pointOf(s string, i int) bool {
	digit := func(i int) bool { return i >= 0 && i < len(s) && s[i] >= '0' && s[i] <= '9' }
	return digit(i + 1)
}

// counters are the outline of the counter of a nought, regular and bold, in
// thousandths of an em from the pen, as a path of PDF: four quarters of a curve with
// one control point each in the glyph's outline, raised to two.
var counters = [2]string{counter(138, 418, 669, 53), counter(174, 383, 651, 71)}

// counter writes the outline of a nought's counter, whose edges are given, as a path.
func counter(left, right, top, bottom float64) string {
	const midX, midY = 278.5, 361
	at := mm.At(midX, bottom)
	path := fmt.Sprintf("%.1f %.1f m", at.X, at.Y)
	for _, q := range [][2]mm.Spot{{mm.At(right, bottom), mm.At(right, midY)}, {mm.At(right, top), mm.At(midX, top)}, {mm.At(left, top), mm.At(left, midY)}, {mm.At(left, bottom), mm.At(midX, bottom)}} {
		a, b := mm.Segment{A: at, B: q[0]}.Along(2.0/3), mm.Segment{A: q[1], B: q[0]}.Along(2.0/3)
		at = q[1]
		path += fmt.Sprintf(" %.1f %.1f %.1f %.1f %.1f %.1f c", a.X, a.Y, b.X, b.Y, at.X, at.Y)
	}
	return path + " f Q"
}

// openCounter wipes the slash out of a nought: it fills the outline of its counter.
func (c *Canvas) openCounter(x, y float64, f Face, ground int) {
	path := counters[0]
	if f.Bold {
		path = counters[1]
	}
	c.now.fill(ground)
	c.now.on(func(p *fpdf.Fpdf) { p.RawWriteStr(c.placed(x, y, f.Em()/perEm, f.Em()/perEm) + path) })
}

// Holes writes lines of a text of holes from the baseline y down, and returns
// the next baseline.
func (c *Canvas) Holes(x, y float64, f Face, ground int, lines []string) float64 {
	for _, s := range lines {
		c.Hole(x, y, f, ground, s)
		y += f.Lead()
	}
	return y
}
