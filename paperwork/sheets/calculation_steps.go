package sheets

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

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
func hangSteps(h *rig.Hung) []layouts.Formula {
	steps := nominal(h).whole().placeSteps(h.Unit())
	if len(h.Picks) == 1 {
		return slices.Concat(steps, onePickSteps(h), aimSteps(h))
	}
	return slices.Concat(steps, []layouts.Formula{heldStep(h)}, aimSteps(h), twoPickSteps(h))
}

// settledStep: a stack in a state turns until its centre of gravity hangs plumb below
// the pick hole.
func settledStep(h *rig.Hung, s *rig.State) layouts.Formula {
	u, hole := h.Unit(), h.Hole(0)
	return step("bar's tilt, front down: pick hole b_h behind and u above the hinge", "tilt = atan((b_h - b_G) / (d_G + u))", say.FineAngle(s.Tilt), say.Aim(s.Tilt),
		symbol{"b_h", u.GearLength(hole.Behind)}, symbol{"b_G", u.GearLength(s.InBar.At.Behind)}, symbol{"d_G", u.GearLength(s.InBar.At.Below)}, symbol{"u", u.GearLength(-hole.Below)})
}

// onePickSteps: the tilt, and what the hook holds.
func onePickSteps(h *rig.Hung) []layouts.Formula {
	u := h.Unit()
	hook := step("hook holds stack M and rigging below m_r", "hook = M + m_r", u.FineMass(h.Hook(h.Finished, 0)), u.Reading(h.Hook(h.Finished, 0)),
		symbol{"M", u.FineMass(h.Centre.Mass)}, symbol{"m_r", u.FineMass(h.Picks[0].Below.Mass)})
	return []layouts.Formula{settledStep(h, h.Finished), hook}
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
	u, w := h.Unit(), nominal(h)
	steps := append(w.levelSteps(), w.shareStep(0, "F"), w.shareStep(1, "R"))
	for i, name := range []string{"F", "R"} {
		steps = append(steps, step(string(h.End(i))+" hook holds its pick and the rigging below m_r", "hook = "+name+" + m_r", u.FineMass(h.Hook(w.s, i)), u.Reading(h.Hook(w.s, i)),
			symbol{name, u.FineMass(w.s.Loads[i])}, symbol{"m_r", u.FineMass(h.Picks[i].Below.Mass)}))
	}
	return steps
}

// levelSteps are how far centre of gravity and pick holes lie level behind the hinge.
func (w hanging) levelSteps() []layouts.Formula {
	hole := func(i int, name string) layouts.Formula {
		u, t := w.of.Unit(), w.tiltSymbol()
		return step(name+" pick hole, level behind the hinge", fmt.Sprintf("%s = b · cos(%s) + d · sin(%s)", name, t.name, t.name), u.GearLength(w.holeLevel(i)), "",
			symbol{"b", u.GearLength(w.of.Hole(i).Behind)}, symbol{"d", u.GearLength(w.of.Hole(i).Below)}, t)
	}
	return []layouts.Formula{w.whole().levelStep(w, "centre of gravity, level behind the hinge", "centre"), hole(0, "front"), hole(1, "rear")}
}

// holeLevel is how far behind the hinge pick hole i lies as the stack hangs, in m.
func (w hanging) holeLevel(i int) float64 { return -w.of.Hole(i).Turned(w.tilt()).X }

// shareStep is what pick i of two carries, by moments about the other hook.
func (w hanging) shareStep(i int, name string) layouts.Formula {
	u, all := w.of.Unit(), w.whole()
	of := [...]string{"front pick carries, by moments about the rear hook", "rear pick carries, by moments about the front hook"}
	formula := [...]string{" = M · (rear - centre) / (rear - front)", " = M · (centre - front) / (rear - front)"}
	return step(of[i], name+formula[i], u.FineMass(w.at.Loads[i].Is), "", symbol{"M", u.FineMass(all.mass)}, symbol{"front", u.GearLength(w.holeLevel(0))},
		symbol{"rear", u.GearLength(w.holeLevel(1))}, symbol{"centre", u.GearLength(all.level(w))})
}

// slackSteps are by how much the pick holes of two have to stand otherwise, one over the
// other, before either chain is slack: then the stack hangs from the other hole alone.
func slackSteps(h *rig.Hung) []layouts.Formula {
	if len(h.Picks) == 1 {
		return nil
	}
	s := h.Finished
	steps := []layouts.Formula{riseStep(h, "front pick hole over the rear one: each b behind and u above the hinge", "rise", symbol{"tilt", say.FineAngle(s.Tilt)}, s.Tilt)}
	for i, end := range []string{"f", "r"} {
		tilt := s.Alone[1-i].Tilt
		at := symbol{"tilt_" + end, say.FineAngle(tilt)}
		steps = append(steps, swungStep(h, i, at), riseStep(h, "front pick hole over the rear one then", "rise_"+end, at, tilt), slackStep(h, i, end))
	}
	return steps
}

// frontOverRear is how high the front pick hole stands over the rear one at a tilt, in m.
func frontOverRear(h *rig.Hung, tilt float64) float64 {
	return h.Hole(0).Turned(tilt).Z - h.Hole(1).Turned(tilt).Z
}

func riseStep(h *rig.Hung, of, name string, tilt symbol, rad float64) layouts.Formula {
	u := h.Unit()
	return step(of, fmt.Sprintf("%s = (b_f - b_r) · sin(%s) + (u_f - u_r) · cos(%s)", name, tilt.name, tilt.name), u.GearLength(frontOverRear(h, rad)), "", tilt,
		symbol{"b_f", u.GearLength(h.Hole(0).Behind)}, symbol{"b_r", u.GearLength(h.Hole(1).Behind)}, symbol{"u_f", u.GearLength(-h.Hole(0).Below)}, symbol{"u_r", u.GearLength(-h.Hole(1).Below)})
}

// swungStep is the tilt at which chain i of two is slack.
func swungStep(h *rig.Hung, i int, tilt symbol) layouts.Formula {
	u, other, held := h.Unit(), h.Hole(1-i), [...]string{"r", "f"}[i]
	formula := fmt.Sprintf("%s = atan((b_%s - b_G) / (d_G + u_%s))", tilt.name, held, held)
	if h.Centre.At.Below < other.Below { // it has tipped over
		formula += map[bool]string{true: " + 180°", false: " - 180°"}[other.Behind > h.Centre.At.Behind]
	}
	return step(fmt.Sprintf("%s chain slack: centre of gravity plumb below the %s pick hole", h.End(i), h.End(1-i)), formula, tilt.is, "",
		symbol{"b_" + held, u.GearLength(other.Behind)}, symbol{"u_" + held, u.GearLength(-other.Below)}, symbol{"b_G", u.GearLength(h.Centre.At.Behind)}, symbol{"d_G", u.GearLength(h.Centre.At.Below)})
}

// slackStep is how much higher or lower pick i of two stands then.
func slackStep(h *rig.Hung, i int, end string) layouts.Formula {
	u, rise := h.Unit(), h.ToSlack(h.Finished, i)
	formula := [...]string{"slack_f = rise_f - rise", "slack_r = rise - rise_r"}[i]
	return step(slackOf(h, h.Finished, i), formula, u.GearLength(rise), "", symbol{"rise", u.GearLength(frontOverRear(h, h.Finished.Tilt))}, symbol{"rise_" + end, u.GearLength(frontOverRear(h, h.Finished.Alone[1-i].Tilt))})
}
