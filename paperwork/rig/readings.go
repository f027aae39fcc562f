package rig

import (
	"math"

	"hangpack/calc"
)

// A Reading is what hangs from one hoist's hook in kg, its rigging below
// included, and the least and the most that it may be before the crew stops.
// Where a centre of gravity is not known it lies between From and To, and Is has that
// centre in the middle of its outline.
type Reading struct{ Is, From, To, Low, High float64 }

// Readings are what the hooks hold after lift k, counted from 0, front first:
// the least and the most over masses within their tolerance, with two picks over
// tilts within the aim's, over all places of unknown centres of gravity, and at
// least the floor of readings to either side.
func (h *Hung) Readings(k int) (all []Reading) {
	for i := range h.Picks {
		all = append(all, readingOf(h, i, func(v *Hung) *State { return v.Joined(k) }))
	}
	return all
}

// StartReadings are those of the bar alone, as Readings are; there is a Start.
func (h *Hung) StartReadings() (all []Reading) {
	for i := range h.Picks {
		all = append(all, readingOf(h, i, func(v *Hung) *State { return v.Start }))
	}
	return all
}

// readingOf is what hook i holds in the state that of takes of a stack.
func readingOf(h *Hung, i int, of func(*Hung) *State) Reading {
	r := Reading{Is: h.Hook(of(h), i), Low: math.Inf(1), High: math.Inf(-1)}
	r.From, r.To = h.Over(func(v *Hung) float64 { return v.Hook(of(v), i) })
	for _, v := range h.Ways() {
		low, high := window(v, of(v), i)
		r.Low, r.High = math.Min(r.Low, low), math.Max(r.High, high)
	}
	floor := h.Job.Practice.ReadingFloor
	r.Low, r.High = math.Min(r.Low, r.Is-floor), math.Max(r.High, r.Is+floor)
	return r
}

// window returns the least and the most that hook i may hold in a state.
func window(h *Hung, s *State, i int) (low, high float64) {
	least, most := tipped(h, s, i)
	less, more := 1-h.Job.Practice.MassTolerance, 1+h.Job.Practice.MassTolerance
	return math.Min(least*less, least*more), math.Max(most*less, most*more) // a hook may be pushed
}

// tipped returns the least and the most that hook i holds in a state as it hangs
// and, with two picks, tipped by the aim's tolerance either way: between them it goes
// one way only. The reader refuses hooks for which no tilt within it can be worked
// out.
func tipped(h *Hung, s *State, i int) (least, most float64) {
	least = h.Hook(s, i)
	most = least
	if len(h.Picks) == 1 {
		return least, most
	}
	for _, off := range [...]float64{-1, 1} {
		if kg, err := h.tippedBy(s, off*h.Job.Practice.AimTolerance, i); err == nil {
			least, most = math.Min(least, kg), math.Max(most, kg)
		}
	}
	return least, most
}

// tippedBy returns what hook i of two holds in a state with the bar tipped by an
// angle, front down.
func (h *Hung) tippedBy(s *State, off float64, i int) (kg float64, err error) {
	front, rear, err := shared(h, s.InBar, s.Tilt+off)
	return [2]float64{front, rear}[i] + h.Picks[i].Below.Mass, err
}

// Moved returns by how much the rear hook of two holds more in a state when the
// bar is tipped by a degree, front down, in kg; what it gains the front one loses.
func (h *Hung) Moved(s *State) float64 {
	kg, err := h.tippedBy(s, calc.Radians(1), 1)
	if err != nil {
		return 0
	}
	return kg - h.Hook(s, 1)
}
