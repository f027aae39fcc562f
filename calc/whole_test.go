package calc

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/mat"
)

// A holding is everything that holds a stack up, and holds it together.
type holding struct {
	joints            []Joint
	front, rear, push float64 // N; push is level, at the front hook
	weight            float64 // N, of all bodies
}

// hold takes the bar and every cabinet as free bodies and solves all of them
// at once: three unknowns a joint, two plumb hooks on the bar, and a level
// force at the front hook that no plumb chain can give and must come out as
// nothing. Holes are in the bar's axes.
func hold(t *testing.T, s Stack, tilt float64, frontHole, rearHole Offset) holding {
	t.Helper()
	all := append([]free{barOf(s, tilt)}, bodies(s, tilt)...)
	n := 3 * len(all)
	a, b := mat.NewDense(n, n, nil), mat.NewVecDense(n, nil)
	act := func(body, unknown int, at, dir []float64, sign float64) {
		for i, v := range []float64{dir[0], dir[1], at[0]*dir[1] - at[1]*dir[0]} {
			a.Set(3*body+i, unknown, a.At(3*body+i, unknown)+sign*v)
		}
	}
	front := moved([]float64{0, 0}, tilt, frontHole.Behind, frontHole.Below)
	rear := moved([]float64{0, 0}, tilt, rearHole.Behind, rearHole.Below)
	act(0, 0, front, []float64{0, 1}, 1)
	act(0, 1, rear, []float64{0, 1}, 1)
	act(0, 2, front, []float64{1, 0}, 1)
	arms := []float64{s.Bar.LinkArm}
	for _, c := range s.Cabinets {
		arms = append(arms, c.LinkArm)
	}
	for k := 1; k < len(all); k++ {
		mean := (all[k-1].turn + all[k].turn) / 2
		half := (all[k].turn - all[k-1].turn) / 2
		up, back := moved([]float64{0, 0}, mean, 0, -1), moved([]float64{0, 0}, mean, 1, 0)
		link := moved(all[k].pin, mean, math.Min(arms[k-1], arms[k])*math.Cos(half), 0)
		for i, body := range []int{k, k - 1} {
			sign := float64(1 - 2*i)
			act(body, 3*k, all[k].pin, up, sign)
			act(body, 3*k+1, all[k].pin, back, sign)
			act(body, 3*k+2, link, up, sign)
		}
	}
	var h holding
	for i, f := range all {
		for _, w := range f.weights {
			h.weight += w[0]
			b.SetVec(3*i+1, b.AtVec(3*i+1)+w[0])
			b.SetVec(3*i+2, b.AtVec(3*i+2)+w[0]*w[1])
		}
	}
	var x mat.VecDense
	require.NoError(t, x.SolveVec(a, b))
	h.front, h.rear, h.push = x.AtVec(0), x.AtVec(1), x.AtVec(2)
	for k := 1; k < len(all); k++ {
		h.joints = append(h.joints, Joint{HingePull: x.AtVec(3 * k), HingeSide: x.AtVec(3*k + 1), Link: x.AtVec(3*k + 2)})
	}
	return h
}

// Joints and hooks of a wild stack, tilted up to 30 degrees either way, against
// one linear system of bar and cabinets. Differences are parts of the largest force
// in the stack or its weight.
var wholeSolved = drawn(200, func(c *tally, r *rand.Rand) {
	s, tilt := wildStack(r), between(r, -30, 30)*deg
	frontHole, rearHole := Offset{between(r, -0.2, 0), -0.1}, Offset{between(r, 0.4, 1.4), -0.1}
	h := hold(c.T, s, tilt, frontHole, rearHole)
	all := s.Centre(tilt)
	front, rear, err := TwoPicks(all.Mass*G, all.At.X, frontHole.Turned(tilt).X, rearHole.Turned(tilt).X)
	require.NoError(c, err)
	joints := s.Joints(s.Poses(tilt))
	require.Len(c, joints, len(h.joints))
	scale := most(h.weight, front, rear)
	for _, j := range joints {
		scale = most(scale, j.Link, j.HingePull)
	}
	c.near(h.weight, all.Mass*G, scale, 1e-9, "weight")
	c.near(h.front, front, scale, 1e-9, "front hook")
	c.near(h.rear, rear, scale, 1e-9, "rear hook")
	c.near(0, h.push, scale, 1e-9, "a level force that no plumb chain gives")
	for k, j := range joints {
		c.near(h.joints[k].Link, j.Link, scale, 1e-9, "link")
		c.near(h.joints[k].HingePull, j.HingePull, scale, 1e-9, "pull")
		c.near(h.joints[k].HingeSide, j.HingeSide, scale, 1e-9, "side")
	}
})
