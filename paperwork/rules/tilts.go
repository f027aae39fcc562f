package rules

import (
	"math"

	"hangpack/calc"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// barTilt: the bar tilts further than its maker allows.
var barTilt = Rule{ID: "bar_tilt", Title: "Bar tilt", Severity: Hold, Grave: ComesDown, states: checkTilt}

func checkTilt(c *check, s *rig.State) {
	limit := c.Bar.TiltLimit
	if limit == nil {
		return
	}
	c.measured("bar tilt", math.Min(limit.Down-s.Tilt, limit.Up+s.Tilt), func() (rig.Where, string, string) {
		return rig.Where{Lift: s.Lift}, say.Aim(s.Tilt), "within " + limitWords(limit.Down, "down") + ", " + limitWords(limit.Up, "up") + " (" + c.Bar.Key + ")"
	})
	holdTilt(c, s, "down", s.Tilt, limit.Down)
	holdTilt(c, s, "up", -s.Tilt, limit.Up)
}

// holdTilt holds a bar whose tilt one way is more than its limit that way, both in rad.
func holdTilt(c *check, s *rig.State, way string, tilt, limit float64) {
	if tilt > limit+rig.Within {
		f := c.hold(rig.Where{Lift: s.Lift}, "bar %s is more than %s (%s)", say.AimPast(s.Tilt, limit), limitWords(limit, way), c.Bar.Key)
		f.Of, f.By = way, tilt
	}
}

// limitWords write a limit of tilt one way: '15° down'.
func limitWords(limit float64, way string) string {
	return say.Trimmed(calc.Degrees(limit)) + "° " + way
}

// LiftTilt is the ID of its rule, for sheets that treat its findings apart.
const LiftTilt = "lift_tilt"

// liftTilt: the bar tilts further at a lift than practice has it; the worst lift.
var liftTilt = Rule{ID: LiftTilt, Title: "Tilt at a lift", Severity: Caution, worstLift: true, Grave: Lurches, stack: checkLiftTilt}

func checkLiftTilt(c *check) {
	most, worst := c.Job.Practice.LiftTilt+rig.Within, (*rig.State)(nil)
	for _, s := range c.Lifts {
		if math.Abs(s.Tilt) > most {
			most, worst = math.Abs(s.Tilt), s
		}
	}
	if worst != nil {
		further := "further than " + say.Trimmed(calc.Degrees(c.Job.Practice.LiftTilt)) + "°: hold it before the dolly is free"
		f := c.caution(rig.Where{Lift: worst.Lift}, "the bar tilts to %s, %s", say.Aim(worst.Tilt), further)
		f.ifHeld, f.By = "the bar tilts "+further, most
	}
}
