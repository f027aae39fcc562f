package layouts

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
var pictures = map[Picture]func(*canvas, box){
	PinIn:       pinIn,
	PinOut:      pinOut,
	HandsOff:    handsOff,
	Stop:        stop,
	NobodyBelow: nobodyBelow,
	TwoLook:     twoLook,
	Fence:       fence,
}

// drawPicture draws a pictogram; none draws nothing.
func drawPicture(c *canvas, p Picture, b box) {
	if draw := pictures[p]; draw != nil {
		draw(c, b)
	}
}

// person: a head over shoulders that stand on the bottom of a box.
func person(c *canvas, b box) {
	r := b.w * 0.3
	c.disc(b.x+b.w/2, b.y+r, r, 0, black)
	top := b.y + 2*r + b.h*0.08
	c.rect(box{b.x, top, b.w, b.bottom() - top}, 0, black)
}

// nobodyBelow: a body on a line over a person, struck out.
func nobodyBelow(c *canvas, b box) {
	c.rect(b, 0.3, white)
	c.line(b.x+b.w*0.6, b.y, b.x+b.w*0.6, b.y+b.h*0.12, 0.4)
	c.rect(box{b.x + b.w*0.24, b.y + b.h*0.12, b.w * 0.66, b.h * 0.24}, 0.3, grey)
	person(c, box{b.x + b.w*0.6, b.y + b.h*0.46, b.w * 0.24, b.h * 0.48})
	c.line(b.x, b.bottom(), b.right(), b.y, 0.8)
}

// twoLook: a person on either side of one pin in its hole.
func twoLook(c *canvas, b box) {
	c.rect(b, 0.3, white)
	x, y := b.x+b.w/2, b.y+b.h/2
	c.disc(x, y, b.h*0.22, 0.3, white)
	c.disc(x, y, b.h*0.11, 0, black)
	for _, at := range []float64{0.06, 0.7} {
		person(c, box{b.x + b.w*at, b.y + b.h*0.3, b.w * 0.24, b.h * 0.56})
	}
}

// fence: posts and a chain before a body on a line.
func fence(c *canvas, b box) {
	c.rect(b, 0.3, white)
	mid := b.x + b.w/2
	c.line(mid, b.y, mid, b.y+b.h*0.12, 0.4)
	c.rect(box{mid - b.w*0.16, b.y + b.h*0.12, b.w * 0.32, b.h * 0.26}, 0.3, grey)
	for _, at := range []float64{0.1, 0.36, 0.62, 0.88} {
		c.rect(box{b.x + b.w*at - 0.4, b.y + b.h*0.5, 0.8, b.h * 0.42}, 0, black)
	}
	c.line(b.x+b.w*0.1, b.y+b.h*0.62, b.x+b.w*0.88, b.y+b.h*0.62, 0.5)
}
