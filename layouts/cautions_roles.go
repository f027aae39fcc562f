package layouts

// A Role is who answers for something, with room for a pen.
type Role struct{ Is, Does string }

// Anyone says who may stop the lift.
type Anyone struct{ Do, Says, From string }

// roles are boxes, two to a line, each with lines for a name and for how to
// reach it; then who may stop the lift, and by which word.
func (c *canvas) roles(roles []Role, anyone Anyone) []piece {
	pieces := []piece{c.heading("Who answers for what")}
	for i := 0; i < len(roles); i += 2 {
		pieces = append(pieces, c.rolePair(roles[i:min(i+2, len(roles))]))
	}
	for i := range pieces {
		pieces[i].keep = true
	}
	return append(pieces, c.anyone(anyone))
}

func (c *canvas) rolePair(pair []Role) piece {
	const gap, h = 4.0, 16.0
	w := (c.body().w - gap) / 2
	return piece{h: h + 2, draw: func(c *canvas, room box) {
		for i, r := range pair {
			b := box{room.x + float64(i)*(w+gap), room.y, w, h}
			c.in("role", b, func() { c.role(b, r) })
		}
	}}
}

func (c *canvas) role(b box, r Role) {
	c.rect(b, solid, white)
	c.text(b.x+2, b.y+4.6, textB, r.Is)
	c.text(b.x+2, b.y+8.4, small, r.Does)
	half := b.w * 0.48
	c.blank(b.x+2, b.bottom()-2, half-4, "name")
	c.blank(b.x+half, b.bottom()-2, b.w-half-2, "radio, phone")
}

// blank is a word with a line after it for a pen, w wide in all.
func (c *canvas) blank(x, y, w float64, s string) {
	c.text(x, y, small, s)
	c.line(x+c.width(small, s)+1.5, y+0.6, x+w, y+0.6, light)
}

// anyone says who may stop the lift, with lines for the word and for who read
// the sheet aloud.
func (c *canvas) anyone(a Anyone) piece {
	const half = 70.0
	words := c.runIn(running, c.body().w-pictureWide, a.Do, a.Says, a.From)
	return piece{h: words.height() + 8, draw: func(c *canvas, room box) {
		c.stop(box{room.x, room.y + 1, 10, 9.4})
		words.draw(c, room.x+pictureWide, room.y+4.4)
		y := room.bottom() - 1.6
		c.blank(room.x+pictureWide, y, half-pictureWide-3, "stop word")
		c.blank(room.x+half, y, room.w-half, "read aloud to the crew by (name, date, time)")
	}}
}
