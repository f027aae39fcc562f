package layouts

import (
	"strings"

	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
)

// A tabStyle is how large the tabs of a sheet are.
type tabStyle struct {
	height, digit float64    // mm
	tail          float64    // mm, how deep the labels reach below their line
	beside        paper.Face // of the splay beside a label
	whole, rest   float64    // widest parts of the labels that are figures
	other         float64    // widest label that is none
	splay         float64    // widest splay beside them, with its gap
	below         bool       // the splays stand below the labels
}

// TabsFor measures the tabs that hold some holes.
func TabsFor(c *paper.Canvas, height, digit float64, beside paper.Face, holes []Hole) tabStyle {
	t := tabStyle{height: height, digit: digit, beside: beside}
	for _, h := range holes {
		whole, rest := labelWidths(c, paper.Digits(digit), h.Label)
		if plainNumber(h.Label) {
			t.whole, t.rest = max(t.whole, whole), max(t.rest, rest)
		} else {
			t.other = max(t.other, whole)
		}
		if hasTail(h.Label) {
			t.tail = digit * tailed
		}
		if h.Splay != "" {
			t.splay = max(t.splay, c.Width(beside, h.Splay)+1.5)
		}
	}
	return t
}

// tailed is how deep the letters with a tail reach, against the height of digits.
// Source: the glyph outlines of Go Bold.
const tailed = 0.2

func hasTail(label string) bool { return strings.ContainsAny(label, "JQ/") }

// TabsWithin measures tabs, their digits as tall as they may be, and no less than
// 3 mm, for a tab to be at most so wide. Splays stand below the labels where the
// labels are taller then.
func TabsWithin(c *paper.Canvas, width, height, digit float64, holes []Hole) tabStyle {
	const splayTall = 4.7 // a line of the smallest type, and air around both
	beside := tabsWithinAs(c, false, width, height, digit, holes)
	if beside.splay == 0 || beside.digit == digit || height-splayTall < 3 {
		return beside
	}
	below := tabsWithinAs(c, true, width, height, min(digit, (height-splayTall)/(1+beside.tail/beside.digit)), holes)
	if below.digit > beside.digit || below.digit == beside.digit && below.width() < beside.width() {
		return below
	}
	return beside
}

func tabsWithinAs(c *paper.Canvas, below bool, width, height, digit float64, holes []Hole) tabStyle {
	for {
		t := TabsFor(c, height, digit, paper.Small, holes)
		t.below = below
		if t.width() <= width || digit <= 3 {
			return t
		}
		digit = max(digit-0.5, 3)
	}
}

// width returns how wide a tab is.
func (t tabStyle) width() float64 { return max(t.words()+0.5*t.digit+2, t.height*1.5) }

// words returns how wide the words of a tab are.
func (t tabStyle) words() float64 {
	if t.below {
		return max(t.labels(), t.splay-1.5)
	}
	return t.labels() + t.splay
}

// labels returns how wide the labels are: figures stand on a common point.
func (t tabStyle) labels() float64 { return max(t.whole+t.rest, t.other) }

// DrawTab draws the hole of a joint on the line between two bodies, which it
// straddles: x is its left edge, y the line.
func DrawTab(c *paper.Canvas, x, y float64, t tabStyle, h Hole) {
	w := t.width()
	c.Round(mm.BoxAt(x, y-t.height/2, w, t.height), t.height*0.15, paper.Heavy, paper.White)
	if t.below {
		labelOver(c, x+w/2, y, t, h)
		return
	}
	free := w - t.words()
	base := y + (t.digit-t.tail)/2
	LabelIn(c, x+free/2, base, t, h.Label)
	if h.Splay != "" {
		c.Right(x+w-1.5, base, t.beside, h.Splay)
	}
}

// LabelIn writes a label into the room of the labels that begins at x: a figure on
// the common point, any other in the middle.
func LabelIn(c *paper.Canvas, x, y float64, t tabStyle, label string) {
	room, point := t.whole+t.rest, t.whole
	if !plainNumber(label) {
		room, _ = labelWidths(c, paper.Digits(t.digit), label)
		point = room
	}
	drawLabel(c, x+(t.labels()-room)/2+point, y, t.digit, label)
}

// labelOver writes a label over its splay, both around a spot.
func labelOver(c *paper.Canvas, x, y float64, t tabStyle, h Hole) {
	const gap = 0.9
	tall := t.digit + t.tail + gap + t.beside.Em()*paper.DigitHeight
	LabelIn(c, x-t.labels()/2, y-tall/2+t.digit, t, h.Label)
	c.Centre(x, y+tall/2, t.beside, h.Splay)
}

// ghost draws the tab of a joint that belongs to another sheet.
func ghost(c *paper.Canvas, x, y, w, h float64, s string) {
	c.Dashed(1.5, 1.2, func() { c.Round(mm.BoxAt(x, y-h/2, w, h), h*0.15, paper.Light, paper.White) })
	c.Hole(x+(w-c.Width(paper.Text, s))/2, y+paper.Text.Em()*0.3, paper.Text, paper.White, s)
}
