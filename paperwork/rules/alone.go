package rules

import (
	"slices"

	"hangpack/calc"
	"hangpack/paperwork/rig"
)

// An AloneCheck is one part that would have to hold a state of the stack with the other
// one of two hoists slack: the load on it and what it may hold, in newtons, all masses
// with their tolerance; of all but the hoist with the dynamic factor. Limit is 0 where
// nothing says what it may hold.
//
// Source: DGUV Vorschrift 54, section 26(3): no hoist overloaded at the least
// favourable sharing. The same of all that the hoist holds by: hangpack's own.
type AloneCheck struct {
	of          *rig.Hung  // the stack, or a way that its unknown centres of gravity may lie
	swung       *rig.State // as it hangs from the one pick
	Part        string
	pick        int
	Joint       int // of pins, counted from 0; else -1
	Load, Limit float64
	force       float64 // of both sides of a joint, without tolerance
	pins        int
	rating      float64 // of gear
}

// Over reports whether the part holds more than it may.
func (c AloneCheck) Over() bool { return c.Limit > 0 && rig.Over(c.Load, c.Limit) }

// Where is the lift and, of pins, the joint.
func (c AloneCheck) Where() rig.Where {
	return rig.Where{Lift: c.swung.Lift, Joint: c.Joint + 1}
}

// where is that with the end of the hoist that holds.
func (c AloneCheck) where() rig.Where {
	at := c.Where()
	at.End = c.of.End(c.pick)
	return at
}

// Worked writes the sum of the load, and where unknown centres of gravity lie for it:
// '612 kg + 5 % = 643 kg'.
func (c AloneCheck) Worked() string {
	if c.of.Third.Name != "" {
		return c.sum() + " (" + ifSo(c.of.Third) + ")"
	}
	return c.sum()
}

// sum writes the sum of the load.
func (c AloneCheck) sum() string {
	switch {
	case c.Joint >= 0:
		return pinSum(c.of, c.force, c.pins)
	case c.Part == "hoist":
		return OnHookSum(c.of, c.pick, rig.AloneLoad(c.swung))
	}
	return designSum(c.of, c.swung.InBar.Mass)
}

// LimitWords write the sum of the limit: '600 kg x 80 % = 480 kg'.
func (c AloneCheck) LimitWords() string {
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

// eachAlone asks of all that may hang from pick i alone: the finished stack and its lifts,
// wherever unknown centres of gravity lie.
func eachAlone(h *rig.Hung, i int, ask func(v *rig.Hung, swung *rig.State)) {
	for _, v := range h.Ways() {
		for _, s := range v.States() {
			ask(v, s.Alone[i])
		}
	}
}

// AloneChecks are the parts that hold the stack from pick i alone, the most used of each
// kind over the finished stack and its lifts, wherever unknown centres of gravity lie: the
// hoist first.
func AloneChecks(h *rig.Hung, i int) (checks []AloneCheck) {
	eachAlone(h, i, func(v *rig.Hung, swung *rig.State) {
		for _, c := range partsAlone(v, swung, i) {
			at := slices.IndexFunc(checks, func(old AloneCheck) bool { return old.Part == c.Part })
			if at < 0 {
				checks = append(checks, c)
			} else if c.worse(&checks[at]) {
				checks[at] = c
			}
		}
	})
	return checks
}

// partsAlone are all parts that hold a state from pick i alone: the hoist first.
func partsAlone(h *rig.Hung, swung *rig.State, i int) []AloneCheck {
	all := []AloneCheck{aloneHoist(h, swung, i)}
	for _, c := range aloneGear(h, swung, i) {
		all = append(all, c)
	}
	for _, p := range kindsOfPins {
		for k := range swung.Joints {
			all = append(all, alonePins(h, swung, i, p, k))
		}
	}
	return all
}

// pushAlone is what the link of joint k, counted from 0, is pushed with where a state
// hangs from one pick alone, in newtons with the tolerance of masses; below 0 where it is
// pulled.
func pushAlone(h *rig.Hung, swung *rig.State, k int) float64 {
	return -swung.Joints[k].Link * (1 + h.Job.Practice.MassTolerance)
}

// PushedAlone finds where a link is pushed most with pick i alone, and that force in
// newtons: among the links that may be pushed or those that may not, over the finished
// stack and its lifts, wherever unknown centres of gravity lie. It is 0 where none is.
func PushedAlone(h *rig.Hung, i int, may bool) (at rig.Where, most float64) {
	eachAlone(h, i, func(v *rig.Hung, swung *rig.State) {
		for k := range swung.Joints {
			push := pushAlone(v, swung, k)
			if push > max(most, rig.Alike) && v.MayPush(k) == may {
				at, most = rig.Where{Lift: swung.Lift, Joint: k + 1}, push
			}
		}
	})
	return at, most
}

// aloneHoist is the hoist of pick i.
func aloneHoist(h *rig.Hung, swung *rig.State, i int) AloneCheck {
	return AloneCheck{of: h, swung: swung, Part: "hoist", pick: i, Joint: -1, Load: h.MostOnHook(i, rig.AloneLoad(swung)), Limit: h.HoistMost(i)}
}

// aloneGear are pick hole and bar, each with its rating: 0 where that is not given.
func aloneGear(h *rig.Hung, swung *rig.State, i int) [2]AloneCheck {
	all := h.Job.Practice.Design(swung.InBar.Mass) * calc.G
	gear := func(part string, rating float64) AloneCheck {
		return AloneCheck{of: h, swung: swung, Part: part, pick: i, Joint: -1, Load: all, Limit: rating * h.Job.Practice.GearUse, rating: rating}
	}
	return [...]AloneCheck{gear("pick hole", h.Bar.PickRating), gear("bar", h.Bar.Rating)}
}

// alonePins holds the pins of a kind that share a force of joint k, counted from 0,
// against the rating of one: 0 where that is not given.
func alonePins(h *rig.Hung, swung *rig.State, i int, p kindOfPins, k int) AloneCheck {
	force := p.force(swung.Joints[k])
	pins, rating := p.at(h, k)
	return AloneCheck{of: h, swung: swung, Part: p.part, pick: i, Joint: k, Load: h.Job.Practice.PinLoad(force, pins), Limit: rating * h.Job.Practice.GearUse,
		force: force, pins: pins, rating: rating}
}
