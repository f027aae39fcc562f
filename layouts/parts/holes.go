package parts

import (
	"strings"

	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
)

// TickSide is how wide a box for a pencil is, in mm.
const TickSide = 6.0

// A JointHole is a hole of a joint as it prints: its label as stamped and, where
// the label is not the same figure, the splay it sets beside it.
type JointHole struct {
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
func labelWidths(c *paper.Canvas, f paper.Face, label string) (whole, rest float64) {
	if i := strings.IndexByte(label, '.'); plainNumber(label) && i >= 0 {
		return c.Width(f, label[:i]), c.Width(f, label[i:])
	}
	return c.Width(f, label), 0
}

// drawLabel writes a hole's label so that its point (or its end) stands
// at x: figures in a column then line up.
func drawLabel(c *paper.Canvas, x, y, tall float64, label string) {
	f := paper.Digits(tall)
	whole, _ := labelWidths(c, f, label)
	c.Hole(x-whole, y, f, paper.White, label)
}

// EndLabel writes a label so that its end stands at x.
func EndLabel(c *paper.Canvas, x, y, tall float64, label string) {
	_, rest := labelWidths(c, paper.Digits(tall), label)
	drawLabel(c, x-rest, y, tall, label)
}

// LadderMost is how many holes of a joint a ladder shows.
const LadderMost = 9

// Draw draws a row of a joint's holes with the right one filled, the middle
// of its first hole at x; where the list is longer than the row, dots say that
// it goes on.
func (l Ladder) Draw(c *paper.Canvas, x, y, pitch float64) {
	first := 0
	if l.Of > LadderMost {
		first = min(max(l.Right-LadderMost/2, 0), l.Of-LadderMost)
	}
	last := min(first+LadderMost, l.Of)
	for i := first; i < last; i++ {
		at := x + pitch*float64(i-first)
		switch {
		case i == l.Right:
			c.Disc(at, y, pitch*0.48, 0, paper.Black)
		case i == first && first > 0 || i == last-1 && last < l.Of:
			for _, d := range []float64{-0.3, 0, 0.3} {
				c.Disc(at+d*pitch, y, 0.15, 0, paper.Black)
			}
		default:
			c.Disc(at, y, pitch*0.36, paper.Light, paper.White)
		}
	}
}

// Tick draws a box for a pencil.
func Tick(c *paper.Canvas, x, y, side float64) {
	c.Rect(mm.BoxAt(x, y, side, side), paper.Solid, paper.White)
}
