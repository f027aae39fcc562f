package calc

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/mat"
)

// randomStack makes a stack of mixed cabinets with extras on bar and cabinets.
func randomStack(r *rand.Rand) Stack {
	between := func(lo, hi float64) float64 { return lo + (hi-lo)*r.Float64() }
	extras := func() (e []Weight) {
		for range r.Intn(3) {
			e = append(e, Weight{between(0.5, 40), Offset{between(-0.3, 1), between(-0.2, 0.6)}})
		}
		return e
	}
	s := Stack{Bar: Bar{between(5, 120), Offset{between(0.1, 0.6), between(-0.2, 0)}, between(0.2, 0.6), extras()}}
	for range 1 + r.Intn(20) {
		front, depth := between(0.15, 0.5), between(0.25, 0.8)
		s.Cabinets = append(s.Cabinets, Cabinet{
			Mass: between(5, 120), CentreOfGravity: Offset{between(0.05, depth), between(0, front)},
			Splay: between(0, 12) * deg, HingePitch: front + between(0, 0.01), LinkArm: between(0.2, depth),
			Corners: Outline(depth, front, front*between(0.6, 1), between(0, 0.05), 0), Extras: extras(),
		})
	}
	return s
}

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

// TestIndependentSolve compares every joint of 200 random stacks with one
// linear system of all bodies at once, solved by gonum. Pins, centres of
// gravity and lines of links come from the test's own rotation matrix.
func TestIndependentSolve(t *testing.T) {
	for seed := range int64(200) {
		r := rand.New(rand.NewSource(seed))
		s, tilt := randomStack(r), (r.Float64()-0.5)*60*deg
		x := solve(s, tilt)
		for k, j := range s.Joints(s.Poses(tilt)) {
			scale := 1e-9 * (1 + j.Hinge() + math.Abs(j.Link)) * float64(len(s.Cabinets))
			require.InDelta(t, x.AtVec(3*k), j.HingePull, scale, "seed %d, pull of joint %d", seed, k+1)
			require.InDelta(t, x.AtVec(3*k+1), j.HingeSide, scale, "seed %d, side of joint %d", seed, k+1)
			require.InDelta(t, x.AtVec(3*k+2), j.Link, scale, "seed %d, link of joint %d", seed, k+1)
		}
	}
}

// TestIndependentPicks solves two hooks on a random stack as a linear system.
func TestIndependentPicks(t *testing.T) {
	for seed := range int64(200) {
		r := rand.New(rand.NewSource(seed))
		s, tilt := randomStack(r), (r.Float64()-0.5)*30*deg
		front, rear := moved([]float64{0, 0}, tilt, -0.1, -0.1), moved([]float64{0, 0}, tilt, 0.2+r.Float64(), -0.1)
		w, m := 0.0, 0.0
		hang := func(mass float64, at []float64) { w, m = w+mass*9.80665, m+mass*9.80665*at[0] }
		hang(s.Bar.Mass, moved([]float64{0, 0}, tilt, s.Bar.CentreOfGravity.Behind, s.Bar.CentreOfGravity.Below))
		for _, e := range s.Bar.Extras {
			hang(e.Mass, moved([]float64{0, 0}, tilt, e.At.Behind, e.At.Below))
		}
		for _, f := range bodies(s, tilt) {
			for _, x := range f.weights {
				w, m = w+x[0], m+x[0]*x[1]
			}
		}
		var x mat.VecDense
		require.NoError(t, x.SolveVec(mat.NewDense(2, 2, []float64{1, 1, front[0], rear[0]}), mat.NewVecDense(2, []float64{w, m})))
		c := s.Centre(tilt)
		f, b, err := TwoPicks(c.Mass*G, c.At.X, front[0], rear[0])
		require.NoError(t, err)
		require.InDelta(t, x.AtVec(0), f, 1e-9*w*10, "seed %d", seed)
		require.InDelta(t, x.AtVec(1), b, 1e-9*w*10, "seed %d", seed)
	}
}
