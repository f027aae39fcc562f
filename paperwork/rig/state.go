package rig

import (
	"fmt"
	"math"

	"hangpack/calc"
	"hangpack/paperwork/job"
)

// States are the finished stack and its lifts.
func (h *Hung) States() []*State {
	return append([]*State{h.Finished}, h.Lifts...)
}

// A State is a stack as it hangs: finished, or after a lift.
type State struct {
	Lift    int   // counted from 1; 0 finished
	Third   Third // where unknown centres of gravity are taken
	Flown   int   // cabinets
	Tilt    float64
	Lever   float64     // how far the centre of gravity lies below the pick, or the line of both; m
	InBar   calc.Weight // all of it, in the bar's axes
	Centre  calc.Load
	Loads   []float64 // of each pick, kg
	Picks   []calc.Vec
	Poses   []calc.Pose
	Corners [][4]calc.Vec
	Joints  []calc.Joint
}

// workStates works out every state of the stack.
func workStates(h *Hung) (err error) {
	if h.Finished, err = stateOf(h, 0, len(h.Cabinets)); err != nil {
		return fmt.Errorf("stack %s: %w", h.ID, err)
	}
	flown := 0
	for k, n := range h.Sets[:len(h.Sets)-1] {
		flown += n
		lift, err := stateOf(h, k+1, flown)
		if err != nil {
			return fmt.Errorf("stack %s, lift %d: %w", h.ID, k+1, err)
		}
		h.Lifts = append(h.Lifts, lift)
	}
	h.Raise = atTrim(h)
	workAlone(h)
	return workStart(h)
}

// chooseHoles settles the pick holes. With one pick every hole is worked out; auto
// takes the one whose aim is closest to the wanted one, the earlier of two
// alike, and passes over holes that tip over unless all do.
func chooseHoles(h *Hung) {
	for _, p := range h.Picks {
		h.Holes = append(h.Holes, p.Hole)
	}
	if len(h.Picks) > 1 {
		return
	}
	for _, hole := range h.Bar.PickHoles {
		tilt, lever := calc.Tilt(hole.At, h.Centre.At)
		h.Options = append(h.Options, Option{tilt + h.Body.Cabinets[0].Splay, lever <= Within})
	}
	if h.Holes[0] == job.Auto {
		h.Holes[0] = closest(h.Options, h.Aim)
	}
}

// stateOf works out the stack with its first n cabinets. One pick: it hangs as
// it settles; two: the hoists hold the tilt of the finished stack.
func stateOf(h *Hung, lift, n int) (*State, error) {
	if len(h.Holes) == 1 {
		return settled(h, lift, n, 0), nil
	}
	return heldAt(h, lift, n, h.Aim-h.Body.Cabinets[0].Splay)
}

// settled is the stack with its first n cabinets, hung from pick i alone.
func settled(h *Hung, lift, n, i int) *State {
	inBar := h.Body.First(n).CentreInBar()
	tilt, lever := calc.Tilt(h.Hole(i), inBar.At)
	s := tilted(h, lift, n, tilt, inBar)
	s.Lever, s.Picks, s.Loads = lever, s.Picks[i:i+1], []float64{inBar.Mass}
	return s
}

// heldAt is the stack with its first n cabinets, held at a tilt by two hoists.
func heldAt(h *Hung, lift, n int, tilt float64) (*State, error) {
	inBar := h.Body.First(n).CentreInBar()
	s := tilted(h, lift, n, tilt, inBar)
	s.Lever = calc.BelowPicks(h.Hole(0), h.Hole(1), inBar.At)
	front, rear, err := shared(h, inBar, tilt)
	s.Loads = []float64{front, rear}
	return s, err
}

// shared returns what each of two picks carries of a weight, in kg, with the bar at a
// tilt.
func shared(h *Hung, inBar calc.Weight, tilt float64) (front, rear float64, err error) {
	front, rear, err = calc.TwoPicks(inBar.Mass*calc.G, inBar.At.Turned(tilt).X, h.Hole(0).Turned(tilt).X, h.Hole(1).Turned(tilt).X)
	return front / calc.G, rear / calc.G, err
}

// tilted is where everything of the first n cabinets is with the bar at a tilt,
// and what its joints carry. What holds it is left open.
func tilted(h *Hung, lift, n int, tilt float64, inBar calc.Weight) *State {
	part := h.Body.First(n)
	s := &State{Lift: lift, Third: h.Third, Flown: n, Tilt: tilt, InBar: inBar, Centre: inBar.Turned(tilt)}
	if f := h.Finished; f != nil && f.Tilt == tilt { // a lift that two hoists hold
		s.Poses, s.Corners = f.Poses[:n:n], f.Corners[:n:n]
	} else {
		s.Poses = part.Poses(tilt)
		s.Corners = part.Corners(s.Poses)
	}
	s.Joints = part.Joints(s.Poses)
	for i := range h.Holes {
		s.Picks = append(s.Picks, h.Hole(i).Turned(tilt))
	}
	return s
}

// Hole returns the place of pick i on the bar.
func (h *Hung) Hole(i int) calc.Offset { return h.Bar.PickHoles[h.Holes[i]].At }

// atTrim returns the height of the bar's hinge pin at trim.
func atTrim(h *Hung) float64 {
	if h.Trim.OfPick {
		return h.Trim.Height - h.Finished.HighestPick()
	}
	return h.Trim.Height - h.Finished.Lowest()
}

// HighestPick returns the height of the highest pick above the hinge pin.
func (s *State) HighestPick() float64 {
	high := math.Inf(-1)
	for _, p := range s.Picks {
		high = math.Max(high, p.Z)
	}
	return high
}

// Lowest returns the height of the lowest corner above the hinge pin.
func (s *State) Lowest() float64 {
	low := math.Inf(1)
	for _, c := range s.Corners {
		low = min(low, calc.Lowest(c))
	}
	return low
}

// Drop returns how far the lowest corner is below the highest pick in use.
func (s *State) Drop() float64 { return s.HighestPick() - s.Lowest() }

// Hook returns what hoist i holds, in kg: its pick's load and the rigging below.
func (h *Hung) Hook(s *State, i int) float64 { return s.Loads[i] + h.Picks[i].Below.Mass }

// LowHook returns the height of the hook of hoist i at trim.
func (h *Hung) LowHook(i int) float64 { return h.PickHeight(i) + h.Picks[i].Below.Length }

// PickHeight returns the height of pick i at trim.
func (h *Hung) PickHeight(i int) float64 { return h.Raise + h.Finished.Picks[i].Z }

// Types returns the types of cabinet in the stack, from the top, each once.
func (h *Hung) Types() (types []*job.Cabinet) {
	seen := map[*job.Cabinet]bool{}
	for _, c := range h.Cabinets {
		if !seen[c.Cabinet] {
			seen[c.Cabinet] = true
			types = append(types, c.Cabinet)
		}
	}
	return types
}
