package layouts

import "slices"

// checkTall is how tall a row of tape checks is: a box for a pencil and some
// air.
const checkTall = tickSide + 1.4

// checkLead says what tape checks are for; rounding is how far one may be off
// because offsets are rounded.
func checkLead(rounding string) string {
	return "Tape checks, point to point along the floor. Offsets are rounded, so " + rounding + " of difference is nothing. More: stop and measure both offsets again."
}

// checks makes the pieces of the tape checks; their sentence stands again on
// every page.
func (v Plan) checks(c *canvas) (pieces []piece) {
	if len(v.Checks) == 0 {
		return nil
	}
	lead := c.words(smallB, checkLead(v.Rounding), 1.4)
	lead.keep = true
	pieces = []piece{planAir(3), lead}
	w := c.checkWidth(v.Checks)
	for row := range slices.Chunk(v.Checks, max(1, int((c.body().w+8)/w))) {
		p := c.checkRow(row, w)
		p.head = &lead
		pieces = append(pieces, p)
	}
	return pieces
}

// notes makes the pieces of the notes.
func (v Plan) notes(c *canvas) (pieces []piece) {
	if len(v.Notes) > 0 {
		pieces = append(pieces, planAir(2))
	}
	for _, n := range v.Notes {
		pieces = append(pieces, c.words(small, n, 0.6))
	}
	return pieces
}

// planAir is room with nothing in it, on the page of what follows.
func planAir(h float64) piece { return piece{h: h, draw: func(*canvas, box) {}, keep: true} }

func (t TapeCheck) between() string { return t.From + " to " + t.To }

// checkWidth returns how wide the widest of some tape checks is, with its box
// and some air.
func (c *canvas) checkWidth(checks []TapeCheck) (w float64) {
	const air = 13.0
	for _, t := range checks {
		w = max(w, tickSide+c.width(text, t.between())+c.width(textB, t.Is)+air)
	}
	return w
}

// checkRow is one row of tape checks, each w wide: a box to tick, from where to
// where, and the distance.
func (c *canvas) checkRow(checks []TapeCheck, w float64) piece {
	return piece{h: checkTall, draw: func(c *canvas, room box) {
		for i, t := range checks {
			x := room.x + float64(i)*w
			c.tick(x, room.y+0.7, tickSide)
			c.text(x+tickSide+2, room.y+5, text, t.between())
			c.right(x+w-8, room.y+5, textB, t.Is)
		}
	}}
}
