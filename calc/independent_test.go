package calc

import (
	"math"
	"math/rand"

	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/mat"
)

// A plane is a rotation matrix of the test's own, with x forward and z up: the
// columns are where a part's behind and below go.
func plane(t float64) *mat.Dense {
	c, s := math.Cos(t), math.Sin(t)
	return mat.NewDense(2, 2, []float64{-c, -s, s, -c})
}

func moved(at []float64, t float64, behind, below float64) []float64 {
	var v mat.VecDense
	v.MulVec(plane(t), mat.NewVecDense(2, []float64{behind, below}))
	return []float64{at[0] + v.AtVec(0), at[1] + v.AtVec(1)}
}

// A free body is one cabinet: its turn, the pin it hangs from, its weights.
type free struct {
	turn    float64
	pin     []float64
	weights [][3]float64 // N, x, z
}

func bodies(s Stack, tilt float64) (all []free) {
	pin, turn := []float64{0, 0}, tilt
	for _, c := range s.Cabinets {
		turn += c.Splay
		f := free{turn: turn, pin: pin}
		hang := func(m float64, o Offset) {
			at := moved(pin, turn, o.Behind, o.Below)
			f.weights = append(f.weights, [3]float64{m * 9.80665, at[0], at[1]})
		}
		hang(c.Mass, c.CentreOfGravity)
		for _, e := range c.Extras {
			hang(e.Mass, e.At)
		}
		all = append(all, f)
		pin = moved(pin, turn, 0, c.HingePitch)
	}
	return all
}

// barOf is the bar with what is tied to it.
func barOf(s Stack, tilt float64) free {
	bar := free{turn: tilt, pin: []float64{0, 0}}
	for _, e := range append([]Weight{{s.Bar.Mass, s.Bar.CentreOfGravity}}, s.Bar.Extras...) {
		at := moved(bar.pin, tilt, e.At.Behind, e.At.Below)
		bar.weights = append(bar.weights, [3]float64{e.Mass * 9.80665, at[0], at[1]})
	}
	return bar
}

// solve sets up every cabinet as a free body, three unknowns a joint (pull and
// side of the hinge, pull of the link, as they act on the lower body, upwards
// and backwards), and solves them all at once.
func solve(s Stack, tilt float64) *mat.VecDense {
	all := bodies(s, tilt)
	n := len(all)
	a, b := mat.NewDense(3*n, 3*n, nil), mat.NewVecDense(3*n, nil)
	// act adds a unit force of unknown `col` at a place, along a direction, to
	// the three equations of a body; moments are about the world's origin.
	act := func(body, col int, at, dir []float64, sign float64) {
		a.Set(3*body, col, a.At(3*body, col)+sign*dir[0])
		a.Set(3*body+1, col, a.At(3*body+1, col)+sign*dir[1])
		a.Set(3*body+2, col, a.At(3*body+2, col)+sign*(at[0]*dir[1]-at[1]*dir[0]))
	}
	for k, f := range all {
		splay := s.Cabinets[k].Splay
		mean := f.turn - splay/2
		arm := s.Cabinets[k].LinkArm
		if k == 0 {
			arm = math.Min(arm, s.Bar.LinkArm)
		} else {
			arm = math.Min(arm, s.Cabinets[k-1].LinkArm)
		}
		up, back := moved([]float64{0, 0}, mean, 0, -1), moved([]float64{0, 0}, mean, 1, 0)
		link := moved(f.pin, mean, arm*math.Cos(splay/2), 0)
		for body, sign := range map[int]float64{k: 1, k - 1: -1} {
			if body < 0 {
				continue
			}
			act(body, 3*k, f.pin, up, sign)
			act(body, 3*k+1, f.pin, back, sign)
			act(body, 3*k+2, link, up, sign)
		}
		for _, w := range f.weights {
			b.SetVec(3*k+1, b.AtVec(3*k+1)+w[0])
			b.SetVec(3*k+2, b.AtVec(3*k+2)+w[1]*w[0])
		}
	}
	var x mat.VecDense
	if err := x.SolveVec(a, b); err != nil {
		panic(err)
	}
	return &x
}

// Every joint of a random stack against one linear system of all cabinets at
// once, solved by gonum. Pins, centres of gravity and lines of links come from the
// test's own rotation matrix.
var jointsSolved = drawn(200, func(c *tally, r *rand.Rand) {
	s, tilt := randomStack(r), between(r, -30, 30)*deg
	x := solve(s, tilt)
	for k, j := range s.Joints(s.Poses(tilt)) {
		scale := (1 + most(j.Hinge(), j.Link)) * float64(len(s.Cabinets))
		c.near(x.AtVec(3*k), j.HingePull, scale, 1e-9, "pull")
		c.near(x.AtVec(3*k+1), j.HingeSide, scale, 1e-9, "side")
		c.near(x.AtVec(3*k+2), j.Link, scale, 1e-9, "link")
	}
})

// Two hooks on a random stack as a linear system.
var hooksSolved = drawn(200, func(c *tally, r *rand.Rand) {
	s, tilt := randomStack(r), between(r, -15, 15)*deg
	front, rear := moved([]float64{0, 0}, tilt, -0.1, -0.1), moved([]float64{0, 0}, tilt, between(r, 0.2, 1.2), -0.1)
	w, m := 0.0, 0.0
	for _, f := range append(bodies(s, tilt), barOf(s, tilt)) {
		for _, x := range f.weights {
			w, m = w+x[0], m+x[0]*x[1]
		}
	}
	var x mat.VecDense
	require.NoError(c, x.SolveVec(mat.NewDense(2, 2, []float64{1, 1, front[0], rear[0]}), mat.NewVecDense(2, []float64{w, m})))
	all := s.Centre(tilt)
	f, b, err := TwoPicks(all.Mass*G, all.At.X, front[0], rear[0])
	require.NoError(c, err)
	c.near(x.AtVec(0), f, w, 1e-8, "front hook")
	c.near(x.AtVec(1), b, w, 1e-8, "rear hook")
})
