package laws

import (
	"math"
	"slices"

	"gopkg.in/yaml.v3"

	"hangpack/paperwork/job"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/worked"
)

// Laws of jobs whose ratings and factors are others, and of what hangs in a line.

// factorsAreOfDesign: a tolerance and a dynamic factor are in design loads and in
// what is said of hoists, and in nothing that hangs.
func factorsAreOfDesign(t *trial) {
	p := t.Practice
	tolerance, dynamic := float64(t.Intn(25))/100, 1+t.Float64()
	is := t.changedInPlace(func(n tree) {
		n.at("practice").put("mass_tolerance", quantityText(tolerance, "%"))
		n.at("practice").put("dynamic_factor", quantityText(dynamic, ""))
	})
	more := (1 + tolerance) / (1 + p.MassTolerance)
	t.alike(is, but{"design_kg": times(more * dynamic / p.DynamicFactor), "hoist_use": nil, "governing": nil, "stacks.points.alone_kg": times(more),
		"alone_design_kg": times(more * dynamic / p.DynamicFactor)}.and(anyFinding).and(anotherJob))
	if is == nil {
		return
	}
	for i, s := range is.Figures.Stacks { // a wider tolerance holds no less, and warns of no less
		pair := [2][]rules.Finding{t.Figures.Stacks[i].Holds, s.Holds}
		if tolerance >= p.MassTolerance && dynamic >= p.DynamicFactor {
			t.within(s.ID+": held at lower factors", pair[0], pair[1])
		} else if tolerance <= p.MassTolerance && dynamic <= p.DynamicFactor {
			t.within(s.ID+": held at lower factors", pair[1], pair[0])
		}
	}
}

// within holds that all findings are among others, by rule and place.
func (t *trial) within(of string, few, many []rules.Finding) {
	all := placesOf(many)
	for _, at := range placesOf(few) {
		t.must(slices.Contains(all, at), "%s: %s, and not at higher ones", of, at)
	}
}

func strongerHoldsLess(t *trial) {
	const factor = 1.5
	is := t.changedInPlace(func(n tree) { n.times(factor, job.Load) })
	t.alike(is, but{"hoist_use": times(1 / factor)}.and(anyFinding).and(anotherJob))
	t.usesAre(is, 1/factor)
	if is == nil {
		return
	}
	for i, s := range is.Figures.Stacks {
		was := t.Figures.Stacks[i]
		t.within(s.ID+": held with higher ratings", s.Holds, was.Holds)
		t.within(s.ID+": cautioned with higher ratings", s.Cautions, was.Cautions)
	}
}

func lessAllowedIsMoreUsed(t *trial) {
	const factor = 0.8
	p := t.Practice
	is := t.changedInPlace(func(n tree) {
		n.at("practice").put("hoist_use", quantityText(p.HoistUse*factor, "%"))
		n.at("practice").put("gear_use", quantityText(p.GearUse*factor, "%"))
	})
	t.alike(is, but{"hoist_use": times(1 / factor)}.and(anyFinding).and(anotherJob))
	t.usesAre(is, 1/factor)
	if is == nil {
		return
	}
	for i, s := range is.Figures.Stacks {
		t.within(s.ID+": held with more allowed", t.Figures.Stacks[i].Holds, s.Holds)
	}
}

// usesAre holds all uses of ratings to those that they were, times a factor.
func (t *trial) usesAre(is *worked.Job, factor float64) {
	if is == nil {
		return
	}
	for i, h := range is.Stacks {
		for k, u := range h.Uses {
			t.near(h.ID+": use of "+u.Part, t.Stacks[i].Uses[k].Share*factor, u.Share)
		}
	}
}

// partsUsedAsLoaded: no part is used less than the finished stack loads it, and no
// more where that is all there is.
func partsUsedAsLoaded(t *trial) {
	p := t.Practice
	both := (1 + p.MassTolerance) * p.DynamicFactor / p.GearUse
	t.eachStack(func(h *rules.Checked, f worked.StackFigures) {
		least := map[string]float64{}
		load := func(part string, n, rating float64) {
			if rating > 0 {
				least[part] = math.Max(least[part], n*both/rating)
			}
		}
		load("bar", f.Mass*newton, h.Bar.Rating)
		for _, pick := range f.Picks {
			load("pick hole", math.Max(pick.Load, 0)*newton, h.Bar.PickRating)
		}
		for k, c := range f.Cabinets {
			share, rated := map[int]float64{1: 1, 2: p.SideShare}, ratedPins(h, k)
			load("hinge pin", c.Hinge*1000*share[h.Cabinets[k].HingePins], rated.Hinge)
			load("link pin", math.Abs(c.Link)*1000*share[h.Cabinets[k].LinkPins], rated.Link)
		}
		for _, u := range h.Uses {
			t.atLeast(f.ID+": use of "+u.Part, least[u.Part], u.Share)
			if u.Part == "bar" { // others are used more with the tilt off, and with masses off one by one
				t.near(f.ID+": use of "+u.Part, least[u.Part], u.Share)
			}
		}
	})
}

// ratedPins are the lower ratings of the two bodies of joint k, counted from 0, of
// those that give any.
func ratedPins(h *rules.Checked, k int) job.PinRatings {
	above, low := h.Bar.PinRatings, job.PinRatings{Hinge: math.Inf(1), Link: math.Inf(1)}
	if k > 0 {
		above = h.Cabinets[k-1].PinRatings
	}
	for _, r := range []*job.PinRatings{above, h.Cabinets[k].PinRatings} {
		if r != nil {
			low = job.PinRatings{Hinge: math.Min(low.Hinge, r.Hinge), Link: math.Min(low.Link, r.Link)}
		}
	}
	return low // infinite where none is given, and then used by nothing
}

func chainOfTheHoist(t *trial) {
	t.alike(t.changed(func(n tree) {
		for _, h := range n.at("gear", "hoists").items() {
			chain := h.at("chain_mass").si() * h.at("chain_length").si()
			h.put("mass", quantityText(h.at("mass").si()+chain, "kg"))
			h.put("chain_mass", "0 kg/m")
		}
	}), anotherJob)
}

// eachRigging gives the rigging of every line a mapping of its own, and visits them
// line by line.
func (n tree) eachRigging(key string, visit func(tree)) {
	for _, s := range n.stacksInFull() {
		ends := []string{"front", "rear"}
		r := s.at(key)
		switch {
		case r.Node == nil || r.Kind == yaml.ScalarNode:
			s.put(key, "{mass: 0, length: 0}")
		case r.at("front").Node != nil:
			for _, end := range ends {
				if r.at(end).Kind == yaml.ScalarNode {
					r.put(end, "{mass: 0, length: 0}")
				}
				visit(r.at(end))
			}
			continue
		}
		visit(s.at(key))
	}
}

// riggingIsOnThePoint wherever it hangs, and on the hook where it hangs below it.
func riggingIsOnThePoint(t *trial) {
	const kg = 3.5
	key := []string{"rigging_below", "rigging_above"}[t.Intn(2)]
	is := t.changed(func(n tree) {
		n.eachRigging(key, func(r tree) { r.more("mass", kg, "kg") })
	})
	line := func(x float64) float64 { // nought where there is no other hoist
		return x + map[bool]float64{false: kg * (1 + t.Practice.MassTolerance)}[x == 0]
	}
	design := func(x float64) float64 { return x + (line(x)-x)*t.Practice.DynamicFactor }
	b := but{"static_kg": plus(kg), "stacks.points.alone_kg": line, "design_kg": nil, "alone_design_kg": design, "total": nil, "other_points": nil}
	if key == "rigging_below" {
		b = b.and(but{"hook_kg": plus(kg), "stacks.alone_kg": plus(kg), "hoist_use": nil})
	}
	t.alike(is, b.and(anyFinding).and(anotherJob))
}

// more adds to a quantity, which is nought where it is not given.
func (n tree) more(key string, x float64, unit string) {
	if v := n.at(key); v.Node != nil {
		x += v.si()
	}
	n.put(key, quantityText(x, unit))
}
