package rules

import "hangpack/paperwork/rig"

// The IDs of both rules, for sheets that have a table of what they find.
const (
	OneHoist     = "one_hoist"
	OneHoistGear = "one_hoist_gear"
)

// oneHoist: with two picks, one hoist left alone with the stack, finished or at a lift: a
// hold where practice wants each of them to hold it alone, else a caution. The standard of
// a hoist already allows for normal starts, so that it takes no dynamic factor.
var oneHoist = Rule{ID: OneHoist, Title: "One hoist alone", Severity: Either, Grave: ComesDown, states: checkOneHoist}

// oneHoistGear: the same of all that it holds by, with the dynamic factor, for one hoist
// still runs; and of how the stack hangs then.
var oneHoistGear = Rule{ID: OneHoistGear, Title: "One hoist alone", Severity: Either, Grave: ComesDown, states: checkOneHoistGear}

func checkOneHoist(c *check, s *rig.State) {
	for i, swung := range s.Alone {
		aloneUsed(c, aloneHoist(c.Hung, swung, i))
	}
}

func checkOneHoistGear(c *check, s *rig.State) {
	for i, swung := range s.Alone {
		for _, one := range aloneGear(c.Hung, swung, i) {
			aloneUsed(c, one)
		}
		for _, p := range kindsOfPins {
			for k := range swung.Joints {
				checkPinsAlone(c, swung, i, p, k)
			}
		}
		checkSwung(c, swung, i)
	}
}

// aloneUsed keeps the use of a part with one hoist alone where it is the most of its
// kind, and names a part that could not hold what it would have to.
func aloneUsed(c *check, one AloneCheck) {
	if one.Limit == 0 {
		return
	}
	if use := one.Load / one.Limit; c.Alone.more(one.Part, use) {
		kept := one // or each one asked of would be kept
		c.Alone.take(Use{one.Part, use, func() (rig.Where, string, string) { return kept.where(), kept.sum(), kept.LimitWords() }})
	}
	if one.Over() {
		f := findAlone(c, one.where(), aloneWords(c.Hung, one))
		f.Of, f.By = one.Part, one.Load/one.Limit
	}
}

// checkPinsAlone holds the pins of a kind of joint k, counted from 0. Asked first whether that
// says anything, since there are many pins.
func checkPinsAlone(c *check, swung *rig.State, i int, p kindOfPins, k int) {
	pins, rating := p.at(c.Hung, k)
	load, limit := c.Job.Practice.PinLoad(p.force(swung.Joints[k]), pins), rating*c.Job.Practice.GearUse
	if limit > 0 && (c.Alone.more(p.part, load/limit) || rig.Over(load, limit)) {
		aloneUsed(c, alonePins(c.Hung, swung, i, p, k))
	}
}

// checkSwung: a state that hangs from pick i alone tips over, or links are pushed that
// may only be pulled.
func checkSwung(c *check, swung *rig.State, i int) {
	at := rig.Where{Lift: swung.Lift, End: c.End(i)}
	if swung.Lever <= rig.Within {
		f := findAlone(c, at, "on the "+string(at.End)+" hoist alone the centre of gravity is not below the pick hole: it tips over")
		f.Of, f.By = "balance", -swung.Lever
	}
	for k := range swung.Joints {
		if push := pushAlone(c.Hung, swung, k); push > rig.Alike && !c.MayPush(k) {
			at.Joint = k + 1
			f := findAlone(c, at, "link, with the "+string(at.End)+" hoist alone: pushed with "+c.Unit().Force(push)+"; it may only be pulled")
			f.Of, f.By = "push", push
		}
	}
}

// findAlone adds what the rule found of one hoist alone: a hold where practice wants each
// to hold the stack alone, else a caution.
func findAlone(c *check, at rig.Where, says string) *Finding {
	if c.Job.Practice.OneMustHold {
		return c.add(&c.Holds, at, says)
	}
	return c.add(&c.Cautions, at, says)
}

// aloneWords say what one part holds with one hoist alone, and of a hoist that need not
// hold it what to do about that.
func aloneWords(h *rig.Hung, c AloneCheck) string {
	switch {
	case c.Part != "hoist":
		return c.Part + ", with the " + string(h.End(c.pick)) + " hoist alone: " + c.sum() + " is more than " + c.LimitWords()
	case h.Job.Practice.OneMustHold:
		return "alone it would hold " + c.sum() + ", more than " + c.LimitWords()
	}
	return "alone it would hold " + c.sum() + ", more than " + c.LimitWords() + ": run both together, watch the tilt"
}
