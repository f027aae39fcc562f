package layouts

import "hangpack/layouts/mm"

// A Role is who answers for something, with room for a pen.
type Role struct{ Is, Does string }

// Anyone says who may stop the lift.
type Anyone struct{ Do, Says, From string }

// rolesPieces are boxes, two to a line, each with lines for a name and for how to
// reach it; then who may stop the lift, and by which word.
func rolesPieces(c *canvas, roles []Role, anyone Anyone) []piece {
	pieces := []piece{Heading("Who answers for what")}
	for i := 0; i < len(roles); i += 2 {
		pieces = append(pieces, rolePair(c, roles[i:min(i+2, len(roles))]))
	}
	for i := range pieces {
		pieces[i].keep = true
	}
	return append(pieces, anyonePiece(c, anyone))
}

func rolePair(c *canvas, pair []Role) piece {
	const gap, h = 4.0, 16.0
	w := (c.body().W - gap) / 2
	return piece{h: h + 2, draw: func(c *canvas, room mm.Box) {
		for i, r := range pair {
			b := mm.BoxAt(room.X+float64(i)*(w+gap), room.Y, w, h)
			c.in("role", b, func() { drawRole(c, b, r) })
		}
	}}
}

func drawRole(c *canvas, b mm.Box, r Role) {
	c.rect(b, solid, white)
	c.text(b.X+2, b.Y+4.6, textB, r.Is)
	c.text(b.X+2, b.Y+8.4, small, r.Does)
	half := b.W * 0.48
	blank(c, b.X+2, b.Bottom()-2, half-4, "name")
	blank(c, b.X+half, b.Bottom()-2, b.W-half-2, "radio, phone")
}

// blank is a word with a line after it for a pen, w wide in all.
func blank(c *canvas, x, y, w float64, s string) {
	c.text(x, y, small, s)
	c.line(x+c.width(small, s)+1.5, y+0.6, x+w, y+0.6, light)
}

// anyonePiece says who may stop the lift, with lines for the word and for who read
// the sheet aloud.
func anyonePiece(c *canvas, a Anyone) piece {
	const half = 70.0
	words := runInFor(c, running, c.body().W-pictureWide, a.Do, a.Says, a.From)
	return piece{h: words.height() + 8, draw: func(c *canvas, room mm.Box) {
		stop(c, mm.BoxAt(room.X, room.Y+1, 10, 9.4))
		words.draw(c, room.X+pictureWide, room.Y+4.4)
		y := room.Bottom() - 1.6
		blank(c, room.X+pictureWide, y, half-pictureWide-3, "stop word")
		blank(c, room.X+half, y, room.W-half, "read aloud to the crew by (name, date, time)")
	}}
}
