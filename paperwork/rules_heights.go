package paperwork

import (
	"fmt"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// checkHeadroom: at trim, and at the roll-in after each lift, low hook +
// headroom + limit_reserve > high hook. It needs the height of the steel, and
// at the roll-ins a dolly.
func (h *checked) checkHeadroom() {
	for i := range h.Picks {
		h.headroom(i, rig.Where{End: h.End(i)}, h.PickHeight(i))
	}
	if h.Dolly == nil {
		return
	}
	for k, s := range h.Lifts {
		for i := range h.Picks {
			below := s.HighestPick() - s.Picks[i].Z
			h.headroom(i, rig.Where{Lift: s.Lift, End: h.End(i)}, h.RollIn(k)-below)
		}
	}
}

func (h *checked) headroom(i int, at rig.Where, pick float64) {
	p, hook := h.Picks[i], h.HighHook(i)
	if hook == nil {
		return
	}
	reserve := h.Job.Practice.LimitReserve
	low, high := pick+p.Below.Length, *hook
	need := low + p.Hoist.Headroom + reserve
	says := func(write func(float64) string) string {
		return fmt.Sprintf("low hook %s + headroom %s + reserve %s = %s", write(low), write(p.Hoist.Headroom), write(reserve), write(need))
	}
	h.measured("headroom", high-need, func() (rig.Where, string, string) {
		return at, says(h.Unit().Length), "not above the high hook at " + h.Unit().Length(high)
	})
	if need > high+rig.Within {
		write := h.Unit().Apart(need, high)
		h.hold("headroom", at, "%s is more than the high hook at %s", says(write), write(high)).by = need - high
	}
}

// checkChain: the hook does not come down to the bar on the first dolly.
//
//	high hook - headroom - (chain_length - limit_reserve)/falls >
//	floor + deck + hinge pitches of set 1 + the hole above the hinge + rigging below
func (h *checked) checkChain() {
	if h.Dolly == nil {
		return
	}
	for i, p := range h.Picks {
		if p.Steel == nil {
			continue
		}
		lowest, wanted := h.Reach(i)
		h.measured("chain reach", wanted-lowest, func() (rig.Where, string, string) {
			return rig.Where{End: h.End(i)}, h.reachSum(i, lowest), "down to " + h.Unit().Length(wanted) + ", onto the bar on dolly A"
		})
		if lowest > wanted+rig.Within {
			write := h.Unit().Apart(lowest, wanted)
			h.hold("chain_reach", rig.Where{End: h.End(i)}, "the hook comes down to %s and has to come to %s, onto the bar on dolly A",
				write(lowest), write(wanted))
		}
	}
}

// reachSum writes how low hoist i lets its hook down.
func (h *checked) reachSum(i int, lowest float64) string {
	u, m := h.Unit(), h.Picks[i].Hoist
	return fmt.Sprintf("high hook %s - headroom %s - (chain %s - reserve %s) / %s = hook down to %s", u.Length(*h.HighHook(i)), u.Length(m.Headroom),
		u.Length(m.ChainLength), u.Length(h.Job.Practice.LimitReserve), say.Count(m.Falls, "fall"), u.Length(lowest))
}
