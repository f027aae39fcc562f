package rig

import (
	"fmt"
	"math"

	"hangpack/calc"
	"hangpack/paperwork/say"
)

// A State is a stack as it hangs: finished, after a lift, or swung to one of two picks.
// Places are seen from the side, in m from the bar's hinge pin.
type State struct {
	Lift    int           // counted from 1; 0 where all of it hangs
	Third   Third         // where unknown centres of gravity are taken
	Flown   int           // cabinets
	Tilt    float64       // of the bar, rad, positive front down
	Lever   float64       // how far the centre of gravity lies below the pick, or the line of both; m
	InBar   calc.Weight   // all of it, in the bar's axes
	Centre  calc.Load     // all of it, as it hangs
	Loads   []float64     // of each pick that holds it, front first, kg
	Picks   []calc.Vec    // those picks
	Poses   []calc.Pose   // of the cabinets that are flown, from the top
	Corners [][4]calc.Vec // of each of them; nil where a lift hangs from one of two picks alone
	Joints  []calc.Joint  // above each of them
	Reach   []Tilted      // the same at each tilt of its reach, the nominal one first; nil where it hangs from one of two picks alone
	Alone   []*State      // two picks: the same cabinets swung to each of them alone; nil of the bar alone
}

// workStates works out every state of the stack: finished, after each lift, swung to
// each of two picks, and the bar alone; and its height at trim. An error names the
// stack and the lift, and is of picks that cannot share.
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
	workStart(h)
	return nil
}

// stateOf works out the stack with its first n cabinets. One pick: it hangs as
// it settles; two: the hoists hold the tilt of the finished stack.
func stateOf(h *Hung, lift, n int) (s *State, err error) {
	if len(h.Holes) == 1 {
		s = settled(h, lift, n, 0, h.Body.First(n).CentreInBar())
	} else if s, err = heldAt(h, lift, n, h.Aim-h.Body.Cabinets[0].Splay); err != nil {
		return nil, err
	}
	outline(h, s)
	s.Reach, err = reachOf(h, s)
	return s, err
}

// settled is the stack with its first n cabinets, whose centre of gravity is given in the
// bar's axes, hung from pick i alone.
func settled(h *Hung, lift, n, i int, inBar calc.Weight) *State {
	tilt, lever := calc.Tilt(h.Hole(i), inBar.At)
	s := tilted(h, lift, n, tilt, inBar)
	s.Lever, s.Picks, s.Loads = lever, s.Picks[i:i+1], []float64{inBar.Mass}
	return s
}

// heldAt is the stack with its first n cabinets, held at a tilt by two hoists. An error
// is of picks that lie one above the other then.
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
	if f := h.Finished; f != nil && f.Tilt == tilt { // a lift held at the same tilt
		s.Poses = f.Poses[:n:n]
	} else {
		s.Poses = part.Poses(tilt)
	}
	s.Joints, s.Picks = part.Joints(s.Poses), make([]calc.Vec, len(h.Holes))
	for i := range h.Holes {
		s.Picks[i] = h.Hole(i).Turned(tilt)
	}
	return s
}

// outline works out the corners of the cabinets of a state.
func outline(h *Hung, s *State) {
	if f := h.Finished; f != nil && f.Tilt == s.Tilt {
		s.Corners = f.Corners[:s.Flown:s.Flown]
	} else {
		s.Corners = h.Body.First(s.Flown).Corners(s.Poses)
	}
}

// workAlone hangs every state from each of two picks alone, at the tilt that it would
// swing to.
func workAlone(h *Hung) {
	if len(h.Picks) == 1 {
		return
	}
	for _, s := range h.States() {
		s.Alone = []*State{settled(h, s.Lift, s.Flown, 0, s.InBar), settled(h, s.Lift, s.Flown, 1, s.InBar)}
	}
	for _, s := range h.Finished.Alone {
		outline(h, s)
	}
}

// workStart works out the bar alone: with two picks it hangs level before the first dolly
// is joined, if it does not roll over then and, over all of its reach, both hooks pull and
// hold no more than they may. It has no start either where one pick hole lies above the
// other: they give a level bar nothing to be held by.
func workStart(h *Hung) {
	if len(h.Picks) == 1 {
		return
	}
	s, err := heldAt(h, 0, 0, 0)
	if err != nil || s.Lever <= Within {
		return
	}
	if s.Reach, err = reachOf(h, s); err == nil && bears(h, s) {
		h.Start = s
	}
}

// bears reports whether over all of the reach of a state both picks pull, and neither
// carries more than it may.
func bears(h *Hung, s *State) bool {
	for _, at := range s.Reach {
		for i, l := range at.Loads {
			if h.Least(l)*calc.G < Alike || Over(h.Most(l), pickMayCarry(h, i)) {
				return false
			}
		}
	}
	return true
}

// States are the finished stack, then its lifts: a slice of the caller's own.
func (h *Hung) States() []*State {
	return append([]*State{h.Finished}, h.Lifts...)
}

// state is the finished stack for 0, then its lifts.
func state(h *Hung, k int) *State {
	if k == 0 {
		return h.Finished
	}
	return h.Lifts[k-1]
}

// Joined returns the stack after lift k, counted from 0: the last one is the
// finished stack.
func (h *Hung) Joined(k int) *State {
	if k == len(h.Lifts) {
		return h.Finished
	}
	return h.Lifts[k]
}

// Swing is how far the lowest cabinet turns, in radians and positive front down,
// when set k, counted from 0, is joined below it and hangs free.
func (h *Hung) Swing(k int) float64 { return h.Joined(k).Tilt - h.Joined(k-1).Tilt }

// HighestPick returns how high the highest pick is above the hinge pin, in m.
func (s *State) HighestPick() float64 {
	high := math.Inf(-1)
	for _, p := range s.Picks {
		high = math.Max(high, p.Z)
	}
	return high
}

// Lowest returns how high the lowest corner of a cabinet is above the hinge pin, in m:
// below 0, and infinite where none is flown.
func (s *State) Lowest() float64 {
	low := math.Inf(1)
	for _, c := range s.Corners {
		low = min(low, calc.Lowest(c))
	}
	return low
}

// Drop returns how far the lowest corner is below the highest pick in use, in m.
func (s *State) Drop() float64 { return s.HighestPick() - s.Lowest() }

// LastAim returns the aim of the lowest cabinet in a state, in rad and positive down.
func (s *State) LastAim() float64 { return s.Poses[len(s.Poses)-1].Aim }

// Words says which state it is, and where unknown centres of gravity are taken in
// it: "" for the finished stack with those of the job.
func (s *State) Words() string {
	return say.Listed(Where{Lift: s.Lift}.String(), s.Third.words())
}
