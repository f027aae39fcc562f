package layouts

import (
	"fmt"
	"strings"
)

// A Hole is a hole of a joint as it prints: its label as stamped and, where
// the label is not the same figure, the splay it sets beside it.
type Hole struct {
	Label string
	Splay string // "1.5°", or "" when the label says it
}

// A Ladder is the holes of one joint, as many and in the order of the gear's
// list, with the right one.
type Ladder struct {
	Of, Right int // Right counts from 0
}

// plainNumber reports whether a label is a figure with at most one point.
func plainNumber(label string) bool {
	return strings.Trim(label, "0123456789.") == "" && strings.Count(label, ".") <= 1
}

// labelWidths returns how wide a label's parts are: before its point and from
// the point on. A label that is no figure has no second part.
func (c *canvas) labelWidths(f face, label string) (whole, rest float64) {
	if i := strings.IndexByte(label, '.'); plainNumber(label) && i >= 0 {
		return c.width(f, label[:i]), c.width(f, label[i:])
	}
	return c.width(f, label), 0
}

// label writes a hole's label, mm tall, so that its point (or its end) stands
// at x: figures in a column then line up.
func (c *canvas) label(x, y, mm float64, label string) {
	f := digits(mm)
	whole, _ := c.labelWidths(f, label)
	c.hole(x-whole, y, f, white, label)
}

// hole writes a text of holes so that a poor copy cannot change it: on the
// ground it stands on, white or black, the slash of each nought is wiped out
// and each point is set as a larger square. The text stays text.
func (c *canvas) hole(x, y float64, f face, ground int, s string) {
	c.text(x, y, f, s)
	for i, r := range s {
		switch {
		case r == '0':
			c.openCounter(x, y, f, ground)
		case r == '.' && pointOf(s, i):
			const side = 0.2 // em; more than a quarter of a digit's height
			c.fill(white - ground)
			c.pdf.Rect(x+(c.width(f, ".")-side*f.em())/2, y-side*f.em(), side*f.em(), side*f.em(), "F")
		}
		x += c.width(f, string(r))
	}
}

// endLabel writes a label so that its end stands at x.
func (c *canvas) endLabel(x, y, mm float64, label string) {
	_, rest := c.labelWidths(digits(mm), label)
	c.label(x-rest, y, mm, label)
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

func counter(left, right, top, bottom float64) string {
	const midX, midY = 278.5, 361
	at := spot{midX, bottom}
	path := fmt.Sprintf("%.1f %.1f m", at.x, at.y)
	for _, q := range [][2]spot{{{right, bottom}, {right, midY}}, {{right, top}, {midX, top}}, {{left, top}, {left, midY}}, {{left, bottom}, {midX, bottom}}} {
		a, b := segment{at, q[0]}.along(2.0/3), segment{q[1], q[0]}.along(2.0/3)
		at = q[1]
		path += fmt.Sprintf(" %.1f %.1f %.1f %.1f %.1f %.1f c", a.x, a.y, b.x, b.y, at.x, at.y)
	}
	return path + " f Q"
}

// openCounter wipes the slash out of a nought: it fills the outline of its counter.
func (c *canvas) openCounter(x, y float64, f face, ground int) {
	path := counters[0]
	if f.bold {
		path = counters[1]
	}
	c.fill(ground)
	c.pdf.RawWriteStr(c.placed(x, y, f.em()/perEm, f.em()/perEm) + path)
}

// holes writes lines of a text of holes from the baseline y down, and returns
// the next baseline.
func (c *canvas) holes(x, y float64, f face, ground int, lines []string) float64 {
	for _, s := range lines {
		c.hole(x, y, f, ground, s)
		y += f.lead()
	}
	return y
}

// A tabStyle is how large the tabs of a sheet are.
type tabStyle struct {
	height, digit float64 // mm
	beside        face    // of the splay beside a label
	whole, rest   float64 // widest parts of the labels
	splay         float64 // widest splay beside them, with its gap
}

// tabsFor measures the tabs that hold some holes.
func (c *canvas) tabsFor(height, digit float64, beside face, holes []Hole) tabStyle {
	t := tabStyle{height: height, digit: digit, beside: beside}
	for _, h := range holes {
		whole, rest := c.labelWidths(digits(digit), h.Label)
		t.whole, t.rest = max(t.whole, whole), max(t.rest, rest)
		if h.Splay != "" {
			t.splay = max(t.splay, c.width(beside, h.Splay)+1.5)
		}
	}
	return t
}

// tabWithin measures the tab of one hole, its digits as tall as they may be, and no
// less than 3 mm, for the tab to be at most so wide.
func (c *canvas) tabWithin(width, height, digit float64, h Hole) tabStyle {
	t := c.tabsFor(height, digit, small, []Hole{h})
	for ; t.width() > width && digit > 3; t = c.tabsFor(height, digit, small, []Hole{h}) {
		digit -= 0.5
	}
	return t
}

// width returns how wide a tab is.
func (t tabStyle) width() float64 {
	return max(t.whole+t.rest+t.splay+0.5*t.digit+2, t.height*1.5)
}

// tab draws the hole of a joint on the line between two bodies, which it
// straddles: x is its left edge, y the line.
func (c *canvas) tab(x, y float64, t tabStyle, h Hole) {
	w := t.width()
	c.round(box{x, y - t.height/2, w, t.height}, t.height*0.15, heavy, white)
	free := w - t.whole - t.rest - t.splay
	point := x + free/2 + t.whole
	base := y + t.digit/2
	c.label(point, base, t.digit, h.Label)
	if h.Splay != "" {
		c.right(x+w-1.5, base, t.beside, h.Splay)
	}
}

// ghost draws the tab of a joint that belongs to another sheet.
func (c *canvas) ghost(x, y, w, h float64, s string) {
	c.dashed(1.5, 1.2, func() { c.round(box{x, y - h/2, w, h}, h*0.15, light, white) })
	c.hole(x+(w-c.width(text, s))/2, y+text.em()*0.3, text, white, s)
}

// ladderMost is how many holes of a joint a ladder shows.
const ladderMost = 9

// ladder draws a row of a joint's holes with the right one filled, the middle
// of its first hole at x; where the list is longer than the row, dots say that
// it goes on.
func (c *canvas) ladder(x, y, pitch float64, l Ladder) {
	first := 0
	if l.Of > ladderMost {
		first = min(max(l.Right-ladderMost/2, 0), l.Of-ladderMost)
	}
	last := min(first+ladderMost, l.Of)
	for i := first; i < last; i++ {
		at := x + pitch*float64(i-first)
		switch {
		case i == l.Right:
			c.disc(at, y, pitch*0.48, 0, black)
		case i == first && first > 0 || i == last-1 && last < l.Of:
			for _, d := range []float64{-0.3, 0, 0.3} {
				c.disc(at+d*pitch, y, 0.15, 0, black)
			}
		default:
			c.disc(at, y, pitch*0.36, light, white)
		}
	}
}

// tick draws a box for a pencil.
func (c *canvas) tick(x, y, side float64) { c.rect(box{x, y, side, side}, solid, white) }
