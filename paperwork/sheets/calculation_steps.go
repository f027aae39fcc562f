package sheets

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"hangpack/calc"
	"hangpack/layouts"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// A symbol is a name in a formula with the number that is put in for it.
type symbol struct{ name, is string }

var (
	names   = regexp.MustCompile(`[A-Za-z][A-Za-z_0-9]*`)
	doubled = regexp.MustCompile(`\(\((-[^()]*)\)\)`) // parentheses around a number below nought that has its own
)

// step writes a formula with its numbers put in. of tells its symbols apart, in
// words; formula is 'name = …'.
func step(of, formula, is, prints string, symbols ...symbol) layouts.Formula {
	put := map[string]string{}
	for _, s := range symbols {
		put[s.name] = s.is
	}
	_, right, _ := strings.Cut(formula, " = ")
	numbers := names.ReplaceAllStringFunc(right, func(name string) string {
		is, ok := put[name]
		switch {
		case !ok:
			return name
		case strings.HasPrefix(is, "-"):
			return "(" + is + ")"
		}
		return is
	})
	numbers = doubled.ReplaceAllString(numbers, "($1)")
	return layouts.Formula{Of: of, Symbols: formula, Numbers: numbers, Is: is, Prints: prints}
}

// hangSteps go from the centre of gravity to what the hooks hold.
func hangSteps(h *rig.Hung, all []part) []layouts.Formula {
	steps := centreSteps(h, all)
	if len(h.Picks) == 1 {
		return append(append(steps, onePickSteps(h)...), aimSteps(h)...)
	}
	return append(append(append(steps, heldStep(h)), aimSteps(h)...), twoPickSteps(h)...)
}

// centreSteps are the place of the centre of gravity, from the table's sums.
func centreSteps(h *rig.Hung, all []part) []layouts.Formula {
	u := h.Unit()
	mass, behind, below := moments(all)
	m := symbol{"M", u.FineMass(mass)}
	return []layouts.Formula{
		step("centre of gravity behind the hinge, from the table's sums", "b_G = S_b · "+u.PerMoment()+" / M", u.GearLength(h.Centre.At.Behind), "", symbol{"S_b", u.BareMoment(behind) + " " + u.MomentUnit()}, m),
		step("centre of gravity below the hinge", "d_G = S_d · "+u.PerMoment()+" / M", u.GearLength(h.Centre.At.Below), "", symbol{"S_d", u.BareMoment(below) + " " + u.MomentUnit()}, m),
	}
}

// onePickSteps: the stack turns until its centre of gravity hangs plumb below
// the pick hole.
func onePickSteps(h *rig.Hung) []layouts.Formula {
	u, hole := h.Unit(), h.Hole(0)
	turns := step("bar's tilt, front down: pick hole b_h behind and u above the hinge", "tilt = atan((b_h - b_G) / (d_G + u))", say.FineAngle(h.Finished.Tilt), say.Aim(h.Finished.Tilt),
		symbol{"b_h", u.GearLength(hole.Behind)}, symbol{"b_G", u.GearLength(h.Centre.At.Behind)}, symbol{"d_G", u.GearLength(h.Centre.At.Below)}, symbol{"u", u.GearLength(-hole.Below)})
	hook := step("hook holds stack M and rigging below m_r", "hook = M + m_r", u.FineMass(h.Hook(h.Finished, 0)), u.Reading(h.Hook(h.Finished, 0)),
		symbol{"M", u.FineMass(h.Centre.Mass)}, symbol{"m_r", u.FineMass(h.Picks[0].Below.Mass)})
	return []layouts.Formula{turns, hook}
}

// heldStep: two hoists hold the wanted aim.
func heldStep(h *rig.Hung) layouts.Formula {
	return step("bar's tilt: two hoists hold the wanted aim of cabinet 1", "tilt = wanted - splay_1", say.FineAngle(h.Finished.Tilt), say.Aim(h.Finished.Tilt),
		symbol{"wanted", say.FineAngle(h.Aim)}, symbol{"splay_1", say.FineAngle(h.Body.Cabinets[0].Splay)})
}

// aimSteps are the aims of cabinet 1 and of the lowest.
func aimSteps(h *rig.Hung) []layouts.Formula {
	n := len(h.Cabinets)
	first, last := h.Finished.Poses[0].Aim, h.Finished.Poses[n-1].Aim
	steps := []layouts.Formula{step("cabinet 1 looks down by", "aim_1 = tilt + splay_1", say.FineAngle(first), say.Aim(first),
		symbol{"tilt", say.FineAngle(h.Finished.Tilt)}, symbol{"splay_1", say.FineAngle(h.Body.Cabinets[0].Splay)})}
	if n == 1 {
		return steps
	}
	bend := last - first
	return append(steps, step(fmt.Sprintf("cabinet %d looks down by; bend is the sum of all splays but the first", n), fmt.Sprintf("aim_%d = aim_1 + bend", n), say.FineAngle(last), say.Aim(last),
		symbol{"aim_1", say.FineAngle(first)}, symbol{"bend", say.FineAngle(bend)}))
}

// twoPickSteps: reactions from moments about each hook.
func twoPickSteps(h *rig.Hung) []layouts.Formula {
	u, s := h.Unit(), h.Finished
	tilt := symbol{"tilt", say.FineAngle(s.Tilt)}
	behind := func(of, name string, at calc.Offset, x float64) layouts.Formula {
		return step(of, name+" = b · cos(tilt) + d · sin(tilt)", u.GearLength(-x), "", symbol{"b", u.GearLength(at.Behind)}, symbol{"d", u.GearLength(at.Below)}, tilt)
	}
	mass, front, rear := symbol{"M", u.FineMass(h.Centre.Mass)}, symbol{"front", u.GearLength(-s.Picks[0].X)}, symbol{"rear", u.GearLength(-s.Picks[1].X)}
	centre := symbol{"centre", u.GearLength(-s.Centre.At.X)}
	steps := []layouts.Formula{
		behind("centre of gravity, level behind the hinge (b_G, d_G)", "centre", h.Centre.At, s.Centre.At.X),
		behind("front pick hole, level behind the hinge", "front", h.Hole(0), s.Picks[0].X),
		behind("rear pick hole, level behind the hinge", "rear", h.Hole(1), s.Picks[1].X),
		step("front pick carries, by moments about the rear hook", "F = M · (rear - centre) / (rear - front)", u.FineMass(s.Loads[0]), "", mass, front, rear, centre),
		step("rear pick carries, by moments about the front hook", "R = M · (centre - front) / (rear - front)", u.FineMass(s.Loads[1]), "", mass, front, rear, centre),
	}
	for i, name := range []string{"F", "R"} {
		steps = append(steps, step(string(h.End(i))+" hook holds its pick and the rigging below m_r", "hook = "+name+" + m_r", u.FineMass(h.Hook(s, i)), u.Reading(h.Hook(s, i)),
			symbol{name, u.FineMass(s.Loads[i])}, symbol{"m_r", u.FineMass(h.Picks[i].Below.Mass)}))
	}
	return steps
}

// pointSteps are what the roof carries.
func pointSteps(h *rig.Hung) (steps []layouts.Formula) {
	u, p := h.Unit(), h.Job.Practice
	plus := symbol{"t", say.Trimmed(p.MassTolerance)}
	for i, pick := range h.Picks {
		m, id := pick.Hoist, h.PointID(i)
		line := []symbol{{"m_r", u.FineMass(pick.Below.Mass)}, {"m_h", u.FineMass(m.Mass)}, {"c", u.PerLength(m.ChainMass)}, {"l", u.ChainLength(m.ChainLength)}, {"m_a", u.FineMass(pick.Above.Mass)}}
		steps = append(steps,
			staticStep(h, h.Finished, i, id+", static: pick P, rigging below m_r, hoist m_h, chain c · l, rigging above m_a", line),
			designStep(h, h.Finished, i, id+", design: tolerance t, dynamic factor D"))
		if peak := h.Peak(i); peak.Words() != "" {
			steps = append(steps, staticStep(h, peak, i, id+", static at "+peak.Words()+", where it carries most", line), designStep(h, peak, i, id+", design at "+peak.Words()))
		}
		if len(h.Picks) == 2 {
			steps = append(steps, step(id+", other hoist slack: the whole stack M here", "A = (M + m_r + m_h + c · l + m_a) · (1 + t)", u.FineMass(h.Alone(i)), u.Venue(h.Alone(i)), append(line, symbol{"M", u.FineMass(h.Centre.Mass)}, plus)...))
		}
	}
	return steps
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
