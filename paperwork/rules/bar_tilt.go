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
	down := func() string { return say.Trimmed(calc.Degrees(limit.Down)) + "° down" }
	up := func() string { return say.Trimmed(calc.Degrees(limit.Up)) + "° up" }
	c.measured("bar tilt", math.Min(limit.Down-s.Tilt, limit.Up+s.Tilt), func() (rig.Where, string, string) {
		return rig.Where{Lift: s.Lift}, say.Aim(s.Tilt), "within " + down() + ", " + up() + " (" + c.Bar.Key + ")"
	})
	if s.Tilt > limit.Down+rig.Within {
		f := c.hold(rig.Where{Lift: s.Lift}, "bar %s is more than %s (%s)", say.AimPast(s.Tilt, limit.Down), down(), c.Bar.Key)
		f.Of, f.By = "down", s.Tilt
	}
	if -s.Tilt > limit.Up+rig.Within {
		f := c.hold(rig.Where{Lift: s.Lift}, "bar %s is more than %s (%s)", say.AimPast(s.Tilt, limit.Up), up(), c.Bar.Key)
		f.Of, f.By = "up", -s.Tilt
	}
}
