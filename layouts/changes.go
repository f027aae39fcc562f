package layouts

import (
	"slices"

	"hangpack/layouts/mm"
)

// Changes is the sheet of what moved between two revisions: which pins go to
// which hole, what the venue has to accept anew, which sheets to bin.
type Changes struct {
	Says     string // 'REV A 3f9a1c07, now REV B …'
	Warnings []string
	Stacks   []ChangedStack
	Points   [][]string // id, static was and now, design was and now, by how much, place
	Job      []string
	Venue    []string // what it has to accept anew
	Paper    []string // what to bin and to print again
	Closing  string   // '5 joints move (10 pins), 11 stay.'
}

// A ChangedStack is a stack with the joints that move and what else changes.
type ChangedStack struct {
	ID, Name, Shape string
	Joints          []ChangedJoint
	Says            []string
}

// A ChangedJoint is a joint whose link goes from one hole to another.
type ChangedJoint struct {
	Above, Below, Type string
	From, To           Hole
	Dolly              string
	Pins               int // link pins of the joint: 1 or 2
}

var changeColumns = []column{{"point", 31, false}, {"static was", 20, true}, {"static now", 20, true}, {"design was", 20, true}, {"design now", 20, true},
	{"design", 25, true}, {"place", 0, false}}

func (v Changes) pages(c *canvas) []page {
	pieces := []piece{Words(c, textB, v.Says, 1), Words(c, section, v.Closing, 2)}
	for _, s := range v.Warnings {
		pieces = append(pieces, warning(c, s))
	}
	for _, s := range v.Stacks {
		pieces = append(pieces, changedStack(c, s)...)
	}
	if len(v.Points) > 0 {
		pieces = append(append(pieces, Heading("Points: what the roof carries")), TableOf(c, changeColumns, v.Points, text)...)
	}
	if len(v.Job) > 0 {
		pieces = append(append(pieces, Heading("The job")), paragraphs(c, v.Job)...)
	}
	pieces = append(append(pieces, Heading("The venue")), paragraphs(c, v.Venue)...)
	pieces = append(append(pieces, Heading("Paper")), paragraphs(c, v.Paper)...)
	pieces = append(pieces, Gap(3), accepted())
	return Flow(c, "changes", "CHANGES", "", revHead("CHANGES", "what moved since the revision before"), pieces)
}

// paragraphs go on from page to page where they are long: a list of all sheets of a
// large pack may take pages.
func paragraphs(c *canvas, says []string) (pieces []piece) {
	const whole = 6 // lines that stay together
	for _, s := range says {
		for lines := range slices.Chunk(c.wrap(text, c.body().W, s), whole) {
			pieces = append(pieces, piece{h: float64(len(lines)) * text.lead(), draw: func(c *canvas, room mm.Box) {
				c.lines(room.X, room.Y+text.lead()*0.8, text, lines)
			}})
		}
		if n := len(pieces); n > 0 {
			pieces[n-1].h++
		}
	}
	return pieces
}

// warning is a line beside a black bar.
func warning(c *canvas, s string) piece {
	lines := c.wrap(textB, c.body().W-7, s)
	h := float64(len(lines)) * textB.lead()
	return piece{h: h + 2.5, draw: func(c *canvas, room mm.Box) {
		c.rect(mm.BoxAt(room.X, room.Y, 2, h), 0, black)
		c.lines(room.X+6, room.Y+3.7, textB, lines)
	}}
}

// accepted is a line for who has seen to it.
func accepted() piece {
	return piece{h: 12, draw: func(c *canvas, room mm.Box) {
		third := room.W / 3
		for i, what := range []string{"pins moved, name and time", "pins checked, name and time", "venue accepted, name and time"} {
			x := room.X + third*float64(i)
			c.line(x, room.Y+6, x+third-4, room.Y+6, light)
			c.text(x, room.Y+9.6, small, what)
		}
	}}
}

// Measures of a changed joint's row, in mm.
const (
	changeRow   = 17.0
	changeTab   = 12.0
	changeDigit = 7.0
	changeOld   = 42.0 // where the old hole's tab begins
	changeTick  = 7.0
	changeRoom  = 33.0 // of a tab and the arrow behind it
)

// changedStack is a stack's name over its joints and what else changes.
func changedStack(c *canvas, s ChangedStack) []piece {
	var rows []piece
	for _, j := range s.Joints {
		rows = append(rows, changedJoint(c, j))
	}
	head := changedHead(c, s)
	pieces := under(head, rows)
	return append(pieces, paragraphs(c, s.Says)...)
}

func changedHead(c *canvas, s ChangedStack) piece {
	id := face{true, 18}
	x := 8 + c.width(id, s.ID) + 4
	name := c.wrap(textB, c.body().W-x, s.Name)
	h := max(10, 5+float64(len(name))*textB.lead())
	if len(s.Joints) > 0 {
		h += 5
	}
	return piece{h: h, keep: true, draw: func(c *canvas, room mm.Box) {
		SideMark(c, s.Shape, mm.BoxAt(room.X, room.Y+2.5, 6, 6))
		c.text(room.X+8, room.Y+8.2, id, s.ID)
		c.lines(room.X+x, room.Y+7.6, textB, name)
		if len(s.Joints) > 0 {
			changedHeads(c, room)
		}
	}}
}

// changedHeads stand over the columns of joints.
func changedHeads(c *canvas, room mm.Box) {
	y := room.Bottom() - 1
	c.text(room.X+changeOld, y, small, "was in hole")
	c.text(room.X+changeOld+changeRoom, y, smallB, "goes to hole")
	x := changeTicks(room)
	c.text(x-24, y, small, "on")
	c.text(x, y, small, "moved")
	c.text(x+2*changeTick+3, y, small, "checked")
}

// changedJoint draws a joint on the line between its two bodies: the old hole
// struck through, an arrow, the new one.
func changedJoint(c *canvas, j ChangedJoint) piece {
	name := c.wrap(small, changeOld-14, j.Type)
	h := max(changeRow, 2*(float64(len(name))*small.lead()+2))
	return piece{h: h, draw: func(c *canvas, room mm.Box) {
		y := room.Y + h/2
		ticks := changeTicks(room)
		c.line(room.X, y, ticks-28, y, solid)
		c.text(room.X+1, y-2, section, j.Above)
		c.text(room.X+1, y+6, section, j.Below)
		c.lines(room.X+12, y+4, small, name)
		changedHoles(c, room.X+changeOld, y, j)
		c.text(ticks-24, y+1.5, textB, j.Dolly)
		for n := range 2 * j.Pins {
			x := ticks + changeTick*float64(n%j.Pins) + float64(n/j.Pins)*(2*changeTick+3)
			Tick(c, x, y-changeTick/2, changeTick-0.6)
		}
	}}
}

// changeTicks is where the boxes of a joint begin, two a side.
func changeTicks(room mm.Box) float64 { return room.Right() - 4*changeTick - 3 }

// changedHoles draws the old hole struck through, and an arrow to the new one.
func changedHoles(c *canvas, x, y float64, j ChangedJoint) {
	fit := func(h Hole) tabStyle { return TabsWithin(c, changeRoom-9, changeTab, changeDigit, []Hole{h}) }
	old, next := fit(j.From), fit(j.To)
	c.round(mm.BoxAt(x, y-changeTab/2, old.width(), changeTab), 1.5, light, white)
	LabelIn(c, x+(old.width()-old.labels())/2, y+(old.digit-old.tail)/2, old, j.From.Label)
	c.line(x-1, y+changeTab/2, x+old.width()+1, y-changeTab/2, heavy)
	Arrow(c, x+old.width()+2, x+changeRoom-2, y, 2.5)
	DrawTab(c, x+changeRoom, y, next, j.To)
}
