package parts

import (
	"strings"

	"hangpack/layouts/paper"
)

// A JointHole is a hole of a joint as it prints: its label as stamped and, where
// the label is not the same figure, the splay it sets beside it.
type JointHole struct {
	Label string
	Splay string // "1.5°", or "" when the label says it
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
