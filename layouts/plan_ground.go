package layouts

import (
	"math"

	"hangpack/layouts/mm"
)

// A dot is a round mark with its radius.
type dot struct {
	mm.Spot
	r float64
}

// A ground is what a drawing has before its tags are placed: room that is
// taken, and marks and words that no leader may run over.
type ground struct {
	room     mm.Box
	taken    []mm.Box
	dots     []dot
	words    []mm.Box
	outlines []mm.Box // of stacks
	cells    []int    // how much is taken above and to the left of each mm of the room
	wide     int      // cells in a row
}

func (g *ground) take(b mm.Box) { g.taken = append(g.taken, b) }

// dot takes the room of a round mark, with air for a leader to be seen in.
func (g *ground) dot(d dot) {
	const air = 2.4
	g.dots = append(g.dots, d)
	g.take(mm.BoxAt(d.X-d.r, d.Y-d.r, 2*d.r, 2*d.r).Grown(air))
}

// word takes the room of some words, if it is free.
func (g *ground) word(b mm.Box) bool {
	if b.X < g.room.X || b.Y < g.room.Y || b.Right() > g.room.Right() || b.Bottom() > g.room.Bottom() {
		return false
	}
	for _, t := range g.taken {
		if t.Meets(b) {
			return false
		}
	}
	g.take(b.Grown(0.6))
	g.words = append(g.words, b)
	return true
}

// settle counts what is taken, so that free has little to do.
func (g *ground) settle() {
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
func (g *ground) span(b mm.Box) (x0, y0, x1, y1 int) {
	tall := len(g.cells) / g.wide
	cell := func(at float64, most int) int { return min(max(int(at), 0), most) }
	return cell(b.X-g.room.X, g.wide-1), cell(b.Y-g.room.Y, tall-1),
		cell(math.Ceil(b.Right()-g.room.X), g.wide-1), cell(math.Ceil(b.Bottom()-g.room.Y), tall-1)
}

// count returns how many square millimetres of a box are taken.
func (g *ground) count(b mm.Box) int {
	x0, y0, x1, y1 := g.span(b)
	return g.cells[y1*g.wide+x1] - g.cells[y0*g.wide+x1] - g.cells[y1*g.wide+x0] + g.cells[y0*g.wide+x0]
}
