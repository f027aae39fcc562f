package paperwork

import (
	"fmt"

	"hangpack/calc"
	"hangpack/paperwork/job"
	"hangpack/paperwork/say"
)

// checkHeadroom: at trim, and at the roll-in after each lift, low hook +
// headroom + limit_reserve > high hook. It needs the height of the steel, and
// at the roll-ins a dolly.
func (h *hung) checkHeadroom() {
	for i := range h.Picks {
		h.headroom(i, Where{End: h.end(i)}, h.pickHeight(i))
	}
	if h.Dolly == nil {
		return
	}
	for k, s := range h.lifts {
		for i := range h.Picks {
			below := s.highestPick() - s.picks[i].Z
			h.headroom(i, Where{Lift: s.lift, End: h.end(i)}, h.rollIn(k)-below)
		}
	}
}

// rollIn returns how high the highest pick stands, after lift k counted from
// 0, for the next dolly to roll in below with its clearance.
func (h *hung) rollIn(k int) float64 {
	return h.onDolly(k+1) + h.job.Practice.Clearance + h.lifts[k].drop()
}

// onDolly returns the height of the top hinge of a set, counted from 0, that
// stands on its dolly.
func (h *hung) onDolly(set int) float64 {
	height := h.Floor + h.Dolly.DeckHeight
	for _, c := range h.inSet(set) {
		height += c.HingePitch
	}
	return height
}

func (h *hung) headroom(i int, at Where, pick float64) {
	p, hook := h.Picks[i], h.highHook(i)
	if hook == nil {
		return
	}
	reserve := h.job.Practice.LimitReserve
	low, high := pick+p.Below.Length, *hook
	need := low + p.Hoist.Headroom + reserve
	says := func(write func(float64) string) string {
		return fmt.Sprintf("low hook %s + headroom %s + reserve %s = %s", write(low), write(p.Hoist.Headroom), write(reserve), write(need))
	}
	h.measured("headroom", high-need, func() (Where, string, string) {
		return at, says(h.unit().Length), "not above the high hook at " + h.unit().Length(high)
	})
	if need > high+within {
		write := h.unit().Apart(need, high)
		h.hold("headroom", at, "%s is more than the high hook at %s", says(write), write(high)).by = need - high
	}
}

// checkChain: the hook does not come down to the bar on the first dolly.
//
//	high hook - headroom - (chain_length - limit_reserve)/falls >
//	floor + deck + hinge pitches of set 1 + the hole above the hinge + rigging below
func (h *hung) checkChain() {
	if h.Dolly == nil {
		return
	}
	for i, p := range h.Picks {
		if p.Steel == nil {
			continue
		}
		lowest, wanted := h.reach(i)
		h.measured("chain reach", wanted-lowest, func() (Where, string, string) {
			return Where{End: h.end(i)}, h.reachSum(i, lowest), "down to " + h.unit().Length(wanted) + ", onto the bar on dolly A"
		})
		if lowest > wanted+within {
			write := h.unit().Apart(lowest, wanted)
			h.hold("chain_reach", Where{End: h.end(i)}, "the hook comes down to %s and has to come to %s, onto the bar on dolly A",
				write(lowest), write(wanted))
		}
	}
}

// reachSum writes how low hoist i lets its hook down.
func (h *hung) reachSum(i int, lowest float64) string {
	u, m := h.unit(), h.Picks[i].Hoist
	return fmt.Sprintf("high hook %s - headroom %s - (chain %s - reserve %s) / %s = hook down to %s", u.Length(*h.highHook(i)), u.Length(m.Headroom),
		u.Length(m.ChainLength), u.Length(h.job.Practice.LimitReserve), say.Count(m.Falls, "fall"), u.Length(lowest))
}

// reach returns how low hoist i lets its hook down, and how low it has to come.
func (h *hung) reach(i int) (lowest, wanted float64) {
	return calc.LowestHook(*h.highHook(i), hoist(h.Picks[i].Hoist), h.job.Practice.LimitReserve), h.lowestHook(i)
}

// lowestHook returns how low hook i has to come: onto the bar that stands level
// on dolly A.
func (h *hung) lowestHook(i int) float64 {
	return h.onDolly(0) - h.hole(i).Below + h.Picks[i].Below.Length
}

// inSet returns the cabinets of a set, counted from 0.
func (h *hung) inSet(k int) []job.Placed {
	first := h.Sets.First(k)
	return h.Cabinets[first : first+h.Sets[k]]
}

// letter names a set on paper: A for the top of the stack.
func letter(set int) string {
	if set < 26 {
		return string(rune('A' + set))
	}
	return "A" + string(rune('A'+set-26))
}
