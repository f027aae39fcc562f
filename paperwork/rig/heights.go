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

// LowestHook returns how low hoist i lets its hook down, in m above heights_from. The height
// of its steel is given.
func (h *Hung) LowestHook(i int) float64 {
	return calc.LowestHook(*h.HighHook(i), calcHoist(h.Picks[i].Hoist), h.Job.Practice.LimitReserve)
}

// A LowPlace is a place that a hook has to come down to.
type LowPlace struct {
	To   LowKind
	Lift int     // at a roll-in, the lift that hangs, counted from 1
	Hook float64 // height of the hook there, in m above heights_from
}

// A LowKind is what a hook comes down for.
type LowKind int

// What a hook comes down for. On dolly A and on the floor the bar stands level.
const (
	AtTrim LowKind = iota
	AtRollIn
	OntoDolly
	OntoFloor
)

// LowPlaces are those of hook i, of which the first is trim. Without a dolly neither
// roll-ins nor the bar on dolly A are among them; the bar of two picks, which is lifted by
// itself, always comes down to the floor.
func (h *Hung) LowPlaces(i int) []LowPlace {
	bar := h.Picks[i].Below.Length - h.Hole(i).Below
	all := append(make([]LowPlace, 0, len(h.Lifts)+3), LowPlace{To: AtTrim, Hook: h.LowHook(i)})
	if h.Dolly != nil {
		for k, s := range h.Lifts {
			all = append(all, LowPlace{AtRollIn, s.Lift, h.PickAtRollIn(k, i) + h.Picks[i].Below.Length})
		}
		all = append(all, LowPlace{To: OntoDolly, Hook: h.Floor + h.Dolly.DeckHeight + Standing(h, 0) + bar})
	}
	if len(h.Picks) == 2 {
		all = append(all, LowPlace{To: OntoFloor, Hook: h.Floor + bar})
	}
	return all
}

// LowestPlace is the lowest of LowPlaces, the first of those alike.
func (h *Hung) LowestPlace(i int) LowPlace { return lowest(h.LowPlaces(i)) }

// lowest is the lowest of some places, the first of those alike.
func lowest(places []LowPlace) LowPlace {
	low := places[0]
	for _, p := range places[1:] {
		if p.Hook < low.Hook-Within {
			low = p
		}
	}
	return low
}

// LowestOfWays is the lowest place that hook i has to come down to, wherever unknown
// centres of gravity lie.
func (h *Hung) LowestOfWays(i int) LowPlace {
	var all []LowPlace
	for _, v := range h.Ways() {
		all = append(all, v.LowestPlace(i))
	}
	return lowest(all)
}

// chainNeeded returns how much chain hoist i needs to come down to LowestOfWays, nil
// where the height of the steel is not given.
func chainNeeded(h *Hung, i int) *float64 {
	high := h.HighHook(i)
	if high == nil {
		return nil
	}
	need := calc.ChainNeeded(*high, h.LowestOfWays(i).Hook, calcHoist(h.Picks[i].Hoist), h.Job.Practice.LimitReserve)
	return &need
}

// OnDolly returns the height of the top hinge of a set, counted from 0, that stands
// straight and plumb on its dolly, in m above heights_from: the most that it may be. The
// stack has a dolly.
func (h *Hung) OnDolly(set int) float64 {
	height := h.Floor + h.Dolly.DeckHeight
	for _, c := range inSet(h, set) {
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

// PickAtRollIn returns how high pick i stands then, in m above heights_from.
func (h *Hung) PickAtRollIn(k, i int) float64 {
	s := h.Lifts[k]
	return h.RollIn(k) - (s.HighestPick() - s.Picks[i].Z)
}

// Level returns how high the lowest corner stands above the floor for the next dolly
// to roll in, after lift k counted from 0, in m. The stack has a dolly.
func (h *Hung) Level(k int) float64 { return h.RollIn(k) - h.Lifts[k].Drop() - h.Floor }
