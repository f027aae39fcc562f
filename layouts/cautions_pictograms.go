package layouts

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
)

// A Picture names a pictogram.
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

// drawPicture draws a pictogram; none draws nothing.
func drawPicture(c *paper.Canvas, p Picture, b mm.Box) {
	if draw := pictures[p]; draw != nil {
		draw(c, b)
	}
}

// person: a head over shoulders that stand on the bottom of a box.
func person(c *paper.Canvas, b mm.Box) {
	r := b.W * 0.3
	c.Disc(b.X+b.W/2, b.Y+r, r, 0, paper.Black)
	top := b.Y + 2*r + b.H*0.08
	c.Rect(mm.BoxAt(b.X, top, b.W, b.Bottom()-top), 0, paper.Black)
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
