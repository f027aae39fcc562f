package layouts

import (
	"strings"

	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
)

// The foot of a dolly sheet: the sum to read over the radio, masses, when the
// pins are set, the code with its text, and the black box for the load-out.

// Measures of the foot, in mm.
const (
	codeGap  = 5.0  // beside the code
	loadOutH = 11.0 // least height of the black box
)

// footColumn is the width left of the codes.
func footColumn(c *paper.Canvas, d Dolly, w float64) float64 {
	return w - c.CodeSide(d.Code) - addressRoom(c, d).W - codeGap
}

// addressRoom measures the second code, beside the first, with its words and the white
// between both; it is nothing where there is none.
func addressRoom(c *paper.Canvas, d Dolly) mm.Box {
	if d.Address.Text == "" {
		return mm.Box{}
	}
	side := c.CodeSide(d.Address)
	return mm.BoxAt(0, 0, max(side, c.Width(paper.Small, addressWords))+2, side+5)
}

// What a phone opens with either code.
const (
	pinsWords    = "these pins as text"
	addressWords = "this sheet on line"
)

// setWords is what the sheet says of setting the pins, or asks.
func (d Dolly) setWords() string {
	if d.PinsSet != "" {
		return d.PinsSet
	}
	return "When are the link pins set? The rigger in charge writes it here: ____________________________"
}

// loadOutLines is the text of the black box in lines: in running type, or where it
// takes more than two lines in the smallest.
func loadOutLines(c *paper.Canvas, d Dolly, w float64) (paper.Face, []string) {
	s := "LOAD-OUT ONLY, weight off: " + d.LoadOut
	if lines := c.Wrap(paper.TextBold, w-16, s); len(lines) <= 2 {
		return paper.TextBold, lines
	}
	return paper.SmallBold, c.Wrap(paper.SmallBold, w-16, s)
}

// dollyFootHeight measures the foot of a sheet w wide.
func dollyFootHeight(c *paper.Canvas, d Dolly, w float64) float64 {
	col := footColumn(c, d, w)
	left := 3 + sumHeight(c, d, col)
	for _, l := range d.Figures {
		left += l.Height(c, col)
	}
	left += float64(len(c.Wrap(paper.TextBold, col-13, d.setWords())))*paper.TextBold.Lead() + 6.6
	left += float64(len(footNotes(c, d, col))+len(codeSays(c, col, c.Widest(d.Code)))) * paper.Small.Lead()
	return max(left, c.CodeSide(d.Code)+5, addressRoom(c, d).H) + loadOutHeight(c, d, w) + 2
}

// footNotes are the words of the boxes.
func footNotes(c *paper.Canvas, d Dolly, w float64) []string {
	notes := append([]string{d.Caption}, dollyNames(c, d, c.Body().W).Legend...)
	if d.First != "" && !firstFits(c, d, c.Body().W) {
		notes = append(notes, "First joint: "+d.First+".")
	}
	return c.WrapAll(paper.Small, w, notes)
}

// codeSays is what the code of the pins says, for who has no phone.
func codeSays(c *paper.Canvas, w float64, text string) []string {
	return c.Wrap(paper.Small, w, "The code says: "+text)
}

// loadOutHeight measures the black box of a sheet w wide.
func loadOutHeight(c *paper.Canvas, d Dolly, w float64) float64 {
	f, lines := loadOutLines(c, d, w)
	return max(loadOutH, float64(len(lines))*f.Lead()+3.6)
}

// sumHeight is the height of the sum, which may take more than one line.
func sumHeight(c *paper.Canvas, d Dolly, w float64) float64 {
	return float64(len(c.Wrap(paper.Section, w-parts.OfWidth, d.Sum)))*paper.Section.Lead() + 3
}

// dollyFoot draws the foot into its room.
func dollyFoot(c *paper.Canvas, room mm.Box, d Dolly) {
	side := c.CodeSide(d.Code)
	w := footColumn(c, d, room.W)
	loadOut := loadOutHeight(c, d, room.W)
	left := mm.BoxAt(room.X, room.Y, w, room.H-loadOut-2)
	c.In("sums", left, func() { drawSums(c, left, d) })
	right := mm.BoxAt(room.Right()-side, room.Y+1, side, left.H-1)
	c.In("code", right, func() {
		c.Code(right.X, right.Y, side, d.Code)
		c.Centre(right.X+side/2, right.Y+side+2.6, paper.Small, pinsWords)
	})
	if address := addressRoom(c, d); address.W > 0 {
		drawAddress(c, mm.BoxAt(right.X-address.W, right.Y, address.W-2, address.H), d.Address)
	}
	bottom := mm.BoxAt(room.X, room.Bottom()-loadOut-1, room.W, loadOut)
	c.In("load-out", bottom, func() { loadOutBox(c, bottom, d) })
}

// drawAddress draws the code of the sheet's address.
func drawAddress(c *paper.Canvas, room mm.Box, code paper.Code) {
	side := c.CodeSide(code)
	c.In("address", room, func() {
		c.Code(room.X+(room.W-side)/2, room.Y, side, code)
		c.Centre(room.X+room.W/2, room.Y+side+2.6, paper.Small, addressWords)
	})
}

// loadOutBox draws the black box.
func loadOutBox(c *paper.Canvas, b mm.Box, d Dolly) {
	c.Rect(b, 0, paper.Black)
	f, lines := loadOutLines(c, d, b.W)
	y := b.Y + (b.H-float64(len(lines)-1)*f.Lead())/2 + f.Em()*0.27
	for _, s := range lines {
		whiteLine(c, b.X+14, y, f, s)
		y += f.Lead()
	}
	parts.PinOut.Draw(c, mm.BoxAt(b.X+2, b.Y+(b.H-8.6)/2, 10, 8.6))
}

// whiteLine writes a line white on black; where it has room to be filled in, that
// is a white box, as no pencil writes on black.
func whiteLine(c *paper.Canvas, x, y float64, f paper.Face, s string) {
	before, after, _ := strings.Cut(s, "_")
	c.Inverse(func() { c.Hole(x, y, f, paper.Black, before) })
	if before == s {
		return
	}
	rest := strings.TrimLeft(after, "_")
	x, w := x+c.Width(f, before), c.Width(f, s[len(before):len(s)-len(rest)])
	c.Rect(mm.BoxAt(x, y-f.Em()*0.9, w, f.Em()*1.1), 0, paper.White)
	whiteLine(c, x+w, y, f, rest)
}

// drawSums draws the foot's left column: sum, masses, pins and notes.
func drawSums(c *paper.Canvas, room mm.Box, d Dolly) {
	y := room.Y + 6
	c.Lines(room.X, y, paper.Small, []string{"Sum of splays,", "for the radio"})
	y = c.Holes(room.X+parts.OfWidth, y, paper.Section, paper.White, c.Wrap(paper.Section, room.W-parts.OfWidth, d.Sum)) - paper.Section.Lead() + 5
	for _, l := range d.Figures {
		l.Draw(c, room.X, y+3, room.W)
		y += l.Height(c, room.W)
	}
	parts.PinIn.Draw(c, mm.BoxAt(room.X, y-0.6, 10, 8))
	base := y + 4.4
	y = max(c.Lines(room.X+13, base, paper.TextBold, c.Wrap(paper.TextBold, room.W-13, d.setWords())), base+paper.TextBold.Lead()) + 1.6
	y = c.Holes(room.X, y, paper.Small, paper.White, footNotes(c, d, room.W))
	c.Apart(func() { c.Holes(room.X, y, paper.Small, paper.White, codeSays(c, room.W, c.Filled(d.Code))) })
}
