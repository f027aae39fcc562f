package rig

import (
	"hangpack/calc"
	"hangpack/paperwork/job"
)

// HasDollies reports whether the stack travels in sets. Without, its sheets
// are called after their cabinets.
func (h *Hung) HasDollies() bool { return h.Dolly != nil || len(h.Sets) > 1 }

// inSet returns the cabinets of a set, counted from 0.
func (h *Hung) inSet(k int) []job.Placed {
	first := h.Sets.First(k)
	return h.Cabinets[first : first+h.Sets[k]]
}

// SetMass is the mass of set k with what is tied to its cabinets, in kg, and
// how many such extras there are.
func SetMass(h *Hung, k int) (kg float64, extras int) {
	for _, c := range h.inSet(k) {
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
	for _, c := range h.inSet(k) {
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
