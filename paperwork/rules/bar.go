package rules

import (
	"hangpack/calc"
	"hangpack/paperwork/rig"
)

// bar: mass · (1 + tolerance) · dynamic > rating · gear_use.
var bar = Rule{ID: "bar", Title: "Bar", Severity: Hold, Grave: ComesDown, states: checkBar}

func checkBar(c *check, s *rig.State) {
	if c.Bar.Rating == 0 {
		return
	}
	kg := s.Centre.Mass
	c.rated("bar", c.Job.Practice.Design(kg)*calc.G, c.Bar.Rating*c.Job.Practice.GearUse, func() (rig.Where, string, string) {
		return rig.Where{Lift: s.Lift}, designSum(c.Hung, kg), gearLimit(c.Hung, c.Unit().Limit, c.Bar.Rating) + " (" + c.Bar.Key + ")"
	})
}
