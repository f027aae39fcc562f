package paperwork

import (
	"fmt"
	"math"
	"slices"

	"hangpack/calc"
	"hangpack/layouts"
)

// jointSteps work out joint k, counted from 0, in full: what hangs below it on
// a hinge and a link.
func (h *hung) jointSteps(k int) []layouts.Step {
	steps := append(h.belowSteps(k), h.forceSteps(k)...)
	return append(steps, h.pinSteps(k)...)
}

// hangsBelow is what hangs below joint k: its parts, and where its centre of
// gravity lies from the joint's hinge, in the bar's axes.
func (h *hung) hangsBelow(k int) (parts []part, from calc.Offset) {
	all := h.parts()
	parts = all[slices.IndexFunc(all, func(p part) bool { return p.cabinet == k+1 }):]
	mass, behind, below := moments(parts)
	hinge := parts[0].hinge
	return parts, calc.Offset{Behind: behind/mass - hinge.Behind, Below: below/mass - hinge.Below}
}

// belowSteps place the centre of gravity of what hangs below a joint.
func (h *hung) belowSteps(k int) []layouts.Step {
	u := h.unit()
	parts, from := h.hangsBelow(k)
	mass, behind, below := moments(parts)
	m, hinge := symbol{"M", u.tenth(mass)}, parts[0].hinge
	e := -from.Turned(h.finished.tilt).X
	rows := fmt.Sprintf("cabinets %d to %d and their extras: M, S_b, S_d are sums of their rows, b_k, d_k the joint's hinge", k+1, len(h.Cabinets))
	return []layouts.Step{
		step(rows, "b = S_b · "+u.perMoment()+" / M - b_k", u.dot(from.Behind), "", symbol{"S_b", u.turning(behind) + " " + u.moment()}, m, symbol{"b_k", u.dot(hinge.Behind)}),
		step("the same, below the joint's hinge", "d = S_d · "+u.perMoment()+" / M - d_k", u.dot(from.Below), "", symbol{"S_d", u.turning(below) + " " + u.moment()}, m, symbol{"d_k", u.dot(hinge.Below)}),
		step("as it hangs, level behind the joint's hinge", "e = b · cos(tilt) + d · sin(tilt)", u.dot(e), "", symbol{"b", u.dot(from.Behind)}, symbol{"d", u.dot(from.Below)}, symbol{"tilt", u.turn(h.finished.tilt)}),
	}
}

// forceSteps: moments about the hinge, then forces along and across the mean of
// the two bodies.
func (h *hung) forceSteps(k int) []layouts.Step {
	u, j, c := h.unit(), h.finished.joints[k], h.body.Cabinets[k]
	parts, from := h.hangsBelow(k)
	mass, _, _ := moments(parts)
	phi := h.finished.poses[k].Aim - c.Splay/2
	w, lean, link := symbol{"W", u.newtons(mass * calc.G)}, symbol{"phi", u.turn(phi)}, symbol{"link", u.newtons(j.Link)}
	weight := step("weight below the joint", "W = M", u.newtons(mass*calc.G), "", symbol{"M", fixed(mass/poundKg, 1) + " lbf"})
	if !u.imperial {
		weight = step("weight below the joint", "W = M · g / 1000", u.newtons(mass*calc.G), "", symbol{"M", u.tenth(mass)}, symbol{"g", fmt.Sprint(calc.G) + " N/kg"})
	}
	arm := math.Min(h.armAbove(k), h.Cabinets[k].LinkArm)
	return []layouts.Step{
		weight,
		step("mean turn of the two bodies", "phi = aim - splay / 2", u.turn(phi), "", symbol{"aim", u.turn(h.finished.poses[k].Aim)}, symbol{"splay", u.turn(c.Splay)}),
		step("link, by moments about the hinge; arm is the smaller link arm of the two", "link = W · e / (arm · cos(splay / 2))", u.newtons(j.Link), way(u, j.Link), w,
			symbol{"e", u.dot(-from.Turned(h.finished.tilt).X)}, symbol{"arm", u.dot(arm)}, symbol{"splay", u.turn(c.Splay)}),
		step("hinge, along the mean", "pull = W · cos(phi) - link", u.newtons(j.HingePull), way(u, j.HingePull), w, lean, link),
		step("hinge, across the mean", "side = W · sin(phi)", u.newtons(j.HingeSide), "", w, lean),
		step("hinge, both together", "hinge = sqrt(pull · pull + side · side)", u.newtons(j.Hinge()), u.force(j.Hinge()), symbol{"pull", u.newtons(j.HingePull)}, symbol{"side", u.newtons(j.HingeSide)}),
	}
}

// armAbove returns the link arm of the body above joint k, counted from 0.
func (h *hung) armAbove(k int) float64 {
	if k == 0 {
		return h.LinkArm
	}
	return h.Cabinets[k-1].LinkArm
}

// pinSteps are the force on one pin of each kind and how much of its rating that is.
func (h *hung) pinSteps(k int) (steps []layouts.Step) {
	u, p, j, c, rated := h.unit(), h.job.Practice, h.finished.joints[k], h.Cabinets[k], h.ratings(k)
	for i, force := range []float64{j.Hinge(), math.Abs(j.Link)} {
		name, pins := [...]string{"hinge", "link"}[i], [...]int{c.HingePins, c.LinkPins}[i]
		of, side := "one "+name+" pin, with side share s, tolerance t and dynamic factor D", p.SideShare
		if pins == 1 {
			of, side = "the one "+name+" pin (s = 1), with tolerance t and dynamic factor D", 1
		}
		one := h.design(calc.PinForce(force, pins, p.SideShare))
		steps = append(steps, step(of, "pin = "+name+" · s · (1 + t) · D", u.newtons(one), u.force(one), symbol{name, u.newtons(force)},
			symbol{"s", trimmed(side)}, symbol{"t", trimmed(p.MassTolerance)}, symbol{"D", trimmed(p.DynamicFactor)}))
		if rated == nil {
			continue
		}
		rating := [...]float64{rated.Hinge, rated.Link}[i]
		steps = append(steps, step("of what practice allows of its rating", "use = 100 · pin / (rating · g_u)", fixed(100*one/(rating*p.GearUse), 1)+" %", percent(one/(rating*p.GearUse)),
			symbol{"pin", u.newtons(one)}, symbol{"rating", u.newtons(rating)}, symbol{"g_u", trimmed(p.GearUse)}))
	}
	return steps
}

// jointRow is what joint k, counted from 0, carries.
func (h *hung) jointRow(k int) []string {
	u, s, j, c := h.unit(), h.finished, h.finished.joints[k], h.Cabinets[k]
	hinge, link := "no rating", "no rating"
	if rated := h.ratings(k); rated != nil {
		hinge, link = h.pinUse(j.Hinge(), c.HingePins, rated.Hinge), h.pinUse(j.Link, c.LinkPins, rated.Link)
	}
	return []string{fmt.Sprint(k + 1), aim(s.poses[k].Aim), u.length(h.raise + calc.Lowest(s.corners[k])),
		u.force(j.Hinge()), way(u, j.HingePull), way(u, j.Link), hinge, link}
}

// way writes a force along a joint and which way it goes.
func way(u units, n float64) string {
	switch {
	case n > alike:
		return u.force(n) + " pull"
	case n < -alike:
		return u.force(n) + " push"
	}
	return "none"
}

// pinUse is how much one pin is used at the design load.
func (h *hung) pinUse(force float64, pins int, rating float64) string {
	return percent(h.design(calc.PinForce(force, pins, h.job.Practice.SideShare)) / (rating * h.job.Practice.GearUse))
}

// liftRow is what to read once a set has been joined.
func (h *hung) liftRow(after string, s state) []string {
	u := h.unit()
	return []string{after, count(s.flown, "cabinet"), u.load(s.centre.Mass), h.hookReading(s), aim(s.poses[0].Aim), aim(s.tilt), u.length(s.drop())}
}

// hookReading is what a load cell below the hoist should show.
func (h *hung) hookReading(s state) string {
	if len(s.loads) == 1 {
		return h.hookWords(s)
	}
	u := h.unit()
	return fmt.Sprintf("front %s, rear %s", u.reading(h.hook(s, 0)), u.reading(h.hook(s, 1)))
}
