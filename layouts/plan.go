package layouts

import (
	"hangpack/layouts/drawings"
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
)

// A Plan is the sheet of all points of the roof as seen from above, for the
// venue's head rigger and for who chalks them on the floor. Its places are
// metres from the datum, and not as in other drawings: X is positive to stage
// left, which is to the right of the page, and Z is positive downstage, which
// is down the page, where the audience is.
type Plan struct {
	Ruler  drawings.Ruler
	Datum  string      // what 0,0 is; no full stop at its end
	Points []PlanPoint // all of them, in the job's order; at least one
	Stacks []PlanStack
	Checks []TapeCheck
	// Rounding is how far a tape check may differ because offsets are rounded:
	// '15 mm'.
	Rounding string
}

// A PlanPoint is one point of the roof.
type PlanPoint struct {
	ID     string
	At     drawings.Place
	Across string // 'stage left 11.40 m' or 'on the centre line'
	UpDown string // 'upstage 0.60 m' or 'on the datum line'
	Held   bool   // its stack must not be flown as described
	Other  bool   // not a stack's: a cable pick
}

// A PlanStack is the outline of a stack from above, at its pan.
type PlanStack struct {
	Corners [4]drawings.Place
	Front   [2]drawings.Place // the edge that looks at the audience
	Held    bool
}

// A TapeCheck is a distance of two points along the floor, in words.
type TapeCheck struct{ From, To, Is string }

// planTarget is what clicks and codes call the plan.
const planTarget = "plan"

// leastDrawing is how tall a drawing with its words has to be before tape
// checks may stand beneath it, in mm.
const leastDrawing = 120.0

// planHead is the head of every page of a plan.
var planHead = parts.RevHead("PLAN", "all points of the roof, seen from above")

// Pages draws the plan on as few pages as can hold the figures of all points.
// The tape checks stand under a single drawing where that costs it no scale,
// else on pages of their own.
func (v Plan) Pages(c *paper.Canvas) []paper.Page {
	room, checks := planHead(nil, c.Body(), ""), v.checks(c)
	views, left := v.views(c, room), room.H-paper.HeightOf(checks)
	if len(views) == 1 && len(checks) > 0 && left >= leastDrawing {
		lower := v.views(c, mm.BoxAt(room.X, room.Y, room.W, left))
		if len(lower) == 1 && lower[0].frame.Scale == views[0].frame.Scale {
			return v.numbered(lower, [][]paper.Piece{checks})
		}
	}
	below := make([][]paper.Piece, len(views))
	if len(checks) > 0 {
		below = append(below, paper.Cut(checks, room.H)...)
	}
	return v.numbered(views, below)
}

// numbered makes the pages, each with its drawing, if it has one, and what
// stands beneath.
func (v Plan) numbered(views []planView, below [][]paper.Piece) (pages []paper.Page) {
	for i := range below {
		which := paper.OfMany(i, len(below))
		pages = append(pages, paper.Page{Target: planTarget, Name: "PLAN" + which, Draw: func(c *paper.Canvas, room mm.Box) {
			room = planHead(c, room, which)
			if i < len(views) {
				drawView(c, views[i])
				room.Y += views[i].sheet.H
			}
			paper.Pile(c, "plan piece", room, below[i])
		}})
	}
	return pages
}
