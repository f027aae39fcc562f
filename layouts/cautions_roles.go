package layouts

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
	w := (c.body().w - gap) / 2
	return piece{h: h + 2, draw: func(c *canvas, room box) {
		for i, r := range pair {
			b := box{room.x + float64(i)*(w+gap), room.y, w, h}
			c.in("role", b, func() { drawRole(c, b, r) })
		}
	}}
}

func drawRole(c *canvas, b box, r Role) {
	c.rect(b, solid, white)
	c.text(b.x+2, b.y+4.6, textB, r.Is)
	c.text(b.x+2, b.y+8.4, small, r.Does)
	half := b.w * 0.48
	blank(c, b.x+2, b.bottom()-2, half-4, "name")
	blank(c, b.x+half, b.bottom()-2, b.w-half-2, "radio, phone")
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
	words := runInFor(c, running, c.body().w-pictureWide, a.Do, a.Says, a.From)
	return piece{h: words.height() + 8, draw: func(c *canvas, room box) {
		stop(c, box{room.x, room.y + 1, 10, 9.4})
		words.draw(c, room.x+pictureWide, room.y+4.4)
		y := room.bottom() - 1.6
		blank(c, room.x+pictureWide, y, half-pictureWide-3, "stop word")
		blank(c, room.x+half, y, room.w-half, "read aloud to the crew by (name, date, time)")
	}}
}
