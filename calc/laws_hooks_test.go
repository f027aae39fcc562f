package calc

import (
	"math"
	"math/rand"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Hung from a hole, a stack has its centre of gravity plumb below the hole,
// top-heavy or not, as far below as it lies from the hole; a top-heavy stack is
// told by its lever.
var plumb = drawn(300, func(c *tally, r *rand.Rand) {
	s := wildStack(r)
	hole := Offset{between(r, -1, 1), between(r, -2, 6)}
	cg := s.CentreInBar()
	tilt, lever := Tilt(hole, cg.At)
	c.near(cg.At.Below-hole.Below, lever, 1, 1e-12, "lever, m")
	pick, at := hole.Turned(tilt), s.Centre(tilt).At
	c.near(pick.X, at.X, 1, 1e-12, "x, m")
	far := math.Hypot(cg.At.Below-hole.Below, cg.At.Behind-hole.Behind)
	c.near(pick.Z-far, at.Z, 1, 1e-12, "z, m")
	assert.Equal(c, lever > 0, math.Abs(tilt) < math.Pi/2)
})

// Where the frame of reference stands changes nothing, and exchanging front
// and rear, with the picture turned round, exchanges the answers.
var hooksMoved = drawn(300, func(c *tally, r *rand.Rand) {
	w, cg, rear := between(r, 1, 5e4), between(r, -2, 2), between(r, -2, 2)
	front, by := rear+between(r, 0.05, 3.05), between(r, -10, 10)
	a, b, err := TwoPicks(w, cg, front, rear)
	require.NoError(c, err)
	scale := most(w, a, b)
	c.near(w, a+b, scale, 1e-9, "sum")
	a2, b2, err := TwoPicks(w, cg+by, front+by, rear+by)
	require.NoError(c, err)
	c.near(a, a2, scale, 1e-9, "front hook, moved")
	c.near(b, b2, scale, 1e-9, "rear hook, moved")
	b3, a3, err := TwoPicks(w, -cg, -rear, -front)
	require.NoError(c, err)
	c.near(a, a3, scale, 1e-9, "front hook, turned round")
	c.near(b, b3, scale, 1e-9, "rear hook, turned round")
	_, _, err = TwoPicks(w, cg, rear, front)
	assert.Error(c, err, "hooks named the wrong way round")
})

// However the bar is held, the centre of gravity lies as far below the line of
// its picks: the height of the line above it, by the cosine of the line's slope.
var belowPicks = stacks(func(c *tally, r *rand.Rand, s Stack, tilt float64) {
	front := Offset{between(r, -0.5, 0.5), between(r, -0.3, 0.3)}
	rear := Offset{front.Behind + between(r, 0.4, 1.4), between(r, -0.3, 0.3)}
	below := BelowPicks(front, rear, s.CentreInBar().At)
	f, b, g := front.Turned(tilt), rear.Turned(tilt), s.Centre(tilt).At
	if f.X-b.X < 0.01 {
		return
	}
	slope := (f.Z - b.Z) / (f.X - b.X)
	height := b.Z + slope*(g.X-b.X) - g.Z
	c.near(height*math.Cos(math.Atan(slope)), below, 1, 1e-9, "m")
})

// After the time that two hoists may be out of step, the line of the holes
// stands at the tilt allowed: the rear hole has come down by speed and time, or gone
// up, on a line of fixed length. Whichever way it is, the other way takes no less.
var outOfStep = drawn(300, func(c *tally, r *rand.Rand) {
	front := Offset{between(r, -0.2, 0.2), between(r, -0.3, 0)}
	rear := Offset{front.Behind + between(r, 0.2, 1.5), between(r, -0.3, 0)}
	tilt, off, speed := between(r, -25, 25)*deg, between(r, 0.5, 5)*deg, between(r, 0.02, 0.3)
	took := OutOfStep(front, rear, tilt, off, speed)
	long := math.Hypot(rear.Behind-front.Behind, rear.Below-front.Below)
	slope := tilt - math.Atan2(rear.Below-front.Below, rear.Behind-front.Behind)
	turned := math.Inf(1)
	for _, way := range []float64{1, -1} {
		sin := math.Sin(slope) + way*took*speed/long
		turned = math.Min(turned, math.Abs(math.Abs(math.Asin(sin)-slope)-off))
		assert.LessOrEqual(c, math.Abs(math.Asin(sin)-slope), off+1e-9, "no further than allowed")
	}
	c.near(0, turned, 1, 1e-9, "rad from what is allowed")
	c.near(took/2, OutOfStep(front, rear, tilt, off, 2*speed), took, 1e-12, "the faster the sooner")
})

// Two like wedges whose fronts meet close until the lower one's top lies on
// the upper one's bottom: with the joint open by BackRoom the rear corners touch.
var backsTouch = drawn(300, func(c *tally, r *rand.Rand) {
	w := Wedge{Front: between(r, 0.2, 0.5), Depth: between(r, 0.3, 0.7)}
	w.Back = w.Front * between(r, 0.7, 1)
	outline := Outline(w.Depth, w.Front, w.Back, 0, 0)
	s := Stack{Cabinets: []Cabinet{
		{HingePitch: w.Front, Corners: outline},
		{Corners: outline, Splay: BackRoom(w, w, w.Front)},
	}}
	corners := s.Corners(s.Poses(between(r, -30, 30) * deg))
	c.near(corners[0][2].X, corners[1][3].X, 1, 1e-12, "x, m")
	c.near(corners[0][2].Z, corners[1][3].Z, 1, 1e-12, "z, m")
})

// With a gap between fronts BackRoom adds up two angles where the true one is
// the arctangent of a sum; for gaps up to 10 mm it stays within 0.13 degrees of
// the corner on the edge, which is reached with the steepest and shallowest wedge.
var backsWithAGap = drawn(300, func(c *tally, r *rand.Rand) {
	w := Wedge{Front: between(r, 0.2, 0.5), Depth: between(r, 0.3, 0.7)}
	w.Back = w.Front * between(r, 0.7, 1)
	gap, rise := between(r, 0, 0.01), (w.Front-w.Back)/2
	school := math.Atan(rise/w.Depth) + math.Atan((rise+gap)/w.Depth)
	c.near(school/deg, BackRoom(w, w, w.Front+gap)/deg, 1, 0.13, "degrees")
})
