package drawings

import (
	"math"

	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
)

// Room beside and above the column, in mm: hook lines, labels, leaders.
const (
	hookStub   = 12.0
	labelPitch = 3.6
	leader     = 5.0
	rayLength  = 4.0
)

// stackFromSide draws the bodies, the hook lines, the plumb line and the centre of
// gravity. Hook lines go up by stub mm.
func stackFromSide(c *paper.Canvas, f Frame, e Elevation, stub float64) {
	c.Shape("bar", spots(f, e.Bar), paper.Solid, paper.Grey)
	for _, s := range e.Cabinets {
		c.Shape("cabinet", spots(f, s.Corners[:]), paper.Solid, paper.White)
		aimLine(c, f, s, min(stub, rayLength))
	}
	for _, h := range e.Holes {
		p := f.At(h)
		c.Disc(p.X, p.Y, 0.25, 0, paper.Black)
	}
	bottom := f.At(Place{0, lowest(e)}).Y + 3
	for _, pick := range e.Picks {
		p := f.At(pick)
		c.Dashed(4, 1, func() { c.Line(p.X, p.Y-stub, p.X, p.Y, paper.Solid) })
		c.Disc(p.X, p.Y, 0.9, 0, paper.Black)
	}
	g := f.At(e.Centre)
	from := g.Y
	if len(e.Picks) == 1 {
		from = f.At(e.Picks[0]).Y
	}
	c.Dashed(3, 1, func() { c.Line(g.X, min(from, g.Y), g.X, bottom, paper.Light) })
	drawGravity(c, g)
}

// lowest is the height of the lowest corner, or of the lowest of a bar alone.
func lowest(e Elevation) float64 {
	low := math.Inf(1)
	for _, p := range e.Bar {
		low = min(low, p.Z)
	}
	for _, s := range e.Cabinets {
		for _, p := range s.Corners {
			low = min(low, p.Z)
		}
	}
	return low
}

func spots(f Frame, places []Place) (at []mm.Spot) {
	for _, p := range places {
		at = append(at, f.At(p))
	}
	return at
}

// aimLine draws a short line the way a cabinet looks, from the middle of its
// front.
func aimLine(c *paper.Canvas, f Frame, s Side, long float64) {
	a := front(f, s)
	sin, cos := math.Sincos(s.Aim)
	c.Line(a.X, a.Y, a.X+long*cos, a.Y+long*sin, paper.Light)
}

// front returns the middle of a cabinet's front on paper.
func front(f Frame, s Side) mm.Spot {
	a, b := f.At(s.Corners[0]), f.At(s.Corners[1])
	return mm.At((a.X+b.X)/2, (a.Y+b.Y)/2)
}

// drawGravity draws the centre of gravity: a disc in quarters.
func drawGravity(c *paper.Canvas, p mm.Spot) {
	const r = 1.8
	c.Disc(p.X, p.Y, r, paper.Solid, paper.White)
	for _, from := range []float64{0, math.Pi} {
		corners := []mm.Spot{p}
		for i := range 9 {
			sin, cos := math.Sincos(from + float64(i)*math.Pi/16)
			corners = append(corners, mm.At(p.X+r*cos, p.Y-r*sin))
		}
		c.Shape("gravity", corners, 0, paper.Black)
	}
}
