package parts

import "hangpack/layouts/paper"

// A JointHole is a hole of a joint as it prints: its label as stamped and, where
// the label is not the same figure, the splay it sets beside it.
type JointHole struct {
	Label string
	Splay string // "1.5°", or "" when the label says it
}

// EndLabel writes a label so that its end stands at x.
func EndLabel(c *paper.Canvas, x, y, tall float64, label string) {
	f := paper.Digits(tall)
	c.Hole(x-c.Width(f, label), y, f, paper.White, label)
}
