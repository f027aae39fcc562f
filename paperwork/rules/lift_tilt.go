package rules

import (
	"math"

	"hangpack/calc"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// LiftTilt is the ID of its rule, for sheets that treat its findings apart.
const LiftTilt = "lift_tilt"

// liftTilt: the bar tilts further at a lift than practice has it; the worst lift.
var liftTilt = Rule{ID: LiftTilt, Title: "Tilt at a lift", Severity: Caution, Grave: Lurches, stack: checkLiftTilt}

func checkLiftTilt(c *check) {
	most, worst := c.Job.Practice.LiftTilt+rig.Within, (*rig.State)(nil)
	for _, s := range c.Lifts {
		if math.Abs(s.Tilt) > most {
			most, worst = math.Abs(s.Tilt), s
		}
	}
	if worst != nil {
		c.caution(rig.Where{Lift: worst.Lift}, "the bar tilts to %s, further than %s°: hold it before the dolly is free",
			say.Aim(worst.Tilt), say.Trimmed(calc.Degrees(c.Job.Practice.LiftTilt))).By = most
	}
}
