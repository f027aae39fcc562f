package rig

import (
	"slices"

	"hangpack/calc"
	"hangpack/paperwork/job"
)

// HasDollies reports whether the stack travels in sets. Without, its sheets
// are called after their cabinets.
func (h *Hung) HasDollies() bool { return h.Dolly != nil || len(h.Sets) > 1 }

// inSet returns the cabinets of a set, counted from 0.
func inSet(h *Hung, k int) []job.Placed {
	first := h.Sets.First(k)
	return h.Cabinets[first : first+h.Sets[k]]
}

// Seat is the aim of the lowest cabinet of set k, counted from 0, as it stands, in
// radians, positive front down: flat on its under side, or with its front plumb where
// the dolly holds it so.
func Seat(h *Hung, k int) float64 {
	if h.Dolly != nil && h.Dolly.Plumb {
		return 0
	}
	low := h.Cabinets[h.Sets.First(k)+h.Sets[k]-1]
	return calc.Wedge{Front: low.FrontHeight, Back: low.BackHeight, Depth: low.Depth}.Seat()
}

// Standing is how high the top hinge of set k, counted from 0, is above what the set
// stands on, in m, before any joint of it is opened: set on its dolly it is curved as it
// will hang; else, or where the job does not say, its links are in their truck holes.
// That of a truck hole which is not given is taken for 0.
func Standing(h *Hung, k int) float64 {
	first := h.Sets.First(k)
	stands := slices.Clone(h.Body.Cabinets[first : first+h.Sets[k]])
	for i := 1; i < len(stands) && h.PinsSet != job.OnDolly; i++ {
		stands[i].Splay = 0
		if hole := Transport(h, first+i+1); hole != nil {
			stands[i].Splay = calc.Radians(hole.Splay)
		}
	}
	return calc.Standing(stands, Seat(h, k))
}

// SetMass is the mass of set k with what is tied to its cabinets, in kg, and
// how many such extras there are.
func SetMass(h *Hung, k int) (kg float64, extras int) {
	for _, c := range inSet(h, k) {
		kg += c.Mass
	}
	for _, e := range h.Extras {
		if e.Cabinet > 0 && h.Sets.Of(e.Cabinet) == k {
			kg += e.Mass
			extras++
		}
	}
	return kg, extras
}

// SetSum is the sum of the splays of set k, counted from 0, in degrees: of every
// joint from the one above its first cabinet.
func SetSum(h *Hung, k int) (deg float64) {
	for _, c := range inSet(h, k) {
		deg += c.Hole.Splay
	}
	return deg
}

// Bend is how much further down the last cabinet looks than the first, in
// radians: the sum of the splays between them.
func Bend(h *Hung) float64 {
	deg := 0.0
	for _, c := range h.Cabinets[1:] {
		deg += c.Hole.Splay
	}
	return calc.Radians(deg)
}
