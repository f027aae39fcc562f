package rules

import (
	"fmt"

	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// HoistSum writes the most that hoist i holds in any state, of what it may, and how much
// of that is used.
func HoistSum(h *rig.Hung, i int) string {
	m, peak := h.Picks[i].Hoist, h.Peak(i)
	return fmt.Sprintf("Hoist%s: %s of %s, %s used", say.After(" at ", peak.Words()), PlusTolerance(h, h.Hook(peak, i)), HoistLimit(h, m), say.Percent(h.HoistUse(peak, i)))
}

// PlusTolerance writes a load, given in kg, and what it may be: '612 kg + 5 % = 643 kg'.
func PlusTolerance(h *rig.Hung, kg float64) string {
	tolerance := h.Job.Practice.MassTolerance
	return fmt.Sprintf("%s + %s = %s", h.Unit().Addend(kg), say.Share(tolerance), h.Unit().Load(kg*(1+tolerance)))
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
	return fmt.Sprintf("%s x %s = %s", h.Unit().Addend(kg), FactorWords(h.Job.Practice), h.Unit().Load(h.Job.Practice.Design(kg)))
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
	return fmt.Sprintf("%s x %s = %s", write(rating), say.Share(use), write(rating*use))
}

// pinSum writes the force on one pin: '9.0 kN x 60 % x 1.05 x 1.25 = 7.1 kN'.
func pinSum(h *rig.Hung, force float64, pins int) string {
	return fmt.Sprintf("%s x %s = %s", pinShare(h, force, pins), FactorWords(h.Job.Practice), h.Unit().Force(h.Job.Practice.PinLoad(force, pins)))
}

// pinShare writes what of a joint's force, in newtons, the worse of its pins takes:
// '9.0 kN x 60 %', and all of it where there is one pin.
func pinShare(h *rig.Hung, force float64, pins int) string {
	if pins > 1 {
		return h.Unit().Force(force) + " x " + say.Share(h.Job.Practice.SideShare)
	}
	return h.Unit().Force(force)
}
