package rules

import "hangpack/paperwork/rig"

// hoist: (most pick load + rigging below) · (1 + tolerance) > capacity · hoist_use.
var hoist = Rule{ID: "hoist", Title: "Hoist", Severity: Hold, states: checkHoists}

// checkHoists: (pick load + rigging below)·(1+tolerance) > capacity · hoist_use.
func checkHoists(h *check, s *rig.State) {
	for i, p := range h.Picks {
		kg := h.Hook(s, i)
		h.rated("hoist", h.Job.Practice.OnHook(kg), h.HoistMost(i), func() (rig.Where, string, string) {
			return rig.Where{Lift: s.Lift, End: h.End(i)}, PlusTolerance(h.Hung, kg), HoistLimit(h.Hung, p.Hoist)
		})
	}
}
