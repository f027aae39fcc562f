package rig

import "hangpack/calc"

// Hook returns what hoist i holds in a state, in kg: its pick's load and the rigging
// below; less than 0 where it would have to push.
func (h *Hung) Hook(s *State, i int) float64 { return s.Loads[i] + h.Picks[i].Below.Mass }

// AloneOnHook returns what hoist i holds with the other one slack, in kg.
func (h *Hung) AloneOnHook(i int) float64 { return h.Finished.Centre.Mass + h.Picks[i].Below.Mass }

// HoistMost returns what practice allows of hoist i, in newtons.
func (h *Hung) HoistMost(i int) float64 {
	return h.Picks[i].Hoist.Capacity * h.Job.Practice.HoistUse
}

// MostOnHook returns the most that hoist i holds of a pick's load and the rigging below,
// each mass within its tolerance, in newtons.
func (h *Hung) MostOnHook(i int, l PickLoad) float64 {
	return (h.Most(l) + h.Picks[i].Below.Mass*(1+h.Job.Practice.MassTolerance)) * calc.G
}

// UseOf returns how much of what practice allows of hoist i a pick's load uses, as a
// fraction of one.
func (h *Hung) UseOf(i int, l PickLoad) float64 { return h.MostOnHook(i, l) / h.HoistMost(i) }

// AloneLoad is what pick i carries of a state with the other one slack.
func AloneLoad(s *State) PickLoad { return PickLoad{s.InBar.Mass, s.InBar.Mass} }
