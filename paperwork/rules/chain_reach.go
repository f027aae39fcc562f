package rules

import (
	"fmt"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// chainReach: a hook does not come down to the lowest place that it has to come to:
//
//	high hook - headroom - (chain_length - limit_reserve)/falls > low hook there
//
// at trim; with a dolly also at every roll-in, and onto the bar on dolly A; and, of the
// bar of two picks, down to the floor. It needs the height of the steel.
var chainReach = Rule{ID: "chain_reach", Title: "Chain too short", Severity: Hold, Grave: NoFit, stack: checkChain}

func checkChain(c *check) {
	for i, p := range c.Picks {
		if p.Steel == nil {
			continue
		}
		at, reach, low := rig.Where{End: c.End(i)}, c.LowestHook(i), c.LowestPlace(i)
		c.measured("chain reach", low.Hook-reach, func() (rig.Where, string, string) {
			return at, reachSum(c.Hung, i, c.Unit().Length), "down to " + LowWords(c.Hung, low) + ": " + placeSum(c.Hung, i, low, c.Unit().Length, seatWords(c.Hung, low))
		})
		if reach > low.Hook+rig.Within {
			write := c.Unit().Apart(reach, low.Hook)
			c.hold(at, "%s, and it has to come to %s, %s: %s", reachSum(c.Hung, i, write), write(low.Hook), LowFor(low), placeSum(c.Hung, i, low, write, "")).By = reach - low.Hook
		}
	}
}

// reachSum writes how low hoist i lets its hook down.
func reachSum(h *rig.Hung, i int, write func(float64) string) string {
	m := h.Picks[i].Hoist
	return fmt.Sprintf("high hook %s - headroom %s - (chain %s - reserve %s) / %s = hook down to %s", write(*h.HighHook(i)), write(m.Headroom),
		write(m.ChainLength), write(h.Job.Practice.LimitReserve), say.Count(m.Falls, "fall"), write(h.LowestHook(i)))
}

// LowWords write how low a hook comes and for what: '1.58 m, onto the bar on dolly A'.
func LowWords(h *rig.Hung, low rig.LowPlace) string {
	return h.Unit().Length(low.Hook) + ", " + LowFor(low)
}

// LowFor writes what a hook comes down for.
func LowFor(low rig.LowPlace) string {
	switch low.To {
	case rig.AtRollIn:
		return fmt.Sprintf("to the roll-in after lift %d", low.Lift)
	case rig.OntoDolly:
		return "onto the bar on dolly A"
	case rig.OntoFloor:
		return "to the bar on the floor"
	}
	return "at trim"
}

// seatWords say how the lowest cabinet on dolly A looks where a hook comes down onto it,
// and "" elsewhere. A hold does without them: no aims of a held stack are told.
func seatWords(h *rig.Hung, low rig.LowPlace) string {
	if low.To != rig.OntoDolly {
		return ""
	}
	return fmt.Sprintf(" (cabinet %d %s)", h.Sets[0], say.Aim(rig.Seat(h, 0)))
}

// placeSum writes how high hook i is at a place that it has to come down to; seat stands
// beside dolly A as it stands.
func placeSum(h *rig.Hung, i int, low rig.LowPlace, write func(float64) string, seat string) string {
	below, hole := h.Picks[i].Below.Length, -h.Hole(i).Below
	bar := fmt.Sprintf("pick hole %s above the hinge", write(hole))
	if hole < 0 {
		bar = fmt.Sprintf("pick hole %s below the hinge", write(-hole))
	}
	switch low.To {
	case rig.OntoDolly:
		return fmt.Sprintf("floor %s, deck %s, dolly A as it stands %s%s, %s, rigging %s", write(h.Floor), write(h.Dolly.DeckHeight),
			write(rig.Standing(h, 0)), seat, bar, write(below))
	case rig.OntoFloor:
		return fmt.Sprintf("floor %s, %s, rigging %s", write(h.Floor), bar, write(below))
	}
	return fmt.Sprintf("pick hole %s + rigging %s", write(low.Hook-below), write(below))
}
