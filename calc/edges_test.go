package calc

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

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
	for _, bad := range [][4]float64{{1, 0, 0, 0}, {1, 0, 0.0009, 0}, {1, 0, 0, 1}, {nan, 0, 1, 0}, {1, nan, 1, 0}, {1, 0, nan, 0}, {1, 0, 1, nan}, {inf, 0, 1, 0}, {-inf, 0, 1, 0}, {1, inf, 1, 0}, {1, 0, inf, 0}, {1, 0, 1, -inf}, {1, 0, inf, inf}} {
		front, rear, err := TwoPicks(bad[0], bad[1], bad[2], bad[3])
		assert.Error(t, err, bad)
		assert.Zero(t, front, "no force that could be read as one")
		assert.Zero(t, rear)
	}
	_, _, err := TwoPicks(100, 0.2, 0.3, 0.4)
	assert.EqualError(t, err, "two picks: weight 100 N at 0.2 m between hooks at 0.3 and 0.4 m")
	_, _, err = TwoPicks(1, 0, 0.0011, 0)
	assert.NoError(t, err)
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
	assert.Equal(t, Load{0.5, Vec{3, -2}}, Centre([]Load{{0.25, Vec{2, -1}}, {0.25, Vec{4, -3}}}), "less than a kilogram has its centre too")
	assert.Equal(t, Load{Mass: -1}, Centre([]Load{{2, Vec{1, 1}}, {-3, Vec{5, 4}}}), "less than nothing has its sum and no centre")
}

// Held behind its centre of gravity a stack goes down in front.
func TestTiltEveryWay(t *testing.T) {
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

// Two hoists out of step, by hand: never a time below nought, even where a bar
// stands so steep that it turns over.
func TestOutOfStep(t *testing.T) {
	front, rear := Offset{Behind: 0.1, Below: -0.2}, Offset{Behind: 0.6, Below: -0.2}
	// 67 mm/s on 0.5 m: after a second atan(67/500), 7.6 degrees, whose sine is
	// less than its tangent by under a hundredth.
	assert.InDelta(t, 1, OutOfStep(front, rear, 0, math.Atan(67.0/500), 0.067), 0.01)
	// A bar that slopes by 30 degrees: sin 33 - sin 30 and sin 30 - sin 27, the
	// first is less.
	assert.InDelta(t, 0.5*(math.Sin(33*deg)-math.Sin(30*deg))/0.1, OutOfStep(front, rear, 30*deg, 3*deg, 0.1), 1e-12)
	assert.InDelta(t, 0.5*(math.Sin(33*deg)-math.Sin(30*deg))/0.1, OutOfStep(front, rear, -30*deg, 3*deg, 0.1), 1e-12)
	assert.InDelta(t, 0.5*(math.Sin(89*deg)-math.Sin(92*deg))/0.1, OutOfStep(front, rear, 89*deg, 3*deg, 0.1), 1e-12)
	assert.InDelta(t, 0.5*(math.Sin(89*deg)-math.Sin(92*deg))/0.1, OutOfStep(front, rear, -89*deg, 3*deg, 0.1), 1e-12)
}

func TestBackRoom(t *testing.T) {
	assert.Zero(t, BackRoom(Wedge{1, 1, 1}, Wedge{1, 1, 1}, 1), "boxes have no room")
	// 3-4-5 triangles above and below, of different depths.
	assert.InDelta(t, 90*deg, BackRoom(Wedge{8, 2, 4}, Wedge{9, 1, 3}, 8), 1e-12)
	// A gap as large as the upper one is deep leaves half a right angle.
	assert.InDelta(t, 45*deg, BackRoom(Wedge{5, 5, 2}, Wedge{3, 3, 7}, 7), 1e-12)
}

// Whichever corner is lowest, its height is the lowest.
func TestLowestOfEachCorner(t *testing.T) {
	for i := range 4 {
		corners := [4]Vec{{0, 3}, {1, 4}, {2, 5}, {3, 6}}
		corners[i].Z = -7
		assert.Equal(t, -7.0, Lowest(corners), "corner %d", i)
	}
}

// TestTurned: rotation of axes by hand. A part turned front down by a right angle has
// what was behind above its pin, and what was below behind it; by 30 degrees, the
// triangle of half and of half the root of three. Cosine and sine of 0.6 and 0.8 are
// those of the triangle of 3, 4 and 5.
func TestTurned(t *testing.T) {
	for _, tt := range []struct {
		behind, below, turn float64
		x, z                float64
	}{
		{0.2, 0.3, 0, -0.2, -0.3},
		{0.2, 0.3, math.Pi / 2, -0.3, 0.2},
		{0.2, 0.3, -math.Pi / 2, 0.3, -0.2},
		{0.2, 0.3, math.Pi, 0.2, 0.3},
		{1, 0, math.Pi / 6, -math.Sqrt(3) / 2, 0.5},
		{0, 1, math.Pi / 6, -0.5, -math.Sqrt(3) / 2},
		{5, 10, math.Atan2(4, 3), -11, -2}, // -5·0.6 - 10·0.8, 5·0.8 - 10·0.6
	} {
		at := Offset{tt.behind, tt.below}
		for what, got := range map[string]Vec{"a place": at.Turned(tt.turn), "a weight": Weight{30, at}.Turned(tt.turn).At} {
			assert.InDelta(t, tt.x, got.X, 1e-12, "%s, %+v", what, tt)
			assert.InDelta(t, tt.z, got.Z, 1e-12, "%s, %+v", what, tt)
		}
		assert.Equal(t, 30.0, Weight{30, at}.Turned(tt.turn).Mass)
	}
}

// TestDegrees: a straight angle and a sixth of it, by the definition of the radian.
func TestDegrees(t *testing.T) {
	assert.InDelta(t, 180, Degrees(math.Pi), 1e-12)
	assert.InDelta(t, math.Pi/6, Radians(30), 1e-15)
}

// TestStanding: four cabinets of 290 mm on the flat of a wedge, 290 mm in front, 225 mm
// behind and 420 mm deep. By hand: the lowest looks atan(32.5/420) = 4.4248 degrees up.
// With no splay between them the top hinge is 4 · 290 · cos 4.4248° = 1156.54 mm up. With
// splays of 2, 3 and 4 degrees down the column they look 4.4248, 8.4248, 11.4248 and
// 13.4248 degrees up, from the lowest: 290 · (0.99702 + 0.98921 + 0.98019 + 0.97268) =
// 1142.34 mm.
func TestStanding(t *testing.T) {
	seat := Wedge{0.29, 0.225, 0.42}.Seat()
	assert.InDelta(t, -4.4248*deg, seat, 5e-5*deg)
	column := make([]Cabinet, 4)
	for k := range column {
		column[k].HingePitch = 0.29
	}
	column[0].Splay = 12 * deg // of the joint to the bar: not of this column
	assert.InDelta(t, 1.15654, Standing(column, seat), 5e-6)
	column[1].Splay, column[2].Splay, column[3].Splay = 2*deg, 3*deg, 4*deg
	assert.InDelta(t, 1.14234, Standing(column, seat), 5e-6)
	assert.InDelta(t, 0.29, Standing(column[:1], 0), 1e-12, "one alone, its front plumb")
	assert.Zero(t, Standing(nil, seat))
	assert.Zero(t, Wedge{0.3, 0.3, 0.4}.Seat())
}
