package paperwork

import (
	"hangpack/calc"
	"hangpack/paperwork/job"
	"hangpack/paperwork/say"
)

func (h *hung) pointFigures() (points []PointFigures) {
	for i, p := range h.Picks {
		left, down := h.plan(h.finished.picks[i].X)
		peak := h.peak(i)
		points = append(points, PointFigures{
			ID: h.pointID(i), StageLeft: left, Downstage: down,
			PickHeight: h.pickHeight(i), LowHook: h.lowHook(i),
			HighHook: h.highHook(i), ChainNeeded: h.chainNeeded(i),
			Carried: h.carried(h.finished, i), Most: MostCarried{peak.at(), h.carried(peak, i)},
			Alone: h.alone(i), Hoist: p.Hoist.Key, HoistUse: h.hoistUse(peak, i),
		})
	}
	return points
}

// plan returns where in plan lies what is x ahead of the bar's hinge.
func (h *hung) plan(x float64) (left, down float64) {
	return calc.Plan(h.StageLeft, h.Downstage, h.Pan, x)
}

// pointID names a point: SL, or SL-front and SL-rear.
func (h *hung) pointID(i int) string {
	if len(h.Picks) == 1 {
		return h.ID
	}
	return h.ID + "-" + string(h.end(i))
}

// highHook returns where hoist i and its rigging hang from, nil where the
// height of the steel is not given.
func (h *hung) highHook(i int) *float64 {
	p := h.Picks[i]
	if p.Steel == nil {
		return nil
	}
	high := *p.Steel - p.Above.Length
	return &high
}

// chainNeeded returns how much chain hoist i needs to come down onto the bar on
// dolly A, nil where the steel is not given or no dolly says how low that is.
func (h *hung) chainNeeded(i int) *float64 {
	high := h.highHook(i)
	if high == nil || h.Dolly == nil {
		return nil
	}
	need := calc.ChainNeeded(*high, h.lowestHook(i), hoist(h.Picks[i].Hoist), h.job.Practice.LimitReserve)
	return &need
}

// peak returns the state in which pick i carries most: the finished stack, or
// the first lift that loads it more, or either with unknown centres of gravity
// elsewhere. A curved stack may lean on one of two hoists harder while it is still
// being built.
func (h *hung) peak(i int) *state {
	most := h.finished
	for _, v := range h.ways() {
		for _, s := range v.states() {
			if s.loads[i]*calc.G > max(most.loads[i], 0)*calc.G+alike {
				most = s
			}
		}
	}
	return most
}

// at says which state it is, and where unknown centres of gravity are taken in
// it: "" for the finished stack with those of the job.
func (s *state) at() string {
	return say.Listed(Where{Lift: s.lift}.String(), s.third.words())
}

// static returns what point i carries at rest in a state, in kg.
func (h *hung) static(s *state, i int) float64 {
	p := h.Picks[i]
	return calc.Static(s.loads[i], p.Below.Mass, hoist(p.Hoist), p.Above.Mass)
}

// carried returns what point i carries in a state.
func (h *hung) carried(s *state, i int) Carried {
	static := h.static(s, i)
	return Carried{static, h.job.Practice.Design(static)}
}

// alone returns what point i carries with the other hoist slack, in kg, masses
// with their tolerance; nought where there is one hoist.
func (h *hung) alone(i int) float64 {
	if len(h.Picks) == 1 {
		return 0
	}
	p := h.Picks[i]
	return calc.Alone(h.finished.centre.Mass, p.Below.Mass, hoist(p.Hoist), p.Above.Mass, h.job.Practice.MassTolerance)
}

// hoistUse returns how much of what practice allows of hoist i is used.
func (h *hung) hoistUse(s *state, i int) float64 { return h.useOf(i, h.hook(s, i)) }

// useOf returns how much of what practice allows of hoist i a load on its hook
// uses, the load in kg and without its tolerance.
func (h *hung) useOf(i int, kg float64) float64 { return h.job.Practice.OnHook(kg) / h.hoistMost(i) }

// hoistMost returns what practice allows of hoist i, in newtons.
func (h *hung) hoistMost(i int) float64 {
	return h.Picks[i].Hoist.Capacity * h.job.Practice.HoistUse
}

// overloads reports whether a load on its hook, in kg and without its tolerance,
// is more than practice allows of hoist i.
func (h *hung) overloads(i int, kg float64) bool {
	return h.job.Practice.OnHook(kg) > h.hoistMost(i)+alike
}

// aloneOnHook returns what hoist i holds with the other one slack, in kg.
func (h *hung) aloneOnHook(i int) float64 { return h.finished.centre.Mass + h.Picks[i].Below.Mass }

func otherFigures(j *job.Job) []OtherFigures {
	others := []OtherFigures{}
	for _, o := range j.OtherPoints {
		others = append(others, OtherFigures{ID: o.ID, What: o.What, StageLeft: o.StageLeft, Downstage: o.Downstage,
			Height: o.Height, Carried: Carried{o.Mass, j.Practice.Design(o.Mass)}})
	}
	return others
}
