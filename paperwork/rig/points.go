package rig

import (
	"hangpack/calc"
)

// Point is one point of the roof that carries a stack. HighHook and ChainNeeded are nil
// where the height of the steel is not given. Carried is of the finished stack; Most is
// the most that it carries from the first lift on. Alone is what it carries with the other
// hoist slack, masses with their tolerance, nought where there is no other, and
// AloneDesign that with the dynamic factor. Governing is the largest design load over
// finished stack, lifts and their reach. HoistUse is the most over these, of what practice
// allows of its capacity.
type Point struct {
	ID          string   `json:"id"`
	StageLeft   float64  `json:"stage_left_m"`
	Downstage   float64  `json:"downstage_m"`
	PickHeight  float64  `json:"pick_height_m"`
	LowHook     float64  `json:"low_hook_m"`
	HighHook    *float64 `json:"high_hook_m,omitempty"`
	ChainNeeded *float64 `json:"chain_needed_m,omitempty"`
	Carried
	Most        MostCarried `json:"most"`
	Governing   Governing   `json:"governing"`
	Alone       float64     `json:"alone_kg,omitempty"`
	AloneDesign float64     `json:"alone_design_kg,omitempty"`
	Hoist       string      `json:"hoist"`
	HoistUse    float64     `json:"hoist_use"`
}

// Governing is the largest design load of a point, in kg, and where it comes up: "" for
// the finished stack, else such as "lift 2". See Heaviest.
type Governing struct {
	Design float64 `json:"design_kg"`
	Where  string  `json:"where"`
}

// MostCarried is the most that a point carries, and where: "" for the finished
// stack, else such as "lift 2".
type MostCarried struct {
	Where string `json:"where"`
	Carried
}

// Carried is what points carry, in kg: at rest, and with the job's factors.
type Carried struct {
	Static float64 `json:"static_kg"`
	Design float64 `json:"design_kg"`
}

// Plus returns what both carry together.
func (c Carried) Plus(d Carried) Carried { return Carried{c.Static + d.Static, c.Design + d.Design} }

// pointsOf works out the points of a stack, front first.
func pointsOf(h *Hung) (points []Point) {
	for i := range h.Picks {
		points = append(points, pointOf(h, i))
	}
	return points
}

// pointOf works out the point of pick i.
func pointOf(h *Hung, i int) Point {
	left, down := h.Plan(h.Finished.Picks[i].X)
	peak, alone := h.Peak(i), h.Alone(i)
	heaviest, at := h.Heaviest(i)
	return Point{
		ID: h.PointID(i), StageLeft: left, Downstage: down,
		PickHeight: h.PickHeight(i), LowHook: h.LowHook(i),
		HighHook: h.HighHook(i), ChainNeeded: chainNeeded(h, i),
		Carried: h.Carried(h.Finished, i), Most: MostCarried{peak.Words(), h.Carried(peak, i)},
		Governing: Governing{h.DesignMost(i, at.Loads[i]), Where{Lift: heaviest.Lift}.String()},
		Alone:     alone, AloneDesign: alone * h.Job.Practice.DynamicFactor,
		Hoist: h.Picks[i].Hoist.Key, HoistUse: h.UseOf(i, at.Loads[i]),
	}
}

// DesignMost returns the design load of point i in kg with the most of a load on its
// pick.
func (h *Hung) DesignMost(i int, l PickLoad) float64 {
	p, pick := h.Job.Practice, h.Picks[i]
	return calc.Governing(h.Most(l), pick.Below.Mass, calcHoist(pick.Hoist), pick.Above.Mass, p.MassTolerance, p.DynamicFactor)
}

// PointID names point i, front first: SL, or SL-front and SL-rear.
func (h *Hung) PointID(i int) string {
	if len(h.Picks) == 1 {
		return h.ID
	}
	return h.ID + "-" + string(h.End(i))
}

// Plan returns where in plan lies what is x m ahead of the bar's hinge as the stack
// hangs: in m, stage left and downstage positive.
func (h *Hung) Plan(x float64) (left, down float64) {
	return calc.Plan(h.StageLeft, h.Downstage, h.Pan, x)
}

// Peak returns the state in which pick i carries most: the finished stack, or
// the first lift that loads it more, or either with unknown centres of gravity
// elsewhere. A curved stack may lean on one of two hoists harder while it is still
// being built.
func (h *Hung) Peak(i int) *State {
	most := h.Finished
	for _, v := range h.Ways() {
		for _, s := range v.States() {
			if s.Loads[i]*calc.G > max(most.Loads[i], 0)*calc.G+Alike {
				most = s
			}
		}
	}
	return most
}

// Static returns what point i carries at rest in a state, in kg.
func (h *Hung) Static(s *State, i int) float64 {
	p := h.Picks[i]
	return calc.Static(s.Loads[i], p.Below.Mass, calcHoist(p.Hoist), p.Above.Mass)
}

// InLine returns what point i carries besides its pick, in kg: rigging, hoist and chain.
func (h *Hung) InLine(i int) float64 {
	p := h.Picks[i]
	return calc.Static(0, p.Below.Mass, calcHoist(p.Hoist), p.Above.Mass)
}

// Carried returns what point i carries in a state, at rest and with the job's factors.
func (h *Hung) Carried(s *State, i int) Carried {
	static := h.Static(s, i)
	return Carried{static, h.Job.Practice.Design(static)}
}

// Alone returns what point i carries with the other hoist slack, in kg, masses
// with their tolerance; nought where there is one hoist.
func (h *Hung) Alone(i int) float64 {
	if len(h.Picks) == 1 {
		return 0
	}
	p := h.Picks[i]
	return calc.Alone(h.Finished.Centre.Mass, p.Below.Mass, calcHoist(p.Hoist), p.Above.Mass, h.Job.Practice.MassTolerance)
}
