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
	size := 3 * (n + 1)
	a, b := mat.NewDense(size, size, nil), mat.NewVecDense(size, nil)
	force := func(body, unknown int, at, way complex128) {
		for i, v := range []float64{real(way), imag(way), real(at)*imag(way) - imag(at)*real(way)} {
			a.Set(3*body+i, unknown, a.At(3*body+i, unknown)+v)
		}
	}
	weigh := func(body int, kg float64, at complex128) {
		w := kg * more * 9.80665
		b.SetVec(3*body+1, b.AtVec(3*body+1)+w)
		b.SetVec(3*body+2, b.AtVec(3*body+2)+w*real(at))
	}
	weigh(0, s.Bar.Mass, At(s.Bar.CentreOfGravity, tilt))
	for _, e := range s.Extras {
		if e.Cabinet == 0 {
			weigh(0, e.Mass, At(e.At, tilt))
		}
	}
	hook := func(i int) complex128 { return At(s.Bar.PickHoles[holes[i]].At, tilt) }
	for i := range holes {
		force(0, i, hook(i), 1i)
	}
	force(0, len(holes), hook(0), 1)
	if len(holes) == 1 {
		a.Set(2, 2, a.At(2, 2)+1) // a bare turning moment at the bar
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
			force(body, 3*k+3, pin, sign*up)
			force(body, 3*k+4, pin, sign*back)
			force(body, 3*k+5, link, sign*up)
		}
		weigh(k+1, c.Mass, pin+At(c.CentreOfGravity, turn))
		for _, e := range s.Extras {
			if e.Cabinet == k+1 {
				weigh(k+1, e.Mass, pin+At(e.At, turn))
			}
		}
		pin, arm = pin+At(calc.Offset{Below: c.HingePitch}, turn), c.LinkArm
	}
	var x mat.VecDense
	require.NoError(t, x.SolveVec(a, b))
	w := System{Level: x.AtVec(len(holes))}
	for i := range holes {
		w.Hooks = append(w.Hooks, x.AtVec(i))
	}
	if len(holes) == 1 {
		w.Turn = x.AtVec(2)
	}
	for k := range n {
		w.Pull, w.Side, w.Links = append(w.Pull, x.AtVec(3*k+3)), append(w.Side, x.AtVec(3*k+4)), append(w.Links, x.AtVec(3*k+5))
	}
	return w
}
