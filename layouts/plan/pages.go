package plan

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
)

// leastDrawing is how tall a drawing with its words has to be before tape
// checks may stand beneath it, in mm.
const leastDrawing = 120.0

// pageHead is the head of every page of a plan.
var pageHead = parts.PlainHead("PLAN", "all points of the roof, seen from above")

// Pages draws the plan on as few pages as can hold the figures of all points.
// The tape checks stand under a single drawing where that costs it no scale,
// else on pages of their own.
func (v Sheet) Pages(c *paper.Canvas) []paper.Page {
	room, checks := pageHead(nil, c.Body(), ""), v.checks(c)
	views, left := v.views(c, room), room.H-paper.HeightOf(checks)
	if len(views) == 1 && len(checks) > 0 && left >= leastDrawing {
		lower := v.views(c, mm.BoxAt(room.X, room.Y, room.W, left))
		if len(lower) == 1 && lower[0].frame.Scale == views[0].frame.Scale {
			return numbered(lower, [][]paper.Piece{checks})
		}
	}
	below := make([][]paper.Piece, len(views))
	if len(checks) > 0 {
		below = append(below, paper.IntoPages(checks, room.H)...)
	}
	return numbered(views, below)
}

// numbered makes the pages, each with its drawing, if it has one, and what
// stands beneath.
func numbered(views []drawing, below [][]paper.Piece) (pages []paper.Page) {
	for i := range below {
		which := paper.OfMany(i, len(below))
		pages = append(pages, paper.Page{Draw: func(c *paper.Canvas, room mm.Box) {
			room = pageHead(c, room, which)
			if i < len(views) {
				drawDrawing(c, views[i])
				room.Y += views[i].sheet.H
			}
			paper.Pile(c, "plan piece", room, below[i])
		}})
	}
	return pages
}
