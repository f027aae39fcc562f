package rules

import (
	"fmt"

	"hangpack/calc"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// slack: two picks: a pick that carries less than 1 N: its chain is slack, and the stack
// hangs from the other one.
var slack = Rule{ID: "slack", Title: "Chain slack", Severity: Hold, Grave: Lurches, states: checkSlack}

func checkSlack(c *check, s *rig.State) {
	if len(c.Picks) == 1 {
		return
	}
	for i := range c.Picks {
		less, at := worstTilt(s, func(at *rig.Tilted) float64 { return -c.Least(at.Loads[i]) })
		end := c.End(i)
		c.measured(string(end)+" chain", -less*calc.G-rig.Alike, func() (rig.Where, string, string) {
			return rig.Where{Lift: s.Lift, End: end}, leastSum(c.Hung, at.Loads[i]) + TiltWords(at), "more than nothing, or its chain is slack"
		})
		if -less*calc.G < rig.Alike {
			c.hold(rig.Where{Lift: s.Lift, End: end}, "the %s pick %s%s: its chain goes slack", end, leastSum(c.Hung, at.Loads[i]), TiltWords(at)).By = less
		}
	}
}

// leastSum writes the least of a pick's load: 'carries 40 kg - 5 % of 200 kg = 30 kg', how
// much less than nothing that is, or what it would have to push.
func leastSum(h *rig.Hung, l rig.PickLoad) string {
	u, least, t := h.Unit(), h.Least(l), say.Share(h.Job.Practice.MassTolerance)
	switch {
	case l.Is < 0:
		return fmt.Sprintf("would have to push %s + %s of %s = %s", u.FineMass(-l.Is), t, u.FineMass(l.Spread), u.FineMass(-least))
	case least < 0:
		return fmt.Sprintf("carries %s - %s of %s = %s less than nothing", u.FineMass(l.Is), t, u.FineMass(l.Spread), u.FineMass(-least))
	}
	return fmt.Sprintf("carries %s - %s of %s = %s", u.FineMass(l.Is), t, u.FineMass(l.Spread), u.FineMass(least))
}
