package layouts

import (
	"fmt"

	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
)

// Dolly is the sheet that is taped to a dolly: its cabinets with the joints
// that are set on it, read from 2 m. At most eight cabinets a sheet.
type Dolly struct {
	Sheet    string // 'SL DOLLY A'
	ID       string
	Word     string // 'dolly', or 'cabinets' where a stack has no dollies
	Which    string // 'A', '1-8'
	Revision string
	Shape    string
	Joins    string // '1st of 2: joins the bar above, dolly B below'
	Part     string // 'cabinets 1-8 of this dolly', or ""
	Above    string // what the first joint hangs from
	Picks    []PickHole
	First    string   // how the first joint is made
	Rows     []PinRow // cabinets with the joints above them
	Below    string   // what hangs below; "" for nothing
	Ghost    string   // '1 · goes with dolly B'
	Caption  string   // of the boxes
	Boxes    bool     // two link pins at some joint
	PinsSet  string   // when the pins are set; "" for a blank line to fill in
	Sum      string   // '0 + 0.5 + 0.5 + 1 = 2'
	Figures  []parts.FigureLine
	LoadOut  string // in the black box
	Code     paper.Code
}

// A PickHole is a pick hole to use, as it prints on the first dolly's sheet:
// what it is ('pick hole front') and its label.
type PickHole struct{ Of, Label string }

// Pages is one page, or where rows of the least height do not fit below a long
// id and above long words, as many as they need, each with all the words.
func (d Dolly) Pages(c *paper.Canvas) (pages []paper.Page) {
	room := c.Body()
	left := room.H - dollyHeadHeight(c, room.W, d) - dollyFootHeight(c, d, room.W)
	most := max(int((left-rowsUp-barHeight(c, d, room.W)-ghostBar-1)/dollyLeast(c, d)), 1)
	parts := (len(d.Rows) + most - 1) / most
	for i := range parts {
		part := d
		if parts > 1 {
			part = d.part(i*len(d.Rows)/parts, (i+1)*len(d.Rows)/parts)
			part.Sheet += fmt.Sprintf(" %d of %d", i+1, parts)
		}
		pages = append(pages, paper.Page{Name: part.Sheet, Shape: d.Shape, Draw: part.draw})
	}
	return pages
}

// part is the sheet with some of its rows.
func (d Dolly) part(from, to int) Dolly {
	all := d.Rows
	d.Rows = all[from:to]
	if from > 0 {
		d.Above, d.First, d.Picks = "cabinet "+all[from-1].Number+", on the sheet before", "", nil
	}
	if to < len(all) {
		d.Below, d.Ghost = "cabinet "+all[to].Number+" below", "hole "+all[to].Hole.Label+" on the next sheet"
	}
	return d
}

const (
	idTall    = 24.0
	wordTall  = 10.0
	dollyMost = 18.0
	dollyRow  = 36.0
	dollyAir  = 1.2  // between digits and the lines of their tab, both together
	rowsUp    = 10.0 // headings above the first box
	pickBar   = 15.6
	pickWords = 20.0 // room for 'pick hole'
	ghostBar  = 8.0

	dollyTabMost = 64.0 // of a tab; wider labels are set less tall, but for 12 mm
	numberWidth  = 19.0
)

func (d Dolly) draw(c *paper.Canvas, room mm.Box) {
	room = dollyHead(c, room, d)
	foot := dollyFootHeight(c, d, room.W)
	rows := mm.BoxAt(room.X, room.Y, room.W, room.H-foot)
	c.In("joints", rows, func() { dollyRows(c, rows, d) })
	dollyFoot(c, mm.BoxAt(room.X, rows.Bottom(), room.W, foot), d)
}

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
	dollyBar(c, mm.BoxAt(room.X, y, boxW, bar), room.W, d)
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

// boxesWidth is what the tick boxes of a sheet w wide leave its cabinets.
func boxesWidth(w float64) float64 { return w - 4*parts.TickSide*1.25 - 14 }

// besideTabs is what the widest tab there may be leaves a box of its cabinet.
func besideTabs(c *paper.Canvas, d Dolly, w float64) float64 {
	return boxesWidth(w) - dollyTabs(c, d, dollyRow).Width()
}

// firstFits reports whether the words of the first joint stand in their row;
// else they stand in the notes.
func firstFits(c *paper.Canvas, d Dolly, w float64) bool {
	if name := d.Rows[0].Type; parts.Accented(name) && len(dollyNames(c, d, w).Lines(name)) > 1 {
		return false
	}
	return c.Width(paper.Small, d.First) < besideTabs(c, d, w)-numberWidth-8
}

// dollyTabs are as large as their rows leave room, 12 to 18 mm.
func dollyTabs(c *paper.Canvas, d Dolly, row float64) parts.Tabs {
	var holes []parts.JointHole
	for _, r := range d.Rows {
		holes = append(holes, r.Hole)
	}
	digit := max(min(row*0.62, dollyMost), paper.AfarTall)
	for ; digit > paper.AfarTall; digit -= 0.5 {
		if parts.TabsFor(c, row, digit, paper.TextBold, holes).Width() <= dollyTabMost {
			break
		}
	}
	t := parts.TabsFor(c, row, digit, paper.TextBold, holes)
	t.Height = min(digit+t.Tail+2*dollyAir, row-0.4)
	return t
}

// dollyLeast is how tall a row has to be for its tab.
func dollyLeast(c *paper.Canvas, d Dolly) float64 {
	return paper.AfarTall + dollyTabs(c, d, 0).Tail + dollyAir + 0.4
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

// dollyNames measures the names beside the widest tab there may be.
func dollyNames(c *paper.Canvas, d Dolly, w float64) parts.Names {
	return parts.NamesFor(c, typesOf(d.Rows), paper.Text, besideTabs(c, d, w)-numberWidth-8, 2)
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
