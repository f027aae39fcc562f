package rules

import (
	"hangpack/calc"
	"hangpack/paperwork/rig"
)

// checkBar: mass·(1+tolerance)·dynamic > rating · gear_use.
func checkBar(h *Checked, s *rig.State) {
	if h.Bar.Rating == 0 {
		return
	}
	kg := s.Centre.Mass
	h.rated("bar", "bar", h.Job.Practice.Design(kg)*calc.G, h.Bar.Rating*h.Job.Practice.GearUse, func() (rig.Where, string, string) {
		return rig.Where{Lift: s.Lift}, designSum(h.Hung, kg), gearLimit(h.Hung, h.Bar.Rating) + " (" + h.Bar.Key + ")"
	})
}
