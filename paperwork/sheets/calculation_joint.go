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

// mostUsedJoint finds the joint, counted from 0, whose pins are used most, and how the
// stack hangs then; where none has a rating, the one with the largest force.
func mostUsedJoint(h *rig.Hung) (worst hanging, k int) {
	used, force := 0.0, 0.0
	for _, w := range hangings(h) {
		for n, j := range w.at.Joints {
			u, f := jointUse(h, n, j)
			if u > used+rig.Within || used == 0 && f > force*(1+rig.Within) {
				worst, k, used, force = w, n, u, f
			}
		}
	}
	return worst, k
}

// jointUse is how much the pins of joint k, counted from 0, are used of what practice
// allows, as a fraction of one and 0 without a rating; and the larger of their forces.
func jointUse(h *rig.Hung, k int, j calc.Joint) (used, force float64) {
	p, c := h.Job.Practice, &h.Cabinets[k]
	if r := h.Ratings(k); r != nil {
		used = math.Max(p.PinUsed(j.Hinge(), c.HingePins, r.Hinge), p.PinUsed(j.Link, c.LinkPins, r.Link))
	}
	return used, math.Max(p.PinLoad(j.Hinge(), c.HingePins), p.PinLoad(j.Link, c.LinkPins))
}

// leastPulled finds the link that may only be pulled and is closest to being pushed, by
// its joint counted from 0, and how the stack hangs then.
func leastPulled(h *rig.Hung) (closest hanging, k int, found bool) {
	least := math.Inf(1)
	for _, w := range hangings(h) {
		for n := range w.at.Joints {
			if force := w.of.LinkLeast(w.at, n); !h.MayPush(n) && force < least-rig.Within {
				closest, k, found, least = w, n, true, force
			}
		}
	}
	return closest, k, found
}

// jointSteps work out joint k, counted from 0, in full: what hangs below it on
// a hinge and a link.
func jointSteps(w hanging, k int) []layouts.Formula {
	b := w.belowJoint(k)
	return slices.Concat(w.tiltSteps(), b.placeSteps(w.of.Unit()), linkSteps(w, k, b), hingeSteps(w, k, b), pinSteps(w, k))
}

// belowJoint sums what hangs below joint k, counted from 0.
func (w hanging) belowJoint(k int) rowsSum {
	all := w.parts()
	parts := all[slices.IndexFunc(all, func(p part) bool { return p.cabinet == k+1 }):]
	hinge := parts[0].hinge
	rows := say.Span{From: k + 1, To: w.s.Flown}.Cabinets() + " and all extras on them"
	return sumRows(ofRows(rows, "k")+"; b_k, d_k its hinge", "k", "", parts, &hinge)
}

// weightStep turns a mass into a weight.
func weightStep(u say.Units, of, name string, r rowsSum) layouts.Formula {
	if u.Imperial {
		return step(of, name+" = "+r.massName(), u.Newtons(r.mass*calc.G), "", symbol{r.massName(), say.Fixed(r.mass/say.PoundKg, 1) + " lbf"})
	}
	return step(of, name+" = "+r.massName()+" · g / 1000", u.Newtons(r.mass*calc.G), "", symbol{r.massName(), u.FineMass(r.mass)}, symbol{"g", fmt.Sprint(calc.G) + " N/kg"})
}

// onLink is a force, in newtons, that a weight so far behind a joint's hinge puts on its link.
func onLink(w hanging, k int, of, name, weight, level string, r rowsSum, force float64) layouts.Formula {
	u := w.of.Unit()
	return step(of, fmt.Sprintf("%s = %s · %s / (arm · cos(splay / 2))", name, weight, level), u.Newtons(force), way(u, force), symbol{weight, u.Newtons(r.mass * calc.G)},
		symbol{level, u.GearLength(r.level(w))}, symbol{"arm", u.GearLength(w.of.Body.Arm(k))}, symbol{"splay", say.FineAngle(w.of.Body.Cabinets[k].Splay)})
}

// linkSteps: moments about the hinge; b is what hangs below it.
func linkSteps(w hanging, k int, b rowsSum) []layouts.Formula {
	return []layouts.Formula{
		b.levelStep(w, "as it hangs, level behind the joint's hinge", "e"),
		weightStep(w.of.Unit(), "weight below the joint", "W", b),
		onLink(w, k, "link, by moments about the hinge; arm: the smaller link arm", "link", "W", "e", b, w.at.Joints[k].Link),
	}
}

// hingeSteps are forces along and across the mean of the two bodies.
func hingeSteps(w hanging, k int, b rowsSum) []layouts.Formula {
	u, j, c, tilt := w.of.Unit(), w.at.Joints[k], w.of.Body.Cabinets[k], w.tiltSymbol()
	phi := w.tilt() + b.parts[0].turned - c.Splay/2
	weight, lean, link := symbol{"W", u.Newtons(b.mass * calc.G)}, symbol{"phi", say.FineAngle(phi)}, symbol{"link", u.Newtons(j.Link)}
	return []layouts.Formula{
		step(fmt.Sprintf("mean turn of the two bodies; cabinet %d is turned as in the table", k+1), "phi = "+tilt.name+" + turned - splay / 2", say.FineAngle(phi), "",
			tilt, symbol{"turned", say.FineAngle(b.parts[0].turned)}, symbol{"splay", say.FineAngle(c.Splay)}),
		step("hinge, along the mean", "pull = W · cos(phi) - link", u.Newtons(j.HingePull), way(u, j.HingePull), weight, lean, link),
		step("hinge, across the mean", "side = W · sin(phi)", u.Newtons(j.HingeSide), "", weight, lean),
		step("hinge, both together", "hinge = sqrt(pull · pull + side · side)", u.Newtons(j.Hinge()), u.Force(j.Hinge()), symbol{"pull", u.Newtons(j.HingePull)}, symbol{"side", u.Newtons(j.HingeSide)}),
	}
}

// leastSteps are the least force in the link of joint k: each mass off to its own worse
// side, so that what lies ahead of the hinge pushes with more.
func leastSteps(w hanging, k int, b rowsSum) []layouts.Formula {
	u, link := w.of.Unit(), symbol{"link", w.of.Unit().Newtons(w.at.Joints[k].Link)}
	t := symbol{"t", say.Trimmed(w.of.Job.Practice.MassTolerance)}
	least := w.of.LinkLeast(w.at, k)
	ahead := b.ahead(w)
	if len(ahead) == 0 {
		return []layouts.Formula{step("least: all lies behind the hinge, each mass may be less by t", "least = link · (1 - t)", u.Newtons(least), way(u, least), link, t)}
	}
	a := sumRows(ofRows("of these ahead of the hinge then, "+namesOf(ahead, "ahead of the hinge"), "A"), "A", "A", ahead, b.hinge)
	push := a.mass * calc.G * a.level(w) / (w.of.Body.Arm(k) * math.Cos(w.of.Body.Cabinets[k].Splay/2))
	pushes, spread := symbol{"ahead", u.Newtons(push)}, symbol{"spread", u.Newtons(w.at.Spread[k])}
	return append(a.placeSteps(u),
		a.levelStep(w, "as it hangs, level behind the hinge: below nought is ahead", "e_A"),
		weightStep(u, "its weight", "W_A", a),
		onLink(w, k, "what it puts on the link: below nought is push", "ahead", "W_A", "e_A", a, push),
		step("what tolerance is taken of: each mass off to its own worse side", "spread = link - 2 · ahead", spread.is, "", link, pushes),
		step("least: below nought is push", "least = link - t · spread", u.Newtons(least), way(u, least), link, t, spread))
}

// ahead are the parts of a joint's sum that hang ahead of its hinge.
func (r rowsSum) ahead(w hanging) (parts []part) {
	for _, p := range r.parts {
		if (calc.Offset{Behind: p.at.Behind - r.hinge.Behind, Below: p.at.Below - r.hinge.Below}).Turned(w.tilt()).X > rig.Within {
			parts = append(parts, p)
		}
	}
	return parts
}

// closestLink works out the link that may only be pulled and is closest to being pushed,
// from where the joint k that is worked out in full leaves it open; nothing where all
// links may be pushed.
func closestLink(h *rig.Hung, worst hanging, k int) layouts.Steps {
	w, n, found := leastPulled(h)
	if !found {
		return layouts.Steps{}
	}
	b := w.belowJoint(n)
	s := layouts.Steps{Heading: "The link closest to being pushed: " + say.Joint(n), How: w.words()}
	if w.s != worst.s || w.at.Off != worst.at.Off || n != k {
		s.Formulas = slices.Concat(w.tiltSteps(), b.placeSteps(w.of.Unit()), linkSteps(w, n, b))
	}
	s.Formulas = append(s.Formulas, leastSteps(w, n, b)...)
	return s
}

// pinSteps are the force on one pin of each kind and how much of its rating that is.
func pinSteps(w hanging, k int) []layouts.Formula {
	j, c, rated := w.at.Joints[k], w.of.Cabinets[k], w.of.Ratings(k)
	if rated == nil {
		rated = &job.PinRatings{}
	}
	return append(pinStep(w.of, "hinge", j.Hinge(), c.HingePins, rated.Hinge), pinStep(w.of, "link", math.Abs(j.Link), c.LinkPins, rated.Link)...)
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
