package layouts

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
)

// DoNotFly is the one page of a held stack, in place of every sheet that shows
// holes to set.
type DoNotFly struct {
	Head    parts.Head
	Reasons []parts.Remark
	Code    paper.Code
}

// Name is what the sheet is called.
func (v DoNotFly) Name() string { return v.Head.HeldName() }

// Pages cuts the sheet.
func (v DoNotFly) Pages(c *paper.Canvas) []paper.Page {
	pieces := []paper.Piece{{H: 40, Draw: func(c *paper.Canvas, room mm.Box) {
		c.Rect(mm.BoxAt(room.X, room.Y+4, room.W, 32), 0, paper.Black)
		c.Inverse(func() { c.Centre(room.X+room.W/2+8, room.Y+26, paper.Digits(15), "DO NOT FLY") })
		c.Rect(mm.BoxAt(room.X+4, room.Y+8, 24, 24), 0, paper.White)
		parts.Stop.Draw(c, mm.BoxAt(room.X+5, room.Y+9, 22, 22))
	}}, paper.Words(c, paper.Section, "This stack must not be flown as described. No holes are printed for it.", 4)}
	for _, r := range v.Reasons {
		pieces = append(pieces, r.Row(c))
	}
	pieces = append(pieces, paper.Words(c, paper.Text, "Change the job, work it out again and print the pack anew. Nothing here says what to change: ask who designed it.", 6))
	side := c.CodeSide(v.Code)
	pieces = append(pieces, paper.Piece{H: side + 4, Draw: func(c *paper.Canvas, room mm.Box) {
		c.Code(room.X, room.Y+2, side, v.Code)
		c.Apart(func() { c.Paragraph(room.X+side+4, room.Y+8, room.W-side-4, paper.Text, c.Filled(v.Code)) })
	}})
	return paper.Flow(c, v.Head.Shape, v.Head.Top(c), pieces)
}
