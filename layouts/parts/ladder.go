package parts

import (
	"hangpack/layouts/paper"
)

// A Ladder is the holes of one joint, as many and in the order of the gear's
// list, with the right one.
type Ladder struct {
	Of, Right int // Right counts from 0
}

// LadderMost is how many holes of a joint a ladder shows.
const LadderMost = 9

// Draw draws a row of a joint's holes with the right one filled, the middle
// of its first hole at x; where the list is longer than the row, dots say that
// it goes on.
func (l Ladder) Draw(c *paper.Canvas, x, y, pitch float64) {
	first := 0
	if l.Of > LadderMost {
		first = min(max(l.Right-LadderMost/2, 0), l.Of-LadderMost)
	}
	last := min(first+LadderMost, l.Of)
	for i := first; i < last; i++ {
		at := x + pitch*float64(i-first)
		switch {
		case i == l.Right:
			c.Disc(at, y, pitch*0.48, 0, paper.Black)
		case i == first && first > 0 || i == last-1 && last < l.Of:
			for _, d := range []float64{-0.3, 0, 0.3} {
				c.Disc(at+d*pitch, y, 0.15, 0, paper.Black)
			}
		default:
			c.Disc(at, y, pitch*0.36, paper.Light, paper.White)
		}
	}
}
