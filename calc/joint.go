package calc

import "math"

// Joint is what one joint carries, in newtons, both sides together. Link and
// HingePull are positive in tension; HingeSide is positive where the hinge
// holds the lower body back from sliding forward and down the slope of the
// joint.
type Joint struct{ Link, HingePull, HingeSide float64 }

// Hinge returns the resultant on the hinge, in newtons, never negative.
func (j Joint) Hinge() float64 { return math.Hypot(j.HingePull, j.HingeSide) }

// JointForces returns what a joint carries. w is the weight of all that hangs
// below it, in newtons; behind is how far the centre of gravity of that lies
// behind the hinge pin, measured level, in metres (negative ahead of it). arm
// is the distance from hinge pin to link pin and splay the angle of the joint;
// lean is the mean turn of the two bodies, in radians, positive front down.
//
// Free body: all that hangs below the joint, with its weight at its centre of
// gravity, a link that is pinned at both ends and so pulls along itself, and a
// hinge that can push any way. The link lies along the mean of the down axes
// of the two bodies, at arm·cos(splay/2) behind the hinge:
//
//	      hinge      link
//	        o----------o      across the mean: arm cos(splay/2)
//	        |          |
//	        v pull     v link   (what each carries, along the mean)
//	            w down, at `behind`
//
//	moments about the hinge:  link = w behind / (arm cos(splay/2))
//	along the mean:           pull = w cos(lean) - link
//	across the mean:          side = w sin(lean)
//
// arm must be more than nothing and splay less than π.
//
// Source: a body on a pin and a two-force member, as in OpenStax, University
// Physics vol. 1, section 12.2 (a strut on a hinge with a cable).
func JointForces(w, behind, arm, splay, lean float64) Joint {
	sin, cos := math.Sincos(lean)
	link := w * behind / (arm * math.Cos(splay/2))
	return Joint{Link: link, HingePull: w*cos - link, HingeSide: w * sin}
}

// Joints returns what each joint of the stack carries where its cabinets hang as in
// poses, from the top: joint 1 is between bar and cabinet 1. The arm of a joint is
// the smaller link arm of its two bodies, its lean is aim(k) - splay(k)/2, the bar's
// tilt standing for the aim of what is above joint 1.
func (s Stack) Joints(poses []Pose) []Joint {
	joints := make([]Joint, len(s.Cabinets))
	var below moments
	for k := len(poses) - 1; k >= 0; k-- {
		c := &s.Cabinets[k]
		below.hang(c, poses[k])
		all := below.centre()
		behind := poses[k].Hinge.X - all.At.X
		joints[k] = JointForces(all.Mass*G, behind, s.Arm(k), c.Splay, poses[k].Aim-c.Splay/2)
	}
	return joints
}

// LinkSpreads returns by how much the force in the link of each joint may be more or
// less for each 100 % that masses may be off, each part at its own worse side; in newtons,
// never negative, from the top. loads are all that hangs from the hooks as Loads gives
// them, where the cabinets hang as in poses.
//
// Free body: as for JointForces, one part at a time. Each part below a joint puts on its
// link its weight times how far it lies behind the hinge, and one ahead of the hinge
// pushes:
//
//	link = Σ m g behind / (arm cos(splay/2))
//
// and with each mass off by a share t to its worse side the sum is off by t times
//
//	Σ m g |behind| / (arm cos(splay/2))
//
// Source: as for JointForces; the largest of a sum whose terms are free of each other is
// our own derivation.
func (s Stack) LinkSpreads(poses []Pose, loads []Load) []float64 {
	spreads := make([]float64, len(poses))
	from := 1 + len(s.Bar.Extras)
	for k := range poses {
		c := &s.Cabinets[k]
		spreads[k] = G * leverage(loads[from:], poses[k].Hinge.X) / (s.Arm(k) * math.Cos(c.Splay/2))
		from += 1 + len(c.Extras)
	}
	return spreads
}

// Arm returns the arm of joint k, counted from 0, in metres: the smaller link arm
// of its two bodies.
func (s Stack) Arm(k int) float64 { return min(s.armAbove(k), s.Cabinets[k].LinkArm) }

// armAbove returns the link arm of the body above joint k, counted from 0.
func (s Stack) armAbove(k int) float64 {
	if k == 0 {
		return s.Bar.LinkArm
	}
	return s.Cabinets[k-1].LinkArm
}

// PinForce returns the force on one pin of a joint, in newtons: force where
// one pin carries it all, else the share that the worse of two sides takes.
// pins is 1 or 2, share a fraction of one.
func PinForce(force float64, pins int, share float64) float64 {
	if pins == 1 {
		return math.Abs(force)
	}
	return math.Abs(force) * share
}
