package calc

import (
	"math"
	"math/cmplx"
	"math/rand"

	"gonum.org/v1/gonum/mat"
)

func randomHoist(r *rand.Rand) Hoist {
	return Hoist{Mass: between(r, 10, 90), ChainMass: between(r, 0.5, 4), ChainLength: between(r, 10, 40), Falls: 1 + r.Intn(3), Headroom: between(r, 0.3, 1)}
}

// A point is a plumb line of bodies: pick, rigging, hoist, chain in lengths of a
// tenth, rigging. Each is pulled up by what is above it and down by its weight and
// what is below it; all of them at once are a linear system.
var pointsSolved = drawn(200, func(c *tally, r *rand.Rand) {
	h, pick, below, above := randomHoist(r), between(r, 0, 2000), between(r, 0, 20), between(r, 0, 20)
	line := []float64{pick, below, h.Mass, above}
	for range 10 {
		line = append(line, h.ChainMass*h.ChainLength/10)
	}
	n := len(line)
	a := mat.NewDense(n, n, nil)
	for i := range n {
		a.Set(i, i, 1)
		if i > 0 {
			a.Set(i, i-1, -1)
		}
	}
	var pull mat.VecDense
	if err := pull.SolveVec(a, mat.NewVecDense(n, line)); err != nil {
		c.Fatal(err)
	}
	kg := pull.AtVec(n - 1)
	c.near(kg, Static(pick, below, h, above), kg, 1e-12, "static")
	// Alone, the other hook slack, is the same line with the stack for its pick,
	// and as much heavier as masses may be.
	heavy, tolerance := h, between(r, 0, 0.3)
	heavy.Mass, heavy.ChainMass = h.Mass*(1+tolerance), h.ChainMass*(1+tolerance)
	c.near(Static(pick*(1+tolerance), below*(1+tolerance), heavy, above*(1+tolerance)), Alone(pick, below, h, above, tolerance), kg, 1e-12, "alone")
})

// A design load takes each factor once: it grows by the tolerance's part of what
// it is without, and by the dynamic factor's.
var designLoads = drawn(200, func(c *tally, r *rand.Rand) {
	static, tolerance, dynamic := between(r, 1, 5000), between(r, 0, 0.3), between(r, 1, 3)
	c.near(static, Design(static, 0, 1), static, 1e-12, "with no factor")
	c.near(static+static*tolerance, Design(static, tolerance, 1), static, 1e-12, "with the tolerance")
	c.near(Design(static, tolerance, 1)*dynamic, Design(static, tolerance, dynamic), static, 1e-12, "with both")
})

// The chain is as long as ever: all falls of it from hoist to hook, with the hook
// as low as it comes, and what is never used.
var chainKept = drawn(200, func(c *tally, r *rand.Rand) {
	h, high, reserve := randomHoist(r), between(r, 5, 30), between(r, 0, 1)
	hook := LowestHook(high, h, reserve)
	drop := high - h.Headroom - hook
	length := reserve
	for range h.Falls {
		length += drop
	}
	c.near(h.ChainLength, length, 1, 1e-9, "chain, m")
	c.near(h.ChainLength, ChainNeeded(high, hook, h, reserve), 1, 1e-9, "chain that comes down to where it comes, m")
	c.near(reserve, ChainNeeded(high, high-h.Headroom+between(r, 0, 5), h, reserve), 1, 1e-12, "run right up it hangs lower than that already, m")
})

// A column that stands is one long lever of pitches: each is added to the last as a
// complex number, turned back by the joint below it. The lowest one's under side is level,
// by the corners of its outline.
var columnsStand = drawn(200, func(c *tally, r *rand.Rand) {
	column := make([]Cabinet, 1+r.Intn(8))
	for k := range column {
		column[k] = Cabinet{HingePitch: between(r, 0.1, 0.5), Splay: between(r, 0, 0.3)}
	}
	w := Wedge{Front: between(r, 0.15, 0.5), Depth: between(r, 0.2, 0.8)}
	w.Back = w.Front * between(r, 0.4, 1.1)
	seat := w.Seat()
	under := Outline(w.Depth, w.Front, w.Back, between(r, 0, 0.05), 0)
	front, rear := moved([]float64{0, 0}, seat, under[1].Behind, under[1].Below), moved([]float64{0, 0}, seat, under[2].Behind, under[2].Below)
	c.near(front[1], rear[1], 1, 1e-12, "under side, m")
	turn, at := cmplx.Rect(1, -seat), complex128(0)
	for k := len(column) - 1; k >= 0; k-- {
		at += complex(0, column[k].HingePitch) * turn
		turn *= cmplx.Rect(1, column[k].Splay)
	}
	c.near(imag(at), Standing(column, seat), 1, 1e-12, "top hinge, m")
})

// The worse pin takes its share, the other one the rest, and one pin all.
var pinsShare = drawn(200, func(c *tally, r *rand.Rand) {
	force, share := between(r, -5000, 5000), between(r, 0.5, 1)
	whole := math.Abs(force)
	c.near(whole, PinForce(force, 2, share)+PinForce(force, 2, 1-share), 1+whole, 1e-12, "both pins")
	c.near(whole*share, PinForce(force, 2, share), 1+whole, 1e-12, "the worse pin")
	c.near(whole, PinForce(force, 1, share), 1+whole, 1e-12, "one pin")
	c.near(PinForce(force, 2, share), PinForce(-force, 2, share), 1+whole, 1e-12, "pushed as pulled")
})

// Turning the stack about its hinge turns its plan as a rotation matrix does, and
// a tape finds its place again.
var plansSolved = drawn(200, func(c *tally, r *rand.Rand) {
	left, down, pan, x := between(r, -20, 20), between(r, -20, 20), between(r, -180, 180)*deg, between(r, -3, 3)
	var at mat.VecDense
	at.MulVec(mat.NewDense(2, 2, []float64{math.Cos(pan), math.Sin(pan), -math.Sin(pan), math.Cos(pan)}), mat.NewVecDense(2, []float64{0, x}))
	gotLeft, gotDown := Plan(left, down, pan, x)
	c.near(left+at.AtVec(0), gotLeft, 1, 1e-12, "left, m")
	c.near(down+at.AtVec(1), gotDown, 1, 1e-12, "downstage, m")
	c.near(math.Abs(x), Tape(gotLeft-left, gotDown-down), 1, 1e-12, "tape, m")
})
