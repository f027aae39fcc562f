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
func (o Offset) Turned(t float64) Vec {
	sin, cos := math.Sincos(t)
	return Vec{
		X: -o.Behind*cos - o.Below*sin,
		Z: o.Behind*sin - o.Below*cos,
	}
}

// Weight is a mass in kg at a place in a part's axes.
type Weight struct {
	Mass float64
	At   Offset
}

// Load is a mass in kg at a place in the world.
type Load struct {
	Mass float64
	At   Vec
}

// Centre returns the sum of loads and the place of their centre of gravity.
//
//	X = Σ m x / Σ m, and Z the same way
//
// The loads' masses must add up to more than nothing; with none, the centre is
// the origin.
//
// Source: Baker and Haynes, Engineering Statics: Open and Interactive,
// chapter 7, centre of gravity of a set of weights.
func Centre(loads []Load) Load {
	var sum Load
	for _, l := range loads {
		sum.Mass += l.Mass
		sum.At.X += l.Mass * l.At.X
		sum.At.Z += l.Mass * l.At.Z
	}
	if sum.Mass > 0 {
		sum.At.X /= sum.Mass
		sum.At.Z /= sum.Mass
	}
	return sum
}
