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

// headHeights measures a head: its height, and how wide its names may be. REV
// is at least 12 mm tall; where it does not fit beside the rest it has a line
// to itself.
func (c *canvas) headHeights(room box, h Head) (height, names float64) {
	id := c.width(idFace, h.ID)
	names = room.w - id - c.width(digits(12), "REV "+h.Revision) - 10
	if names < 38 {
		return headHeight + 15, room.w - id - 6
	}
	return headHeight, names
}

// headRoom is the room that a head leaves.
func (c *canvas) headRoom(room box, h Head) box {
	height, _ := c.headHeights(room, h)
	return box{room.x, room.y + height, room.w, room.h - height}
}

// head draws the top of a stack's sheet and returns the room below it.
func (c *canvas) head(room box, h Head) box {
	height, names := c.headHeights(room, h)
	c.in("head", box{room.x, room.y, room.w, height}, func() {
		c.text(room.x, room.y+14, idFace, h.ID)
		x := room.x + c.width(idFace, h.ID) + 5
		y := c.lines(x, room.y+4, textB, c.wrap(textB, names, h.Name))
		c.lines(x, y, small, c.wrap(small, names, h.Says))
		base := room.y + height - headHeight + 12.6
		c.right(room.right(), base, digits(12), "REV "+h.Revision)
		c.right(room.right(), base+4.6, small, "bin any other")
		c.line(room.x, room.y+height-2, room.right(), room.y+height-2, heavy)
	})
	return c.headRoom(room, h)
}
