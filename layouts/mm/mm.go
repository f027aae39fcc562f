// Package mm is places and shapes on paper, in millimetres from the top left corner
// of the page: plain geometry, without ink.
package mm

// A Spot is a point of the paper.
type Spot struct{ X, Y float64 }

// At returns the spot so far to the right and so far down.
func At(x, y float64) Spot { return Spot{x, y} }

// A Box is an upright rectangle of the paper, by its top left corner.
type Box struct{ X, Y, W, H float64 }

// BoxAt returns the box with its top left corner at x, y, so wide and so high.
func BoxAt(x, y, w, h float64) Box { return Box{x, y, w, h} }

// Bottom returns how far down the lower edge of a box is.
func (b Box) Bottom() float64 { return b.Y + b.H }

// Right returns how far to the right the right edge of a box is.
func (b Box) Right() float64 { return b.X + b.W }

// Bounds returns the corners of the least upright rectangle around spots, at least one.
func Bounds(at []Spot) (lo, hi Spot) {
	lo, hi = at[0], at[0]
	for _, p := range at {
		lo = Spot{min(lo.X, p.X), min(lo.Y, p.Y)}
		hi = Spot{max(hi.X, p.X), max(hi.Y, p.Y)}
	}
	return lo, hi
}

// Grown returns a box with air around it.
func (b Box) Grown(by float64) Box { return Box{b.X - by, b.Y - by, b.W + 2*by, b.H + 2*by} }

// Meets reports whether two boxes share room.
func (b Box) Meets(o Box) bool {
	return b.X < o.Right() && o.X < b.Right() && b.Y < o.Bottom() && o.Y < b.Bottom()
}

// Holds reports whether a point lies in a box.
func (b Box) Holds(p Spot) bool { return b.Nearest(p) == p }

// Nearest returns the point of a box that is next to a point.
func (b Box) Nearest(p Spot) Spot {
	return Spot{min(max(p.X, b.X), b.Right()), min(max(p.Y, b.Y), b.Bottom())}
}
