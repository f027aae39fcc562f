package layouts

import "hangpack/layouts/mm"

// A Head is what stands at the top of a stack's sheet.
type Head struct {
	ID, Name string
	Says     string // under the name: '8 cabinets · 302 kg · one pick'
	Revision string
	Shape    string
}

const headHeight = 22.0

var idFace = face{true, 40}

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
func headFor(c *canvas, w float64, h Head) headStyle {
	id := c.width(idFace, h.ID) + 5
	s := headStyle{height: headHeight, rev: 14.2, names: mm.BoxAt(id, 0, w-id-c.width(capitals(revTall), "REV "+h.Revision)-6, headHeight-3)}
	if s.names.W < 30 {
		s.names.W = w - id
		s.rev, s.height = s.rev+15, s.height+15
	}
	lines := func() float64 {
		s.name, s.says = c.wrap(textB, s.names.W, h.Name), c.wrap(small, s.names.W, h.Says)
		return float64(len(s.name))*textB.lead() + float64(len(s.says))*small.lead()
	}
	if tall := lines(); tall > s.names.H {
		s.names = mm.BoxAt(0, s.height-3, w, 0)
		s.height += lines() + 2
	}
	return s
}

// headRoom is the room that a head leaves.
func headRoom(c *canvas, room mm.Box, h Head) mm.Box {
	height := headFor(c, room.W, h).height
	return mm.BoxAt(room.X, room.Y+height, room.W, room.H-height)
}

// drawHead draws the top of a stack's sheet and returns the room below it.
func drawHead(c *canvas, room mm.Box, h Head) mm.Box {
	s := headFor(c, room.W, h)
	c.in("head", mm.BoxAt(room.X, room.Y, room.W, s.height), func() {
		c.text(room.X, room.Y+14, idFace, h.ID)
		y := c.lines(room.X+s.names.X, room.Y+s.names.Y+4, textB, s.name)
		c.lines(room.X+s.names.X, y, small, s.says)
		c.right(room.Right(), room.Y+s.rev, capitals(revTall), "REV "+h.Revision)
		c.right(room.Right(), room.Y+s.rev+4.4, small, "bin any other REV")
		c.line(room.X, room.Y+s.height-2, room.Right(), room.Y+s.height-2, heavy)
	})
	return headRoom(c, room, h)
}
