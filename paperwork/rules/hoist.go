package rules

import "hangpack/paperwork/rig"

// hoist: most pick load + rigging below · (1 + tolerance) > capacity · hoist_use.
var hoist = Rule{ID: "hoist", Title: "Hoist", Severity: Hold, Grave: ComesDown, states: checkHoists}

func checkHoists(c *check, s *rig.State) {
	for i, p := range c.Picks {
		at := heaviest(c, s, i)
		c.rated("hoist", c.MostOnHook(i, at.Loads[i]), c.HoistMost(i), func() (rig.Where, string, string) {
			return rig.Where{Lift: s.Lift, End: c.End(i)}, OnHookSum(c.Hung, i, at.Loads[i]) + TiltWords(at), HoistLimit(c.Hung, p.Hoist)
		})
	}
}
