package rules

import (
	"math"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// AimMissed is the rule's name to who treats its findings apart.
const AimMissed = "aim_missed"

// aimMissed: cabinet 1 does not look where it is wanted.
var aimMissed = Rule{ID: AimMissed, Title: "Aim missed", Severity: Caution, stack: checkAim}

func checkAim(h *check) {
	got := h.Finished.Poses[0].Aim
	if off := math.Abs(got - h.Aim); off > h.Job.Practice.AimTolerance+rig.Within {
		h.caution(rig.Where{}, "cabinet 1 looks %s, wanted %s: %s off, tolerance %s°",
			say.Aim(got), say.Aim(h.Aim), say.Angle(off), say.Trimmed(say.Degrees(h.Job.Practice.AimTolerance))).By = off
	}
}
