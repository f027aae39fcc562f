package layouts

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
)

// A scheduleStyle is a schedule as measured: how tall its rows are, its tabs,
// how wide it is, and the lines below it.
type scheduleStyle struct {
	row   float64
	bar   float64  // height of the bar's box
	head  []string // its words
	tabs  parts.Tabs
	boxes float64 // width of the cabinets' boxes
	width float64
	names parts.Names
	foot  []string
}

// Measures of the schedule, in mm.
const (
	nameWidth  = 42.0 // of a cabinet's number and name
	scheduleUp = 9.0  // headings above the first box
)

// typeRoom is the width of a cabinet's name in its row.
const typeRoom = nameWidth - 13

// scheduleFor makes rows as tall as the page allows, and gives the rest of the
// width to the drawing.
func scheduleFor(c *paper.Canvas, p Pins, room mm.Box) (s scheduleStyle) {
	s.row = rowMost
	for range 3 { // taller rows have wider tabs, and so shorter lines below
		s.tabs = pinTabs(c, p, s.row)
		s.boxes = nameWidth + s.tabs.Width() + 1
		s.width = s.boxes + 3 + ladderPitch*parts.LadderMost + 1 + 2*parts.TickSide
		s.names = parts.NamesFor(c, typesOf(p.Rows), paper.Small, typeRoom, p.nameLines(s.row))
		s.foot = append(c.Wrap(paper.Small, s.width, p.Caption), c.WrapAll(paper.Small, s.width, s.names.Legend)...)
		s.head = c.Wrap(paper.SmallBold, s.boxes-4, p.Bar+p.Above)
		words := float64(len(s.head))*paper.SmallBold.Lead() + s.tabs.Height/2 + 0.8
		left := room.H - scheduleUp - float64(len(s.foot))*paper.Small.Lead() - 5
		s.row = max(min(left/float64(len(p.Rows)+1), (left-words)/float64(len(p.Rows)), rowMost), p.leastRow())
		s.bar = max(s.row, words)
	}
	return s
}

// nameLines is how many lines of a name a row has room for.
func (p Pins) nameLines(row float64) int {
	two := 9.5
	if p.leastRow() == rowCut {
		two = 12.4
	}
	if row < two {
		return 1
	}
	return 2
}

// pinTabs measures the tabs of rows so tall.
func pinTabs(c *paper.Canvas, p Pins, row float64) parts.Tabs {
	var holes []parts.JointHole
	for _, r := range p.Rows {
		holes = append(holes, r.Hole)
	}
	height := min(row-1.4, 11)
	return parts.TabsWithin(c, tabMost, height, height*0.64, holes)
}

// drawSchedule draws the column as tabs between flat boxes.
func drawSchedule(c *paper.Canvas, room mm.Box, p Pins, s scheduleStyle) {
	ladderX := room.X + s.boxes + 3
	tickX := room.Right() - 2*parts.TickSide
	scheduleHeads(c, room.Y, ladderX, tickX, p.Boxes)
	y := room.Y + scheduleUp
	barBox(c, mm.BoxAt(room.X, y, s.boxes, s.bar), p.Bar != "", s.head)
	y += s.bar
	for _, r := range p.Rows {
		drawPinRow(c, mm.BoxAt(room.X, y, s.boxes, s.row), r, s.names.Lines(r.Type))
		s.tabs.Draw(c, room.X+s.boxes-s.tabs.Width()-1, y, r.Hole)
		r.Ladder.Draw(c, ladderX, y-1.5, ladderPitch)
		c.Text(ladderX-1, y+2.5, paper.Small, r.Ordinal)
		seenBoxes(c, tickX, y, r.Pins)
		y += s.row
	}
	c.Lines(room.X, y+4.4, paper.Small, s.foot)
}

// scheduleHeads writes what stands in the columns; both is for boxes left and right.
func scheduleHeads(c *paper.Canvas, y, ladderX, tickX float64, both bool) {
	c.Centre(tickX+parts.TickSide, y+3, paper.SmallBold, "seen")
	if both {
		c.Centre(tickX+parts.TickSide/2, y+7, paper.Small, "L")
		c.Centre(tickX+parts.TickSide*1.5, y+7, paper.Small, "R")
	}
	c.Text(ladderX-1, y+3, paper.Small, "hole of")
	c.Text(ladderX-1, y+7, paper.Small, "the joint")
}

// barBox draws what the first joint hangs from: the bar, or a cabinet of the
// sheet before.
func barBox(c *paper.Canvas, b mm.Box, bar bool, words []string) {
	fill := paper.White
	if bar {
		fill = paper.Grey
	}
	c.Rect(b, paper.Solid, fill)
	c.Lines(b.X+2, b.Y+3.4, paper.SmallBold, words)
}

// drawPinRow draws one cabinet as a flat box.
func drawPinRow(c *paper.Canvas, b mm.Box, r PinRow, name []string) {
	c.Rect(b, paper.Solid, paper.White)
	if r.Cut != "" {
		c.Line(b.X, b.Y, b.Right(), b.Y, 1.2)
		w := c.Width(paper.SmallBold, r.Cut) + 2
		c.Rect(mm.BoxAt(b.X+11, b.Y-1.3, w, 3), 0, paper.White)
		c.Text(b.X+12, b.Y+1.1, paper.SmallBold, r.Cut)
	}
	base := b.Y + b.H/2 + 1.5
	c.Text(b.X+2, base+0.6, paper.Section, r.Number)
	c.Lines(b.X+12, base-0.4-float64(len(name)-1)*paper.Small.Lead()/2, paper.Small, name)
}

// seenBoxes draws the boxes of one joint: two, or one for a pin in the middle.
func seenBoxes(c *paper.Canvas, x, y float64, pins int) {
	for n := range pins {
		at := x + parts.TickSide*float64(n)
		if pins == 1 {
			at += parts.TickSide / 2
		}
		parts.Tick(c, at, y-parts.TickSide/2, parts.TickSide)
	}
}
