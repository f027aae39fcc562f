package rules

import (
	"hangpack/calc"
	"hangpack/paperwork/rig"
)

// pickHole: pick load · (1 + tolerance) · dynamic > pick_rating · gear_use.
var pickHole = Rule{ID: "pick_hole", Title: "Pick hole", Severity: Hold, states: checkPickHoles}

// checkPickHoles: pick load·(1+tolerance)·dynamic > pick_rating · gear_use.
func checkPickHoles(h *check, s *rig.State) {
	if h.Bar.PickRating == 0 {
		return
	}
	for i, kg := range s.Loads {
		h.rated("pick hole", h.Job.Practice.Design(kg)*calc.G, h.Bar.PickRating*h.Job.Practice.GearUse, func() (rig.Where, string, string) {
			return rig.Where{Lift: s.Lift, End: h.End(i)}, designSum(h.Hung, kg), gearLimit(h.Hung, h.Bar.PickRating) + " (one pick hole of " + h.Bar.Key + ")"
		})
	}
}
