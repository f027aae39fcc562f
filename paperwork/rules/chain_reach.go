package rules

import (
	"fmt"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// chainReach: the hook does not come down to the bar on the first dolly.
//
//	high hook - headroom - (chain_length - limit_reserve)/falls >
//	floor + deck + hinge pitches of set 1 + the hole above the hinge + rigging below
var chainReach = Rule{ID: "chain_reach", Title: "Chain too short", Severity: Hold, Grave: NoFit, stack: checkChain}

func checkChain(c *check) {
	if c.Dolly == nil {
		return
	}
	for i, p := range c.Picks {
		if p.Steel == nil {
			continue
		}
		lowest, wanted := c.Reach(i)
		c.measured("chain reach", wanted-lowest, func() (rig.Where, string, string) {
			return rig.Where{End: c.End(i)}, reachSum(c.Hung, i, lowest), "down to " + c.Unit().Length(wanted) + ", onto the bar on dolly A"
		})
		if lowest > wanted+rig.Within {
			write := c.Unit().Apart(lowest, wanted)
			c.hold(rig.Where{End: c.End(i)}, "the hook comes down to %s and has to come to %s, onto the bar on dolly A",
				write(lowest), write(wanted))
		}
	}
}

// reachSum writes how low hoist i lets its hook down.
func reachSum(h *rig.Hung, i int, lowest float64) string {
	u, m := h.Unit(), h.Picks[i].Hoist
	return fmt.Sprintf("high hook %s - headroom %s - (chain %s - reserve %s) / %s = hook down to %s", u.Length(*h.HighHook(i)), u.Length(m.Headroom),
		u.Length(m.ChainLength), u.Length(h.Job.Practice.LimitReserve), say.Count(m.Falls, "fall"), u.Length(lowest))
}
