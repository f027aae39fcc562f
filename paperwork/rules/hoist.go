package rules

import "hangpack/paperwork/rig"

// hoist: (pick load + rigging below) · (1 + tolerance) > capacity · hoist_use.
var hoist = Rule{ID: "hoist", Title: "Hoist", Severity: Hold, Grave: ComesDown, states: checkHoists}

func checkHoists(c *check, s *rig.State) {
	for i, p := range c.Picks {
		kg := c.Hook(s, i)
		c.rated("hoist", c.Job.Practice.OnHook(kg), c.HoistMost(i), func() (rig.Where, string, string) {
			return rig.Where{Lift: s.Lift, End: c.End(i)}, PlusTolerance(c.Hung, kg), HoistLimit(c.Hung, p.Hoist)
		})
	}
}
