package rules

import (
	"hangpack/calc"
	"hangpack/paperwork/rig"
)

// pickHole: most pick load · dynamic > pick_rating · gear_use.
var pickHole = Rule{ID: "pick_hole", Title: "Pick hole", Severity: Hold, Grave: ComesDown, states: checkPickHoles}

func checkPickHoles(c *check, s *rig.State) {
	if c.Bar.PickRating == 0 {
		return
	}
	p := c.Job.Practice
	for i := range c.Picks {
		at := heaviest(c, s, i)
		c.rated("pick hole", c.Most(at.Loads[i])*p.DynamicFactor*calc.G, c.Bar.PickRating*p.GearUse, func() (rig.Where, string, string) {
			return rig.Where{Lift: s.Lift, End: c.End(i)}, pickSum(c.Hung, at.Loads[i]) + TiltWords(at), pickLimit(c.Hung)
		})
	}
}

// pickLimit writes what one pick hole may carry.
func pickLimit(h *rig.Hung) string {
	return gearLimit(h, h.Unit().Limit, h.Bar.PickRating) + " (one pick hole of " + h.Bar.Key + ")"
}
