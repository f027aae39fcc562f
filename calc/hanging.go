package calc

import (
	"fmt"
	"math"
)

// minSpan is the least distance between two hooks, measured level, that
// TwoPicks works with. It is a limit of this package and not of any code of
// practice.
const minSpan = 0.001

// Tilt returns the angle, in radians and positive front down, to which a rigid
// stack turns when it hangs freely from one hook. hole is the pick hole and cg
// the stack's centre of gravity, both in the bar's axes. lever is how far cg
// lies below the hole with the bar level, in metres: if it is not positive the
// stack is top-heavy, the angle is that of no crew's making, and the stack
// tips over.
//
// Free body: the whole stack, its weight at cg and one upward force at the
// hole. Two forces balance only along one line, so cg hangs plumb below the
// hole:
//
//	tilt = atan2(hole.Behind - cg.Behind, cg.Below - hole.Below)
//
// Source: Baker and Haynes, Engineering Statics: Open and Interactive,
// chapter 3, two-force bodies; NAVEDTRA 14081, p. 13-28.
func Tilt(hole, cg Offset) (tilt, lever float64) {
	lever = cg.Below - hole.Below
	return math.Atan2(hole.Behind-cg.Behind, lever), lever
}

// TwoPicks returns the upward forces, in newtons, at a front and a rear hook
// that hold a stack of weight w newtons at the tilt it is held at. front, rear
// and cg are the levels x of the hooks and of the centre of gravity with the
// stack as it hangs, in metres, positive forward.
//
// Free body: the whole stack, w down at cg and two forces up. Moments about
// each hook in turn give
//
//	front hook = w (cg - rear) / (front - rear)
//	rear hook  = w (front - cg) / (front - rear)
//
// so that their sum stays free to serve as a check. A negative force means
// that the hook would have to push: the chain there is slack. It is reported
// as it comes out; to refuse it is for the caller.
//
// TwoPicks returns an error if an argument is not finite or if the front hook
// is not at least 1 mm ahead of the rear one.
//
// Source: OpenStax, University Physics vol. 1, section 12.1, equations 12.7
// and 12.9 (a rigid body under parallel forces).
func TwoPicks(w, cg, front, rear float64) (atFront, atRear float64, err error) {
	span := front - rear
	if !(span >= minSpan) || math.IsInf(span, 0) || !finite(w, cg) {
		return 0, 0, fmt.Errorf("two picks: weight %v N at %v m between hooks at %v and %v m", w, cg, front, rear)
	}
	return w * (cg - rear) / span, w * (front - cg) / span, nil
}

// PickSpread returns by how much, in kg, the load of either of two picks may be more or
// less for each 100 % that masses may be off, each part at its own worse side. loads are
// all that hangs from the hooks, as Stack.Loads gives them; front and rear are the levels
// x of the hooks, the front one further ahead.
//
// Free body: as for TwoPicks, one part at a time. Each part loads the front pick by its
// mass times its lever, which is below 0 for a part behind the rear hook:
//
//	front pick = Σ m (x - rear) / (front - rear)
//
// and with each mass off by a share t to its worse side the sum is off by t times
//
//	Σ m |x - rear| / (front - rear)
//
// The rear pick's is that of (front - x). Source: as for TwoPicks; the largest of a sum
// whose terms are free of each other is our own derivation.
func PickSpread(loads []Load, front, rear float64) (atFront, atRear float64) {
	return leverage(loads, rear) / (front - rear), leverage(loads, front) / (front - rear)
}

// leverage is the sum of masses times how far they lie from x, either way, in kg m.
func leverage(loads []Load, x float64) (sum float64) {
	for _, l := range loads {
		sum += l.Mass * math.Abs(l.At.X-x)
	}
	return sum
}

// ToSlack returns by how much a pick hole rises against another one, in metres and
// below 0 where it sinks, while the bar turns from tilt to where the chain of that pick
// hole is slack. hole, other and cg are in the bar's axes; the centre of gravity lies
// below the line of both holes.
//
// Free body: the whole stack, hung from the other hook alone: its centre of gravity is
// plumb below that hole (see Tilt), and the chain of the first one carries nothing.
//
// Source: Tilt; the heights of two places of a turned body are plane geometry.
func ToSlack(hole, other, cg Offset, tilt float64) float64 {
	rise := func(t float64) float64 { return hole.Turned(t).Z - other.Turned(t).Z }
	slack, _ := Tilt(other, cg)
	return rise(slack) - rise(tilt)
}

// BelowPicks returns how far, in metres, the centre of gravity cg lies below
// the line through a front and a rear pick hole, all in the bar's axes and
// measured square to that line. If it is not positive the stack rolls over
// sideways about the line, whatever tilt the hoists hold.
//
// Free body: the whole stack seen along the line through its hooks, its weight
// at cg and the upward forces on that line. Turned sideways by a small angle, a
// weight below the line turns it back and one above turns it further.
//
//	below = ((rear - front) x (cg - front)) / |rear - front|
//
// The two holes must not lie in one place.
//
// Source: none read; the distance of a point from a line is plane geometry, and
// that a body hangs with its centre of gravity below what holds it is Baker and
// Haynes, Engineering Statics: Open and Interactive, chapter 3, two-force bodies.
func BelowPicks(front, rear, cg Offset) float64 {
	alongBehind, alongBelow := rear.Behind-front.Behind, rear.Below-front.Below
	toBehind, toBelow := cg.Behind-front.Behind, cg.Below-front.Below
	return (alongBehind*toBelow - alongBelow*toBehind) / math.Hypot(alongBehind, alongBelow)
}

// OutOfStep returns how long, in seconds, one of two hoists may run on at speed
// metres a second while the other one stands, until the bar is off radians further
// than its tilt, or that much less far: whichever comes first. The holes are in the
// bar's axes.
//
// Free body: none, for nothing is weighed. The bar turns about the hook that
// stands, and the other hook rises or falls by
//
//	L |sin(slope ± off) - sin(slope)|
//
// with L between the holes and slope that of their line at tilt. Chains are taken
// to stay plumb, which a turning bar moves level by L (1 - cos off) at the most.
//
// Source: none read; plane geometry.
func OutOfStep(front, rear Offset, tilt, off, speed float64) float64 {
	rise := func(tilt float64) float64 { return rear.Turned(tilt).Z - front.Turned(tilt).Z }
	more, less := math.Abs(rise(tilt+off)-rise(tilt)), math.Abs(rise(tilt-off)-rise(tilt))
	return math.Min(more, less) / speed
}

func finite(values ...float64) bool {
	for _, v := range values {
		if math.IsNaN(v) || math.IsInf(v, 0) {
			return false
		}
	}
	return true
}
