// Package tagging places tags beside the marks of a drawing so that none covers
// anything and no two are taken for each other. It is geometry alone: it is given the
// sizes of tags and returns where they stand.
package tagging

import (
	"math"

	"hangpack/layouts/mm"
)

// A Dot is a round mark with its radius.
type Dot struct {
	mm.Spot
	R    float64
	Pale bool // it has no tag here; a leader may run over it, at a cost
}

// A Ground is what a drawing has before its tags are placed: room that is
// taken, and marks and words that no leader may run over.
type Ground struct {
	room     mm.Box
	taken    []mm.Box
	dots     []Dot
	words    []mm.Box
	outlines []mm.Box // of stacks
	cells    []int    // how much is taken above and to the left of each mm of the room
	wide     int      // cells in a row
}

// NewGround returns a room that nothing is in.
func NewGround(room mm.Box) *Ground { return &Ground{room: room} }

// Take takes the room of a box, so that no tag stands there.
func (g *Ground) Take(b mm.Box) { g.taken = append(g.taken, b) }

// Mark takes the room of a round mark, with air for a leader to be seen in.
func (g *Ground) Mark(d Dot) {
	const air = 2.4
	g.dots = append(g.dots, d)
	g.Take(mm.BoxAt(d.X-d.R, d.Y-d.R, 2*d.R, 2*d.R).Grown(air))
}

// Outline takes the room of an outline, with some air.
func (g *Ground) Outline(b mm.Box) {
	g.outlines = append(g.outlines, b)
	g.Take(b.Grown(1))
}

// Word takes the room of some words, if it is free.
func (g *Ground) Word(b mm.Box) bool {
	if b.X < g.room.X || b.Y < g.room.Y || b.Right() > g.room.Right() || b.Bottom() > g.room.Bottom() {
		return false
	}
	for _, t := range g.taken {
		if t.Meets(b) {
			return false
		}
	}
	g.Take(b.Grown(0.6))
	g.words = append(g.words, b)
	return true
}

// Settle counts what is taken. It comes after all else and before Place.
func (g *Ground) Settle() {
	g.wide = int(math.Ceil(g.room.W)) + 1
	tall := int(math.Ceil(g.room.H)) + 1
	g.cells = make([]int, g.wide*tall)
	for _, t := range g.taken {
		x0, y0, x1, y1 := g.span(t)
		for y := y0; y < y1; y++ {
			for x := x0; x < x1; x++ {
				g.cells[(y+1)*g.wide+x+1] = 1
			}
		}
	}
	for y := 1; y < tall; y++ {
		for x := 1; x < g.wide; x++ {
			g.cells[y*g.wide+x] += g.cells[(y-1)*g.wide+x] + g.cells[y*g.wide+x-1] - g.cells[(y-1)*g.wide+x-1]
		}
	}
}

// span returns the cells of the room that a box covers, the last ones not
// included.
func (g *Ground) span(b mm.Box) (x0, y0, x1, y1 int) {
	tall := len(g.cells) / g.wide
	cell := func(at float64, most int) int { return min(max(int(at), 0), most) }
	return cell(b.X-g.room.X, g.wide-1), cell(b.Y-g.room.Y, tall-1),
		cell(math.Ceil(b.Right()-g.room.X), g.wide-1), cell(math.Ceil(b.Bottom()-g.room.Y), tall-1)
}

// count returns how many square millimetres of a box are taken.
func (g *Ground) count(b mm.Box) int {
	x0, y0, x1, y1 := g.span(b)
	return g.cells[y1*g.wide+x1] - g.cells[y0*g.wide+x1] - g.cells[y1*g.wide+x0] + g.cells[y0*g.wide+x0]
}
