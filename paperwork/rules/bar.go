package rules

import (
	"hangpack/calc"
	"hangpack/paperwork/rig"
)

// bar: mass · (1 + tolerance) · dynamic > rating · gear_use.
var bar = Rule{ID: "bar", Title: "Bar", Severity: Hold, states: checkBar}

// checkBar: mass·(1+tolerance)·dynamic > rating · gear_use.
func checkBar(h *check, s *rig.State) {
	if h.Bar.Rating == 0 {
		return
	}
	kg := s.Centre.Mass
	h.rated("bar", h.Job.Practice.Design(kg)*calc.G, h.Bar.Rating*h.Job.Practice.GearUse, func() (rig.Where, string, string) {
		return rig.Where{Lift: s.Lift}, designSum(h.Hung, kg), gearLimit(h.Hung, h.Bar.Rating) + " (" + h.Bar.Key + ")"
	})
}
