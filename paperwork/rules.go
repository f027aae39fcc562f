package paperwork

import (
	"fmt"
	"math"
	"strings"

	"hangpack/calc"
	"hangpack/paperwork/job"
)

// At its limit a figure passes: forces and loads within alike newtons, all
// else within within SI units. These are limits of this tool and not of any
// code of practice.
const (
	alike  = 1.0
	within = 1e-9
)

// A Finding is a hold or a caution: the rule that gives it, where it applies
// ("" for the finished stack, else such as "lift 2, joint 3") and a sentence
// with the sum written out.
type Finding struct {
	Rule  string `json:"rule"`
	Where string `json:"where"`
	Says  string `json:"says"`
}

// A use is how much of its limit a part is used, as a fraction of one.
type use struct {
	part, where string
	of          float64
}

func (h *hung) hold(rule, where, format string, args ...any) {
	h.holds = append(h.holds, Finding{rule, where, fmt.Sprintf(format, args...)})
}

func (h *hung) caution(rule, where, format string, args ...any) {
	h.cautions = append(h.cautions, Finding{rule, where, fmt.Sprintf(format, args...)})
}

// where joins the parts of a place that are not empty.
func where(parts ...string) string {
	var given []string
	for _, p := range parts {
		if p != "" {
			given = append(given, p)
		}
	}
	return strings.Join(given, ", ")
}

// end names a pick where there are two.
func (h *hung) end(i int) string {
	if len(h.Picks) == 1 {
		return ""
	}
	return [...]string{"front", "rear"}[i]
}

// check applies every rule to the finished stack and to every lift.
func (h *hung) check() {
	for _, s := range h.states() {
		h.checkHoists(s)
		h.checkBar(s)
		h.checkPickHoles(s)
		h.checkPins(s)
		h.checkLinks(s)
		h.checkMost(s)
		h.checkTilt(s)
		h.checkPicks(s)
		h.checkBalance(s)
	}
	h.checkHeadroom()
	h.checkChain()
	h.checkFloor()
	h.checkDollies()
	h.cautionAll()
}

// checkHoists: (pick load + rigging below)·(1+tolerance) > capacity · hoist_use.
func (h *hung) checkHoists(s state) {
	for i, p := range h.Picks {
		kg := h.hook(s, i)
		limit := p.Hoist.Capacity * h.job.Practice.HoistUse
		load := kg * (1 + h.job.Practice.MassTolerance)
		h.use("hoist", where(s.where, h.end(i)), load*calc.G, limit)
		if load*calc.G > limit+alike {
			h.hold("hoist", where(s.where, h.end(i)), "%s is more than %s", h.plusTolerance(kg), h.hoistLimit(p.Hoist))
		}
	}
}

// plusTolerance writes a load and what it may be: '612 kg + 5 % = 643 kg'.
func (h *hung) plusTolerance(kg float64) string {
	tolerance := h.job.Practice.MassTolerance
	return fmt.Sprintf("%s + %s = %s", h.unit().load(kg), share(tolerance), h.unit().load(kg*(1+tolerance)))
}

// hoistLimit writes what a hoist may hold: '500 kg (one-tonne at 50 %)'.
func (h *hung) hoistLimit(m *job.Hoist) string {
	limit := h.unit().limit(m.Capacity * h.job.Practice.HoistUse)
	if h.job.Practice.HoistUse == 1 {
		return fmt.Sprintf("%s (%s)", limit, m.Key)
	}
	return fmt.Sprintf("%s (%s at %s)", limit, m.Key, share(h.job.Practice.HoistUse))
}

// checkBar: mass·(1+tolerance)·dynamic > rating · gear_use.
func (h *hung) checkBar(s state) {
	if h.Bar.Rating == 0 {
		return
	}
	limit := h.Bar.Rating * h.job.Practice.GearUse
	h.use("bar", s.where, h.design(s.centre.Mass)*calc.G, limit)
	if h.design(s.centre.Mass)*calc.G > limit+alike {
		h.hold("bar", s.where, "%s is more than %s (%s)", h.designSum(s.centre.Mass), h.gearLimit(h.Bar.Rating), h.Bar.Key)
	}
}

// checkPickHoles: pick load·(1+tolerance)·dynamic > pick_rating · gear_use.
func (h *hung) checkPickHoles(s state) {
	if h.Bar.PickRating == 0 {
		return
	}
	for i, kg := range s.loads {
		limit := h.Bar.PickRating * h.job.Practice.GearUse
		h.use("pick hole", where(s.where, h.end(i)), h.design(kg)*calc.G, limit)
		if h.design(kg)*calc.G > limit+alike {
			h.hold("pick_hole", where(s.where, h.end(i)), "%s is more than %s (one pick hole of %s)",
				h.designSum(kg), h.gearLimit(h.Bar.PickRating), h.Bar.Key)
		}
	}
}

// designSum writes a static load and its design load as a sum.
func (h *hung) designSum(kg float64) string {
	return fmt.Sprintf("%s x %s = %s", h.unit().load(kg), h.factors(), h.unit().load(h.design(kg)))
}

// factors writes the factors of a design load: '1.05 x 1.25'.
func (h *hung) factors() string {
	return trimmed(1+h.job.Practice.MassTolerance) + " x " + trimmed(h.job.Practice.DynamicFactor)
}

// gearLimit writes a rating given in newtons and, where it is not used whole,
// how much of it is: '600 kg' or '600 kg x 80 % = 480 kg'.
func (h *hung) gearLimit(rating float64) string {
	use := h.job.Practice.GearUse
	if use == 1 {
		return h.unit().limit(rating)
	}
	return fmt.Sprintf("%s x %s = %s", h.unit().limit(rating), share(use), h.unit().limit(rating*use))
}

// checkMost: more cabinets of a type than the bar's maker allows.
func (h *hung) checkMost(s state) {
	for _, m := range h.Bar.Most {
		n := 0
		for _, c := range h.Cabinets[:s.flown] {
			if c.Key == m.Cabinet {
				n++
			}
		}
		if n > m.Count {
			h.hold("most", where(s.where, m.Cabinet), "%d of %s is more than the %d that %s takes", n, m.Cabinet, m.Count, h.Bar.Key)
		}
	}
}

// checkTilt: the bar tilts further than its maker allows.
func (h *hung) checkTilt(s state) {
	limit := h.Bar.TiltLimit
	if limit == nil {
		return
	}
	if s.tilt > limit.Down+within {
		h.hold("bar_tilt", s.where, "bar %s is more than %s° down (%s)", aim(s.tilt), trimmed(degrees(limit.Down)), h.Bar.Key)
	}
	if -s.tilt > limit.Up+within {
		h.hold("bar_tilt", s.where, "bar %s is more than %s° up (%s)", aim(s.tilt), trimmed(degrees(limit.Up)), h.Bar.Key)
	}
}

// checkPicks: a pick that would have to push, on the finished stack or on a
// lift; and one that carries less than its least share of the finished stack.
func (h *hung) checkPicks(s state) {
	if len(s.loads) == 1 {
		return
	}
	for i, kg := range s.loads {
		at := where(s.where, h.end(i))
		switch least := h.job.Practice.LeastShare; {
		case kg*calc.G < -alike:
			h.hold("light_pick", at, "the %s pick would have to push %s: its chain goes slack", h.end(i), h.unit().load(-kg))
		case s.where == "" && math.Max(kg, 0)/s.centre.Mass < least-within:
			h.hold("light_pick", at, "%s", h.lightPick(s, i))
		}
	}
}

func (h *hung) lightPick(s state, i int) string {
	u, mass := h.unit(), s.centre.Mass
	return fmt.Sprintf("%s of %s is %s %%, less than %s", u.load(math.Max(s.loads[i], 0)), u.load(mass),
		fixed(math.Max(100*s.loads[i]/mass, 0), 1), share(h.job.Practice.LeastShare))
}

// checkBalance: the centre of gravity is not below the pick hole, or with two
// picks not below the line through both.
func (h *hung) checkBalance(s state) {
	of := "the pick hole: it tips over"
	if len(h.Picks) == 2 {
		of = "the line through both pick holes: it rolls over sideways"
	}
	switch above := h.unit().fine(math.Max(-s.lever, 0)); {
	case s.lever > within:
	case above == h.unit().fine(0):
		h.hold("tips_over", s.where, "the centre of gravity is level with %s", of)
	default:
		h.hold("tips_over", s.where, "the centre of gravity is %s above %s", above, of)
	}
}

// checkFloor: a corner below the floor, at trim.
func (h *hung) checkFloor() {
	if low := h.raise + h.finished.lowest(); low < h.Floor-within {
		write := h.unit().apart(low, h.Floor)
		h.hold("below_floor", "", "the lowest corner at %s is below the floor at %s", write(low), write(h.Floor))
	}
}

// checkDollies: a set larger than its dolly takes.
func (h *hung) checkDollies() {
	if h.Dolly == nil {
		return
	}
	for k, n := range h.Sets {
		if n > h.Dolly.Takes {
			h.hold("dolly", fmt.Sprintf("set %d", k+1), "%s on a %s that takes %d", count(n, "cabinet"), h.Dolly.Key, h.Dolly.Takes)
		}
	}
}

func (h *hung) use(part, where string, load, limit float64) {
	h.uses = append(h.uses, use{part, where, load / limit})
}

// mostUsed returns the part that is used most, of those that have a limit.
// Every stack has a hoist, so there is always one.
func (h *hung) mostUsed() use {
	most := h.uses[0]
	for _, u := range h.uses {
		if u.of > most.of+within {
			most = u
		}
	}
	return most
}

func (h *hung) unit() units { return units{h.job.Imperial} }
