package calc

import "math"

// G is standard gravity in m/s². Source: ISO 80000-3:2006, item 3-9.2
// (standard acceleration of free fall); the value is exact by definition.
const G = 9.80665

// Offset is a place in a part's own axes, in metres from its top hinge pin.
// Below is negative for what lies above the pin.
type Offset struct{ Behind, Below float64 }

// Vec is a place in the world's axes, in metres: X forward, Z up.
type Vec struct{ X, Z float64 }

// Add returns v + w.
func (v Vec) Add(w Vec) Vec { return Vec{v.X + w.X, v.Z + w.Z} }

// Turned returns where o lies, from the hinge pin, once its part is turned by
// t radians, positive with the front down.
//
//	x = -behind cos t - below sin t
//	z =  behind sin t - below cos t
//
// Source: rotation of axes in the plane, as in any text on statics.
func (o Offset) Turned(t float64) Vec { return turnBy(t).of(o) }

// A turn is the sine and the cosine of the angle that a part is turned by.
type turn struct{ sin, cos float64 }

func turnBy(t float64) turn {
	sin, cos := math.Sincos(t)
	return turn{sin, cos}
}

func (t turn) of(o Offset) Vec {
	return Vec{
		X: -o.Behind*t.cos - o.Below*t.sin,
		Z: o.Behind*t.sin - o.Below*t.cos,
	}
}

// Weight is a mass in kg at a place in a part's axes.
type Weight struct {
	Mass float64
	At   Offset
}

// Turned returns the weight where it is in the world once its part, that is hinged at
// the origin, is turned by t radians, positive with the front down.
func (w Weight) Turned(t float64) Load { return Load{w.Mass, w.At.Turned(t)} }

// Load is a mass in kg at a place in the world.
type Load struct {
	Mass float64
	At   Vec
}

// moments are sums of masses in kg, and of masses times where they are in the world.
//
//	X = Σ m x / Σ m, and Z the same way
//
// is the centre of gravity of them all; with no mass it is the origin.
//
// Source: Baker and Haynes, Engineering Statics: Open and Interactive,
// chapter 7, centre of gravity of a set of weights.
type moments struct{ m, mx, mz float64 }

func (s *moments) add(mass float64, at Vec) {
	s.m += mass
	s.mx += mass * at.X
	s.mz += mass * at.Z
}

func (s *moments) centre() Load {
	if s.m > 0 {
		return Load{s.m, Vec{s.mx / s.m, s.mz / s.m}}
	}
	return Load{Mass: s.m}
}

// Degrees turns radians into degrees.
func Degrees(rad float64) float64 { return rad * 180 / math.Pi }

// Radians turns degrees into radians.
func Radians(deg float64) float64 { return deg * math.Pi / 180 }
