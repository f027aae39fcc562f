package layouts

import "hangpack/layouts/mm"

// DoNotFly is the one page of a held stack, in place of every sheet that shows
// holes to set.
type DoNotFly struct {
	Target  string
	Head    Head
	Reasons []Caution
	Code    Code
	Says    string // beside the code: its text
}

func (v DoNotFly) pages(c *canvas) []page {
	pieces := []piece{{h: 40, draw: func(c *canvas, room mm.Box) {
		c.rect(mm.BoxAt(room.X, room.Y+4, room.W, 32), 0, black)
		c.inverse(func() { c.centre(room.X+room.W/2+8, room.Y+26, digits(15), "DO NOT FLY") })
		c.rect(mm.BoxAt(room.X+4, room.Y+8, 24, 24), 0, white)
		stop(c, mm.BoxAt(room.X+5, room.Y+9, 22, 22))
	}}, Words(c, section, "This stack must not be flown as described. No holes are printed for it.", 4)}
	for _, r := range v.Reasons {
		pieces = append(pieces, remarkRow(c, r))
	}
	pieces = append(pieces, Words(c, text, "Change the job, work it out again and print the pack anew. Nothing here says what to change: ask who designed it.", 6))
	side := c.codeSide(v.Code)
	pieces = append(pieces, piece{h: side + 4, draw: func(c *canvas, room mm.Box) {
		c.code(room.X, room.Y+2, side, v.Code)
		c.paragraph(room.X+side+4, room.Y+8, room.W-side-4, text, v.Says)
	}})
	return Flow(c, v.Target, v.Head.ID+" DO NOT FLY", v.Head.Shape, UnderHead(c, v.Head), pieces)
}
