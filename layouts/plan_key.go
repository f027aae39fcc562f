package layouts

import "slices"

// planWays draws which way is which under a drawing.
func planWays(c *canvas, b box) {
	const y, arrow = 4.0, 9.0
	mid := b.x + b.w/2
	Arrow(c, b.x+arrow, b.x, b.y+y-1.2, 3)
	c.text(b.x+arrow+1.5, b.y+y, smallB, "stage right")
	Arrow(c, b.right()-arrow, b.right(), b.y+y-1.2, 3)
	c.right(b.right()-arrow-1.5, b.y+y, smallB, "stage left")
	downArrow(c, mid-16, b.y+0.8, b.y+9.6, 3)
	downArrow(c, mid+16, b.y+0.8, b.y+9.6, 3)
	c.centre(mid, b.y+y+1.6, textB, "audience")
	c.text(b.x, b.y+y+4.6, small, "Stage left is the audience's right.")
	c.right(b.right(), b.y+y+4.6, small, "Downstage is down the page.")
}

// downArrow draws an arrow down the page from y0 to y1.
func downArrow(c *canvas, x, y0, y1, size float64) {
	c.line(x, y0, x, y1-size, 0.5)
	c.shape("arrow", []spot{{x, y1}, {x - size*0.6, y1 - size}, {x + size*0.6, y1 - size}}, 0, black)
}

// A keyItem is a mark of the drawing with what it means; the mark stands
// around a spot and is so wide.
type keyItem struct {
	w    float64
	draw func(p spot)
	says string
}

// What the key calls points that another sheet tells of.
const (
	paleStack = "figures on another sheet"
	paleOther = "other point, figures on another sheet"
)

// keyItems lists the marks that a drawing has.
func keyItems(c *canvas, w planView) (items []keyItem) {
	point := func(p PlanPoint) func(spot) { return func(at spot) { pointInk(c, at, p) } }
	items = []keyItem{
		{8, func(p spot) { c.chain(p.x-4, p.y, p.x+4, p.y) }, acrossNought},
		{8, func(p spot) { c.dashed(2, 1.4, func() { c.line(p.x-4, p.y, p.x+4, p.y, light) }) }, upDownNought},
		{8, func(p spot) { dotted(c, func() { c.line(p.x-4, p.y, p.x+4, p.y, light) }) }, "offsets"},
	}
	has := w.has()
	for _, k := range []keyItem{
		{2, point(PlanPoint{}), "point of a stack"},
		{2, point(PlanPoint{Other: true}), "other point"},
		{2, point(PlanPoint{Held: true}), "held"},
		{1.4, func(p spot) { palePoint(c, p, PlanPoint{}) }, paleStack},
		{1.4, func(p spot) { palePoint(c, p, PlanPoint{Other: true}) }, paleOther},
		{4, func(p spot) { keyStack(c, p) }, "stack, its front the thick line"},
	} {
		if has[k.says] {
			items = append(items, k)
		}
	}
	return items
}

// has tells which marks a drawing has.
func (w planView) has() map[string]bool {
	has := map[string]bool{
		"stack, its front the thick line": len(w.stacks) > 0,
	}
	for _, i := range w.pale {
		p, own := w.plan.Points[i], slices.Contains(w.own, i)
		has[paleStack], has[paleOther] = has[paleStack] || !own && !p.Other, has[paleOther] || !own && p.Other
	}
	for _, i := range w.own {
		p := w.plan.Points[i]
		has["held"] = has["held"] || p.Held
		has["other point"] = has["other point"] || p.Other
		has["point of a stack"] = has["point of a stack"] || !p.Other && !p.Held
	}
	return has
}

func keyStack(c *canvas, p spot) {
	c.rect(box{p.x - 2, p.y - 1.4, 4, 2.8}, light, grey)
	c.line(p.x-2, p.y+1.4, p.x+2, p.y+1.4, heavy)
}

// planKey explains the marks, in as many columns as a line holds.
func planKey(c *canvas, b box, w planView) {
	x, y := b.x, b.y+2.6
	for _, k := range keyItems(c, w) {
		need := k.w + 1.5 + c.width(small, k.says)
		if x > b.x && x+need > b.right() {
			x, y = b.x, y+4.2
		}
		k.draw(spot{x + k.w/2, y - 1.1})
		c.text(x+k.w+1.5, y, small, k.says)
		x += need + 5
	}
}
