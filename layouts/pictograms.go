package layouts

// Pictograms of what a crew does, for crews that share no language. They are
// drawn for this paper: white ground, black ink, one action each.

// pinHole draws a plate with a hole and returns the hole's middle.
func pinHole(c *canvas, b box) spot {
	c.rect(b, 0.3, white)
	p := spot{b.x + b.w*0.72, b.y + b.h/2}
	c.disc(p.x, p.y, b.h*0.2, 0.3, white)
	return p
}

// pinShaft draws a pin with its head at the left, from x to the tip.
func pinShaft(c *canvas, x, tip, y, h float64) {
	c.rect(box{x, y - h/2, h * 0.5, h}, 0, black)
	c.rect(box{x, y - h/5, tip - x, h * 0.4}, 0, black)
}

// Arrow draws an arrow from x0 to x1 at y.
func Arrow(c *canvas, x0, x1, y, size float64) {
	way := 1.0
	if x1 < x0 {
		way = -1
	}
	c.line(x0, y, x1-way*size, y, 0.5)
	c.shape("arrow", []spot{{x1, y}, {x1 - way*size, y - size*0.6}, {x1 - way*size, y + size*0.6}}, 0, black)
}

// pinIn: a pin goes into its hole.
func pinIn(c *canvas, b box) {
	p := pinHole(c, b)
	pinShaft(c, b.x+b.w*0.1, p.x, p.y, b.h*0.4)
	Arrow(c, b.x+b.w*0.15, b.x+b.w*0.55, b.y+b.h*0.84, b.h*0.16)
}

// pinOut: a pin comes out of its hole.
func pinOut(c *canvas, b box) {
	p := pinHole(c, b)
	pinShaft(c, b.x+b.w*0.06, b.x+b.w*0.46, p.y, b.h*0.4)
	Arrow(c, b.x+b.w*0.55, b.x+b.w*0.15, b.y+b.h*0.84, b.h*0.16)
}

// stop: an eight-sided plate with a bar across.
func stop(c *canvas, b box) {
	x, y, r, k := b.x+b.w/2, b.y+b.h/2, min(b.w, b.h)/2, 0.414
	var corners []spot
	for _, d := range [][2]float64{{-k, -1}, {k, -1}, {1, -k}, {1, k}, {k, 1}, {-k, 1}, {-1, k}, {-1, -k}} {
		corners = append(corners, spot{x + d[0]*r, y + d[1]*r})
	}
	c.shape("stop", corners, 0, black)
	c.rect(box{x - r*0.62, y - r*0.2, r * 1.24, r * 0.4}, 0, white)
}

// handsOff: a hand between two bodies that close, struck out.
func handsOff(c *canvas, b box) {
	c.rect(b, 0.3, white)
	c.rect(box{b.x + b.w*0.12, b.y + b.h*0.1, b.w * 0.76, b.h * 0.2}, 0.3, grey)
	c.rect(box{b.x + b.w*0.12, b.y + b.h*0.7, b.w * 0.76, b.h * 0.2}, 0.3, grey)
	palm := box{b.x + b.w*0.5, b.y + b.h*0.38, b.w * 0.3, b.h * 0.24}
	c.rect(palm, 0, black)
	for i := range 3 {
		y := palm.y + palm.h*(0.02+0.35*float64(i))
		c.rect(box{b.x + b.w*0.24, y, b.w * 0.28, palm.h * 0.26}, 0, black)
	}
	c.line(b.x, b.bottom(), b.right(), b.y, 0.8)
}

// Audience: three heads, and an arrow their way, to the left: on a dolly's sheet
// the rear links stand to the right.
func Audience(c *canvas, b box) {
	Arrow(c, b.right(), b.x+b.w*0.5, b.y+b.h*0.5, b.h*0.3)
	for i := range 3 {
		x := b.x + b.w*(0.08+0.15*float64(i))
		c.disc(x, b.y+b.h*0.34, b.h*0.13, 0, black)
		c.rect(box{x - b.h*0.16, b.y + b.h*0.52, b.h * 0.32, b.h * 0.3}, 0, black)
	}
}
