package layouts

import (
	"fmt"
	"slices"
)

// A Plan is the sheet of all points of the roof as seen from above, for the
// venue's head rigger and for who chalks them on the floor. Its places are
// metres from the datum, and not as in other drawings: X is positive to stage
// left, which is to the right of the page, and Z is positive downstage, which
// is down the page, where the audience is.
type Plan struct {
	Ruler  Ruler
	Datum  string      // what 0,0 is; no full stop at its end
	Points []PlanPoint // all of them, in the job's order; at least one
	Stacks []PlanStack
	Checks []TapeCheck
	// Rounding is how far a tape check may differ because offsets are rounded:
	// '15 mm'.
	Rounding string
	Notes    []string
}

// A PlanPoint is one point of the roof.
type PlanPoint struct {
	ID     string
	At     Place
	Across string // 'stage left 11.40 m' or 'on the centre line'
	UpDown string // 'upstage 0.60 m' or 'on the datum line'
	Held   bool   // its stack must not be flown as described
	Other  bool   // not a stack's: a cable pick
}

// A PlanStack is the outline of a stack from above, at its pan.
type PlanStack struct {
	ID      string
	Corners [4]Place
	Front   [2]Place // the edge that looks at the audience
	Held    bool
}

// A TapeCheck is a distance of two points along the floor, in words.
type TapeCheck struct{ From, To, Is string }

// planTarget is what clicks and codes call the plan.
const planTarget = "plan"

// leastDrawing is how tall a drawing with its words has to be before tape
// checks may stand beneath it, in mm.
const leastDrawing = 120.0

// notesMost is how tall notes may be that stand under every drawing, in mm.
const notesMost = 40.0

// pages draws the plan on as few pages as can hold the figures of all points.
// The notes stand under every drawing; the tape checks stand under a single one
// where that costs it no scale, else on pages of their own.
func (v Plan) pages(c *canvas) []page {
	room := plainHead("PLAN", "")(nil, c.body(), "")
	checks, notes := v.checks(c), v.notes(c)
	if heightOf(notes) > notesMost {
		checks, notes = append(checks, notes...), nil
	}
	both := append(slices.Clip(checks), notes...)
	above := func(under []piece) box { return box{room.x, room.y, room.w, room.h - heightOf(under)} }
	views := v.views(c, above(notes))
	if len(views) == 1 && len(checks) > 0 && above(both).h >= leastDrawing {
		lower := v.views(c, above(both))
		if len(lower) == 1 && lower[0].frame.scale == views[0].frame.scale {
			return v.numbered(lower, [][]piece{both})
		}
	}
	under := slices.Repeat([][]piece{notes}, len(views))
	if len(checks) > 0 {
		under = append(under, cut(checks, room.h)...)
	}
	return v.numbered(views, under)
}

// numbered makes the pages, each with its drawing, if it has one, and what
// stands beneath.
func (v Plan) numbered(views []planView, under [][]piece) (pages []page) {
	for i := range under {
		which := ""
		if len(under) > 1 {
			which = fmt.Sprintf(" %d of %d", i+1, len(under))
		}
		pages = append(pages, page{target: planTarget, name: "PLAN" + which, draw: func(c *canvas, room box) {
			room = plainHead("PLAN", "all points of the roof, seen from above")(c, room, which)
			if i < len(views) {
				c.planView(views[i])
				room.y += views[i].sheet.h
			}
			c.stackUp(room, under[i])
		}})
	}
	return pages
}

// stackUp draws pieces one under the other.
func (c *canvas) stackUp(room box, pieces []piece) {
	for n, p := range pieces {
		b := box{room.x, room.y, room.w, p.h}
		c.in(fmt.Sprintf("plan piece %d", n+1), b, func() { p.draw(c, b) })
		room.y += p.h
	}
}
