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
			return rig.Where{Lift: s.Lift}, leastSum(c.Hung, at.Loads[i]) + TiltWords(at), "more than nothing, or its chain is slack"
		})
		if -less*calc.G < rig.Alike {
			c.hold(rig.Where{Lift: s.Lift, End: end}, "the %s pick carries %s%s: its chain goes slack", end, leastSum(c.Hung, at.Loads[i]), TiltWords(at)).By = less
		}
	}
}

// leastSum writes the least of a pick's load: '40 kg - 5 % of 200 kg = 30 kg', or how
// much less than nothing that is.
func leastSum(h *rig.Hung, l rig.PickLoad) string {
	u, least := h.Unit(), h.Least(l)
	is := u.FineMass(least)
	if least < 0 {
		is = u.FineMass(-least) + " less than nothing"
	}
	return fmt.Sprintf("%s - %s of %s = %s", u.FineMass(l.Is), say.Share(h.Job.Practice.MassTolerance), u.FineMass(l.Spread), is)
}
