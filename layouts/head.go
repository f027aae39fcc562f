package layouts

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
	names  box      // where the names stand, from the head's corner
	name   []string // lines
	says   []string
	rev    float64 // baseline of REV
}

// headFor measures a head. REV is at least 12 mm tall: where it does not fit
// beside the rest it has a line to itself, and so have names that are too long
// to stand beside the id.
func headFor(c *canvas, w float64, h Head) headStyle {
	id := c.width(idFace, h.ID) + 5
	s := headStyle{height: headHeight, rev: 14.2, names: box{id, 0, w - id - c.width(capitals(revTall), "REV "+h.Revision) - 6, headHeight - 3}}
	if s.names.w < 30 {
		s.names.w = w - id
		s.rev, s.height = s.rev+15, s.height+15
	}
	lines := func() float64 {
		s.name, s.says = c.wrap(textB, s.names.w, h.Name), c.wrap(small, s.names.w, h.Says)
		return float64(len(s.name))*textB.lead() + float64(len(s.says))*small.lead()
	}
	if tall := lines(); tall > s.names.h {
		s.names = box{0, s.height - 3, w, 0}
		s.height += lines() + 2
	}
	return s
}

// headRoom is the room that a head leaves.
func headRoom(c *canvas, room box, h Head) box {
	height := headFor(c, room.w, h).height
	return box{room.x, room.y + height, room.w, room.h - height}
}

// drawHead draws the top of a stack's sheet and returns the room below it.
func drawHead(c *canvas, room box, h Head) box {
	s := headFor(c, room.w, h)
	c.in("head", box{room.x, room.y, room.w, s.height}, func() {
		c.text(room.x, room.y+14, idFace, h.ID)
		y := c.lines(room.x+s.names.x, room.y+s.names.y+4, textB, s.name)
		c.lines(room.x+s.names.x, y, small, s.says)
		c.right(room.right(), room.y+s.rev, capitals(revTall), "REV "+h.Revision)
		c.right(room.right(), room.y+s.rev+4.4, small, "bin any other REV")
		c.line(room.x, room.y+s.height-2, room.right(), room.y+s.height-2, heavy)
	})
	return headRoom(c, room, h)
}
