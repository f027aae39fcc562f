package rules

import (
	"math"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

func cautionAim(h *Checked) {
	got := h.Finished.Poses[0].Aim
	if off := math.Abs(got - h.Aim); off > h.Job.Practice.AimTolerance+rig.Within {
		h.caution("aim_missed", rig.Where{}, "cabinet 1 looks %s, wanted %s: %s off, tolerance %s°",
			say.Aim(got), say.Aim(h.Aim), say.Angle(off), say.Trimmed(say.Degrees(h.Job.Practice.AimTolerance))).By = off
	}
}
