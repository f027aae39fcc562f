package calc

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
)

// Known by hand: lengths in plan of rectangles whose sides lie along simple angles.
func TestOverlapByHand(t *testing.T) {
	table := Plot{Rear: -0.5, Front: 0.5, Half: 1} // 1 m deep, 2 m wide
	tests := []struct {
		of   string
		q    Plot
		want float64
	}{
		{"itself: the lesser of its sides", table, 1},
		{"0.3 m beside in its half", Plot{Left: 1.7, Rear: -0.5, Front: 0.5, Half: 1}, 0.3},
		{"touching beside", Plot{Left: 2, Rear: -0.5, Front: 0.5, Half: 1}, 0},
		{"clear by 0.25 m in front", Plot{Down: 1, Rear: -0.25, Front: 0.5, Half: 1}, -0.25},
		{"inside: all of its length", Plot{Rear: 0.1, Front: 0.2, Half: 0.5}, 0.1},
		{"a quarter turn: 1 m wide from 0.8 m", Plot{Left: 0.8, Pan: math.Pi / 2, Rear: 0, Front: 3, Half: 0.1}, 0.2},
		{"a quarter turn the other way", Plot{Left: 0.8, Pan: -math.Pi / 2, Rear: 0, Front: 3, Half: 0.1}, 0.2},
		// A square of 1 m on its corner, 0.5 √2 m from its middle: it reaches down to 1.1 - 0.5 √2.
		{"a corner, turned by 45 degrees", Plot{Down: 1.1, Pan: math.Pi / 4, Rear: -0.5, Front: 0.5, Half: 0.5}, 0.5 - (1.1 - math.Sqrt2/2)},
		// Past the corner of the table at (1, 0.5): along the diagonal it ends at 1.5/√2.
		{"corner to side, a gap along the diagonal", Plot{Left: 1.2, Down: 0.8, Pan: math.Pi / 4, Rear: -0.3, Front: 0.3, Half: 0.3}, 1.5/math.Sqrt2 - (2/math.Sqrt2 - 0.3)},
	}
	for _, tt := range tests {
		assert.InDelta(t, tt.want, table.Overlap(tt.q), 1e-12, tt.of)
		assert.InDelta(t, tt.want, tt.q.Overlap(table), 1e-12, tt.of)
	}
}

// A ground is a place in plan: left, down.
type ground [2]float64

// cornersOf go round a plot, by Plan, ahead first and then beside at a right angle.
func cornersOf(p Plot) (all []ground) {
	for _, at := range [][2]float64{{p.Front, p.Half}, {p.Front, -p.Half}, {p.Rear, -p.Half}, {p.Rear, p.Half}} {
		left, down := Plan(p.Left, p.Down, p.Pan, at[0])
		left, down = Plan(left, down, p.Pan+math.Pi/2, at[1])
		all = append(all, ground{left, down})
	}
	return all
}

// clipped cuts a polygon down to what lies inside another one, side by side (Sutherland
// and Hodgman), and areaOf measures what is left.
func clipped(all, by []ground) []ground {
	for i, a := range by {
		b := by[(i+1)%len(by)]
		side := func(g ground) float64 {
			return (b[0]-a[0])*(g[1]-a[1]) - (b[1]-a[1])*(g[0]-a[0])
		}
		var left []ground
		for k, g := range all {
			h := all[(k+1)%len(all)]
			s, u := side(g), side(h)
			if s >= 0 {
				left = append(left, g)
			}
			if s*u < 0 {
				f := s / (s - u)
				left = append(left, ground{g[0] + f*(h[0]-g[0]), g[1] + f*(h[1]-g[1])})
			}
		}
		all = left
	}
	return all
}

func areaOf(all []ground) (area float64) {
	for k, g := range all {
		h := all[(k+1)%len(all)]
		area += (g[0]*h[1] - g[1]*h[0]) / 2
	}
	return math.Abs(area)
}

func randomPlot(r *rand.Rand) Plot {
	rear := between(r, -2, 1)
	return Plot{between(r, -1.5, 1.5), between(r, -1.5, 1.5), between(r, -180, 180) * deg, rear, rear + between(r, 0.05, 2), between(r, 0.05, 1)}
}

// Two plots that cover ground together have a polygon in common, and others have none;
// and the length is the least over the sides, measured from corner to corner.
var plotsSolved = drawn(2000, func(c *tally, r *rand.Rand) {
	p, q := randomPlot(r), randomPlot(r)
	by := p.Overlap(q)
	a, b := cornersOf(p), cornersOf(q)
	if math.Abs(by) > 1e-6 {
		area := areaOf(clipped(a, b))
		assert.Equal(c, by > 0, area > 1e-12, "overlap %g, ground in common %g", by, area)
	}
	least := math.Inf(1)
	for _, sides := range [][]ground{a, b} {
		for i := range 2 {
			least = math.Min(least, sharedBy(sides[i+1], sides[i], a, b))
		}
	}
	c.near(least, by, 1, 1e-12, "overlap, m")
	c.near(by, q.Overlap(p), 1, 1e-12, "overlap the other way, m")
})

// sharedBy is the length that two polygons share along the side between two corners.
func sharedBy(from, to ground, a, b []ground) float64 {
	length := math.Hypot(to[0]-from[0], to[1]-from[1])
	reach := func(all []ground) (lo, hi float64) {
		lo, hi = math.Inf(1), math.Inf(-1)
		for _, g := range all {
			at := ((to[0]-from[0])*g[0] + (to[1]-from[1])*g[1]) / length
			lo, hi = math.Min(lo, at), math.Max(hi, at)
		}
		return lo, hi
	}
	alo, ahi := reach(a)
	blo, bhi := reach(b)
	return math.Min(ahi, bhi) - math.Max(alo, blo)
}
