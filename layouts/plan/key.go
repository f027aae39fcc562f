package plan

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
)

// drawWays draws which way is which under a drawing.
func drawWays(c *paper.Canvas, b mm.Box) {
	const y, arrow = 4.0, 9.0
	mid := b.X + b.W/2
	parts.Arrow(c, b.X+arrow, b.X, b.Y+y-1.2, 3)
	c.Text(b.X+arrow+1.5, b.Y+y, paper.SmallBold, "stage right")
	parts.Arrow(c, b.Right()-arrow, b.Right(), b.Y+y-1.2, 3)
	c.Right(b.Right()-arrow-1.5, b.Y+y, paper.SmallBold, "stage left")
	downArrow(c, mid-16, b.Y+0.8, b.Y+9.6, 3)
	downArrow(c, mid+16, b.Y+0.8, b.Y+9.6, 3)
	c.Centre(mid, b.Y+y+1.6, paper.TextBold, "audience")
	c.Text(b.X, b.Y+y+4.6, paper.Small, "Stage left is the audience's right.")
	c.Right(b.Right(), b.Y+y+4.6, paper.Small, "Downstage is down the page.")
}

// A keyItem is a mark of the drawing with what it means; the mark stands
// around a spot and is so wide.
type keyItem struct {
	w    float64
	draw func(p mm.Spot)
	says string
}

// What the key calls points that another sheet tells of.
const (
	paleStack = "figures on another sheet"
	paleOther = "other point, figures on another sheet"
)

// keyItems lists the marks that a drawing has.
func keyItems(c *paper.Canvas, w drawing) (items []keyItem) {
	point := func(p Point) func(mm.Spot) { return func(at mm.Spot) { pointMark(c, at, p) } }
	items = []keyItem{
		{8, func(p mm.Spot) { c.Chain(p.X-4, p.Y, p.X+4, p.Y) }, acrossNought},
		{8, func(p mm.Spot) { c.Dashed(2, 1.4, func() { c.Line(p.X-4, p.Y, p.X+4, p.Y, paper.Light) }) }, upDownNought},
		{8, func(p mm.Spot) { dotted(c, func() { c.Line(p.X-4, p.Y, p.X+4, p.Y, paper.Light) }) }, "offsets"},
	}
	has := w.has()
	for _, k := range []keyItem{
		{2, point(Point{}), "point of a stack"},
		{2, point(Point{Other: true}), "other point"},
		{2, point(Point{Held: true}), "held"},
		{1.4, func(p mm.Spot) { paleMark(c, p, Point{}) }, paleStack},
		{1.4, func(p mm.Spot) { paleMark(c, p, Point{Other: true}) }, paleOther},
		{4, func(p mm.Spot) { keyOfStack(c, p) }, "stack, its front the thick line"},
	} {
		if has[k.says] {
			items = append(items, k)
		}
	}
	return items
}

// has tells which marks a drawing has.
func (w drawing) has() map[string]bool {
	has := map[string]bool{
		"stack, its front the thick line": len(w.stacks) > 0,
	}
	for _, i := range w.others() {
		if w.plan.Points[i].Other {
			has[paleOther] = true
		} else {
			has[paleStack] = true
		}
	}
	for _, i := range w.own {
		p := w.plan.Points[i]
		has["held"] = has["held"] || p.Held
		has["other point"] = has["other point"] || p.Other
		has["point of a stack"] = has["point of a stack"] || !p.Other && !p.Held
	}
	return has
}

func keyOfStack(c *paper.Canvas, p mm.Spot) {
	c.Rect(mm.BoxAt(p.X-2, p.Y-1.4, 4, 2.8), paper.Light, paper.Grey)
	c.Line(p.X-2, p.Y+1.4, p.X+2, p.Y+1.4, paper.Heavy)
}

// drawKey explains the marks, in as many columns as a line holds.
func drawKey(c *paper.Canvas, b mm.Box, w drawing) {
	x, y := b.X, b.Y+2.6
	for _, k := range keyItems(c, w) {
		need := k.w + 1.5 + c.Width(paper.Small, k.says)
		if x > b.X && x+need > b.Right() {
			x, y = b.X, y+4.2
		}
		k.draw(mm.At(x+k.w/2, y-1.1))
		c.Text(x+k.w+1.5, y, paper.Small, k.says)
		x += need + 5
	}
}
