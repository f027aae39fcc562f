package layouts

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

// revTall is how tall REV stands on every sheet that has it, in mm.
const revTall = 12.0

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
func headFor(c *paper.Canvas, w float64, h Head) headStyle {
	id := c.Width(idFace, h.ID) + 5
	s := headStyle{height: headHeight, rev: 14.2, names: mm.BoxAt(id, 0, w-id-c.Width(paper.Capitals(revTall), "REV "+h.Revision)-6, headHeight-3)}
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

// headRoom is the room that a head leaves.
func headRoom(c *paper.Canvas, room mm.Box, h Head) mm.Box {
	height := headFor(c, room.W, h).height
	return mm.BoxAt(room.X, room.Y+height, room.W, room.H-height)
}

// drawHead draws the top of a stack's sheet and returns the room below it.
func drawHead(c *paper.Canvas, room mm.Box, h Head) mm.Box {
	s := headFor(c, room.W, h)
	c.In("head", mm.BoxAt(room.X, room.Y, room.W, s.height), func() {
		c.Text(room.X, room.Y+14, idFace, h.ID)
		y := c.Lines(room.X+s.names.X, room.Y+s.names.Y+4, paper.TextBold, s.name)
		c.Lines(room.X+s.names.X, y, paper.Small, s.says)
		c.Right(room.Right(), room.Y+s.rev, paper.Capitals(revTall), "REV "+h.Revision)
		c.Right(room.Right(), room.Y+s.rev+4.4, paper.Small, "bin any other REV")
		c.Line(room.X, room.Y+s.height-2, room.Right(), room.Y+s.height-2, paper.Heavy)
	})
	return headRoom(c, room, h)
}
