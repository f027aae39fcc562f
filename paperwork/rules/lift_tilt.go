package rules

import (
	"math"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

func cautionLiftTilt(h *Checked) {
	most, worst := h.Job.Practice.LiftTilt+rig.Within, (*rig.State)(nil)
	for _, s := range h.Lifts {
		if math.Abs(s.Tilt) > most {
			most, worst = math.Abs(s.Tilt), s
		}
	}
	if worst != nil {
		h.caution("lift_tilt", rig.Where{Lift: worst.Lift}, "the bar tilts to %s, further than %s°: hold it before the dolly is free",
			say.Aim(worst.Tilt), say.Trimmed(say.Degrees(h.Job.Practice.LiftTilt))).By = most
	}
}
