package rules

import (
	"fmt"
	"slices"

	"hangpack/calc"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// oneHoist: with two picks, one hoist left alone with the whole stack: a hold where
// practice wants each of them to hold it alone, else a caution.
var oneHoist = Rule{ID: "one_hoist", Title: "One hoist alone", Severity: Either, Grave: ComesDown, stack: checkOneHoist}

// oneHoistGear: the same of all that it holds by, and of how the stack hangs then.
var oneHoistGear = Rule{ID: "one_hoist_gear", Title: "One hoist alone", Severity: Either, Grave: ComesDown, stack: checkOneHoistGear}

func checkOneHoist(c *check) {
	for i := range c.Swung {
		checkAlone(c, i, aloneHoist)
	}
}

func checkOneHoistGear(c *check) {
	for i := range c.Swung {
		checkAlone(c, i, aloneParts)
		checkSwung(c, i)
	}
}

// checkAlone names those of some parts that could not hold the stack from hook i alone.
func checkAlone(c *check, i int, parts func(*rig.Hung, int) []AloneCheck) {
	for _, part := range worstAlone(c.Hung, i, parts) {
		if part.Over() {
			f := c.alone(part.where(), "%s", aloneWords(c.Hung, part, i))
			f.Of, f.By = part.Part, part.Load/part.Limit
		}
	}
}

// checkSwung: hung from hook i alone the stack tips over, or a link is pushed that
// may only be pulled.
func checkSwung(c *check, i int) {
	if lever := c.Swung[i].Lever; lever <= rig.Within {
		f := c.alone(rig.Where{End: c.End(i)}, "on the %s hoist alone the centre of gravity is not below the pick hole: it tips over", c.End(i))
		f.Of, f.By = "balance", -lever
	}
	if k, force := PushedAlone([]*rig.Hung{c.Hung}, i, false); k >= 0 {
		f := c.alone(rig.Where{Joint: k + 1, End: c.End(i)}, "link, with the %s hoist alone: pushed with %s; it may only be pulled", c.End(i), c.Unit().Force(force))
		f.Of, f.By = "push", -force
	}
}

// alone adds what the rule found of one hoist alone: a hold where practice wants each
// to hold the stack alone, else a caution.
func (c *check) alone(at rig.Where, format string, args ...any) *Finding {
	if c.Job.Practice.OneMustHold {
		return c.hold(at, format, args...)
	}
	return c.caution(at, format, args...)
}

// aloneWords say what one part holds with hoist i alone, and of a hoist that need not
// hold it what to do about that.
func aloneWords(h *rig.Hung, c AloneCheck, i int) string {
	switch {
	case c.Part != "hoist":
		return fmt.Sprintf("%s, with the %s hoist alone: %s is more than %s", c.Part, h.End(i), c.Worked(), c.Most())
	case h.Job.Practice.OneMustHold:
		return fmt.Sprintf("alone it would hold %s, more than %s", c.Worked(), c.Most())
	}
	return fmt.Sprintf("alone it would hold %s, more than %s: run both together, watch the tilt", c.Worked(), c.Most())
}

// PushedAlone finds the joint, counted from 0, whose link is pushed most with pick i
// alone, and that force in newtons: among the links that may be pushed or those that
// may not, in any of some ways that a stack may hang. It is -1 where there is none.
func PushedAlone(ways []*rig.Hung, i int, may bool) (at int, force float64) {
	at, force = -1, -rig.Alike
	for _, h := range ways {
		for k, j := range h.Swung[i].Joints {
			if j.Link < force && h.MayPush(k) == may {
				at, force = k, j.Link
			}
		}
	}
	return at, force
}

// An AloneCheck is one part that would have to hold the whole stack with the
// other one of two hoists slack: the load on it and what it may hold, in newtons,
// all masses with their tolerance, at rest and so without a dynamic factor. Limit
// is 0 where nothing says what it may hold.
//
// Source: DGUV Vorschrift 54, section 26(3): no hoist overloaded at the least
// favourable sharing. The same of all that the hoist holds by: hangpack's own.
type AloneCheck struct {
	of          *rig.Hung // the stack, or a way that its unknown centres of gravity may lie
	Part        string
	pick        int
	Joint       int // of pins, counted from 0; else -1
	Load, Limit float64
	force       float64 // of both sides of a joint, without tolerance
	pins        int
	rating      float64 // of gear
}

// Over reports whether the part holds more than it may.
func (c AloneCheck) Over() bool { return c.Limit > 0 && c.Load > c.Limit+rig.Alike }

// where is the joint, of pins, and the end of the hoist that holds.
func (c AloneCheck) where() rig.Where { return rig.Where{Joint: c.Joint + 1, End: c.of.End(c.pick)} }

// Worked writes the sum of the load: '612 kg + 5 % = 643 kg'.
func (c AloneCheck) Worked() string {
	sum := ""
	switch {
	case c.Joint >= 0:
		sum = alonePinSum(c.of, c.force, c.pins)
	case c.Part == "hoist":
		sum = PlusTolerance(c.of, c.of.AloneOnHook(c.pick))
	default:
		sum = PlusTolerance(c.of, c.of.Swung[c.pick].Centre.Mass)
	}
	if c.of.Third.Name != "" {
		sum += " (" + ifSo(c.of.Third) + ")"
	}
	return sum
}

// Most writes the sum of the limit: '600 kg x 80 % = 480 kg'.
func (c AloneCheck) Most() string {
	switch {
	case c.Joint >= 0:
		return gearLimit(c.of, c.of.Unit().ForceLimit, c.rating)
	case c.Part == "hoist":
		return HoistLimit(c.of, c.of.Picks[c.pick].Hoist)
	}
	return gearLimit(c.of, c.of.Unit().Limit, c.rating)
}

// worse reports whether a check of a kind of part says more than another one: a
// higher use, or where neither has a limit a higher load.
func (c *AloneCheck) worse(old *AloneCheck) bool {
	switch {
	case c.Limit > 0 && old.Limit > 0:
		return c.Load/c.Limit > old.Load/old.Limit+rig.Within
	case c.Limit == 0 && old.Limit == 0:
		return c.Load > old.Load+rig.Alike
	}
	return c.Limit > 0
}

// AloneChecks are the parts that hold the stack from pick i alone, the most used
// of each kind, wherever unknown centres of gravity lie: the hoist first.
func AloneChecks(h *rig.Hung, i int) []AloneCheck {
	return append(worstAlone(h, i, aloneHoist), worstAlone(h, i, aloneParts)...)
}

// worstAlone are the most used of each kind of some parts.
func worstAlone(h *rig.Hung, i int, parts func(*rig.Hung, int) []AloneCheck) (checks []AloneCheck) {
	for _, v := range h.Ways() {
		for _, c := range parts(v, i) {
			at := slices.IndexFunc(checks, func(old AloneCheck) bool { return old.Part == c.Part })
			if at < 0 {
				checks = append(checks, c)
			} else if c.worse(&checks[at]) {
				checks[at] = c
			}
		}
	}
	return checks
}

// aloneHoist is the hoist of pick i.
func aloneHoist(h *rig.Hung, i int) []AloneCheck {
	return []AloneCheck{{of: h, Part: "hoist", pick: i, Joint: -1, Load: h.Job.Practice.OnHook(h.AloneOnHook(i)), Limit: h.HoistMost(i)}}
}

// aloneParts are pick hole, bar, and the pins of the joints that use theirs most.
func aloneParts(h *rig.Hung, i int) []AloneCheck {
	s := h.Swung[i]
	all := h.Job.Practice.OnHook(s.Centre.Mass)
	hinge, link := alonePins(h, "hinge pin", i, 0), alonePins(h, "link pin", i, 0)
	for k := 1; k < len(s.Joints); k++ {
		if c := alonePins(h, "hinge pin", i, k); c.worse(&hinge) {
			hinge = c
		}
		if c := alonePins(h, "link pin", i, k); c.worse(&link) {
			link = c
		}
	}
	return []AloneCheck{
		aloneGear(h, "pick hole", i, all, h.Bar.PickRating),
		aloneGear(h, "bar", i, all, h.Bar.Rating),
		hinge, link,
	}
}

// alonePins holds the pins of a kind that share the force of joint k, counted from 0,
// against the rating of one.
func alonePins(h *rig.Hung, part string, i, k int) AloneCheck {
	j, cabinet, rated := &h.Swung[i].Joints[k], &h.Cabinets[k], h.Ratings(k)
	if rated == nil {
		rated = &job.PinRatings{}
	}
	force, pins, rating := j.Link, cabinet.LinkPins, rated.Link
	if part == "hinge pin" {
		force, pins, rating = j.Hinge(), cabinet.HingePins, rated.Hinge
	}
	c := aloneGear(h, part, i, alonePin(h, force, pins), rating)
	c.Joint, c.force, c.pins = k, force, pins
	return c
}

// aloneGear holds a load against a rating, both in newtons; a rating of 0 is one
// that is not given.
func aloneGear(h *rig.Hung, part string, i int, load, rating float64) AloneCheck {
	return AloneCheck{of: h, Part: part, pick: i, Joint: -1, Load: load, Limit: rating * h.Job.Practice.GearUse, rating: rating}
}

// alonePin is the force on one pin with the tolerance of masses, in newtons.
func alonePin(h *rig.Hung, force float64, pins int) float64 {
	return calc.PinForce(force, pins, h.Job.Practice.SideShare) * (1 + h.Job.Practice.MassTolerance)
}

// alonePinSum writes it: '9.0 kN x 60 % x 1.05 = 5.7 kN'.
func alonePinSum(h *rig.Hung, force float64, pins int) string {
	return fmt.Sprintf("%s x %s = %s", pinShare(h, force, pins), say.Trimmed(1+h.Job.Practice.MassTolerance), h.Unit().Force(alonePin(h, force, pins)))
}
