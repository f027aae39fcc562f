package layouts

import "math"

// A segment is a straight line on paper.
type segment struct{ a, b spot }

// along returns the point of a segment a fraction of its length from its start.
func (s segment) along(k float64) spot {
	return spot{s.a.x + (s.b.x-s.a.x)*k, s.a.y + (s.b.y-s.a.y)*k}
}

// distance is of places on paper, whose squares need no care that they overflow.
func distance(a, b spot) float64 {
	dx, dy := a.x-b.x, a.y-b.y
	return math.Sqrt(dx*dx + dy*dy)
}

// from returns how far a point is from a segment, in mm.
func (s segment) from(p spot) float64 {
	dx, dy := s.b.x-s.a.x, s.b.y-s.a.y
	square := dx*dx + dy*dy
	if square == 0 {
		return distance(s.a, p)
	}
	k := ((p.x-s.a.x)*dx + (p.y-s.a.y)*dy) / square
	return distance(s.along(min(max(k, 0), 1)), p)
}

// crosses reports whether two segments cut each other.
func (s segment) crosses(t segment) bool {
	side := func(s segment, p spot) float64 {
		return (s.b.x-s.a.x)*(p.y-s.a.y) - (s.b.y-s.a.y)*(p.x-s.a.x)
	}
	return side(s, t.a)*side(s, t.b) < 0 && side(t, s.a)*side(t, s.b) < 0
}

// gap returns how near two segments come, in mm; 0 where they cut each other.
func (s segment) gap(t segment) float64 {
	if s.crosses(t) {
		return 0
	}
	return min(s.from(t.a), s.from(t.b), t.from(s.a), t.from(s.b))
}

// hits reports whether a segment runs through a box (Liang, Barsky: the part
// of the segment that is on the inner side of all four edges).
func (s segment) hits(b box) bool {
	from, to := 0.0, 1.0
	clip := func(d, room float64) bool {
		switch {
		case d == 0:
			return room >= 0
		case d < 0:
			from = max(from, room/d)
		default:
			to = min(to, room/d)
		}
		return from <= to
	}
	dx, dy := s.b.x-s.a.x, s.b.y-s.a.y
	return clip(-dx, s.a.x-b.x) && clip(dx, b.right()-s.a.x) && clip(-dy, s.a.y-b.y) && clip(dy, b.bottom()-s.a.y)
}

// grown returns a box with air around it.
func (b box) grown(by float64) box { return box{b.x - by, b.y - by, b.w + 2*by, b.h + 2*by} }

// meets reports whether two boxes share room.
func (b box) meets(o box) bool {
	return b.x < o.right() && o.x < b.right() && b.y < o.bottom() && o.y < b.bottom()
}

// holds reports whether a point lies in a box.
func (b box) holds(p spot) bool { return b.nearest(p) == p }

// nearest returns the point of a box that is next to a point.
func (b box) nearest(p spot) spot {
	return spot{min(max(p.x, b.x), b.right()), min(max(p.y, b.y), b.bottom())}
}

// A dot is a round mark with its radius.
type dot struct {
	spot
	r float64
}

// A ground is what a drawing has before its tags are placed: room that is
// taken, and marks and words that no leader may run over.
type ground struct {
	room     box
	taken    []box
	dots     []dot
	words    []box
	outlines []box // of stacks
	cells    []int // how much is taken above and to the left of each mm of the room
	wide     int   // cells in a row
}

func (g *ground) take(b box) { g.taken = append(g.taken, b) }

// dot takes the room of a round mark, with air for a leader to be seen in.
func (g *ground) dot(d dot) {
	const air = 2.4
	g.dots = append(g.dots, d)
	g.take(box{d.x - d.r, d.y - d.r, 2 * d.r, 2 * d.r}.grown(air))
}

// word takes the room of some words, if it is free.
func (g *ground) word(b box) bool {
	if b.x < g.room.x || b.y < g.room.y || b.right() > g.room.right() || b.bottom() > g.room.bottom() {
		return false
	}
	for _, t := range g.taken {
		if t.meets(b) {
			return false
		}
	}
	g.take(b.grown(0.6))
	g.words = append(g.words, b)
	return true
}

// settle counts what is taken, so that free has little to do.
func (g *ground) settle() {
	g.wide = int(math.Ceil(g.room.w)) + 1
	tall := int(math.Ceil(g.room.h)) + 1
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
func (g *ground) span(b box) (x0, y0, x1, y1 int) {
	tall := len(g.cells) / g.wide
	cell := func(at float64, most int) int { return min(max(int(at), 0), most) }
	return cell(b.x-g.room.x, g.wide-1), cell(b.y-g.room.y, tall-1),
		cell(math.Ceil(b.right()-g.room.x), g.wide-1), cell(math.Ceil(b.bottom()-g.room.y), tall-1)
}

// count returns how many square millimetres of a box are taken.
func (g *ground) count(b box) int {
	x0, y0, x1, y1 := g.span(b)
	return g.cells[y1*g.wide+x1] - g.cells[y0*g.wide+x1] - g.cells[y1*g.wide+x0] + g.cells[y0*g.wide+x0]
}
