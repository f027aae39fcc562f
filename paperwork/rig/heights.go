package rig

import (
	"hangpack/calc"
)

// atTrim returns the height of the bar's hinge pin at trim, in m above heights_from.
func atTrim(h *Hung) float64 {
	if h.Trim.OfPick {
		return h.Trim.Height - h.Finished.HighestPick()
	}
	return h.Trim.Height - h.Finished.Lowest()
}

// PickHeight returns the height of pick i at trim, in m above heights_from.
func (h *Hung) PickHeight(i int) float64 { return h.Raise + h.Finished.Picks[i].Z }

// LowHook returns the height of the hook of hoist i at trim, in m above heights_from.
func (h *Hung) LowHook(i int) float64 { return h.PickHeight(i) + h.Picks[i].Below.Length }

// HighHook returns how high hoist i hangs, in m above heights_from: below the steel by
// its rigging; nil where the height of the steel is not given.
func (h *Hung) HighHook(i int) *float64 {
	p := h.Picks[i]
	if p.Steel == nil {
		return nil
	}
	high := *p.Steel - p.Above.Length
	return &high
}

// Reach returns how low hoist i lets its hook down, and how low it has to come, in m
// above heights_from. The stack has a dolly, and the height of its steel is given.
func (h *Hung) Reach(i int) (lowest, wanted float64) {
	return calc.LowestHook(*h.HighHook(i), calcHoist(h.Picks[i].Hoist), h.Job.Practice.LimitReserve), h.lowestHook(i)
}

// lowestHook returns how low hook i has to come: onto the bar that stands level
// on dolly A.
func (h *Hung) lowestHook(i int) float64 {
	return h.OnDolly(0) - h.Hole(i).Below + h.Picks[i].Below.Length
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

// OnDolly returns the height of the top hinge of a set, counted from 0, that stands on
// its dolly, in m above heights_from. The stack has a dolly.
func (h *Hung) OnDolly(set int) float64 {
	height := h.Floor + h.Dolly.DeckHeight
	for _, c := range h.inSet(set) {
		height += c.HingePitch
	}
	return height
}

// RollIn returns how high the highest pick stands, after lift k counted from 0, for the
// next dolly to roll in below with its clearance, in m above heights_from. The stack has
// a dolly.
func (h *Hung) RollIn(k int) float64 {
	return h.OnDolly(k+1) + h.Job.Practice.Clearance + h.Lifts[k].Drop()
}

// Level returns how high the lowest corner stands above the floor for the next dolly
// to roll in, after lift k counted from 0, in m. The stack has a dolly.
func (h *Hung) Level(k int) float64 { return h.RollIn(k) - h.Lifts[k].Drop() - h.Floor }
