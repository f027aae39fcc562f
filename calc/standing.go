package calc

import "math"

// Seat returns the aim of a cabinet that rests flat on its under side, in radians,
// positive front down: it looks up by its own taper, and 0 where front and back are
// alike.
//
// Free body: none, plane geometry of a wedge; see Outline.
func (w Wedge) Seat() float64 { return -w.angle() }

// Standing returns how high the top hinge pin of a column of cabinets stands above the
// bottom hinge pin of its lowest, in metres. seat is the aim of that one as it stands,
// in radians, positive front down; each one above looks further up by the splay of the
// joint between:
//
//	aim(k) = aim(k+1) - splay(k+1),  height = sum of pitch(k) · cos(aim(k))
//
// The splay of the top cabinet is of a joint to something else, and is not used.
//
// Free body: none, plane geometry; the column stands as one rigid body.
func Standing(cabinets []Cabinet, seat float64) (height float64) {
	aim := seat
	for k := len(cabinets) - 1; k >= 0; k-- {
		height += cabinets[k].HingePitch * math.Cos(aim)
		aim -= cabinets[k].Splay
	}
	return height
}
