package calc

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The answers here are printed in books. The tolerance of each is half a unit
// in the last digit that its source prints; where a source rounds on the way
// the row says so.

// Sources, cited by the names on the left.
//
//	OpenStax UP1: Ling, Sanny, Moebs, University Physics volume 1, OpenStax, 2016
//	OpenStax CP:  Urone, Hinrichs, College Physics, OpenStax, 2012
//	Statics:      Baker, Haynes, Engineering Statics: Open and Interactive
//	Hall:         D. L. Hall, Rigging Math (Made Simple), the lessons on the web

const deg = math.Pi / 180

// OpenStax UP1, section 12.2, check your understanding: a strut of 4.0 m and
// 600.0 N on a hinge at a wall, 400.0 N at its tip, a cable (5.0 m) from the
// tip to the wall 3.0 m above the hinge. The cable carries 1167 N, the hinge
// 980 N at 18 degrees above the level.
//
// The cable is the link and the strut the body. Measured across the cable the
// hinge is 4.0 sin(atan(3/4)) = 2.4 m from it, so as a joint that leans with
// the cable (its down axis along the cable, away from the tip) the arm is
// 2.4 m. The loads' centre is behind the hinge by (600·2 + 400·4)/1000 = 2.8 m.
func TestPublishedStrutOnHinge(t *testing.T) {
	slope := math.Atan2(3, 4)
	// The cable pulls the tip towards the wall and up, at slope over the level:
	// its line is turned from plumb by 90 degrees less the slope.
	j := JointForces(1000, 2.8, 2.4, 0, math.Pi/2-slope)
	assert.InDelta(t, 1167, j.Link, 0.5)
	assert.InDelta(t, 980, j.Hinge(), 0.5)
	// The hinge's force in the world: along and across the cable, turned back.
	up := j.HingePull*math.Sin(slope) + j.HingeSide*math.Cos(slope)
	out := -j.HingePull*math.Cos(slope) + j.HingeSide*math.Sin(slope)
	assert.InDelta(t, 18, math.Atan2(up, out)/deg, 0.5)
}

// OpenStax UP1, section 12.2, example 12.5 "Forces on door hinges": a door of
// 400.0 N, 1.00 m wide, on hinges 2.00 m apart: 100.0 N level, opposite at the
// two hinges. The lower hinge stands for the link, level, 2.00 m from the
// upper one; the weight hangs 0.50 m out.
//
// The joint leans by 90 degrees, so that its link lies level.
func TestPublishedDoor(t *testing.T) {
	j := JointForces(400, -0.5, 2, 0, math.Pi/2)
	assert.InDelta(t, 100, math.Abs(j.Link), 0.05)
	assert.InDelta(t, 100, math.Abs(j.HingePull), 0.05)
	assert.InDelta(t, 400, j.HingeSide, 0.05, "one hinge carries the whole weight in this model; the book shares it, 200.0 N each")
}

// Statics, chapter 6, example "Toggle clamp": a lever on a pin A is pushed with
// F at 60 degrees, with arms of 40 and 16 to its two components; a link holds
// it at B, 24 over and 7 up from A, along a 7-24-25 triangle. The link carries
// 2.52 F, of which 2.42 F goes into the clamp.
//
// As a joint: a unit weight whose moment about the pin is that of F, and a link
// whose distance from the pin is (24·7 + 7·24)/25.
func TestPublishedToggle(t *testing.T) {
	moment := 40*math.Cos(60*deg) + 16*math.Sin(60*deg)
	j := JointForces(1, moment, (24*7+7*24)/25.0, 0, 0)
	assert.InDelta(t, 2.52, j.Link, 0.005)
	assert.InDelta(t, 2.42, j.Link*24/25, 0.005)
}

// Statics, chapter 7: composite centres of gravity.
func TestPublishedCentres(t *testing.T) {
	at := func(m, x, z float64) Load { return Load{m, Vec{x, z}} }
	tests := []struct {
		source string
		loads  []Load
		x, z   float64
		tol    float64
	}{
		{"Statics ch. 7, example Simple centre of gravity", []Load{at(50, 0, 0), at(10, 1.2, 0), at(30, 2, 0)}, 0.8, 0, 0.05},
		{"Statics ch. 7, Composite parts method", []Load{at(18, 1.5, 5), at(14, 3.5, 1)}, 2.375, 3.25, 0.0005},
		{"Statics ch. 7, composite table; the book's z, 1.692, is a misprint: its own sums, 41.86/24.93, give 1.679",
			[]Load{at(20, 2.5, 2), at(12, 7, 4.0/3), at(-math.Pi*1.5*1.5, 3, 2)}, 4.52, 1.679, 0.005},
		{"Statics ch. 7, example 3D centre of mass, x and z", []Load{at(216*125, -3, 4.5), at(-50.27*125, -3, 6), at(12*493, -4, 1)}, -3.22, 3.37, 0.005},
		{"Statics ch. 7, example 3D centre of mass, x and y", []Load{at(216*125, -3, 2), at(-50.27*125, -3, 2), at(12*493, -4, 4.67)}, -3.22, 2.59, 0.005},
		{"OpenStax UP1, example 12.1, a car with 52 % on the front axle, 2.5 m from the rear one", []Load{at(52, 2.5, 0), at(48, 0, 0)}, 1.3, 0, 0.05},
		{"Hall, lesson 7: 150 lb and 100 lb, 10 ft apart", []Load{at(150, 0, 0), at(100, 10, 0)}, 4, 0, 0.5},
	}
	for _, tt := range tests {
		c := Centre(tt.loads)
		assert.InDelta(t, tt.x, c.At.X, tt.tol, tt.source)
		assert.InDelta(t, tt.z, c.At.Z, tt.tol, tt.source)
	}
}

// UK A-level question (math help forum, thread 28453): a plate ABC with
// AB = AC = 5a, BC = 8a and its centroid 5a/3 below A; a particle as heavy is
// added at B; hung from C, CB comes to hang at arctan(1/9) to the plumb line.
//
// With a = 1 and C as hinge pin and hook, CB is the down axis of the body: B is
// 8 below, and the centroid 4 below and 3 - 5/3 = 4/3 to one side.
func TestPublishedHangingAngle(t *testing.T) {
	cg := Centre([]Load{{1, Vec{4.0 / 3, -4}}, {1, Vec{0, -8}}}).At
	tilt, lever := Tilt(Offset{}, Offset{Behind: -cg.X, Below: -cg.Z})
	assert.InDelta(t, math.Atan(1.0/9), tilt, 1e-12)
	assert.InDelta(t, 6, lever, 1e-12)
}

func TestPublishedTwoSupports(t *testing.T) {
	tests := []struct {
		source          string
		w, cg, front    float64 // the rear support stands at nought
		atFront, atRear float64
		tol             float64
	}{
		// 100 lb at 17.5 ft and 200 lb at 5 ft from leg 2.
		{"Hall, lesson 9: a truss of 20 ft with two loads", 300, (100*17.5 + 200*5) / 300, 20, 137.5, 162.5, 0.05},
		// The book prints 711.0 and 466.0, having rounded to the whole newton up.
		{"OpenStax UP1, section 12.2: a scaffold of 6.0 m and 70.0 kg, 50 kg at 1.5 m, g = 9.8", 120 * 9.8, (70*3 + 50*4.5) / 120, 6, 710.5, 465.5, 0.5},
		{"OpenStax UP1, section 12.2, problem: 40.0 kg scaffold, 80.0 kg at 1.0 m, 16.0 kg at 4.5 m", 136 * 9.8, (40*3 + 80*5 + 16*1.5) / 136, 6, 888.5, 444.3, 0.5},
		{"OpenStax CP, section 9.4: a 5.00 kg pole, hands 0.900 m apart, centre 0.600 m from the left one", 5 * 9.8, 0.6, 0.9, 32.7, 16.3, 0.05},
		{"OpenStax CP, section 9.4: a car of 1000 kg 5 m from the left pier of 20 m", 9800, 15, 20, 7350, 2450, 0.5},
		// UDL of 12 lb/in on 0-10 in and 34-44 in, 100, 150, 100 lb at 16, 22, 28 in.
		{"Statics ch. 7, example Beam reactions: supports at 10 and 28 in, both ends overhanging", 590,
			28 - (120*5+120*39+100*16+150*22+100*28)/590.0, 18, 196.7, 393.3, 0.05},
	}
	for _, tt := range tests {
		f, r, err := TwoPicks(tt.w, tt.cg, tt.front, 0)
		require.NoError(t, err, tt.source)
		assert.InDelta(t, tt.atFront, f, tt.tol, tt.source)
		assert.InDelta(t, tt.atRear, r, tt.tol, tt.source)
	}
}
