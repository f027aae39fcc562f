package rules

import "hangpack/paperwork/rig"

// checkHoists: (pick load + rigging below)·(1+tolerance) > capacity · hoist_use.
func checkHoists(h *Checked, s *rig.State) {
	for i, p := range h.Picks {
		kg := h.Hook(s, i)
		h.rated("hoist", "hoist", h.Job.Practice.OnHook(kg), h.HoistMost(i), func() (rig.Where, string, string) {
			return rig.Where{Lift: s.Lift, End: h.End(i)}, PlusTolerance(h.Hung, kg), HoistLimit(h.Hung, p.Hoist)
		})
	}
}
