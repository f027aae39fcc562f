package rig

import (
	"hangpack/calc"
	"hangpack/paperwork/job"
)

// HighHook returns where hoist i and its rigging hang from, nil where the
// height of the steel is not given.
func (h *Hung) HighHook(i int) *float64 {
	p := h.Picks[i]
	if p.Steel == nil {
		return nil
	}
	high := *p.Steel - p.Above.Length
	return &high
}

// chainNeeded returns how much chain hoist i needs to come down onto the bar on
// dolly A, nil where the steel is not given or no dolly says how low that is.
func (h *Hung) chainNeeded(i int) *float64 {
	high := h.HighHook(i)
	if high == nil || h.Dolly == nil {
		return nil
	}
	need := calc.ChainNeeded(*high, h.lowestHook(i), calcHoist(h.Picks[i].Hoist), h.Job.Practice.LimitReserve)
	return &need
}

// RollIn returns how high the highest pick stands, after lift k counted from
// 0, for the next dolly to roll in below with its clearance.
func (h *Hung) RollIn(k int) float64 {
	return h.OnDolly(k+1) + h.Job.Practice.Clearance + h.Lifts[k].Drop()
}

// OnDolly returns the height of the top hinge of a set, counted from 0, that
// stands on its dolly.
func (h *Hung) OnDolly(set int) float64 {
	height := h.Floor + h.Dolly.DeckHeight
	for _, c := range h.inSet(set) {
		height += c.HingePitch
	}
	return height
}

// Reach returns how low hoist i lets its hook down, and how low it has to come.
func (h *Hung) Reach(i int) (lowest, wanted float64) {
	return calc.LowestHook(*h.HighHook(i), calcHoist(h.Picks[i].Hoist), h.Job.Practice.LimitReserve), h.lowestHook(i)
}

// lowestHook returns how low hook i has to come: onto the bar that stands level
// on dolly A.
func (h *Hung) lowestHook(i int) float64 {
	return h.OnDolly(0) - h.Hole(i).Below + h.Picks[i].Below.Length
}

// inSet returns the cabinets of a set, counted from 0.
func (h *Hung) inSet(k int) []job.Placed {
	first := h.Sets.First(k)
	return h.Cabinets[first : first+h.Sets[k]]
}
