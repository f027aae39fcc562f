package calc

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/mat"
)

// wildStack is randomStack without its tameness: splays of both signs, and
// centres of gravity ahead of the hinge, so that links are pushed as well.
func wildStack(r *rand.Rand) Stack {
	s := randomStack(r)
	for k := range s.Cabinets {
		c := &s.Cabinets[k]
		c.Splay = (r.Float64()*2 - 1) * 15 * deg
		c.CentreOfGravity.Behind = r.Float64()*0.9 - 0.3
	}
	return s
}

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
	cabinets := bodies(s, tilt)
	bar := free{turn: tilt, pin: []float64{0, 0}}
	for _, e := range append([]Weight{{s.Bar.Mass, s.Bar.CentreOfGravity}}, s.Bar.Extras...) {
		at := moved(bar.pin, tilt, e.At.Behind, e.At.Below)
		bar.weights = append(bar.weights, [3]float64{e.Mass * 9.80665, at[0], at[1]})
	}
	all := append([]free{bar}, cabinets...)
	n := 3 * len(all)
	a, b := mat.NewDense(n, n, nil), mat.NewVecDense(n, nil)
	act := func(body, unknown int, at, dir []float64, sign float64) {
		for i, v := range []float64{dir[0], dir[1], at[0]*dir[1] - at[1]*dir[0]} {
			a.Set(3*body+i, unknown, a.At(3*body+i, unknown)+sign*v)
		}
	}
	front := moved(bar.pin, tilt, frontHole.Behind, frontHole.Below)
	rear := moved(bar.pin, tilt, rearHole.Behind, rearHole.Below)
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

// TestWholeAsOneSystem compares joints and hooks of 200 wild stacks, tilted up
// to 30 degrees either way, with one linear system. The tolerance is relative:
// 1e-9 of the largest force in the stack or its weight.
func TestWholeAsOneSystem(t *testing.T) {
	var worst float64
	var worstSeed int64
	for seed := range int64(200) {
		r := rand.New(rand.NewSource(1000 + seed))
		s, tilt := wildStack(r), (r.Float64()*2-1)*30*deg
		frontHole, rearHole := Offset{r.Float64()*0.2 - 0.2, -0.1}, Offset{0.4 + r.Float64(), -0.1}
		h := hold(t, s, tilt, frontHole, rearHole)
		c := s.Centre(tilt)
		front, rear, err := TwoPicks(c.Mass*G, c.At.X, frontHole.Turned(tilt).X, rearHole.Turned(tilt).X)
		require.NoError(t, err, "seed %d", 1000+seed)
		joints := s.Joints(s.Poses(tilt))
		require.Len(t, joints, len(h.joints))
		scale := math.Max(h.weight, math.Max(math.Abs(front), math.Abs(rear)))
		off := []float64{c.Mass*G - h.weight, front - h.front, rear - h.rear, h.push}
		for k, j := range joints {
			scale = math.Max(scale, math.Max(math.Abs(j.Link), math.Abs(j.HingePull)))
			off = append(off, j.Link-h.joints[k].Link, j.HingePull-h.joints[k].HingePull, j.HingeSide-h.joints[k].HingeSide)
		}
		for i, d := range off {
			if rel := math.Abs(d) / scale; rel > worst {
				worst, worstSeed = rel, 1000+seed
			}
			require.InDelta(t, 0, d, 1e-9*scale, "seed %d: weight, front, rear, push, then link, pull, side a joint: number %d", 1000+seed, i)
		}
	}
	t.Logf("worst relative difference %.1e, at seed %d", worst, worstSeed)
}

// OpenStax University Physics volume 1, chapter 12, and Baker and Haynes,
// Engineering Statics: Open and Interactive, chapter 7, to the last digit that
// they print.
func TestPublishedLastDigit(t *testing.T) {
	// UP1 section 12.2, problem: scaffold of 40.0 kg and 6.0 m, painter of
	// 80.0 kg 1.0 m from the left end, 16.0 kg 1.5 m from the right one; 888.5 N
	// and 444.3 N, the left twice the right.
	left, right, err := TwoPicks(136*9.8, (40*3+80*5+16*1.5)/136.0, 6, 0)
	require.NoError(t, err)
	assert.InDelta(t, 888.5, left, 0.05)
	assert.InDelta(t, 444.3, right, 0.05)
	assert.InDelta(t, 2*right, left, 1e-9)

	// UP1 section 12.2, example "The Torque Balance": a metre stick of 150 g on
	// a fulcrum at 70 cm with 50 g at 0 and 75 g at 30 cm; 316.7 g at 100 cm
	// balances it. Rounded so, the balance lies within 0.05 g of 30 cm of arm.
	c := Centre([]Load{{150, Vec{50, 0}}, {50, Vec{}}, {75, Vec{30, 0}}, {316.7, Vec{100, 0}}})
	assert.InDelta(t, 70, c.At.X, 0.05*30/591.7)

	// Statics, example "3D Center of Mass": 26,633 lb. The page prints the hole
	// as 50.27 cubic feet, which would give 26,632.25; 16π is what it rounds.
	c = Centre([]Load{{216 * 125, Vec{-3, 4.5}}, {-16 * math.Pi * 125, Vec{-3, 6}}, {12 * 493, Vec{-4, 1}}})
	assert.InDelta(t, 26633, c.Mass, 0.5)
	assert.InDelta(t, -3.22, c.At.X, 0.005)
	assert.InDelta(t, 3.37, c.At.Z, 0.005)
}

// Where the frame of reference stands changes nothing, and exchanging front
// and rear, with the picture turned round, exchanges the answers.
func TestTwoPicksOriginAndNames(t *testing.T) {
	r := rand.New(rand.NewSource(7))
	for range 300 {
		w, cg, rear := r.Float64()*5e4, r.Float64()*4-2, r.Float64()*4-2
		front, by := rear+0.05+r.Float64()*3, r.Float64()*20-10
		a, b, err := TwoPicks(w, cg, front, rear)
		require.NoError(t, err)
		eps := 1e-9 * (w + math.Abs(a) + math.Abs(b))
		a2, b2, err := TwoPicks(w, cg+by, front+by, rear+by)
		require.NoError(t, err)
		assert.InDelta(t, a, a2, eps)
		assert.InDelta(t, b, b2, eps)
		b3, a3, err := TwoPicks(w, -cg, -rear, -front)
		require.NoError(t, err)
		assert.InDelta(t, a, a3, eps)
		assert.InDelta(t, b, b3, eps)
		_, _, err = TwoPicks(w, cg, rear, front)
		assert.Error(t, err, "hooks named the wrong way round")
	}
}

// Under one hook it carries all; half way, half; outside, the other is slack.
func TestTwoPicksPlaces(t *testing.T) {
	for _, tt := range []struct{ cg, front, rear float64 }{
		{1, 1000, 0}, {-1, 0, 1000}, {0, 500, 500}, {-2, -500, 1500}, {2, 1500, -500},
	} {
		f, r, err := TwoPicks(1000, tt.cg, 1, -1)
		require.NoError(t, err)
		assert.InDelta(t, tt.front, f, 1e-9, "cg at %v", tt.cg)
		assert.InDelta(t, tt.rear, r, 1e-9, "cg at %v", tt.cg)
	}
	_, _, err := TwoPicks(1, 0, 0.001, 0)
	assert.NoError(t, err, "a span of 1 mm is the least allowed")
	_, _, err = TwoPicks(1, 0, 0.000999, 0)
	assert.Error(t, err)
}

// Heavier is never lighter: a weight hung between the hooks and behind every
// hinge takes nothing off either hook, any link, or any point.
func TestHeavierLoadsEverything(t *testing.T) {
	for seed := range int64(200) {
		r := rand.New(rand.NewSource(seed))
		s := randomStack(r)
		front, rear := 0.5, -6.0 // wide enough for any stack
		before, joints := s.Centre(0), s.Joints(s.Poses(0))
		f0, r0, err := TwoPicks(before.Mass*G, before.At.X, front, rear)
		require.NoError(t, err)
		last := &s.Cabinets[len(s.Cabinets)-1]
		last.Extras = append(last.Extras, Weight{1 + r.Float64()*50, Offset{1, 0}})
		pose := s.Poses(0)[len(s.Cabinets)-1]
		at := pose.Hinge.Add(Offset{1, 0}.Turned(pose.Aim))
		after := s.Centre(0)
		f1, r1, err := TwoPicks(after.Mass*G, after.At.X, front, rear)
		require.NoError(t, err)
		if at.X > rear && at.X < front {
			assert.Greater(t, f1, f0, "seed %d", seed)
			assert.Greater(t, r1, r0, "seed %d", seed)
		}
		for k, j := range s.Joints(s.Poses(0)) {
			if at.X < s.Poses(0)[k].Hinge.X {
				assert.Greater(t, j.Link, joints[k].Link, "seed %d, joint %d", seed, k+1)
			}
		}
		h := Hoist{Mass: 50, ChainMass: 1, ChainLength: 20, Falls: 1}
		assert.Greater(t, Static(after.Mass, 3, h, 5), Static(before.Mass, 3, h, 5), "seed %d", seed)
	}
}

// A joint in the mirror: link and pull stay, side turns round.
func TestJointInTheMirror(t *testing.T) {
	r := rand.New(rand.NewSource(11))
	for range 300 {
		w, behind, arm := r.Float64()*1e4, r.Float64()*2-1, 0.1+r.Float64()
		splay, lean := (r.Float64()-0.5)*deg*30, (r.Float64()-0.5)*deg*120
		j, m := JointForces(w, behind, arm, splay, lean), JointForces(w, -behind, -arm, -splay, -lean)
		assert.InDelta(t, j.Link, m.Link, 1e-9)
		assert.InDelta(t, j.HingePull, m.HingePull, 1e-9)
		assert.InDelta(t, j.HingeSide, -m.HingeSide, 1e-9)
	}
}

// Neither the order of weights, nor lumping two into one at their centre,
// changes a stack.
func TestOrderAndLumps(t *testing.T) {
	for seed := range int64(100) {
		r := rand.New(rand.NewSource(seed))
		s, tilt := randomStack(r), (r.Float64()-0.5)*deg*60
		c := &s.Cabinets[r.Intn(len(s.Cabinets))]
		one, two := Weight{1 + r.Float64()*9, Offset{r.Float64(), r.Float64()}}, Weight{1 + r.Float64()*9, Offset{r.Float64(), r.Float64()}}
		m := one.Mass + two.Mass
		lump := Weight{m, Offset{
			(one.Mass*one.At.Behind + two.Mass*two.At.Behind) / m,
			(one.Mass*one.At.Below + two.Mass*two.At.Below) / m,
		}}
		was := c.Extras
		var got []Load
		for _, e := range [][]Weight{{one, two}, {two, one}, {lump}} {
			c.Extras = append(append([]Weight{}, was...), e...)
			got = append(got, s.Centre(tilt))
		}
		for _, g := range got[1:] {
			assert.InDelta(t, got[0].Mass, g.Mass, 1e-9, "seed %d", seed)
			assert.InDelta(t, got[0].At.X, g.At.X, 1e-12, "seed %d", seed)
			assert.InDelta(t, got[0].At.Z, g.At.Z, 1e-12, "seed %d", seed)
		}
	}
}

// Hung from a hole, any stack that is not top-heavy has its centre of gravity
// plumb below the hole; a top-heavy one is told by its lever.
func TestTiltEveryWay(t *testing.T) {
	for seed := range int64(300) {
		r := rand.New(rand.NewSource(seed))
		s := wildStack(r)
		hole := Offset{r.Float64()*2 - 1, r.Float64()*8 - 2}
		cg := s.CentreInBar()
		tilt, lever := Tilt(hole, cg.At)
		assert.InDelta(t, cg.At.Below-hole.Below, lever, 1e-12, "seed %d", seed)
		pick, c := hole.Turned(tilt), s.Centre(tilt)
		assert.InDelta(t, pick.X, c.At.X, 1e-12, "seed %d", seed)
		assert.Less(t, c.At.Z, pick.Z, "seed %d", seed)
		assert.Equal(t, lever > 0, math.Abs(tilt) < math.Pi/2, "seed %d", seed)
	}
	for _, tt := range []struct {
		hole, cg    Offset
		tilt, lever float64
	}{
		{Offset{0, 0}, Offset{0, 1}, 0, 1},
		{Offset{1, 0}, Offset{0, 1}, 45 * deg, 1}, // held behind: the front goes down
		{Offset{0, 0}, Offset{1, 1}, -45 * deg, 1},
		{Offset{1, 0}, Offset{0, 0}, 90 * deg, 0},
		{Offset{1, 0}, Offset{0, -1}, 135 * deg, -1},
	} {
		tilt, lever := Tilt(tt.hole, tt.cg)
		assert.InDelta(t, tt.tilt, tilt, 1e-12)
		assert.InDelta(t, tt.lever, lever, 1e-12)
	}
}

// Two like wedges whose fronts meet close until the lower one's top lies on
// the upper one's bottom: with the joint open by BackRoom the rear corners
// touch. With a gap between fronts BackRoom adds up two angles where the true
// one is the arctangent of a sum; for gaps up to 10 mm it stays within 0.05
// degrees of the corner on the edge.
func TestBackRoomCorners(t *testing.T) {
	r := rand.New(rand.NewSource(3))
	for range 300 {
		w := Wedge{Front: 0.2 + 0.3*r.Float64(), Depth: 0.3 + 0.4*r.Float64()}
		w.Back = w.Front * (0.7 + 0.3*r.Float64())
		c := Outline(w.Depth, w.Front, w.Back, 0, 0)
		s := Stack{Cabinets: []Cabinet{
			{HingePitch: w.Front, Corners: c},
			{Corners: c, Splay: BackRoom(w, w, w.Front)},
		}}
		corners := s.Corners(s.Poses((r.Float64() - 0.5) * deg * 60))
		assert.InDelta(t, corners[0][2].X, corners[1][3].X, 1e-12)
		assert.InDelta(t, corners[0][2].Z, corners[1][3].Z, 1e-12)

		gap, rise := 0.01*r.Float64(), (w.Front-w.Back)/2
		school := math.Atan(rise/w.Depth) + math.Atan((rise+gap)/w.Depth)
		assert.InDelta(t, school, BackRoom(w, w, w.Front+gap), 0.05*deg)
	}
	assert.Zero(t, BackRoom(Wedge{1, 1, 1}, Wedge{1, 1, 1}, 1), "boxes have no room")
	// 3-4-5 triangles above and below, of different depths.
	assert.InDelta(t, 90*deg, BackRoom(Wedge{8, 2, 4}, Wedge{9, 1, 3}, 8), 1e-12)
}

func TestEdges(t *testing.T) {
	s := Stack{Bar: Bar{Mass: 10, CentreOfGravity: Offset{0.2, -0.1}}}
	assert.Empty(t, s.Joints(s.Poses(0)))
	assert.Empty(t, s.Corners(s.Poses(0)))
	assert.Equal(t, Weight{10, Offset{0.2, -0.1}}, s.CentreInBar())
	two := Stack{Cabinets: []Cabinet{{Mass: 1}, {Mass: 2}}}
	assert.Equal(t, 1.0, two.First(1).Centre(0).Mass)
	assert.Len(t, two.Cabinets, 2, "First leaves its stack alone")
	assert.Equal(t, 0.0, PinForce(0, 2, 0.6))
	assert.InDelta(t, 50, PinForce(100, 2, 0.5), 1e-12)
	h := Hoist{Mass: 40, ChainMass: 1, ChainLength: 20, Falls: 1, Headroom: 0.5}
	assert.InDelta(t, 12-0.5-19, LowestHook(12, h, 1), 1e-12)
	h.Falls = 2
	assert.InDelta(t, 12-0.5-9.5, LowestHook(12, h, 1), 1e-12)
	assert.InDelta(t, 60, Static(0, 0, h, 0), 1e-12)
	assert.InDelta(t, 100, Design(100, 0, 1), 1e-12)
	for _, tt := range []struct{ pan, x, left, down float64 }{
		{30 * deg, 2, 1, math.Sqrt(3)}, {-90 * deg, 1, -1, 0}, {180 * deg, 1, 0, -1}, {90 * deg, -2, -2, 0},
	} {
		left, down := Plan(5, 7, tt.pan, tt.x)
		assert.InDelta(t, 5+tt.left, left, 1e-12)
		assert.InDelta(t, 7+tt.down, down, 1e-12)
	}
}
