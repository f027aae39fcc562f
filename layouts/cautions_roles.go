package layouts

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
)

// A Role is who answers for something, with room for a pen.
type Role struct{ Is, Does string }

// rolesPieces are boxes, two to a line, each with lines for a name and for how to
// reach it; then who may stop the lift, and by which word.
func rolesPieces(c *paper.Canvas, roles []Role, anyone Advice) []paper.Piece {
	pieces := []paper.Piece{parts.Heading("Who answers for what")}
	for i := 0; i < len(roles); i += 2 {
		pieces = append(pieces, rolePair(c, roles[i:min(i+2, len(roles))]))
	}
	for i := range pieces {
		pieces[i].Keep = true
	}
	return append(pieces, anyonePiece(c, anyone))
}

func rolePair(c *paper.Canvas, pair []Role) paper.Piece {
	const gap, h = 4.0, 16.0
	w := (c.Body().W - gap) / 2
	return paper.Piece{H: h + 2, Draw: func(c *paper.Canvas, room mm.Box) {
		for i, r := range pair {
			b := mm.BoxAt(room.X+float64(i)*(w+gap), room.Y, w, h)
			c.In("role", b, func() { drawRole(c, b, r) })
		}
	}}
}

func drawRole(c *paper.Canvas, b mm.Box, r Role) {
	c.Rect(b, paper.Solid, paper.White)
	c.Text(b.X+2, b.Y+4.6, paper.TextBold, r.Is)
	c.Text(b.X+2, b.Y+8.4, paper.Small, r.Does)
	half := b.W * 0.48
	parts.Blank(c, b.X+2, b.Bottom()-2, half-4, "name")
	parts.Blank(c, b.X+half, b.Bottom()-2, b.W-half-2, "radio, phone")
}

// anyonePiece says who may stop the lift, with lines for the word and for who read
// the sheet aloud.
func anyonePiece(c *paper.Canvas, a Advice) paper.Piece {
	const half = 70.0
	words := paper.RunIn(c, paper.Running, c.Body().W-pictureWide, a.Do, a.Says, a.From)
	return paper.Piece{H: words.Height() + 8, Draw: func(c *paper.Canvas, room mm.Box) {
		parts.Stop.Draw(c, mm.BoxAt(room.X, room.Y+1, 10, 9.4))
		words.Draw(c, room.X+pictureWide, room.Y+4.4)
		y := room.Bottom() - 1.6
		parts.Blank(c, room.X+pictureWide, y, half-pictureWide-3, "stop word")
		parts.Blank(c, room.X+half, y, room.W-half, "read aloud to the crew by (name, date, time)")
	}}
}
