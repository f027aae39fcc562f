package rules

import (
	"hangpack/calc"
	"hangpack/paperwork/rig"
)

// pickHole: pick load · (1 + tolerance) · dynamic > pick_rating · gear_use.
var pickHole = Rule{ID: "pick_hole", Title: "Pick hole", Severity: Hold, Grave: ComesDown, states: checkPickHoles}

func checkPickHoles(c *check, s *rig.State) {
	if c.Bar.PickRating == 0 {
		return
	}
	for i, kg := range s.Loads {
		c.rated("pick hole", c.Job.Practice.Design(kg)*calc.G, c.Bar.PickRating*c.Job.Practice.GearUse, func() (rig.Where, string, string) {
			return rig.Where{Lift: s.Lift, End: c.End(i)}, designSum(c.Hung, kg), gearLimit(c.Hung, c.Unit().Limit, c.Bar.PickRating) + " (one pick hole of " + c.Bar.Key + ")"
		})
	}
}
