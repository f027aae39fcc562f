package rules

import (
	"math"

	"hangpack/calc"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// AimMissed is the ID of its rule, for sheets that treat its findings apart.
const AimMissed = "aim_missed"

// aimMissed: cabinet 1 does not look where it is wanted.
var aimMissed = Rule{ID: AimMissed, Title: "Aim missed", Severity: Caution, Grave: Differs, stack: checkAim}

func checkAim(c *check) {
	got := c.Finished.Poses[0].Aim
	if off := math.Abs(got - c.Aim); off > c.Job.Practice.AimTolerance+rig.Within {
		tolerance := say.Trimmed(calc.Degrees(c.Job.Practice.AimTolerance))
		f := c.caution(rig.Where{}, "cabinet 1 looks %s, wanted %s: %s off, tolerance %s°", say.Aim(got), say.Aim(c.Aim), say.Angle(off), tolerance)
		f.ifHeld, f.By = "cabinet 1 looks more than the tolerance of "+tolerance+"° off the aim wanted", off
	}
}
