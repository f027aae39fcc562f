package calc

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Laws hold for every stack, so they need no source and no tolerance beyond
// rounding.

func eachStack(t *testing.T, law func(t *testing.T, r *rand.Rand, s Stack, tilt float64)) {
	t.Helper()
	for seed := range int64(300) {
		r := rand.New(rand.NewSource(seed))
		s, tilt := randomStack(r), (r.Float64()-0.5)*40*deg
		law(t, r, s, tilt)
		if t.Failed() {
			t.Fatalf("seed %d", seed)
		}
	}
}

// All forces on the part below a joint sum to nothing, and so do their moments
// about any point.
func TestForcesAndMomentsBalance(t *testing.T) {
	eachStack(t, func(t *testing.T, r *rand.Rand, s Stack, tilt float64) {
		poses, joints := s.Poses(tilt), s.Joints(s.Poses(tilt))
		about := Vec{r.Float64()*4 - 2, r.Float64()*4 - 2}
		for k, j := range joints {
			mean := poses[k].Aim - s.Cabinets[k].Splay/2
			up, back := Offset{0, -1}.Turned(mean), Offset{1, 0}.Turned(mean)
			arm := math.Min(s.armAbove(k), s.Cabinets[k].LinkArm) * math.Cos(s.Cabinets[k].Splay/2)
			link := poses[k].Hinge.Add(Offset{arm, 0}.Turned(mean))
			below := Centre(hanging(s, poses, k))
			var fx, fz, m float64
			add := func(at Vec, x, z float64) {
				fx, fz, m = fx+x, fz+z, m+(at.X-about.X)*z-(at.Z-about.Z)*x
			}
			add(poses[k].Hinge, up.X*j.HingePull+back.X*j.HingeSide, up.Z*j.HingePull+back.Z*j.HingeSide)
			add(link, up.X*j.Link, up.Z*j.Link)
			add(below.At, 0, -below.Mass*G)
			scale := 1e-9 * below.Mass * G * 10
			assert.InDelta(t, 0, fx, scale)
			assert.InDelta(t, 0, fz, scale)
			assert.InDelta(t, 0, m, scale)
		}
	})
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
func TestDoubleTheMass(t *testing.T) {
	eachStack(t, func(t *testing.T, _ *rand.Rand, s Stack, tilt float64) {
		twice := mapped(s, double, here, 1)
		for k, j := range twice.Joints(twice.Poses(tilt)) {
			once := s.Joints(s.Poses(tilt))[k]
			assert.InDelta(t, 2*once.Link, j.Link, 1e-6)
			assert.InDelta(t, 2*once.HingePull, j.HingePull, 1e-6)
			assert.InDelta(t, 2*once.HingeSide, j.HingeSide, 1e-6)
		}
		a, _ := Tilt(Offset{0.2, -0.1}, s.CentreInBar().At)
		b, _ := Tilt(Offset{0.2, -0.1}, twice.CentreInBar().At)
		assert.InDelta(t, a, b, 1e-12)
	})
}

// A mirrored stack mirrors its answers: the link, now in front of a body that
// hangs in front, takes the opposite force along the opposite lean.
func TestMirror(t *testing.T) {
	eachStack(t, func(t *testing.T, _ *rand.Rand, s Stack, tilt float64) {
		m := mapped(s, same, mirror, -1)
		a, b := s.Centre(tilt), m.Centre(-tilt)
		assert.InDelta(t, a.At.X, -b.At.X, 1e-9)
		assert.InDelta(t, a.At.Z, b.At.Z, 1e-9)
		for k, j := range m.Joints(m.Poses(-tilt)) {
			assert.InDelta(t, s.Joints(s.Poses(tilt))[k].Link, -j.Link, 1e-6)
			assert.InDelta(t, s.Joints(s.Poses(tilt))[k].HingeSide, -j.HingeSide, 1e-6)
		}
		one, _ := Tilt(Offset{0.2, -0.1}, s.CentreInBar().At)
		two, _ := Tilt(Offset{-0.2, -0.1}, m.CentreInBar().At)
		assert.InDelta(t, one, -two, 1e-12)
	})
}

// Hung from a hole, the centre of gravity is plumb below it.
func TestPlumb(t *testing.T) {
	eachStack(t, func(t *testing.T, r *rand.Rand, s Stack, _ float64) {
		hole := Offset{r.Float64() * 0.6, -0.1}
		tilt, lever := Tilt(hole, s.CentreInBar().At)
		require.Positive(t, lever)
		pick, cg := hole.Turned(tilt), s.Centre(tilt)
		assert.InDelta(t, pick.X, cg.At.X, 1e-12)
		assert.Less(t, cg.At.Z, pick.Z)
	})
}

// Heavier is never lighter: more mass on the last cabinet, no pick hole moved,
// and the weight on the hook grows by as much.
func TestHeavierIsNeverLighter(t *testing.T) {
	eachStack(t, func(t *testing.T, r *rand.Rand, s Stack, tilt float64) {
		before, extra := s.Centre(tilt).Mass, r.Float64()*50
		last := &s.Cabinets[len(s.Cabinets)-1]
		last.Extras = append(last.Extras, Weight{extra, Offset{0.2, 0.1}})
		assert.InDelta(t, before+extra, s.Centre(tilt).Mass, 1e-9)
	})
}

// The stack is rigid: its centre of gravity has one place in the bar's axes.
func TestRigid(t *testing.T) {
	eachStack(t, func(t *testing.T, _ *rand.Rand, s Stack, tilt float64) {
		c := s.CentreInBar()
		at := c.At.Turned(tilt)
		assert.InDelta(t, s.Centre(tilt).At.X, at.X, 1e-9)
		assert.InDelta(t, s.Centre(tilt).At.Z, at.Z, 1e-9)
		first := s.First(1)
		assert.InDelta(t, s.Bar.Mass+extrasOf(s.Bar)+Centre(hanging(first, first.Poses(0), 0)).Mass, first.Centre(0).Mass, 1e-9)
	})
}

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

func extrasOf(b Bar) (kg float64) {
	for _, e := range b.Extras {
		kg += e.Mass
	}
	return kg
}

// Two hooks: forces sum to the weight, moments about any point to nothing, and
// a moved origin changes nothing.
func FuzzTwoPicks(f *testing.F) {
	f.Add(1000.0, 0.2, 0.5, -0.5, 3.0)
	f.Fuzz(func(t *testing.T, w, cg, front, rear, about float64) {
		a, b, err := TwoPicks(w, cg, front, rear)
		if err != nil || math.Abs(w) > 1e6 || math.Abs(cg)+math.Abs(front)+math.Abs(rear)+math.Abs(about) > 1e3 {
			return
		}
		eps := 1e-9 * (1 + math.Abs(a) + math.Abs(b)) * 1e4
		if d := a + b - w; math.Abs(d) > eps {
			t.Errorf("forces do not balance by %g N", d)
		}
		if d := a*(front-about) + b*(rear-about) - w*(cg-about); math.Abs(d) > eps {
			t.Errorf("moments do not balance by %g N m", d)
		}
	})
}

func TestTwoPicksRefuses(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	for _, bad := range [][4]float64{{1, 0, 0, 0}, {1, 0, 0.0009, 0}, {1, 0, 0, 1}, {nan, 0, 1, 0}, {1, nan, 1, 0}, {1, 0, nan, 0}, {1, 0, 1, nan}, {inf, 0, 1, 0}, {1, 0, inf, 0}, {1, 0, inf, inf}} {
		_, _, err := TwoPicks(bad[0], bad[1], bad[2], bad[3])
		assert.Error(t, err, bad)
	}
	_, _, err := TwoPicks(1, 0, 0.0011, 0)
	assert.NoError(t, err)
}

// School geometry.
func TestSmallFormulas(t *testing.T) {
	c := Outline(0.4, 0.3, 0.2, 0.02, 0.01)
	assert.InDeltaSlice(t, []float64{-0.02, -0.01, -0.02, 0.29, 0.38, 0.24, 0.38, 0.04},
		[]float64{c[0].Behind, c[0].Below, c[1].Behind, c[1].Below, c[2].Behind, c[2].Below, c[3].Behind, c[3].Below}, 1e-12)
	// Two wedges that each fall 1 in 1 leave 90 degrees; a pitch longer than the
	// front by the depth leaves 45 more.
	w := Wedge{Front: 3, Back: 1, Depth: 1}
	assert.InDelta(t, 90*deg, BackRoom(w, w, 3), 1e-12)
	assert.InDelta(t, 135*deg, BackRoom(w, w, 4), 1e-12)
	assert.InDelta(t, 60.0, PinForce(-100, 2, 0.6), 1e-12)
	assert.InDelta(t, 100.0, PinForce(-100, 1, 0.6), 1e-12)
	h := Hoist{Mass: 52, ChainMass: 1.1, ChainLength: 24, Falls: 2, Headroom: 0.55}
	assert.InDelta(t, 300+3+52+26.4+6, Static(300, 3, h, 6), 1e-9)
	assert.InDelta(t, 131.25, Design(100, 0.05, 1.25), 1e-9)
	assert.InDelta(t, 14-0.55-(24-0.3)/2, LowestHook(14, h, 0.3), 1e-9)
	h.ChainLength = ChainNeeded(14, 2.5, h, 0.3)
	assert.InDelta(t, 2.5, LowestHook(14, h, 0.3), 1e-9, "with as much chain as it needs, the hook just comes down")
	assert.InDelta(t, 0.3, ChainNeeded(14, 13.9, h, 0.3), 1e-12, "run right up it hangs lower than that already")
	left, down := Plan(8, 1, 90*deg, 0.5)
	assert.InDelta(t, 8.5, left, 1e-12)
	assert.InDelta(t, 1.0, down, 1e-12)
	left, down = Plan(8, 1, 0, 0.5)
	assert.InDelta(t, 8.0, left, 1e-12)
	assert.InDelta(t, 1.5, down, 1e-12)
	assert.InDelta(t, 5, Joint{HingePull: -3, HingeSide: 4}.Hinge(), 1e-12)
	assert.Equal(t, -2.0, Lowest([4]Vec{{0, 1}, {0, -2}, {0, 0}, {3, 2}}))
	s := Stack{Cabinets: []Cabinet{{Corners: c, HingePitch: 0.3}, {Corners: c, Splay: 90 * deg}}}
	corners := s.Corners(s.Poses(0))
	assert.InDelta(t, -0.38, corners[0][2].X, 1e-12)
	assert.InDelta(t, -0.24, corners[0][2].Z, 1e-12)
	// Turned front down by a right angle: behind becomes up, below becomes back.
	assert.InDelta(t, -0.24, corners[1][2].X, 1e-12)
	assert.InDelta(t, -0.3+0.38, corners[1][2].Z, 1e-12)
	assert.Zero(t, Centre(nil))
}

// However the bar is held, the centre of gravity lies as far below the line of
// its picks: the height of the line above it, by the cosine of the line's slope.
func TestBelowPicks(t *testing.T) {
	eachStack(t, func(t *testing.T, r *rand.Rand, s Stack, tilt float64) {
		front := Offset{r.Float64() - 0.5, r.Float64()*2 - 1}
		rear := Offset{front.Behind + 0.2 + r.Float64(), r.Float64()*2 - 1}
		below := BelowPicks(front, rear, s.CentreInBar().At)
		f, b, g := front.Turned(tilt), rear.Turned(tilt), s.Centre(tilt).At
		if f.X-b.X < 0.01 {
			return
		}
		slope := (f.Z - b.Z) / (f.X - b.X)
		height := b.Z + slope*(g.X-b.X) - g.Z
		assert.InDelta(t, height*math.Cos(math.Atan(slope)), below, 1e-9)
	})
}

// Two hoists out of step: by hand on a level bar, and the faster the sooner.
func TestOutOfStep(t *testing.T) {
	front, rear := Offset{Behind: 0.1, Below: -0.2}, Offset{Behind: 0.6, Below: -0.2}
	// 67 mm/s on 0.5 m: after a second atan(67/500), 7.6 degrees, whose sine is
	// less than its tangent by under a hundredth.
	assert.InDelta(t, 1, OutOfStep(front, rear, 0, math.Atan(67.0/500), 0.067), 0.01)
	// A bar that slopes by 30 degrees: sin 33 - sin 30 and sin 30 - sin 27, the
	// first is less.
	assert.InDelta(t, 0.5*(math.Sin(33*deg)-math.Sin(30*deg))/0.1, OutOfStep(front, rear, 30*deg, 3*deg, 0.1), 1e-12)
	assert.InDelta(t, 0.5*(math.Sin(33*deg)-math.Sin(30*deg))/0.1, OutOfStep(front, rear, -30*deg, 3*deg, 0.1), 1e-12)
	for range 50 {
		tilt, off := (rand.Float64()-0.5)*deg*60, rand.Float64()*deg*5
		assert.InDelta(t, OutOfStep(front, rear, tilt, off, 0.1)/2, OutOfStep(front, rear, tilt, off, 0.2), 1e-12)
	}
}
