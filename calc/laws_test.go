package calc

import (
	"math"
	"math/rand"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Laws hold for every stack, so they need no source and no tolerance beyond
// rounding.

// All forces on the part below a joint sum to nothing, and so do their moments
// about any point.
var forcesBalance = stacks(func(c *tally, r *rand.Rand, s Stack, tilt float64) {
	poses := s.Poses(tilt)
	joints := s.Joints(poses)
	about := Vec{between(r, -2, 2), between(r, -2, 2)}
	for k, j := range joints {
		mean := poses[k].Aim - s.Cabinets[k].Splay/2
		up, back := Offset{0, -1}.Turned(mean), Offset{1, 0}.Turned(mean)
		link := poses[k].Hinge.Add(Offset{s.Arm(k) * math.Cos(s.Cabinets[k].Splay/2), 0}.Turned(mean))
		below := Centre(hanging(s, poses, k))
		var fx, fz, m float64
		add := func(at Vec, x, z float64) {
			fx, fz, m = fx+x, fz+z, m+(at.X-about.X)*z-(at.Z-about.Z)*x
		}
		add(poses[k].Hinge, up.X*j.HingePull+back.X*j.HingeSide, up.Z*j.HingePull+back.Z*j.HingeSide)
		add(link, up.X*j.Link, up.Z*j.Link)
		add(below.At, 0, -below.Mass*G)
		w := below.Mass * G
		c.near(0, fx, w, 1e-8, "level forces")
		c.near(0, fz, w, 1e-8, "plumb forces")
		c.near(0, m, w, 1e-8, "moments, arms of a metre")
	}
})

// hanging lists every mass of the cabinets from k on, counted from 0, where it hangs.
func hanging(s Stack, poses []Pose, k int) (loads []Load) {
	for ; k < len(poses); k++ {
		place := func(o Offset) Vec { return poses[k].Hinge.Add(o.Turned(poses[k].Aim)) }
		loads = append(loads, Load{s.Cabinets[k].Mass, place(s.Cabinets[k].CentreOfGravity)})
		for _, e := range s.Cabinets[k].Extras {
			loads = append(loads, Load{e.Mass, place(e.At)})
		}
	}
	return loads
}

// mapped returns the stack with every offset and mass changed.
func mapped(s Stack, mass func(float64) float64, at func(Offset) Offset, splay float64) Stack {
	weights := func(in []Weight) (out []Weight) {
		for _, w := range in {
			out = append(out, Weight{mass(w.Mass), at(w.At)})
		}
		return out
	}
	out := Stack{Bar: Bar{mass(s.Bar.Mass), at(s.Bar.CentreOfGravity), s.Bar.LinkArm, weights(s.Bar.Extras)}}
	for _, c := range s.Cabinets {
		c.Mass, c.CentreOfGravity, c.Extras, c.Splay = mass(c.Mass), at(c.CentreOfGravity), weights(c.Extras), c.Splay*splay
		out.Cabinets = append(out.Cabinets, c)
	}
	return out
}

func same(x float64) float64   { return x }
func here(o Offset) Offset     { return o }
func mirror(o Offset) Offset   { return Offset{-o.Behind, o.Below} }
func double(x float64) float64 { return 2 * x }

// Doubling every mass doubles every force and moves no angle.
var doubled = stacks(func(c *tally, _ *rand.Rand, s Stack, tilt float64) {
	twice, w := mapped(s, double, here, 1), s.Centre(tilt).Mass*G
	once := s.Joints(s.Poses(tilt))
	for k, j := range twice.Joints(twice.Poses(tilt)) {
		scale := most(w, once[k].Link, once[k].HingePull)
		c.near(2*once[k].Link, j.Link, scale, 1e-9, "link")
		c.near(2*once[k].HingePull, j.HingePull, scale, 1e-9, "pull")
		c.near(2*once[k].HingeSide, j.HingeSide, scale, 1e-9, "side")
	}
	a, _ := Tilt(Offset{0.2, -0.1}, s.CentreInBar().At)
	b, _ := Tilt(Offset{0.2, -0.1}, twice.CentreInBar().At)
	c.near(a, b, 1, 1e-12, "tilt, rad")
})

// A mirrored stack mirrors its answers: the link, now in front of a body that
// hangs in front, takes the opposite force along the opposite lean.
var mirrored = stacks(func(c *tally, _ *rand.Rand, s Stack, tilt float64) {
	m, w := mapped(s, same, mirror, -1), s.Centre(tilt).Mass*G
	a, b := s.Centre(tilt), m.Centre(-tilt)
	c.near(a.At.X, -b.At.X, 1, 1e-9, "x")
	c.near(a.At.Z, b.At.Z, 1, 1e-9, "z")
	once := s.Joints(s.Poses(tilt))
	for k, j := range m.Joints(m.Poses(-tilt)) {
		scale := most(w, once[k].Link)
		c.near(once[k].Link, -j.Link, scale, 1e-9, "link")
		c.near(once[k].HingeSide, -j.HingeSide, scale, 1e-9, "side")
	}
	one, _ := Tilt(Offset{0.2, -0.1}, s.CentreInBar().At)
	two, _ := Tilt(Offset{-0.2, -0.1}, m.CentreInBar().At)
	c.near(one, -two, 1, 1e-12, "tilt, rad")
})

// The stack is rigid: its centre of gravity has one place in the bar's axes, as
// heavy as its parts.
var rigid = stacks(func(c *tally, _ *rand.Rand, s Stack, tilt float64) {
	in, out := s.CentreInBar(), s.Centre(tilt)
	at := in.At.Turned(tilt)
	c.near(out.At.X, at.X, 1, 1e-9, "x, m")
	c.near(out.At.Z, at.Z, 1, 1e-9, "z, m")
	kg := s.Bar.Mass + extrasOf(s.Bar.Extras)
	for k, cabinet := range s.Cabinets {
		c.near(kg, s.First(k).Centre(tilt).Mass, kg, 1e-12, "mass of the first few")
		kg += cabinet.Mass + extrasOf(cabinet.Extras)
	}
	c.near(kg, out.Mass, kg, 1e-12, "mass")
	c.near(kg, in.Mass, kg, 1e-12, "mass")
})

func extrasOf(extras []Weight) (kg float64) {
	for _, e := range extras {
		kg += e.Mass
	}
	return kg
}

// Neither the order of weights, nor lumping two into one at their centre,
// changes a stack.
var lumped = drawn(100, func(c *tally, r *rand.Rand) {
	s, tilt := randomStack(r), between(r, -30, 30)*deg
	cabinet := &s.Cabinets[r.Intn(len(s.Cabinets))]
	one, two := Weight{between(r, 1, 10), Offset{r.Float64(), r.Float64()}}, Weight{between(r, 1, 10), Offset{r.Float64(), r.Float64()}}
	m := one.Mass + two.Mass
	lump := Weight{m, Offset{
		(one.Mass*one.At.Behind + two.Mass*two.At.Behind) / m,
		(one.Mass*one.At.Below + two.Mass*two.At.Below) / m,
	}}
	was := cabinet.Extras
	var got []Load
	for _, e := range [][]Weight{{one, two}, {two, one}, {lump}} {
		cabinet.Extras = append(append([]Weight{}, was...), e...)
		got = append(got, s.Centre(tilt))
	}
	for _, g := range got[1:] {
		c.near(got[0].Mass, g.Mass, g.Mass, 1e-12, "mass")
		c.near(got[0].At.X, g.At.X, 1, 1e-12, "x, m")
		c.near(got[0].At.Z, g.At.Z, 1, 1e-12, "z, m")
	}
})

// Heavier is never lighter: a weight hung between the hooks and behind every
// hinge takes nothing off either hook or any link. What the hooks gain is the
// weight; the difference is of that.
var heavier = drawn(200, func(c *tally, r *rand.Rand) {
	s := randomStack(r)
	front, rear := 0.5, -6.0 // wide enough for any stack
	before, joints := s.Centre(0), s.Joints(s.Poses(0))
	f0, r0, err := TwoPicks(before.Mass*G, before.At.X, front, rear)
	require.NoError(c, err)
	last, extra := &s.Cabinets[len(s.Cabinets)-1], between(r, 1, 51)
	last.Extras = append(last.Extras, Weight{extra, Offset{1, 0}})
	pose := s.Poses(0)[len(s.Cabinets)-1]
	at := pose.Hinge.Add(Offset{1, 0}.Turned(pose.Aim))
	after := s.Centre(0)
	f1, r1, err := TwoPicks(after.Mass*G, after.At.X, front, rear)
	require.NoError(c, err)
	c.near(extra*G, f1+r1-f0-r0, extra*G, 1e-9, "what both hooks gain")
	if at.X > rear && at.X < front {
		assert.Greater(c, f1, f0)
		assert.Greater(c, r1, r0)
	}
	for k, j := range s.Joints(s.Poses(0)) {
		if at.X < s.Poses(0)[k].Hinge.X {
			assert.Greater(c, j.Link, joints[k].Link, "joint %d", k+1)
		}
	}
})

// A joint in the mirror: link and pull stay, side turns round.
var jointsMirrored = drawn(300, func(c *tally, r *rand.Rand) {
	w, behind, arm := between(r, 0, 1e4), between(r, -1, 1), between(r, 0.1, 1.1)
	splay, lean := between(r, -15, 15)*deg, between(r, -60, 60)*deg
	j, m := JointForces(w, behind, arm, splay, lean), JointForces(w, -behind, -arm, -splay, -lean)
	c.near(j.Link, m.Link, w, 1e-12, "link")
	c.near(j.HingePull, m.HingePull, w, 1e-12, "pull")
	c.near(j.HingeSide, -m.HingeSide, w, 1e-12, "side")
})

// Where cabinets hang, by the test's own rotation matrix: hinges, turns and
// corners, and the lowest corner by looking at them all.
var placesSolved = stacks(func(c *tally, r *rand.Rand, s Stack, tilt float64) {
	poses := s.Poses(tilt)
	corners := s.Corners(poses)
	require.Len(c, corners, len(s.Cabinets))
	for k, f := range bodies(s, tilt) {
		c.near(f.turn, poses[k].Aim, 1, 1e-12, "aim, rad")
		c.near(f.pin[0], poses[k].Hinge.X, 1, 1e-12, "x of a hinge")
		c.near(f.pin[1], poses[k].Hinge.Z, 1, 1e-12, "z of a hinge")
		low := corners[k][0].Z
		for i, o := range s.Cabinets[k].Corners {
			at := moved(f.pin, f.turn, o.Behind, o.Below)
			c.near(at[0], corners[k][i].X, 1, 1e-12, "x of a corner")
			c.near(at[1], corners[k][i].Z, 1, 1e-12, "z of a corner")
			if at[1] < low {
				low = at[1]
			}
		}
		c.near(low, Lowest(corners[k]), 1, 1e-12, "lowest corner")
	}
})
