package mm

import "math"

// A Segment is a straight line on paper.
type Segment struct{ A, B Spot }

// Along returns the point of a segment a fraction of its length from its start.
func (s Segment) Along(k float64) Spot {
	return Spot{s.A.X + (s.B.X-s.A.X)*k, s.A.Y + (s.B.Y-s.A.Y)*k}
}

// Distance returns how far apart two spots are, in mm. Squares of places on paper need no
// care that they overflow.
func Distance(a, b Spot) float64 {
	dx, dy := a.X-b.X, a.Y-b.Y
	return math.Sqrt(dx*dx + dy*dy)
}

// From returns how far a point is from a segment, in mm.
func (s Segment) From(p Spot) float64 {
	dx, dy := s.B.X-s.A.X, s.B.Y-s.A.Y
	square := dx*dx + dy*dy
	if square == 0 {
		return Distance(s.A, p)
	}
	k := ((p.X-s.A.X)*dx + (p.Y-s.A.Y)*dy) / square
	return Distance(s.Along(min(max(k, 0), 1)), p)
}

// Crosses reports whether two segments cut each other.
func (s Segment) Crosses(t Segment) bool {
	side := func(s Segment, p Spot) float64 {
		return (s.B.X-s.A.X)*(p.Y-s.A.Y) - (s.B.Y-s.A.Y)*(p.X-s.A.X)
	}
	return side(s, t.A)*side(s, t.B) < 0 && side(t, s.A)*side(t, s.B) < 0
}

// Gap returns how near two segments come, in mm; 0 where they cut each other.
func (s Segment) Gap(t Segment) float64 {
	if s.Crosses(t) {
		return 0
	}
	return min(s.From(t.A), s.From(t.B), t.From(s.A), t.From(s.B))
}

// Hits reports whether a segment runs through a box (Liang, Barsky: the part
// of the segment that is on the inner side of all four edges).
func (s Segment) Hits(b Box) bool {
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
	dx, dy := s.B.X-s.A.X, s.B.Y-s.A.Y
	return clip(-dx, s.A.X-b.X) && clip(dx, b.Right()-s.A.X) && clip(-dy, s.A.Y-b.Y) && clip(dy, b.Bottom()-s.A.Y)
}
