package sheets

import (
	"slices"

	"hangpack/calc"
	"hangpack/layouts"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// pointSteps are what the roof carries.
func pointSteps(h *rig.Hung) (steps []layouts.Formula) {
	u, p := h.Unit(), h.Job.Practice
	plus, dynamic := symbol{"t", say.Trimmed(p.MassTolerance)}, symbol{"D", say.Trimmed(p.DynamicFactor)}
	for i := range h.Picks {
		id, line := h.PointID(i), lineSymbols(h, i)
		steps = append(steps,
			staticStep(h, h.Finished, i, id+", static: pick P, rigging below m_r, hoist m_h, chain c · l, rigging above m_a", line),
			designStep(h, h.Finished, i, id+designWords(h)+": tolerance t, dynamic factor D"))
		if peak := h.Peak(i); peak.Words() != "" {
			steps = append(steps, staticStep(h, peak, i, id+", static at "+peak.Words()+", where it carries most", line), designStep(h, peak, i, id+", design at "+peak.Words()))
		}
		if len(h.Picks) == 2 {
			steps = append(steps, step(id+", design if the other chain goes slack: the whole stack M here", "A = (M + m_r + m_h + c · l + m_a) · (1 + t) · D",
				u.FineMass(h.Points[i].AloneDesign), u.Venue(h.Points[i].AloneDesign), append(line, symbol{"M", u.FineMass(h.Centre.Mass)}, plus, dynamic)...))
		}
	}
	return steps
}

// lineSymbols are what hangs in the line of point i besides the pick.
func lineSymbols(h *rig.Hung, i int) []symbol {
	u, pick := h.Unit(), h.Picks[i]
	m := pick.Hoist
	return []symbol{{"m_r", u.FineMass(pick.Below.Mass)}, {"m_h", u.FineMass(m.Mass)}, {"c", u.PerLength(m.ChainMass)}, {"l", u.ChainLength(m.ChainLength)}, {"m_a", u.FineMass(pick.Above.Mass)}}
}

// designWords name the design load of a point; with one pick no tilt makes it more.
func designWords(h *rig.Hung) string {
	if len(h.Picks) == 1 {
		return ", design, which governs"
	}
	return ", design"
}

// staticStep is what point i carries at rest in a state; line is what hangs in
// its line besides the pick.
func staticStep(h *rig.Hung, s *rig.State, i int, of string, line []symbol) layouts.Formula {
	u, static := h.Unit(), h.Static(s, i)
	return step(of, "S = P + m_r + m_h + c · l + m_a", u.FineMass(static), u.Venue(static), append(slices.Clone(line), symbol{"P", u.FineMass(s.Loads[i])})...)
}

// designStep is the design load of point i in a state.
func designStep(h *rig.Hung, s *rig.State, i int, of string) layouts.Formula {
	u, p, c := h.Unit(), h.Job.Practice, h.Carried(s, i)
	return step(of, "design = S · (1 + t) · D", u.FineMass(c.Design), u.Venue(c.Design),
		symbol{"S", u.FineMass(c.Static)}, symbol{"t", say.Trimmed(p.MassTolerance)}, symbol{"D", say.Trimmed(p.DynamicFactor)})
}

// heaviest is how the stack hangs where pick i carries most.
func heaviest(h *rig.Hung, i int) hanging {
	s, at := h.Heaviest(i)
	for _, v := range h.Ways() {
		if v.Third.Name == s.Third.Name {
			h = v
		}
	}
	return hanging{h, s, at}
}

// pickSteps work out the most that each of two picks carries, and what follows from it.
func pickSteps(h *rig.Hung) (all []layouts.Steps) {
	if len(h.Picks) == 1 {
		return nil
	}
	for i := range h.Picks {
		w := heaviest(h, i)
		steps := w.tiltSteps()
		if !w.asTable() {
			steps = append(steps, w.whole().placeSteps(w.of.Unit())...)
		}
		steps = slices.Concat(steps, w.levelSteps(), []layouts.Formula{w.shareStep(i, "P")}, mostSteps(w, i), governingSteps(w, i))
		all = append(all, layouts.Steps{Heading: h.PointID(i) + ": the most it carries", How: w.words(), Formulas: steps})
	}
	return all
}

// mostSteps are the most that pick i of two carries: each mass off to its own worse side,
// so that what lies beyond the other hook, and lifts this pick, does that with less.
func mostSteps(w hanging, i int) []layouts.Formula {
	u, l := w.of.Unit(), w.at.Loads[i]
	pick, t := symbol{"P", u.FineMass(l.Is)}, symbol{"t", say.Trimmed(w.of.Job.Practice.MassTolerance)}
	other := w.of.End(1 - i)
	beyond := w.beyond(i)
	if len(beyond) == 0 {
		return []layouts.Formula{step("most: nothing lies beyond the "+string(other)+" hook, masses may be more by t", "most = P · (1 + t)", u.FineMass(w.of.Most(l)), "", pick, t)}
	}
	where := "beyond the " + string(other) + " hook"
	b := sumRows(ofRows(where+" then, "+namesOf(beyond, where), "B"), "B", "B", beyond, nil)
	lifted, spread := b.mass*w.past(i, b.level(w)), symbol{"spread", u.FineMass(l.Spread)}
	formula := [...]string{"B = M_B · (centre_B - rear) / (rear - front)", "B = M_B · (front - centre_B) / (rear - front)"}[i]
	return append(b.placeSteps(u),
		b.levelStep(w, "as they hang, level behind the hinge", "centre_B"),
		step("how much they take off the "+string(w.of.End(i))+" pick", formula, u.FineMass(lifted), "", symbol{"M_B", u.FineMass(b.mass)},
			symbol{"centre_B", u.GearLength(b.level(w))}, symbol{"front", u.GearLength(w.holeLevel(0))}, symbol{"rear", u.GearLength(w.holeLevel(1))}),
		step("what tolerance is taken of: each mass off to its own worse side", "spread = P + 2 · B", spread.is, "", pick, symbol{"B", u.FineMass(lifted)}),
		step("most", "most = P + t · spread", u.FineMass(w.of.Most(l)), "", pick, t, spread))
}

// past is how far a level, in m behind the hinge, lies beyond the hook that is not pick
// i's, as a share of what is between both: below 0 on this side of it.
func (w hanging) past(i int, level float64) float64 {
	return [...]float64{level - w.holeLevel(1), w.holeLevel(0) - level}[i] / (w.holeLevel(1) - w.holeLevel(0))
}

// beyond are the parts that lie beyond the hook that is not pick i's.
func (w hanging) beyond(i int) (parts []part) {
	for _, p := range w.parts() {
		if w.past(i, -p.at.Turned(w.tilt()).X) > rig.Within {
			parts = append(parts, p)
		}
	}
	return parts
}

// governingSteps go from the most on pick i to how much its hoist and its pick hole are
// used, and to the governing load of its point.
func governingSteps(w hanging, i int) []layouts.Formula {
	u, p, l := w.of.Unit(), w.of.Job.Practice, w.at.Loads[i]
	most, t, d := symbol{"most", u.FineMass(w.of.Most(l))}, symbol{"t", say.Trimmed(p.MassTolerance)}, symbol{"D", say.Trimmed(p.DynamicFactor)}
	hook := symbol{"hook", u.FineMass(w.of.MostOnHook(i, l) / calc.G)}
	steps := []layouts.Formula{
		step("the hook holds it and the rigging below m_r", "hook = most + m_r · (1 + t)", hook.is, u.Load(w.of.MostOnHook(i, l)/calc.G), most, t, symbol{"m_r", u.FineMass(w.of.Picks[i].Below.Mass)}),
		step("of what practice allows of the hoist's capacity", "use = 100 · hook / (capacity · h_u)", say.Fixed(100*w.of.UseOf(i, l), 1)+" %", say.Percent(w.of.UseOf(i, l)), hook,
			symbol{"capacity", u.FineMass(w.of.Picks[i].Hoist.Capacity / calc.G)}, symbol{"h_u", say.Trimmed(p.HoistUse)}),
	}
	if r := w.of.Bar.PickRating; r > 0 {
		used := w.of.Most(l) * p.DynamicFactor * calc.G / (r * p.GearUse)
		steps = append(steps, step("of what practice allows of the pick hole's rating", "use = 100 · most · D / (rating · g_u)", say.Fixed(100*used, 1)+" %", say.Percent(used), most, d,
			symbol{"rating", u.FineMass(r / calc.G)}, symbol{"g_u", say.Trimmed(p.GearUse)}))
	}
	load := w.of.DesignMost(i, l)
	return append(steps, step("governing load: hoist m_h, chain c · l, rigging above m_a too", "governing = (most + (m_r + m_h + c · l + m_a) · (1 + t)) · D", u.FineMass(load), u.Venue(load),
		append(lineSymbols(w.of, i), most, t, d)...))
}
