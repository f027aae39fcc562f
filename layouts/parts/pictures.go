package parts

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
)

// A Picture is a pictogram of what a crew does, for crews that share no language: white
// ground, black ink, one action each.
type Picture string

// The pictures that a caution may have.
const (
	PinIn       Picture = "pin in"
	PinOut      Picture = "pin out"
	HandsOff    Picture = "hands off"
	Stop        Picture = "stop"
	NobodyBelow Picture = "nobody below"
	TwoLook     Picture = "two look"
	Fence       Picture = "fence"
)

// pictures are how they are drawn.
var pictures = map[Picture]func(*paper.Canvas, mm.Box){
	PinIn:       pinIn,
	PinOut:      pinOut,
	HandsOff:    handsOff,
	Stop:        stop,
	NobodyBelow: nobodyBelow,
	TwoLook:     twoLook,
	Fence:       fence,
}

// Draw draws a pictogram; none draws nothing.
func (p Picture) Draw(c *paper.Canvas, b mm.Box) {
	if draw := pictures[p]; draw != nil {
		draw(c, b)
	}
}

// Audience: three heads, and an arrow their way, to the left: on a dolly's sheet
// the rear links stand to the right.
func Audience(c *paper.Canvas, b mm.Box) {
	Arrow(c, b.Right(), b.X+b.W*0.5, b.Y+b.H*0.5, b.H*0.3)
	for i := range 3 {
		x := b.X + b.W*(0.08+0.15*float64(i))
		c.Disc(x, b.Y+b.H*0.34, b.H*0.13, 0, paper.Black)
		c.Rect(mm.BoxAt(x-b.H*0.16, b.Y+b.H*0.52, b.H*0.32, b.H*0.3), 0, paper.Black)
	}
}

// Arrow draws an arrow from x0 to x1 at y.
func Arrow(c *paper.Canvas, x0, x1, y, size float64) {
	way := 1.0
	if x1 < x0 {
		way = -1
	}
	c.Line(x0, y, x1-way*size, y, 0.5)
	c.Shape("arrow", []mm.Spot{mm.At(x1, y), mm.At(x1-way*size, y-size*0.6), mm.At(x1-way*size, y+size*0.6)}, 0, paper.Black)
}

// pinHole draws a plate with a hole and returns the hole's middle.
func pinHole(c *paper.Canvas, b mm.Box) mm.Spot {
	c.Rect(b, 0.3, paper.White)
	p := mm.At(b.X+b.W*0.72, b.Y+b.H/2)
	c.Disc(p.X, p.Y, b.H*0.2, 0.3, paper.White)
	return p
}

// pinShaft draws a pin with its head at the left, from x to the tip.
func pinShaft(c *paper.Canvas, x, tip, y, h float64) {
	c.Rect(mm.BoxAt(x, y-h/2, h*0.5, h), 0, paper.Black)
	c.Rect(mm.BoxAt(x, y-h/5, tip-x, h*0.4), 0, paper.Black)
}

// pinIn: a pin goes into its hole.
func pinIn(c *paper.Canvas, b mm.Box) {
	p := pinHole(c, b)
	pinShaft(c, b.X+b.W*0.1, p.X, p.Y, b.H*0.4)
	Arrow(c, b.X+b.W*0.15, b.X+b.W*0.55, b.Y+b.H*0.84, b.H*0.16)
}

// pinOut: a pin comes out of its hole.
func pinOut(c *paper.Canvas, b mm.Box) {
	p := pinHole(c, b)
	pinShaft(c, b.X+b.W*0.06, b.X+b.W*0.46, p.Y, b.H*0.4)
	Arrow(c, b.X+b.W*0.55, b.X+b.W*0.15, b.Y+b.H*0.84, b.H*0.16)
}

// stop: an eight-sided plate with a bar across.
func stop(c *paper.Canvas, b mm.Box) {
	x, y, r, k := b.X+b.W/2, b.Y+b.H/2, min(b.W, b.H)/2, 0.414
	var corners []mm.Spot
	for _, d := range [][2]float64{{-k, -1}, {k, -1}, {1, -k}, {1, k}, {k, 1}, {-k, 1}, {-1, k}, {-1, -k}} {
		corners = append(corners, mm.At(x+d[0]*r, y+d[1]*r))
	}
	c.Shape("stop", corners, 0, paper.Black)
	c.Rect(mm.BoxAt(x-r*0.62, y-r*0.2, r*1.24, r*0.4), 0, paper.White)
}

// handsOff: a hand between two bodies that close, struck out.
func handsOff(c *paper.Canvas, b mm.Box) {
	c.Rect(b, 0.3, paper.White)
	c.Rect(mm.BoxAt(b.X+b.W*0.12, b.Y+b.H*0.1, b.W*0.76, b.H*0.2), 0.3, paper.Grey)
	c.Rect(mm.BoxAt(b.X+b.W*0.12, b.Y+b.H*0.7, b.W*0.76, b.H*0.2), 0.3, paper.Grey)
	palm := mm.BoxAt(b.X+b.W*0.5, b.Y+b.H*0.38, b.W*0.3, b.H*0.24)
	c.Rect(palm, 0, paper.Black)
	for i := range 3 {
		y := palm.Y + palm.H*(0.02+0.35*float64(i))
		c.Rect(mm.BoxAt(b.X+b.W*0.24, y, b.W*0.28, palm.H*0.26), 0, paper.Black)
	}
	c.Line(b.X, b.Bottom(), b.Right(), b.Y, 0.8)
}

// nobodyBelow: a body on a line over a person, struck out.
func nobodyBelow(c *paper.Canvas, b mm.Box) {
	c.Rect(b, 0.3, paper.White)
	c.Line(b.X+b.W*0.6, b.Y, b.X+b.W*0.6, b.Y+b.H*0.12, 0.4)
	c.Rect(mm.BoxAt(b.X+b.W*0.24, b.Y+b.H*0.12, b.W*0.66, b.H*0.24), 0.3, paper.Grey)
	person(c, mm.BoxAt(b.X+b.W*0.6, b.Y+b.H*0.46, b.W*0.24, b.H*0.48))
	c.Line(b.X, b.Bottom(), b.Right(), b.Y, 0.8)
}

// twoLook: a person on either side of one pin in its hole.
func twoLook(c *paper.Canvas, b mm.Box) {
	c.Rect(b, 0.3, paper.White)
	x, y := b.X+b.W/2, b.Y+b.H/2
	c.Disc(x, y, b.H*0.22, 0.3, paper.White)
	c.Disc(x, y, b.H*0.11, 0, paper.Black)
	for _, at := range []float64{0.06, 0.7} {
		person(c, mm.BoxAt(b.X+b.W*at, b.Y+b.H*0.3, b.W*0.24, b.H*0.56))
	}
}

// fence: posts and a chain before a body on a line.
func fence(c *paper.Canvas, b mm.Box) {
	c.Rect(b, 0.3, paper.White)
	mid := b.X + b.W/2
	c.Line(mid, b.Y, mid, b.Y+b.H*0.12, 0.4)
	c.Rect(mm.BoxAt(mid-b.W*0.16, b.Y+b.H*0.12, b.W*0.32, b.H*0.26), 0.3, paper.Grey)
	for _, at := range []float64{0.1, 0.36, 0.62, 0.88} {
		c.Rect(mm.BoxAt(b.X+b.W*at-0.4, b.Y+b.H*0.5, 0.8, b.H*0.42), 0, paper.Black)
	}
	c.Line(b.X+b.W*0.1, b.Y+b.H*0.62, b.X+b.W*0.88, b.Y+b.H*0.62, 0.5)
}

// person: a head over shoulders that stand on the bottom of a box.
func person(c *paper.Canvas, b mm.Box) {
	r := b.W * 0.3
	c.Disc(b.X+b.W/2, b.Y+r, r, 0, paper.Black)
	top := b.Y + 2*r + b.H*0.08
	c.Rect(mm.BoxAt(b.X, top, b.W, b.Bottom()-top), 0, paper.Black)
}
