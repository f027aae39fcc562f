package trials

import (
	"math"
	"math/cmplx"
	"testing"

	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/mat"

	"hangpack/calc"
	"hangpack/paperwork/job"
)

// Outline is where the corners of the first n cabinets are with the bar at a tilt: x
// forward, z up, from the bar's hinge pin.
func Outline(s *job.Stack, n int, tilt float64) (all [][4]complex128) {
	aim, pin := tilt, complex128(0)
	for _, c := range s.Cabinets[:n] {
		aim += c.Hole.Splay * math.Pi / 180
		corner := func(behind, below float64) complex128 {
			return pin + At(calc.Offset{Behind: behind - c.HingeBehindFront, Below: below - c.HingeBelowTop}, aim)
		}
		f, b := c.FrontHeight, c.BackHeight
		all = append(all, [4]complex128{corner(0, 0), corner(0, f), corner(c.Depth, (f+b)/2), corner(c.Depth, (f-b)/2)})
		pin += At(calc.Offset{Below: c.HingePitch}, aim)
	}
	return all
}

// Looks is how far cabinet n looks down with the bar at a tilt, in radians.
func Looks(s *job.Stack, n int, tilt float64) float64 {
	for _, c := range s.Cabinets[:n] {
		tilt += c.Hole.Splay * math.Pi / 180
	}
	return tilt
}

// A System is what that system gives: what each hook pulls up with, what would have
// to push it level and turn it for balance, and what each joint carries, in newtons.
type System struct {
	Hooks       []float64
	Level, Turn float64
	Links, Pull []float64
	Side        []float64
}

// At turns what lies behind and below in a body's axes by t, front down.
func At(o calc.Offset, t float64) complex128 {
	return complex(-o.Behind, -o.Below) * cmplx.Exp(complex(0, -t))
}

// Solve hangs the first n cabinets of a stack by some of its pick holes with the
// bar at a tilt, all masses times more.
func Solve(t *testing.T, s *job.Stack, n int, holes []int, tilt, more float64) System {
	t.Helper()
	return Together(Parts(t, s, n, holes, tilt), nil, func(Part) float64 { return more })
}

// A balance is bar and cabinets as free bodies with three equations each, to be solved
// for many loads at once.
type balance struct {
	hooks, joints int
	a             *mat.Dense
	pins          []complex128 // of the hinge that each cabinet hangs from
	turns         []float64
}

// balanceOf writes the equations of the first n cabinets of a stack.
func balanceOf(s *job.Stack, n int, holes []int, tilt float64) balance {
	b := balance{hooks: len(holes), joints: n, a: mat.NewDense(3*(n+1), 3*(n+1), nil)}
	for i := range holes {
		b.force(0, i, At(s.Bar.PickHoles[holes[i]].At, tilt), 1i)
	}
	b.force(0, len(holes), At(s.Bar.PickHoles[holes[0]].At, tilt), 1)
	if len(holes) == 1 {
		b.a.Set(2, 2, b.a.At(2, 2)+1) // a bare turning moment at the bar
	}
	turn, pin, arm := tilt, complex128(0), s.LinkArm
	for k, c := range s.Cabinets[:n] {
		above := turn
		turn += c.Hole.Splay * math.Pi / 180
		mean, half := (above+turn)/2, (turn-above)/2
		up, back := At(calc.Offset{Below: -1}, mean), At(calc.Offset{Behind: 1}, mean)
		link := pin + back*complex(math.Min(arm, c.LinkArm)*math.Cos(half), 0)
		for j, body := range []int{k + 1, k} {
			sign := complex(float64(1-2*j), 0)
			b.force(body, 3*k+3, pin, sign*up)
			b.force(body, 3*k+4, pin, sign*back)
			b.force(body, 3*k+5, link, sign*up)
		}
		b.pins, b.turns = append(b.pins, pin), append(b.turns, turn)
		pin, arm = pin+At(calc.Offset{Below: c.HingePitch}, turn), c.LinkArm
	}
	return b
}

// force has an unknown act on a body at a place, one way.
func (b balance) force(body, unknown int, at, way complex128) {
	for i, v := range []float64{real(way), imag(way), real(at)*imag(way) - imag(at)*real(way)} {
		b.a.Set(3*body+i, unknown, b.a.At(3*body+i, unknown)+v)
	}
}

// systems solves the balance for every load, each for itself.
func (b balance) systems(t *testing.T, loads []load) (all []System) {
	t.Helper()
	weights := mat.NewDense(3*(b.joints+1), len(loads), nil)
	for i, l := range loads {
		w := l.kg * 9.80665
		weights.Set(3*l.body+1, i, w)
		weights.Set(3*l.body+2, i, w*real(l.at))
	}
	var x mat.Dense
	require.NoError(t, x.Solve(b.a, weights))
	for i := range loads {
		all = append(all, b.system(mat.Col(nil, i, &x)))
	}
	return all
}

func (b balance) system(x []float64) System {
	w := System{Hooks: x[:b.hooks], Level: x[b.hooks]}
	if b.hooks == 1 {
		w.Turn = x[2]
	}
	for k := range b.joints {
		w.Pull, w.Side, w.Links = append(w.Pull, x[3*k+3]), append(w.Side, x[3*k+4]), append(w.Links, x[3*k+5])
	}
	return w
}
