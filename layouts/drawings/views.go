package drawings

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
)

// A View is a small drawing of a stack from the side, as it hangs, with what
// stands below it.
type View struct {
	Says string
	Side Elevation
}

// Measures of small drawings, in mm.
const (
	viewStub = 3.0 // of a small drawing's hook lines
	ViewEdge = 3.0 // clear at either side, and the aim lines at the right
)

// ViewScale is the largest scale at which every view fits a room, 1 to so many; 0 of no
// views.
func ViewScale(r Ruler, views []Elevation, w, h float64) int {
	scale := 0
	for _, v := range views {
		lo, hi := Extent(v.places()...)
		scale = max(scale, FrameFor(r, lo, hi, mm.BoxAt(0, 0, w, h)).Scale)
	}
	return scale
}

// ViewHead states of what and at which scale the drawings below it are.
func ViewHead(of string, r Ruler, scale int) paper.Piece {
	f := Frame{Scale: scale}
	return paper.Piece{H: 6, Keep: true, Draw: func(c *paper.Canvas, room mm.Box) {
		c.Text(room.X, room.Y+3.4, paper.SmallBold, of+", "+ScaleWords(f)+", ticks the way cabinets look, audience →")
		scaleBar(c, r, f, room.X+124, room.Y+2.4, 24)
	}}
}

// ViewHeight is how tall a view stands on paper, in mm, its hook lines and the end of its
// plumb line included.
func ViewHeight(e Elevation, scale int) float64 {
	lo, hi := Extent(e.places()...)
	return viewStub + (hi.Z-lo.Z)*1000/float64(scale) + 4
}

// DrawSmall draws a stack around x, from y at the top of its hook lines down.
func DrawSmall(c *paper.Canvas, x, y float64, e Elevation, scale int) {
	k := 1000 / float64(scale)
	lo, hi := Extent(e.places()...)
	f := Frame{scale, lo, mm.At(x-(hi.X-lo.X)*k/2, y+viewStub+(hi.Z-lo.Z)*k)}
	first := c.Inked()
	stackFromSide(c, f, e, viewStub)
	numbersInside(c, f, e, first)
}

// Views are drawings side by side at one scale, under a line that states it; most is how
// tall they may be, in mm. There is at least one.
func Views(c *paper.Canvas, of string, r Ruler, views []View, most float64) []paper.Piece {
	var sides []Elevation
	for _, v := range views {
		sides = append(sides, v.Side)
	}
	cell := c.Body().W / float64(len(views))
	scale := ViewScale(r, sides, cell-2*ViewEdge, most)
	tall := 0.0
	for _, s := range sides {
		tall = max(tall, ViewHeight(s, scale))
	}
	return []paper.Piece{ViewHead(of, r, scale), {H: tall + 5, Draw: func(c *paper.Canvas, room mm.Box) {
		for i, v := range views {
			mid := room.X + cell*(float64(i)+0.5)
			DrawSmall(c, mid, room.Y, v.Side, scale)
			c.Centre(mid, room.Bottom()-1, paper.SmallBold, v.Says)
		}
	}}}
}
