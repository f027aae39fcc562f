package calc

import "math"

// Bar is the frame on top of a stack.
type Bar struct {
	Mass            float64 // kg
	CentreOfGravity Offset
	LinkArm         float64  // m, hinge pin to link pin
	Extras          []Weight // what is tied to the bar
}

// Cabinet is one loudspeaker of a stack, with the joint above it.
type Cabinet struct {
	Mass            float64 // kg
	CentreOfGravity Offset
	Splay           float64   // rad, at the joint to what is above it
	HingePitch      float64   // m, from its top hinge pin to its bottom one
	LinkArm         float64   // m
	Corners         [4]Offset // from its top front corner, round by the bottom: see Outline
	Extras          []Weight  // what is tied to the cabinet
}

// Stack is a bar and the cabinets below it, from the top.
type Stack struct {
	Bar      Bar
	Cabinets []Cabinet
}

// Pose is how a cabinet hangs: turned by Aim (rad, positive down) about its
// top hinge pin, which is at Hinge. Poses makes it.
type Pose struct {
	Aim   float64
	Hinge Vec
	turn  turn
}

// At returns where a place of the cabinet, in its own axes, lies in the world.
func (p Pose) At(o Offset) Vec { return p.Hinge.Add(p.turn.of(o)) }

// First returns the stack with its first n cabinets only.
func (s Stack) First(n int) Stack {
	s.Cabinets = s.Cabinets[:n]
	return s
}

// Outline returns the corners of a cabinet in its own axes: top front, bottom
// front, bottom rear, top rear. Depth, front and back are in metres; the hinge
// pin stands behind the front face by hingeBehindFront and below the top by
// hingeBelowTop. The back is as far above the middle of the front as below it,
// so top and bottom are wedges alike:
//
//	(0, 0)  (0, front)  (depth, (front+back)/2)  (depth, (front-back)/2)
func Outline(depth, front, back, hingeBehindFront, hingeBelowTop float64) [4]Offset {
	corner := func(behindFront, belowTop float64) Offset {
		return Offset{behindFront - hingeBehindFront, belowTop - hingeBelowTop}
	}
	return [4]Offset{
		corner(0, 0),
		corner(0, front),
		corner(depth, (front+back)/2),
		corner(depth, (front-back)/2),
	}
}

// Poses returns how each cabinet hangs when the bar is tilted by tilt radians,
// positive with its front down. Cabinet 1 hangs from the bar's hinge pin, at
// the origin, and
//
//	aim(1) = tilt + splay(1),  aim(k) = aim(k-1) + splay(k)
//
// each next hinge lying one hinge pitch below, along the cabinet.
func (s Stack) Poses(tilt float64) []Pose {
	poses := make([]Pose, len(s.Cabinets))
	aim, hinge := tilt, Vec{}
	for k, c := range s.Cabinets {
		aim += c.Splay
		poses[k] = Pose{aim, hinge, turnBy(aim)}
		hinge = poses[k].At(Offset{Below: c.HingePitch})
	}
	return poses
}

// Corners returns the four corners of each cabinet in the world, in the order
// of Outline, where the cabinets hang as in poses.
func (s Stack) Corners(poses []Pose) [][4]Vec {
	corners := make([][4]Vec, len(s.Cabinets))
	for k, p := range poses {
		for i, o := range s.Cabinets[k].Corners {
			corners[k][i] = p.At(o)
		}
	}
	return corners
}

// Lowest returns the height z of the lowest of some corners, in metres.
func Lowest(corners [4]Vec) float64 {
	return min(corners[0].Z, corners[1].Z, corners[2].Z, corners[3].Z)
}

// hang adds a cabinet, with what is tied to it, where it hangs.
func (m *moments) hang(c *Cabinet, p Pose) {
	m.add(c.Mass, p.At(c.CentreOfGravity))
	for _, e := range c.Extras {
		m.add(e.Mass, p.At(e.At))
	}
}

// hung adds the cabinet and what is tied to it to loads, each at the place where it hangs.
func (c *Cabinet) hung(loads []Load, p Pose) []Load {
	loads = append(loads, Load{c.Mass, p.At(c.CentreOfGravity)})
	for _, e := range c.Extras {
		loads = append(loads, Load{e.Mass, p.At(e.At)})
	}
	return loads
}

// Loads returns all that hangs from the hooks, in kg, and where it hangs with the bar
// tilted by tilt radians, positive front down, and the cabinets as in poses: the bar, what
// is tied to it, then each cabinet with what is tied to that, from the top.
//
// Free body: none, plane geometry.
func (s Stack) Loads(tilt float64, poses []Pose) []Load {
	bar := turnBy(tilt)
	loads := append(make([]Load, 0, len(s.Cabinets)), Load{s.Bar.Mass, bar.of(s.Bar.CentreOfGravity)})
	for _, e := range s.Bar.Extras {
		loads = append(loads, Load{e.Mass, bar.of(e.At)})
	}
	for k := range poses {
		loads = s.Cabinets[k].hung(loads, poses[k])
	}
	return loads
}

// CentreInBar returns the mass of all that hangs from the hooks (bar, cabinets and
// extras) and its centre of gravity in the bar's axes. The stack is rigid, so this
// place does not depend on the tilt.
func (s Stack) CentreInBar() Weight {
	var all moments
	level := turnBy(0)
	all.add(s.Bar.Mass, level.of(s.Bar.CentreOfGravity))
	for _, e := range s.Bar.Extras {
		all.add(e.Mass, level.of(e.At))
	}
	for k, p := range s.Poses(0) {
		all.hang(&s.Cabinets[k], p)
	}
	c := all.centre()
	return Weight{c.Mass, Offset{Behind: -c.At.X, Below: -c.At.Z}}
}

// BackRoom returns how far a joint can open before the backs of its two
// cabinets meet, in radians: the room that the wedge of the upper cabinet's
// bottom and of the lower one's top leave, and the gap between front edges
// where the hinge pitch is more than the front height. Lengths are in metres.
//
//	atan((f1-b1)/2/d1) + atan((f2-b2)/2/d2) + atan((pitch1-f1)/d1)
//
// It is exact where the pitch is the front height. A gap's part is taken as if
// the hinge pin stood at the front face: with the pin further back the real room
// is larger, by a degree or more for a gap of many millimetres.
//
// Source: plane geometry of two wedges; our own derivation.
func BackRoom(upper, lower Wedge, upperPitch float64) float64 {
	return upper.angle() + lower.angle() + math.Atan((upperPitch-upper.Front)/upper.Depth)
}

// Wedge is the outline of a cabinet from the side, in metres.
type Wedge struct{ Front, Back, Depth float64 }

func (w Wedge) angle() float64 { return math.Atan((w.Front - w.Back) / 2 / w.Depth) }
