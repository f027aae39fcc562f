package plan

import (
	"slices"

	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
)

// checkTall is how tall a row of tape checks is: a box for a pencil and some
// air.
const checkTall = parts.TickSide + 1.4

// checkLead says what tape checks are for; rounding is how far one may be off
// because offsets are rounded.
func checkLead(rounding string) string {
	return "Tape checks, point to point along the floor. Offsets are rounded, so " + rounding + " of difference is nothing. More: stop and measure both offsets again."
}

// checks makes the pieces of the tape checks; their sentence stands again on
// every page.
func (v Sheet) checks(c *paper.Canvas) []paper.Piece {
	if len(v.Checks) == 0 {
		return nil
	}
	air, lead := paper.Gap(3), paper.Words(c, paper.SmallBold, checkLead(v.Rounding), 1.4)
	air.Keep, lead.Keep = true, true
	var rows []paper.Piece
	w := checkWidth(c, v.Checks)
	for row := range slices.Chunk(v.Checks, max(1, int((c.Body().W+8)/w))) {
		rows = append(rows, checkRow(row, w))
	}
	return append([]paper.Piece{air}, paper.Headed(lead, rows)...)
}

func (t TapeCheck) between() string { return t.From + " to " + t.To }

// checkWidth returns how wide the widest of some tape checks is, with its box
// and some air.
func checkWidth(c *paper.Canvas, checks []TapeCheck) (w float64) {
	const air = 13.0
	for _, t := range checks {
		w = max(w, parts.TickSide+c.Width(paper.Text, t.between())+c.Width(paper.TextBold, t.Is)+air)
	}
	return w
}

// checkRow is one row of tape checks, each w wide: a box to tick, from where to
// where, and the distance.
func checkRow(checks []TapeCheck, w float64) paper.Piece {
	return paper.Piece{H: checkTall, Draw: func(c *paper.Canvas, room mm.Box) {
		for i, t := range checks {
			x := room.X + float64(i)*w
			parts.Tick(c, x, room.Y+0.7, parts.TickSide)
			c.Text(x+parts.TickSide+2, room.Y+5, paper.Text, t.between())
			c.Right(x+w-8, room.Y+5, paper.TextBold, t.Is)
		}
	}}
}
