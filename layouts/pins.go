package layouts

import "hangpack/layouts/mm"

// Pins is the pin sheet of a stack: the schedule of its joints, the stack from
// the side, the bar with its pick holes, and what to read. A stack of many
// cabinets takes more than one page; each page is one of these.
type Pins struct {
	Target, Sheet string // 'SL PINS', 'SL PINS 1 of 2'
	Head          Head
	Bar           string // 'flying-bar · pick hole 22'; "" on later pages
	Above         string // on later pages: what the first joint hangs from
	Rows          []PinRow
	Caption       string // of the seen boxes
	Boxes         bool   // two boxes a joint where any joint has two link pins
	Side          Elevation
	Strip         *Strip
	Figures       []Line
	Notes         []string
	Code          Code
}

// A PinRow is one cabinet with the joint above it.
type PinRow struct {
	Number, Type string
	Hole         Hole
	Ladder       Ladder
	Ordinal      string // '3rd of 9'
	Pins         int    // link pins of the joint: 1 or 2
	Cut          string // the dolly that begins with this cabinet; "" for none
}

// A Line is a figure with what it is of and what is to be said of it.
type Line struct{ Of, Figure, Says string }

// pages is one page, or two where the longest names leave no room for rows of
// the least height.
func (p Pins) pages(c *canvas) []page {
	if pinsFit(c, p) {
		return []page{{target: p.Target, name: p.Sheet, shape: p.Head.Shape, draw: p.draw}}
	}
	first, second := p.halves()
	return append(first.pages(c), second.pages(c)...)
}

// pinsFit reports whether rows of the least height find room.
func pinsFit(c *canvas, p Pins) bool {
	room := headRoom(c, c.body(), p.Head)
	room.H -= belowHeight(c, p, room.W)
	return len(p.Rows) < 2 || scheduleFor(c, p, room).row > p.rowLeast()
}

// rowLeast is how tall rows have to be for what stands on their lines.
func (p Pins) rowLeast() float64 {
	cut, tall := false, false
	for _, r := range p.Rows {
		cut, tall = cut || r.Cut != "", tall || accented(r.Type)
	}
	if cut && tall {
		return rowCut
	}
	return rowLeast
}

// halves cuts a sheet in two; the figures stay with the first.
func (p Pins) halves() (first, second Pins) {
	first, second = p, p
	n, from := len(p.Rows)/2, p.Side.From
	first.Rows, second.Rows = p.Rows[:n], p.Rows[n:]
	first.Side.To, second.Side.From = from+n-1, from+n
	first.Sheet, second.Sheet = p.Sheet+" a", p.Sheet+" b"
	second.Target, second.Bar, second.Strip, second.Figures, second.Notes = "", "", nil, nil, nil
	second.Above = "cabinet " + p.Rows[n-1].Number + ", on the sheet before"
	return first, second
}

const (
	rowLeast    = 6.05
	rowCut      = 8.2 // with a dolly named on its line, over a name with accents
	rowMost     = 17.0
	tickSide    = 6.0
	ladderPitch = 2.3
	tabMost     = 30.0 // of a tab; wider labels are set less tall, all alike
)

func (p Pins) draw(c *canvas, room mm.Box) {
	room = drawHead(c, room, p.Head)
	below := belowHeight(c, p, room.W)
	upper := mm.BoxAt(room.X, room.Y, room.W, room.H-below)
	s := scheduleFor(c, p, upper)
	left := mm.BoxAt(upper.X, upper.Y, s.width, upper.H)
	c.in("schedule", left, func() { drawSchedule(c, left, p, s) })
	side := mm.BoxAt(left.Right()+4, upper.Y+1, upper.W-s.width-4, upper.H-3)
	c.in("side", side, func() { DrawElevation(c, side, p.Side) })
	drawLower(c, mm.BoxAt(room.X, upper.Bottom(), room.W, below), p)
}

// A scheduleStyle is a schedule as measured: how tall its rows are, its tabs,
// how wide it is, and the lines below it.
type scheduleStyle struct {
	row   float64
	bar   float64  // height of the bar's box
	head  []string // its words
	tabs  tabStyle
	boxes float64 // width of the cabinets' boxes
	width float64
	names names
	foot  []string
}

const (
	nameWidth  = 42.0
	scheduleUp = 9.0 // headings above the first box
)

// scheduleFor makes rows as tall as the page allows, and gives the rest of the
// width to the drawing.
func scheduleFor(c *canvas, p Pins, room mm.Box) (s scheduleStyle) {
	s.row = rowMost
	for range 3 { // taller rows have wider tabs, and so shorter lines below
		s.tabs = pinTabs(c, p, s.row)
		s.boxes = nameWidth + s.tabs.width() + 1
		s.width = s.boxes + 3 + ladderPitch*ladderMost + 1 + 2*tickSide
		s.names = NamesFor(c, p.Rows, small, typeRoom, p.nameLines(s.row))
		s.foot = append(c.wrap(small, s.width, p.Caption), c.wrapAll(small, s.width, s.names.legend)...)
		s.head = c.wrap(smallB, s.boxes-4, p.Bar+p.Above)
		words := float64(len(s.head))*smallB.lead() + s.tabs.height/2 + 0.8
		left := room.H - scheduleUp - float64(len(s.foot))*small.lead() - 5
		s.row = max(min(left/float64(len(p.Rows)+1), (left-words)/float64(len(p.Rows)), rowMost), p.rowLeast())
		s.bar = max(s.row, words)
	}
	return s
}

func pinTabs(c *canvas, p Pins, row float64) tabStyle {
	var holes []Hole
	for _, r := range p.Rows {
		holes = append(holes, r.Hole)
	}
	height := min(row-1.4, 11)
	return TabsWithin(c, tabMost, height, height*0.64, holes)
}

// drawSchedule draws the column as tabs between flat boxes.
func drawSchedule(c *canvas, room mm.Box, p Pins, s scheduleStyle) {
	ladderX := room.X + s.boxes + 3
	tickX := room.Right() - 2*tickSide
	scheduleHeads(c, room.Y, ladderX, tickX, p.Boxes)
	y := room.Y + scheduleUp
	barBox(c, mm.BoxAt(room.X, y, s.boxes, s.bar), p.Bar != "", s.head)
	y += s.bar
	for _, r := range p.Rows {
		drawPinRow(c, mm.BoxAt(room.X, y, s.boxes, s.row), r, s.names.lines(r.Type))
		DrawTab(c, room.X+s.boxes-s.tabs.width()-1, y, s.tabs, r.Hole)
		DrawLadder(c, ladderX, y-1.5, ladderPitch, r.Ladder)
		c.text(ladderX-1, y+2.5, small, r.Ordinal)
		seenBoxes(c, tickX, y, r.Pins)
		y += s.row
	}
	c.lines(room.X, y+4.4, small, s.foot)
}

func scheduleHeads(c *canvas, y, ladderX, tickX float64, both bool) {
	c.centre(tickX+tickSide, y+3, smallB, "seen")
	if both {
		c.centre(tickX+tickSide/2, y+7, small, "L")
		c.centre(tickX+tickSide*1.5, y+7, small, "R")
	}
	c.text(ladderX-1, y+3, small, "hole of")
	c.text(ladderX-1, y+7, small, "the joint")
}

// seenBoxes draws the boxes of one joint: two, or one for a pin in the middle.
func seenBoxes(c *canvas, x, y float64, pins int) {
	for n := range pins {
		at := x + tickSide*float64(n)
		if pins == 1 {
			at += tickSide / 2
		}
		Tick(c, at, y-tickSide/2, tickSide)
	}
}

// barBox draws what the first joint hangs from: the bar, or a cabinet of the
// sheet before.
func barBox(c *canvas, b mm.Box, bar bool, words []string) {
	fill := white
	if bar {
		fill = grey
	}
	c.rect(b, solid, fill)
	c.lines(b.X+2, b.Y+3.4, smallB, words)
}

// drawPinRow draws one cabinet as a flat box.
func drawPinRow(c *canvas, b mm.Box, r PinRow, name []string) {
	c.rect(b, solid, white)
	if r.Cut != "" {
		c.line(b.X, b.Y, b.Right(), b.Y, 1.2)
		w := c.width(smallB, r.Cut) + 2
		c.rect(mm.BoxAt(b.X+11, b.Y-1.3, w, 3), 0, white)
		c.text(b.X+12, b.Y+1.1, smallB, r.Cut)
	}
	base := b.Y + b.H/2 + 1.5
	c.text(b.X+2, base+0.6, section, r.Number)
	c.lines(b.X+12, base-0.4-float64(len(name)-1)*small.lead()/2, small, name)
}

// typeRoom is the width of a cabinet's name in its row.
const typeRoom = nameWidth - 13

// nameLines is how many lines of a name a row has room for.
func (p Pins) nameLines(row float64) int {
	two := 9.5
	if p.rowLeast() == rowCut {
		two = 12.4
	}
	if row < two {
		return 1
	}
	return 2
}
