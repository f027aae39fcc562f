package sheets

import (
	"fmt"
	"math"
	"slices"

	"hangpack/calc"
	"hangpack/layouts"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// worstJoint returns the joint, counted from 0, whose pins are used most as the
// stack hangs finished; where none has a rating, the one with the largest force.
func worstJoint(h *rig.Hung) int {
	used, forces := make([]float64, len(h.Cabinets)), make([]float64, len(h.Cabinets))
	for k, j := range h.Finished.Joints {
		c := h.Cabinets[k]
		hinge, link := h.Job.Practice.PinLoad(j.Hinge(), c.HingePins), h.Job.Practice.PinLoad(math.Abs(j.Link), c.LinkPins)
		forces[k] = math.Max(hinge, link)
		if r := h.Ratings(k); r != nil {
			used[k] = math.Max(hinge/r.Hinge, link/r.Link)
		}
	}
	if worst := slices.Index(used, slices.Max(used)); used[worst] > 0 {
		return worst
	}
	return slices.Index(forces, slices.Max(forces))
}

// A hanging is what hangs below a joint: its mass and first moments, in kg and
// kg m, the joint's hinge, where its centre of gravity lies from that, all in
// the bar's axes; and how far behind the hinge that is as it hangs, level.
type hanging struct {
	mass, behind, below float64
	hinge, from         calc.Offset
	level               float64
}

// jointSteps work out joint k, counted from 0, in full: what hangs below it on
// a hinge and a link.
func jointSteps(h *rig.Hung, k int, all []part) []layouts.Formula {
	b := hangsBelow(h, k, all)
	steps := append(belowSteps(h, k, b), forceSteps(h, k, b)...)
	return append(steps, pinSteps(h, k)...)
}

// hangsBelow gathers what hangs below joint k, counted from 0; all are massParts.
func hangsBelow(h *rig.Hung, k int, all []part) hanging {
	parts := all[slices.IndexFunc(all, func(p part) bool { return p.cabinet == k+1 }):]
	b := hanging{hinge: parts[0].hinge}
	b.mass, b.behind, b.below = moments(parts)
	b.from = calc.Offset{Behind: b.behind/b.mass - b.hinge.Behind, Below: b.below/b.mass - b.hinge.Below}
	b.level = -b.from.Turned(h.Finished.Tilt).X
	return b
}

// belowSteps place the centre of gravity of what hangs below a joint.
func belowSteps(h *rig.Hung, k int, b hanging) []layouts.Formula {
	u := h.Unit()
	m := symbol{"M", u.FineMass(b.mass)}
	rows := fmt.Sprintf("cabinets %d to %d and their extras: M, S_b, S_d are sums of their rows, b_k, d_k the joint's hinge", k+1, len(h.Cabinets))
	return []layouts.Formula{
		step(rows, "b = S_b · "+u.PerMoment()+" / M - b_k", u.GearLength(b.from.Behind), "", symbol{"S_b", u.BareMoment(b.behind) + " " + u.MomentUnit()}, m, symbol{"b_k", u.GearLength(b.hinge.Behind)}),
		step("the same, below the joint's hinge", "d = S_d · "+u.PerMoment()+" / M - d_k", u.GearLength(b.from.Below), "", symbol{"S_d", u.BareMoment(b.below) + " " + u.MomentUnit()}, m, symbol{"d_k", u.GearLength(b.hinge.Below)}),
		step("as it hangs, level behind the joint's hinge", "e = b · cos(tilt) + d · sin(tilt)", u.GearLength(b.level), "", symbol{"b", u.GearLength(b.from.Behind)}, symbol{"d", u.GearLength(b.from.Below)}, symbol{"tilt", say.FineAngle(h.Finished.Tilt)}),
	}
}

// forceSteps: moments about the hinge, then forces along and across the mean of
// the two bodies.
func forceSteps(h *rig.Hung, k int, b hanging) []layouts.Formula {
	u, j, c := h.Unit(), h.Finished.Joints[k], h.Body.Cabinets[k]
	phi := h.Finished.Poses[k].Aim - c.Splay/2
	w, lean, link := symbol{"W", u.Newtons(b.mass * calc.G)}, symbol{"phi", say.FineAngle(phi)}, symbol{"link", u.Newtons(j.Link)}
	weight := step("weight below the joint", "W = M", u.Newtons(b.mass*calc.G), "", symbol{"M", say.Fixed(b.mass/say.PoundKg, 1) + " lbf"})
	if !u.Imperial {
		weight = step("weight below the joint", "W = M · g / 1000", u.Newtons(b.mass*calc.G), "", symbol{"M", u.FineMass(b.mass)}, symbol{"g", fmt.Sprint(calc.G) + " N/kg"})
	}
	return []layouts.Formula{
		weight,
		step("mean turn of the two bodies", "phi = aim - splay / 2", say.FineAngle(phi), "", symbol{"aim", say.FineAngle(h.Finished.Poses[k].Aim)}, symbol{"splay", say.FineAngle(c.Splay)}),
		step("link, by moments about the hinge; arm is the smaller link arm of the two", "link = W · e / (arm · cos(splay / 2))", u.Newtons(j.Link), way(u, j.Link), w,
			symbol{"e", u.GearLength(b.level)}, symbol{"arm", u.GearLength(h.Body.Arm(k))}, symbol{"splay", say.FineAngle(c.Splay)}),
		step("hinge, along the mean", "pull = W · cos(phi) - link", u.Newtons(j.HingePull), way(u, j.HingePull), w, lean, link),
		step("hinge, across the mean", "side = W · sin(phi)", u.Newtons(j.HingeSide), "", w, lean),
		step("hinge, both together", "hinge = sqrt(pull · pull + side · side)", u.Newtons(j.Hinge()), u.Force(j.Hinge()), symbol{"pull", u.Newtons(j.HingePull)}, symbol{"side", u.Newtons(j.HingeSide)}),
	}
}

// pinSteps are the force on one pin of each kind and how much of its rating that is.
func pinSteps(h *rig.Hung, k int) []layouts.Formula {
	j, c, rated := h.Finished.Joints[k], h.Cabinets[k], h.Ratings(k)
	if rated == nil {
		rated = &job.PinRatings{}
	}
	return append(pinStep(h, "hinge", j.Hinge(), c.HingePins, rated.Hinge), pinStep(h, "link", math.Abs(j.Link), c.LinkPins, rated.Link)...)
}

// pinStep is of one kind of pin; a rating of 0 is not given.
func pinStep(h *rig.Hung, name string, force float64, pins int, rating float64) []layouts.Formula {
	u, p := h.Unit(), h.Job.Practice
	of, side := "one "+name+" pin, with side share s, tolerance t and dynamic factor D", p.SideShare
	if pins == 1 {
		of, side = "the one "+name+" pin (s = 1), with tolerance t and dynamic factor D", 1
	}
	one := h.Job.Practice.PinLoad(force, pins)
	steps := []layouts.Formula{step(of, "pin = "+name+" · s · (1 + t) · D", u.Newtons(one), u.Force(one), symbol{name, u.Newtons(force)},
		symbol{"s", say.Trimmed(side)}, symbol{"t", say.Trimmed(p.MassTolerance)}, symbol{"D", say.Trimmed(p.DynamicFactor)})}
	if rating == 0 {
		return steps
	}
	used := h.Job.Practice.PinUsed(force, pins, rating)
	return append(steps, step("of what practice allows of its rating", "use = 100 · pin / (rating · g_u)", say.Fixed(100*used, 1)+" %", say.Percent(used),
		symbol{"pin", u.Newtons(one)}, symbol{"rating", u.Newtons(rating)}, symbol{"g_u", say.Trimmed(p.GearUse)}))
}

// jointRow is what joint k, counted from 0, carries.
func jointRow(h *rig.Hung, k int) []string {
	u, s, j, c := h.Unit(), h.Finished, h.Finished.Joints[k], h.Cabinets[k]
	hinge, link := "no rating", "no rating"
	if rated := h.Ratings(k); rated != nil {
		hinge, link = say.Percent(h.Job.Practice.PinUsed(j.Hinge(), c.HingePins, rated.Hinge)), say.Percent(h.Job.Practice.PinUsed(j.Link, c.LinkPins, rated.Link))
	}
	return []string{fmt.Sprint(k + 1), say.Aim(s.Poses[k].Aim), u.Length(h.Raise + calc.Lowest(s.Corners[k])),
		u.Force(j.Hinge()), way(u, j.HingePull), way(u, j.Link), hinge, link}
}

// way writes a force along a joint and which way it goes.
func way(u say.Units, n float64) string {
	switch {
	case n > rig.Alike:
		return u.Force(n) + " pull"
	case n < -rig.Alike:
		return u.Force(n) + " push"
	}
	return "none"
}
