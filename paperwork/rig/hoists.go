package rig

// Hook returns what hoist i holds in a state, in kg: its pick's load and the rigging
// below; less than 0 where it would have to push.
func (h *Hung) Hook(s *State, i int) float64 { return s.Loads[i] + h.Picks[i].Below.Mass }

// AloneOnHook returns what hoist i holds with the other one slack, in kg.
func (h *Hung) AloneOnHook(i int) float64 { return h.Finished.Centre.Mass + h.Picks[i].Below.Mass }

// HoistMost returns what practice allows of hoist i, in newtons.
func (h *Hung) HoistMost(i int) float64 {
	return h.Picks[i].Hoist.Capacity * h.Job.Practice.HoistUse
}

// UseOf returns how much of what practice allows of hoist i a load on its hook
// uses, as a fraction of one; the load in kg and without its tolerance.
func (h *Hung) UseOf(i int, kg float64) float64 { return h.Job.Practice.OnHook(kg) / h.HoistMost(i) }

// HoistUse returns how much of what practice allows of hoist i is used in a state, as a
// fraction of one.
func (h *Hung) HoistUse(s *State, i int) float64 { return h.UseOf(i, h.Hook(s, i)) }

// Overloads reports whether a load on its hook, in kg and without its tolerance,
// is more than practice allows of hoist i.
func (h *Hung) Overloads(i int, kg float64) bool {
	return h.Job.Practice.OnHook(kg) > h.HoistMost(i)+Alike
}
