package layouts

import (
	"slices"

	"hangpack/layouts/mm"
)

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
func (v Plan) checks(c *canvas) []piece {
	if len(v.Checks) == 0 {
		return nil
	}
	air, lead := Gap(3), Words(c, smallB, checkLead(v.Rounding), 1.4)
	air.keep, lead.keep = true, true
	var rows []piece
	w := checkWidth(c, v.Checks)
	for row := range slices.Chunk(v.Checks, max(1, int((c.body().W+8)/w))) {
		rows = append(rows, checkRow(row, w))
	}
	return append([]piece{air}, under(lead, rows)...)
}

func (t TapeCheck) between() string { return t.From + " to " + t.To }

// checkWidth returns how wide the widest of some tape checks is, with its box
// and some air.
func checkWidth(c *canvas, checks []TapeCheck) (w float64) {
	const air = 13.0
	for _, t := range checks {
		w = max(w, tickSide+c.width(text, t.between())+c.width(textB, t.Is)+air)
	}
	return w
}

// checkRow is one row of tape checks, each w wide: a box to tick, from where to
// where, and the distance.
func checkRow(checks []TapeCheck, w float64) piece {
	return piece{h: checkTall, draw: func(c *canvas, room mm.Box) {
		for i, t := range checks {
			x := room.X + float64(i)*w
			Tick(c, x, room.Y+0.7, tickSide)
			c.text(x+tickSide+2, room.Y+5, text, t.between())
			c.right(x+w-8, room.Y+5, textB, t.Is)
		}
	}}
}
