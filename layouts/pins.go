package layouts

import "fmt"

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
	Cut          string // above the joint: 'dolly A / dolly B'; "" for none
}

// A Line is a figure with what it is of and what is to be said of it.
type Line struct{ Of, Figure, Says string }

func (p Pins) pages(c *canvas) []page {
	return []page{{target: p.Target, name: p.Sheet, shape: p.Head.Shape, draw: p.draw}}
}

const (
	rowLeast    = 6.6
	rowMost     = 17.0
	tickSide    = 6.0
	ladderPitch = 2.3
)

func (p Pins) draw(c *canvas, room box) {
	room = c.head(room, p.Head)
	below := c.belowHeight(p, room.w)
	upper := box{room.x, room.y, room.w, room.h - below}
	width := c.scheduleWidth(p)
	c.in("schedule", box{upper.x, upper.y, width, upper.h}, func() { c.schedule(box{upper.x, upper.y, width, upper.h}, p) })
	side := box{upper.x + width + 4, upper.y + 1, upper.w - width - 4, upper.h - 3}
	c.in("side", side, func() { c.elevation(side, p.Side) })
	c.lower(box{room.x, upper.bottom(), room.w, below}, p)
}

// scheduleWidth gives the schedule what its parts need and the rest of the
// page to the drawing.
func (c *canvas) scheduleWidth(p Pins) float64 {
	return 38 + c.pinTabs(p, rowLeast).width() + ladderPitch*ladderMost + 2 + 2*tickSide + 3
}

func (c *canvas) pinTabs(p Pins, row float64) tabStyle {
	var holes []Hole
	for _, r := range p.Rows {
		holes = append(holes, r.Hole)
	}
	height := min(row-1.6, 11)
	return c.tabsFor(height, height*0.62, small, holes)
}

// schedule draws the column as tabs between flat boxes.
func (c *canvas) schedule(room box, p Pins) {
	legend := c.legend(p)
	foot := float64(len(legend))*small.lead() + 2*small.lead() + 2
	row := (room.h - 9 - foot - 3) / (float64(len(p.Rows)) + 1)
	row = max(min(row, rowMost), rowLeast)
	t := c.pinTabs(p, row)
	boxW := 38 + t.width() + 1
	ladderX := room.x + boxW + 3
	tickX := room.right() - 2*tickSide
	c.centre(tickX+tickSide, room.y+3, smallB, "seen")
	if p.Boxes {
		c.centre(tickX+tickSide/2, room.y+7, small, "L")
		c.centre(tickX+tickSide*1.5, room.y+7, small, "R")
	}
	c.text(ladderX-1, room.y+3, small, "hole of")
	c.text(ladderX-1, room.y+7, small, "the joint")
	y := room.y + 9
	c.barBox(box{room.x, y, boxW, row}, p)
	for _, r := range p.Rows {
		y += row
		c.pinRow(box{room.x, y, boxW, row}, r, c.typeName(p, r.Type))
		c.tab(room.x+boxW-t.width()-1, y, t, r.Hole)
		c.ladder(ladderX, y-1.2, ladderPitch, r.Ladder)
		c.text(ladderX-1, y+3.4, small, r.Ordinal)
		for n := range r.Pins {
			x := tickX + tickSide*float64(n)
			if r.Pins == 1 {
				x += tickSide / 2
			}
			c.tick(x, y-tickSide/2, tickSide)
		}
	}
	y += row + 4
	y = c.lines(room.x, y, small, c.wrap(small, room.w, p.Caption))
	c.lines(room.x, y, small, legend)
}

// barBox draws what the first joint hangs from.
func (c *canvas) barBox(b box, p Pins) {
	s, fill := p.Bar, grey
	if s == "" {
		s, fill = p.Above, white
	}
	c.rect(b, solid, fill)
	lines := c.wrap(smallB, b.w-4, s)
	c.lines(b.x+2, b.y+min(b.h*0.3, 4.2), smallB, lines)
}

// pinRow draws one cabinet as a flat box.
func (c *canvas) pinRow(b box, r PinRow, name []string) {
	c.rect(b, solid, white)
	if r.Cut != "" {
		c.line(b.x, b.y, b.right(), b.y, 1.2)
	}
	base := b.y + b.h/2 + 1.5
	c.text(b.x+2, base+0.6, section, r.Number)
	c.lines(b.x+12, base-float64(len(name)-1)*small.lead()/2, small, name)
}

// typeName is a cabinet's name as it stands in its row: in at most two lines,
// else by a letter that the legend explains.
func (c *canvas) typeName(p Pins, name string) []string {
	lines := c.wrap(small, 25, name)
	if len(lines) <= 2 {
		return lines
	}
	for i, n := range c.longNames(p) {
		if n == name {
			return []string{"type " + string(rune('a'+i%26))}
		}
	}
	return lines
}

// longNames are the names that do not fit their rows, each once.
func (c *canvas) longNames(p Pins) (names []string) {
	seen := map[string]bool{}
	for _, r := range p.Rows {
		if !seen[r.Type] && len(c.wrap(small, 25, r.Type)) > 2 {
			names = append(names, r.Type)
		}
		seen[r.Type] = true
	}
	return names
}

func (c *canvas) legend(p Pins) (lines []string) {
	for i, n := range c.longNames(p) {
		lines = append(lines, c.wrap(small, c.scheduleWidth(p), fmt.Sprintf("type %c: %s", 'a'+i%26, n))...)
	}
	return lines
}
