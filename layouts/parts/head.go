// Package parts is what several sheets are made of: heads, the tabs that joints' holes
// stand in, names that find room in their rows, pictures, and figures with their words.
package parts

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
)

// A Head is what stands at the top of a stack's sheet.
type Head struct {
	ID, Name string
	Says     string // under the name: '8 cabinets · 302 kg · one pick'
	Revision string
	Shape    string
}

// RevTall is how tall REV stands on every sheet that has it, in mm.
const RevTall = 12.0

const headHeight = 22.0

var idFace = paper.Bold(40)

// A headStyle is a head as measured.
type headStyle struct {
	height float64
	names  mm.Box   // where the names stand, from the head's corner
	name   []string // lines
	says   []string
	rev    float64 // baseline of REV
}

// headFor measures a head. REV is at least 12 mm tall: where it does not fit
// beside the rest it has a line to itself, and so have names that are too long
// to stand beside the id.
func headFor(c *paper.Canvas, h Head, w float64) headStyle {
	id := c.Width(idFace, h.ID) + 5
	s := headStyle{height: headHeight, rev: 14.2, names: mm.BoxAt(id, 0, w-id-c.Width(paper.Capitals(RevTall), "REV "+h.Revision)-6, headHeight-3)}
	if s.names.W < 30 {
		s.names.W = w - id
		s.rev, s.height = s.rev+15, s.height+15
	}
	lines := func() float64 {
		s.name, s.says = c.Wrap(paper.TextBold, s.names.W, h.Name), c.Wrap(paper.Small, s.names.W, h.Says)
		return float64(len(s.name))*paper.TextBold.Lead() + float64(len(s.says))*paper.Small.Lead()
	}
	if tall := lines(); tall > s.names.H {
		s.names = mm.BoxAt(0, s.height-3, w, 0)
		s.height += lines() + 2
	}
	return s
}

// Below is the room that a head leaves.
func (h Head) Below(c *paper.Canvas, room mm.Box) mm.Box {
	height := headFor(c, h, room.W).height
	return mm.BoxAt(room.X, room.Y+height, room.W, room.H-height)
}

// Draw draws the top of a stack's sheet and returns the room below it.
func (h Head) Draw(c *paper.Canvas, room mm.Box) mm.Box {
	s := headFor(c, h, room.W)
	c.In("head", mm.BoxAt(room.X, room.Y, room.W, s.height), func() {
		c.Text(room.X, room.Y+14, idFace, h.ID)
		y := c.Lines(room.X+s.names.X, room.Y+s.names.Y+4, paper.TextBold, s.name)
		c.Lines(room.X+s.names.X, y, paper.Small, s.says)
		c.Right(room.Right(), room.Y+s.rev, paper.Capitals(RevTall), "REV "+h.Revision)
		c.Right(room.Right(), room.Y+s.rev+4.4, paper.Small, "bin any other REV")
		c.Line(room.X, room.Y+s.height-2, room.Right(), room.Y+s.height-2, paper.Heavy)
	})
	return h.Below(c, room)
}

// Top is the head for pieces that flow below it.
func (h Head) Top(c *paper.Canvas) paper.Top {
	return func(on *paper.Canvas, room mm.Box, _ string) mm.Box {
		if on == nil {
			return h.Below(c, room)
		}
		return h.Draw(on, room)
	}
}

// RevHead is a plain head with the revision large at its right.
func RevHead(name, says string) paper.Top {
	return headOf(name, func(c *paper.Canvas, room mm.Box) {
		c.Right(room.Right(), room.Y+2.6, paper.Small, says)
		c.Right(room.Right(), room.Y+10.4, paper.Bold(18), "REV "+c.Revision)
	})
}

// PlainHead is the head of a sheet that belongs to no stack.
func PlainHead(name, says string) paper.Top {
	return headOf(name, func(c *paper.Canvas, room mm.Box) { c.Right(room.Right(), room.Y+9, paper.Small, says) })
}

// headOf is a sheet's name over a rule, with what stands at its right.
func headOf(name string, right func(c *paper.Canvas, room mm.Box)) paper.Top {
	return func(c *paper.Canvas, room mm.Box, which string) mm.Box {
		const height = 16.0
		if c != nil {
			c.In("head", mm.BoxAt(room.X, room.Y, room.W, height), func() {
				c.Text(room.X, room.Y+9, paper.Title, name+which)
				right(c, room)
				c.Line(room.X, room.Y+12.5, room.Right(), room.Y+12.5, paper.Heavy)
			})
		}
		return mm.BoxAt(room.X, room.Y+height, room.W, room.H-height)
	}
}
