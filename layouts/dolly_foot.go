package layouts

import (
	"strings"

	"hangpack/layouts/mm"
)

// The foot of a dolly sheet: the sum to read over the radio, masses, when the
// pins are set, the code with its text, and the black box for the load-out.

const (
	codeGap  = 5.0
	loadOutH = 11.0
)

// footColumn is the width left of the code.
func footColumn(c *canvas, d Dolly, w float64) float64 { return w - c.codeSide(d.Code) - codeGap }

// setWords is what the sheet says of setting the pins, or asks.
func (d Dolly) setWords() string {
	if d.PinsSet != "" {
		return d.PinsSet
	}
	return "When are the link pins set? The rigger in charge writes it here: ____________________________"
}

// loadOutLines is the text of the black box in lines: in running type, or where it
// takes more than two lines in the smallest.
func loadOutLines(c *canvas, d Dolly, w float64) (face, []string) {
	s := "LOAD-OUT ONLY, weight off: " + d.LoadOut
	if lines := c.wrap(textB, w-16, s); len(lines) <= 2 {
		return textB, lines
	}
	return smallB, c.wrap(smallB, w-16, s)
}

func dollyFootHeight(c *canvas, d Dolly, w float64) float64 {
	col := footColumn(c, d, w)
	left := 3 + sumHeight(c, d, col)
	for _, l := range d.Figures {
		left += lineHeight(c, l, col)
	}
	left += float64(len(c.wrap(textB, col-13, d.setWords())))*textB.lead() + 6.6
	left += float64(len(footNotes(c, d, col))) * small.lead()
	return max(left, c.codeSide(d.Code)+5) + loadOutHeight(c, d, w) + 2
}

// footNotes are the words of the boxes and of the code.
func footNotes(c *canvas, d Dolly, w float64) []string {
	notes := append([]string{d.Caption}, dollyNames(c, d, c.body().W).legend...)
	if d.First != "" && !firstFits(c, d, c.body().W) {
		notes = append(notes, "First joint: "+d.First+".")
	}
	return c.wrapAll(small, w, append(notes, "The code says: "+c.filled(d.Code)))
}

func loadOutHeight(c *canvas, d Dolly, w float64) float64 {
	f, lines := loadOutLines(c, d, w)
	return max(loadOutH, float64(len(lines))*f.lead()+3.6)
}

// sumHeight is the height of the sum, which may take more than one line.
func sumHeight(c *canvas, d Dolly, w float64) float64 {
	return float64(len(c.wrap(section, w-ofWidth, d.Sum)))*section.lead() + 3
}

func dollyFoot(c *canvas, room mm.Box, d Dolly) {
	side := c.codeSide(d.Code)
	w := footColumn(c, d, room.W)
	loadOut := loadOutHeight(c, d, room.W)
	left := mm.BoxAt(room.X, room.Y, w, room.H-loadOut-2)
	c.in("sums", left, func() { sums(c, left, d) })
	right := mm.BoxAt(room.Right()-side, room.Y+1, side, left.H-1)
	c.in("code", right, func() {
		c.code(right.X, right.Y, side, d.Code)
		c.centre(right.X+side/2, right.Y+side+2.6, small, "these pins as text")
	})
	bottom := mm.BoxAt(room.X, room.Bottom()-loadOut-1, room.W, loadOut)
	c.in("load-out", bottom, func() { loadOutBox(c, bottom, d) })
}

// loadOutBox draws the black box.
func loadOutBox(c *canvas, b mm.Box, d Dolly) {
	c.rect(b, 0, black)
	f, lines := loadOutLines(c, d, b.W)
	y := b.Y + (b.H-float64(len(lines)-1)*f.lead())/2 + f.em()*0.27
	for _, s := range lines {
		whiteLine(c, b.X+14, y, f, s)
		y += f.lead()
	}
	pinOut(c, mm.BoxAt(b.X+2, b.Y+(b.H-8.6)/2, 10, 8.6))
}

// whiteLine writes a line white on black; where it has room to be filled in, that
// is a white box, as no pencil writes on black.
func whiteLine(c *canvas, x, y float64, f face, s string) {
	before, after, _ := strings.Cut(s, "_")
	c.inverse(func() { c.hole(x, y, f, black, before) })
	if before == s {
		return
	}
	rest := strings.TrimLeft(after, "_")
	x, w := x+c.width(f, before), c.width(f, s[len(before):len(s)-len(rest)])
	c.rect(mm.BoxAt(x, y-f.em()*0.9, w, f.em()*1.1), 0, white)
	whiteLine(c, x+w, y, f, rest)
}

func sums(c *canvas, room mm.Box, d Dolly) {
	y := room.Y + 6
	c.lines(room.X, y, small, []string{"Sum of splays,", "for the radio"})
	y = c.holes(room.X+ofWidth, y, section, white, c.wrap(section, room.W-ofWidth, d.Sum)) - section.lead() + 5
	for _, l := range d.Figures {
		drawLine(c, room.X, y+3, room.W, l)
		y += lineHeight(c, l, room.W)
	}
	pinIn(c, mm.BoxAt(room.X, y-0.6, 10, 8))
	base := y + 4.4
	y = max(c.lines(room.X+13, base, textB, c.wrap(textB, room.W-13, d.setWords())), base+textB.lead()) + 1.6
	c.holes(room.X, y, small, white, footNotes(c, d, room.W))
}
