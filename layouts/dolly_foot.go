package layouts

// The foot of a dolly sheet: the sum to read over the radio, masses, when the
// pins are set, the code with its text, and the black box for the load-out.

const (
	codeGap  = 5.0
	loadOutH = 11.0
)

// footColumn is the width left of the code.
func (c *canvas) footColumn(d Dolly, w float64) float64 { return w - c.codeSide(d.Code) - codeGap }

// setWords is what the sheet says of setting the pins, or asks.
func (d Dolly) setWords() string {
	if d.PinsSet != "" {
		return d.PinsSet
	}
	return "When are the link pins set? The rigger in charge writes it here: ____________________________"
}

// loadOut is the text of the black box in lines.
func (c *canvas) loadOut(d Dolly, w float64) []string {
	return c.wrap(textB, w-16, "LOAD-OUT ONLY, weight off: "+d.LoadOut)
}

func (c *canvas) dollyFootHeight(d Dolly, w float64) float64 {
	col := c.footColumn(d, w)
	left := 3 + c.sumHeight(d, col)
	for _, l := range d.Figures {
		left += c.lineHeight(l, col)
	}
	left += float64(len(c.wrap(textB, col-13, d.setWords())))*textB.lead() + 9
	left += float64(len(c.wrap(small, col, d.Caption)))*small.lead() + 2
	return max(left, c.codeHeight(d)) + c.loadOutHeight(d, w) + 3
}

// codeHeight is the height of the code with its text below it.
func (c *canvas) codeHeight(d Dolly) float64 {
	side := c.codeSide(d.Code)
	return side + 3 + float64(len(c.wrap(small, side, d.Code.Text)))*small.lead() + 2
}

func (c *canvas) loadOutHeight(d Dolly, w float64) float64 {
	return max(loadOutH, float64(len(c.loadOut(d, w)))*textB.lead()+5)
}

// sumHeight is the height of the sum, which may take more than one line.
func (c *canvas) sumHeight(d Dolly, w float64) float64 {
	return float64(len(c.wrap(section, w-ofWidth, d.Sum)))*section.lead() + 2
}

func (c *canvas) dollyFoot(room box, d Dolly) {
	side := c.codeSide(d.Code)
	w := c.footColumn(d, room.w)
	loadOut := c.loadOutHeight(d, room.w)
	left := box{room.x, room.y, w, room.h - loadOut - 3}
	c.in("sums", left, func() { c.sums(left, d) })
	right := box{room.right() - side, room.y + 2, side, left.h - 2}
	c.in("code", right, func() {
		c.code(right.x, right.y, side, d.Code)
		c.lines(right.x, right.y+side+3.4, small, c.wrap(small, side, c.filled(d.Code)))
	})
	bottom := box{room.x, room.bottom() - loadOut - 1, room.w, loadOut}
	c.in("load-out", bottom, func() {
		c.rect(bottom, 0, black)
		c.inverse(func() {
			c.lines(bottom.x+14, bottom.y+5.4, textB, c.loadOut(d, room.w))
		})
		c.pinOut(box{bottom.x + 2, bottom.y + 1.2, 10, 8.6})
	})
}

func (c *canvas) sums(room box, d Dolly) {
	y := room.y + 6.5
	c.text(room.x, y, small, "Sum of these holes")
	y = c.lines(room.x+ofWidth, y, section, c.wrap(section, room.w-ofWidth, d.Sum)) - section.lead() + 4
	for _, l := range d.Figures {
		c.lines(room.x, y+2.4, small, c.wrap(small, ofWidth-2, l.Of))
		c.text(room.x+ofWidth, y+3, section, l.Figure)
		c.lines(room.x+ofWidth+c.width(section, l.Figure)+figureGap, y+2.4, small, c.figureText(l, room.w))
		y += c.lineHeight(l, room.w)
	}
	c.pinIn(box{room.x, y + 1, 10, 8})
	base := y + 6.2
	y = max(c.lines(room.x+13, base, textB, c.wrap(textB, room.w-13, d.setWords())), base+textB.lead()) + 1.6
	c.paragraph(room.x, y, room.w, small, d.Caption)
}
