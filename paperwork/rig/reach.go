package rig

import (
	"math"

	"hangpack/calc"
)

// The reach of a state is the bar tilts that its sheets let pass: its nominal tilt, and
// that with the aim's tolerance up and down, each end pulled back to the bar's tilt limit
// where the nominal tilt is inside it. A pick's load goes one way only from end to end, so
// that its least and its most stand at the ends; joints are looked at there too.

// A Tilted is a state at one tilt of its reach.
type Tilted struct {
	Off    float64      // of its tilt from the nominal one, rad, positive front down
	Loads  []PickLoad   // of each pick that holds it, front first
	Joints []calc.Joint // above each of its cabinets
	Spread []float64    // of the force in each of their links, in newtons, as PickLoad has it: see calc.LinkSpreads
	poses  []calc.Pose  // of its cabinets
	parts  []calc.Load  // all that hangs, as calc.Loads gives it
}

// A PickLoad is what a pick carries in kg, and by how much that may be more or less for
// each 100 % that masses may be off, each part at its own worse side: see
// calc.PickSpread.
type PickLoad struct{ Is, Spread float64 }

// Most returns the most of a pick's load with each mass within its tolerance, in kg.
func (h *Hung) Most(l PickLoad) float64 { return l.Is + h.Job.Practice.MassTolerance*l.Spread }

// Least returns the least of it, below 0 where the pick would have to push.
func (h *Hung) Least(l PickLoad) float64 { return l.Is - h.Job.Practice.MassTolerance*l.Spread }

// LinkLeast returns the least force in the link of joint k, counted from 0, with each
// mass within its tolerance, in newtons, below 0 where it is pushed.
func (h *Hung) LinkLeast(at *Tilted, k int) float64 {
	return at.Joints[k].Link - h.Job.Practice.MassTolerance*at.Spread[k]
}

// AimOff returns how far the sheets let the aim of a state be off, in radians, up (not
// above 0) and down.
func (h *Hung) AimOff(s *State) (up, down float64) {
	up, down = -h.Job.Practice.AimTolerance, h.Job.Practice.AimTolerance
	if l := h.Bar.TiltLimit; l != nil && s.Tilt <= l.Down+Within && -s.Tilt <= l.Up+Within {
		up, down = math.Max(up, -l.Up-s.Tilt), math.Min(down, l.Down-s.Tilt)
	}
	return math.Min(up, 0), math.Max(down, 0)
}

// reachOf works out a state at each tilt of its reach. An error is of picks that lie one
// above the other then.
func reachOf(h *Hung, s *State) (reach []Tilted, err error) {
	up, down := h.AimOff(s)
	reach = append(make([]Tilted, 0, 3), Tilted{poses: s.Poses, Joints: s.Joints})
	part := h.Body.First(s.Flown)
	for _, off := range [...]float64{up, down} {
		if off != 0 {
			poses := posesAt(h, s, len(reach), off)
			reach = append(reach, Tilted{Off: off, poses: poses, Joints: part.Joints(poses)})
		}
	}
	for i := range reach {
		at := &reach[i]
		at.parts = part.Loads(s.Tilt+at.Off, at.poses)
		at.Spread = part.LinkSpreads(at.poses, at.parts)
		if at.Loads, err = loadsAt(h, s, at); err != nil {
			return nil, err
		}
	}
	return reach, nil
}

// posesAt returns how the cabinets of a state hang with its tilt off, the n-th of its
// reach. A lift of two hoists has the tilts of the finished stack.
func posesAt(h *Hung, s *State, n int, off float64) []calc.Pose {
	if f := h.Finished; f != nil && f.Tilt == s.Tilt {
		return f.Reach[n].poses[:s.Flown]
	}
	return h.Body.First(s.Flown).Poses(s.Tilt + off)
}

// loadsAt returns what each pick carries of a state at a tilt of its reach.
func loadsAt(h *Hung, s *State, at *Tilted) ([]PickLoad, error) {
	kg := s.InBar.Mass
	if len(h.Holes) == 1 {
		return []PickLoad{{kg, kg}}, nil
	}
	tilt := s.Tilt + at.Off
	front, rear, err := shared(h, s.InBar, tilt)
	if err != nil {
		return nil, err
	}
	moreFront, moreRear := calc.PickSpread(at.parts, h.Hole(0).Turned(tilt).X, h.Hole(1).Turned(tilt).X)
	return []PickLoad{{front, moreFront}, {rear, moreRear}}, nil
}

// ToSlack returns by how much pick i of two rises against the other one in a state, in m
// and below 0 where it sinks, until its chain is slack; 0 where it carries nothing at
// the nominal tilt.
func (h *Hung) ToSlack(s *State, i int) float64 {
	if s.Loads[i] <= 0 {
		return 0
	}
	return calc.ToSlack(h.Hole(i), h.Hole(1-i), s.InBar.At, s.Tilt)
}

// Heaviest returns the state and the tilt of its reach at which pick i carries most, with
// each mass within its tolerance and wherever unknown centres of gravity lie; the first of
// equals, the finished stack before its lifts.
func (h *Hung) Heaviest(i int) (s *State, at *Tilted) {
	most, ways := math.Inf(-1), h.Ways()
	for k := range 1 + len(h.Lifts) {
		for _, v := range ways {
			state := state(v, k)
			for n := range state.Reach {
				if kg := h.Most(state.Reach[n].Loads[i]); at == nil || kg > most+math.Abs(most)*Within {
					most, s, at = kg, state, &state.Reach[n]
				}
			}
		}
	}
	return s, at
}
