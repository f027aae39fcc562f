// Package parts is what several sheets are made of: heads, the tabs that joints' holes
// stand in, names that find room in their rows, pictures, and figures with their words.
package parts

import (
	"strings"

	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
)

// A Head is what stands at the top of a stack's sheet.
type Head struct {
	ID, Name string
	Says     string // under the name: '8 cabinets · 302 kg · one pick'
	Shape    string
}

// Measures of a head, in mm: how tall it is, and how wide and tall the words which sheet it
// is.
const (
	headHeight = 22.0
	namesRoom  = 16.0 // above the words under REV
	kindRoom   = 38.0
	kindTall   = 5.6
)

var idFace = paper.Bold(40)

// A headStyle is a head as measured.
type headStyle struct {
	height float64
	kind   float64  // where the words stand which sheet it is, from the left
	names  mm.Box   // where the names stand below them, from the head's corner
	name   []string // lines
	says   []string
	rev    float64 // baseline of REV
	under  int     // lines under it
}

// headFor measures a head. REV is at least 12 mm tall: where it does not fit
// beside the rest it has a line to itself, and so have names that are too long
// to stand beside the id.
func headFor(c *paper.Canvas, h Head, w float64) headStyle {
	id := c.Width(idFace, h.ID) + 5
	s := headStyle{height: headHeight, rev: 14.2, kind: id, names: mm.BoxAt(id, kindTall, w-id-RevWidth(c)-6, namesRoom-kindTall)}
	s.under = throwAwayLines(c, w-id)
	if s.names.W < kindRoom {
		s.names.W = w - id
		s.rev, s.height, s.under = s.rev+15, s.height+15, 1
	}
	s.height += float64(s.under-1) * (paper.Small.Lead() - 0.2)
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

// HeldName is what the one sheet of a held stack is called.
func (h Head) HeldName() string { return h.ID + " DO NOT FLY" }

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
		c.Text(room.X+s.kind, room.Y+4.4, paper.Section, strings.TrimPrefix(c.Sheet(), h.ID+" "))
		y := c.Lines(room.X+s.names.X, room.Y+s.names.Y+4, paper.TextBold, s.name)
		c.Lines(room.X+s.names.X, y, paper.Small, s.says)
		DrawRev(c, room.Right(), room.Y+s.rev, s.under)
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

// PlainHead is the head of a sheet that belongs to no stack: its name over a rule, what
// it is for, and at the right REV and mark.
func PlainHead(name, says string) paper.Top {
	return HeadOf(name, 18, func(c *paper.Canvas, room mm.Box) {
		c.Text(room.X, room.Y+11.2, paper.Small, says)
		drawSmallRev(c, room.Right(), room.Y+6.6)
	})
}

// HeadOf is a sheet's name over a rule, with all else that stands there.
func HeadOf(name string, height float64, rest func(c *paper.Canvas, room mm.Box)) paper.Top {
	return func(c *paper.Canvas, room mm.Box, which string) mm.Box {
		if c != nil {
			c.In("head", mm.BoxAt(room.X, room.Y, room.W, height), func() {
				c.Text(room.X, room.Y+7, paper.Title, name+which)
				rest(c, room)
				c.Line(room.X, room.Y+height-2.4, room.Right(), room.Y+height-2.4, paper.Heavy)
			})
		}
		return mm.BoxAt(room.X, room.Y+height, room.W, room.H-height)
	}
}
