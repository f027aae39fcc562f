package calc

import "math"

// Plot is a rectangle in plan: what a body covers, looked at from above. Its middle line
// runs through the place Left, Down in the direction Pan.
type Plot struct {
	Left, Down  float64 // m, stage left and downstage positive
	Pan         float64 // rad, from straight downstage towards stage left
	Rear, Front float64 // m ahead of the place; Rear is the lesser
	Half        float64 // m, half of its width
}

// Overlap returns by how much two plots cover the same ground, in metres: of the four
// directions of their sides, the least length that both cover along one. It is 0 where
// they touch; below 0 they are clear of each other, and so wide a gap lies between them
// along one of the four.
//
// Free body: none, plane geometry.
//
// Source: separating axes of two rectangles; S. Gottschalk, M. C. Lin, D. Manocha,
// OBBTree, SIGGRAPH 1996 (from memory).
func (p Plot) Overlap(q Plot) float64 {
	return math.Min(p.sharedAlong(q), q.sharedAlong(p))
}

// sharedAlong is the lesser of what both cover along the pan of p and across it, in m.
//
// In the axes of p, ahead and beside, the middle of p is ahead by (rear + front)/2; q,
// turned against p by d, reaches from its own middle by
//
//	ahead:  length/2 |cos d| + half |sin d|
//	beside: length/2 |sin d| + half |cos d|
func (p Plot) sharedAlong(q Plot) float64 {
	sin, cos := math.Sincos(p.Pan)
	turned, along := math.Sincos(q.Pan - p.Pan)
	left, down := q.Left-p.Left, q.Down-p.Down
	middle, length := (q.Rear+q.Front)/2, (q.Front-q.Rear)/2
	ahead, beside := left*sin+down*cos+middle*along, left*cos-down*sin+middle*turned
	sin, cos = math.Abs(turned), math.Abs(along)
	return math.Min(
		shared(p.Rear, p.Front, ahead, length*cos+q.Half*sin),
		shared(-p.Half, p.Half, beside, length*sin+q.Half*cos))
}

// shared is the length that a span has in common with one that runs half its own length
// to either side of a middle, in m; below 0 it is the gap between them.
func shared(from, to, middle, half float64) float64 {
	return math.Min(to, middle+half) - math.Max(from, middle-half)
}
