package rules

import (
	"fmt"
	"math"
	"strconv"

	"hangpack/calc"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// HoistSum writes the most that hoist i holds in any state, of what it may, and how much
// of that is used: '722 kg + 4 % = 752 kg at 1.0° more up of 900 kg (one-tonne at 90 %), 84 %
// used'.
func HoistSum(h *rig.Hung, i int) string {
	s, at := h.Heaviest(i)
	return fmt.Sprintf("%s%s%s of %s, %s used", OnHookSum(h, i, at.Loads[i]), TiltWords(at), say.After(", ", s.Words()),
		HoistLimit(h, h.Picks[i].Hoist), say.Percent(h.UseOf(i, at.Loads[i])))
}

// OnHookSum writes the most that hoist i holds of a pick's load and its rigging below:
// '612 kg + 5 % = 643 kg'; and where parts lever against each other '237 kg + 5 % of
// 317 kg = 253 kg', for each may be off to its own worse side.
func OnHookSum(h *rig.Hung, i int, l rig.PickLoad) string {
	below := h.Picks[i].Below.Mass
	return worstSum(h, rig.PickLoad{Is: l.Is + below, Spread: l.Spread + below})
}

// worstSum writes the most of a load as OnHookSum does.
func worstSum(h *rig.Hung, l rig.PickLoad) string {
	u := h.Unit()
	return fmt.Sprintf("%s + %s%s = %s", u.Addend(l.Is), say.Share(h.Job.Practice.MassTolerance), ofSpread(h, l), u.Load(h.Most(l)))
}

// ofSpread says of what a tolerance is taken where that is not the load itself: ' of
// 317 kg', else "".
func ofSpread(h *rig.Hung, l rig.PickLoad) string {
	if h.Job.Practice.MassTolerance == 0 || l.Spread-math.Abs(l.Is) <= rig.Within*l.Spread {
		return ""
	}
	return " of " + h.Unit().Addend(l.Spread)
}

// pickSum writes the design load of a pick hole: '612 kg x 1.05 x 1.25 = 804 kg', or
// '(237 kg + 5 % of 317 kg) x 1.25 = 316 kg'.
func pickSum(h *rig.Hung, l rig.PickLoad) string {
	of := ofSpread(h, l)
	if of == "" {
		return designSum(h, l.Is)
	}
	u, p := h.Unit(), h.Job.Practice
	return fmt.Sprintf("(%s + %s%s) x %s = %s", u.Addend(l.Is), say.Share(p.MassTolerance), of, say.Trimmed(p.DynamicFactor), u.Load(h.Most(l)*p.DynamicFactor))
}

// TiltWords say at which tilt of its reach a state is: ' at 1.0° more down', and "" at the
// nominal one.
func TiltWords(at *rig.Tilted) string {
	switch {
	case at.Off > 0:
		return " at " + smallAngle(at.Off) + " more down"
	case at.Off < 0:
		return " at " + smallAngle(at.Off) + " more up"
	}
	return ""
}

// smallAngle writes an angle to a tenth of a degree, one that is less to all that it has.
func smallAngle(rad float64) string {
	if deg := math.Abs(calc.Degrees(rad)); deg < 0.1 {
		return strconv.FormatFloat(deg, 'g', 2, 64) + "°"
	}
	return say.Angle(rad)
}

// HoistLimit writes what a hoist may hold: '500 kg (one-tonne at 50 %)'.
func HoistLimit(h *rig.Hung, m *job.Hoist) string {
	limit := h.Unit().Limit(m.Capacity * h.Job.Practice.HoistUse)
	if h.Job.Practice.HoistUse == 1 {
		return fmt.Sprintf("%s (%s)", limit, m.Key)
	}
	return fmt.Sprintf("%s (%s at %s)", limit, m.Key, say.Share(h.Job.Practice.HoistUse))
}

// designSum writes a static load, given in kg, and its design load as a sum: '612 kg x
// 1.05 x 1.25 = 804 kg'.
func designSum(h *rig.Hung, kg float64) string {
	return h.Unit().Addend(kg) + " x " + FactorWords(h.Job.Practice) + " = " + h.Unit().Load(h.Job.Practice.Design(kg))
}

// FactorWords writes the factors of a design load: '1.05 x 1.25'.
func FactorWords(p job.Practice) string {
	return say.Trimmed(1+p.MassTolerance) + " x " + say.Trimmed(p.DynamicFactor)
}

// gearLimit writes a rating given in newtons, as a load or as a force, and where it is
// not used whole how much of it is: '600 kg' or '600 kg x 80 % = 480 kg'.
func gearLimit(h *rig.Hung, write func(newtons float64) string, rating float64) string {
	use := h.Job.Practice.GearUse
	if use == 1 {
		return write(rating)
	}
	return write(rating) + " x " + say.Share(use) + " = " + write(rating*use)
}

// pinSum writes the force on one pin: '9.0 kN x 60 % x 1.05 x 1.25 = 7.1 kN'.
func pinSum(h *rig.Hung, force float64, pins int) string {
	return pinShare(h, force, pins) + " x " + FactorWords(h.Job.Practice) + " = " + h.Unit().Force(h.Job.Practice.PinLoad(force, pins))
}

// pinShare writes what of a joint's force, in newtons, the worse of its pins takes:
// '9.0 kN x 60 %', and all of it where there is one pin.
func pinShare(h *rig.Hung, force float64, pins int) string {
	if pins > 1 {
		return h.Unit().Force(force) + " x " + say.Share(h.Job.Practice.SideShare)
	}
	return h.Unit().Force(force)
}
