package layouts

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
)

// dollyRows draws the cabinets with their tabs and boxes. Rows are as tall as
// the page allows, and the figures grow with them.
func dollyRows(c *paper.Canvas, room mm.Box, d Dolly) {
	bar := barHeight(c, d, room.W)
	row := min((room.H-rowsUp-bar-ghostBar-1)/float64(len(d.Rows)), dollyRow)
	t := dollyTabs(c, d, row)
	boxW, names := boxesWidth(room.W), dollyNames(c, d, room.W)
	x := [4]float64{}
	for i := range x {
		x[i] = room.X + boxW + 5 + float64(i)*parts.TickSide*1.25 + float64(i/2)*4
	}
	tickHeads(c, room.Y, x, d.Boxes)
	parts.Audience(c, mm.BoxAt(room.X, room.Y+0.6, 22, 8))
	c.Text(room.X+25, room.Y+6, paper.TextBold, "audience this way: tape it so; rear link pins to the right")
	tabX := room.X + boxW - t.Width() - 6
	y := room.Y + rowsUp
	dollyBar(c, mm.BoxAt(room.X, y, boxW, bar), d, room.W)
	y += bar
	for i, r := range d.Rows {
		drawDollyRow(c, mm.BoxAt(room.X, y+row*float64(i), boxW, row), r.Number, names.Lines(r.Type))
		dollyTicks(c, x, y+row*float64(i), r.Pins)
	}
	if firstFits(c, d, room.W) {
		c.Text(room.X+numberWidth, y+4.2, paper.Small, d.First)
	}
	for i, r := range d.Rows {
		t.Draw(c, tabX, y+row*float64(i), r.Hole)
	}
	y += row * float64(len(d.Rows))
	dollyBelow(c, mm.BoxAt(room.X, y, boxW, ghostBar), tabX, t.Width(), d)
}

// tickHeads writes what the boxes of a dolly sheet are for.
func tickHeads(c *paper.Canvas, y float64, x [4]float64, both bool) {
	side := parts.TickSide * 1.25
	for i, s := range []string{"pinned", "checked"} {
		c.Centre((x[2*i]+x[2*i+1]+side)/2, y+4, paper.TextBold, s)
	}
	if !both {
		return
	}
	for i, s := range []string{"L", "R", "L", "R"} {
		c.Centre(x[i]+side/2, y+8, paper.Text, s)
	}
}

// dollyTicks draws a joint's boxes: two a side, or one for a pin in the middle.
func dollyTicks(c *paper.Canvas, x [4]float64, y float64, pins int) {
	const side = parts.TickSide * 1.15
	for i := 0; i < 4; i++ {
		at := x[i]
		if pins == 1 {
			if i%2 == 1 {
				continue
			}
			at = (x[i] + x[i+1]) / 2
		}
		parts.Tick(c, at, y-side/2, side)
	}
}

// drawDollyRow draws one cabinet.
func drawDollyRow(c *paper.Canvas, b mm.Box, number string, name []string) {
	c.Rect(b, paper.Solid, paper.White)
	base := b.Y + b.H/2 + 4
	c.Text(b.X+4, base, paper.Digits(8), number)
	c.Lines(b.X+numberWidth, base-1-float64(len(name)-1)*paper.Text.Lead()/2, paper.Text, name)
}

// dollyBelow draws what hangs below as a pale ghost, with no boxes.
func dollyBelow(c *paper.Canvas, b mm.Box, tabX, tabW float64, d Dolly) {
	if d.Below == "" {
		return
	}
	c.Dashed(1.5, 1.2, func() { c.Rect(b, paper.Light, paper.None) })
	c.Text(b.X+4, b.Y+6, paper.Text, d.Below)
	w := c.Width(paper.Text, d.Ghost) + 4
	if b.X+8+c.Width(paper.Text, d.Below) < tabX {
		w = max(w, tabW)
	}
	ghost(c, tabX+tabW-w, b.Y+1, w, 5.6, d.Ghost)
}

// ghost draws the tab of a joint that belongs to another sheet.
func ghost(c *paper.Canvas, x, y, w, h float64, s string) {
	c.Dashed(1.5, 1.2, func() { c.Round(mm.BoxAt(x, y-h/2, w, h), h*0.15, paper.Light, paper.White) })
	c.Hole(x+(w-c.Width(paper.Text, s))/2, y+paper.Text.Em()*0.3, paper.Text, paper.White, s)
}

// barHeight is the height of what the first joint hangs from.
func barHeight(c *paper.Canvas, d Dolly, w float64) float64 {
	switch {
	case len(d.Picks) == 0:
		return 11.5 + max(float64(len(aboveLines(c, d, w))-2), 0)*paper.TextBold.Lead()
	case picksInLine(c, d, w):
		return d.pickTall()
	}
	return d.pickTall()*float64(len(d.Picks)) + dollyTabs(c, d, dollyRow).Height/2 + 1
}

// pickTall is how tall the bar is around a pick hole.
func (d Dolly) pickTall() float64 {
	for _, p := range d.Picks {
		if parts.HasTail(p.Label) {
			return pickBar + paper.AfarTall*parts.Tailed
		}
	}
	return pickBar
}

// aboveLines are what the first joint hangs from, beside the widest tab there may be.
func aboveLines(c *paper.Canvas, d Dolly, w float64) []string {
	return c.Wrap(paper.TextBold, besideTabs(c, d, w)-12, d.Above)
}

// picksInLine reports whether all pick holes fit beside the widest tab of a
// sheet w wide; else each has a line to itself, above the tab.
func picksInLine(c *paper.Canvas, d Dolly, w float64) bool {
	left := besideTabs(c, d, w) - 12
	for _, p := range d.Picks {
		left -= pickWidth(c, p)
	}
	return left > 0
}

// pickWidth is how wide a pick hole prints, with the words before it.
func pickWidth(c *paper.Canvas, p PickHole) float64 {
	return pickWords + c.Width(paper.Digits(paper.AfarTall), p.Label) + 9
}

// dollyBar draws what the first joint hangs from: on the first dolly the bar
// with its pick holes, as tall as the holes of the joints.
func dollyBar(c *paper.Canvas, b mm.Box, d Dolly, w float64) {
	c.Rect(b, paper.Solid, paper.Grey)
	if len(d.Picks) == 0 {
		c.Lines(b.X+4, b.Y+5.4, paper.TextBold, aboveLines(c, d, w))
		return
	}
	at := mm.At(b.X+4, b.Y)
	for _, p := range d.Picks {
		drawPickHole(c, at, d.pickTall(), p)
		if picksInLine(c, d, w) {
			at.X += pickWidth(c, p)
		} else {
			at.Y += d.pickTall()
		}
	}
}

// drawPickHole draws one pick hole, 12 mm tall, with its words before it.
func drawPickHole(c *paper.Canvas, at mm.Spot, tall float64, p PickHole) {
	words, f := c.Wrap(paper.TextBold, pickWords-1, p.Of), paper.Digits(paper.AfarTall)
	c.Lines(at.X, at.Y+pickBar/2+1.4-float64(len(words)-1)*paper.TextBold.Lead()/2, paper.TextBold, words)
	x := at.X + pickWords
	c.Rect(mm.BoxAt(x, at.Y+0.6, c.Width(f, p.Label)+3, tall-1.2), paper.Solid, paper.White)
	parts.EndLabel(c, x+1.5+c.Width(f, p.Label), at.Y+pickBar/2+paper.AfarTall/2, paper.AfarTall, p.Label)
}
