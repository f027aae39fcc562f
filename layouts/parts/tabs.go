package parts

import (
	"strings"

	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
)

// Tabs are the tabs of a sheet, as large as its holes need.
type Tabs struct {
	Height, Digit float64    // mm
	Tail          float64    // mm, how deep the labels reach below their line
	beside        paper.Face // of the splay beside a label
	labels        float64    // widest label
	splay         float64    // widest splay beside them, with its gap
	below         bool       // the splays stand below the labels
}

// TabsFor measures the tabs that hold some holes.
func TabsFor(c *paper.Canvas, height, digit float64, beside paper.Face, holes []JointHole) Tabs {
	t := Tabs{Height: height, Digit: digit, beside: beside}
	for _, h := range holes {
		t.labels = max(t.labels, c.Width(paper.Digits(digit), h.Label))
		t.Tail = max(t.Tail, digit*tailOf(h.Label))
		if h.Splay != "" {
			t.splay = max(t.splay, c.Width(beside, h.Splay)+1.5)
		}
	}
	return t
}

// tailOf is how deep a label reaches below its line, against the height of digits.
func tailOf(label string) float64 {
	switch {
	case strings.ContainsAny(label, "JQ"):
		return Tailed
	case strings.Contains(label, "/"):
		return 0.1
	}
	return 0
}

// Tailed is how deep the letters with a tail reach, against the height of digits.
// Source: the glyph outlines of Go Bold.
const Tailed = 0.2

// HasTail reports whether a label has a letter with a tail.
func HasTail(label string) bool { return strings.ContainsAny(label, "JQ/") }

// TabsWithin measures tabs, their digits as tall as they may be, and no less than
// 3 mm, for a tab to be at most so wide. Splays stand below the labels where the
// labels are taller then.
func TabsWithin(c *paper.Canvas, width, height, digit float64, holes []JointHole) Tabs {
	const splayTall = 4.7 // a line of the smallest type, and air around both
	beside := tabsWithinAs(c, false, width, height, digit, holes)
	if beside.splay == 0 || beside.Digit == digit || height-splayTall < 3 {
		return beside
	}
	below := tabsWithinAs(c, true, width, height, min(digit, (height-splayTall)/(1+beside.Tail/beside.Digit)), holes)
	if below.Digit > beside.Digit || below.Digit == beside.Digit && below.Width() < beside.Width() {
		return below
	}
	return beside
}

// tabsWithinAs makes digits less tall until a tab is no wider than it may be.
func tabsWithinAs(c *paper.Canvas, below bool, width, height, digit float64, holes []JointHole) Tabs {
	for {
		t := TabsFor(c, height, digit, paper.Small, holes)
		t.below = below
		if t.Width() <= width || digit <= 3 {
			return t
		}
		digit = max(digit-0.5, 3)
	}
}

// Width returns how wide a tab is.
func (t Tabs) Width() float64 { return max(t.words()+0.5*t.Digit+2, t.Height*1.5) }

// words returns how wide the words of a tab are.
func (t Tabs) words() float64 {
	if t.below {
		return max(t.labels, t.splay-1.5)
	}
	return t.labels + t.splay
}

// Draw draws the hole of a joint on the line between two bodies, which it
// straddles: x is its left edge, y the line.
func (t Tabs) Draw(c *paper.Canvas, x, y float64, h JointHole) { t.draw(c, x, y, paper.Heavy, h) }

// Struck draws a hole that is no longer used: struck through.
func (t Tabs) Struck(c *paper.Canvas, x, y float64, h JointHole) {
	t.draw(c, x, y, paper.Light, h)
	c.Line(x-1, y+t.Height/2, x+t.Width()+1, y-t.Height/2, paper.Heavy)
}

func (t Tabs) draw(c *paper.Canvas, x, y, pen float64, h JointHole) {
	w := t.Width()
	c.Round(mm.BoxAt(x, y-t.Height/2, w, t.Height), t.Height*0.15, pen, paper.White)
	if t.below {
		t.labelOver(c, x+w/2, y, h)
		return
	}
	base := y + (t.Digit-t.Tail)/2
	if h.Splay == "" {
		t.label(c, x+w/2, base, h.Label)
		return
	}
	t.label(c, x+(w-t.splay)/2, base, h.Label)
	c.Right(x+w-1.5, base, t.beside, h.Splay)
}

// label writes a label with its middle at x: on a common point of all, a lone 1 would look
// as if its .5 had washed off.
func (t Tabs) label(c *paper.Canvas, x, y float64, label string) {
	f := paper.Digits(t.Digit)
	c.Hole(x-c.Width(f, label)/2, y, f, paper.White, label)
}

// labelOver writes a label over its splay, both around a spot.
func (t Tabs) labelOver(c *paper.Canvas, x, y float64, h JointHole) {
	const gap = 0.9
	tall := t.Digit + t.Tail + gap + t.beside.Em()*paper.DigitHeight
	t.label(c, x, y-tall/2+t.Digit, h.Label)
	c.Centre(x, y+tall/2, t.beside, h.Splay)
}
