package rules

import (
	"math"

	"hangpack/calc"
	"hangpack/paperwork/rig"
)

// hingePin: the force on one pin · (1 + tolerance) · dynamic > rating · gear_use.
var hingePin = Rule{ID: "hinge_pin", Title: "Hinge pin", Severity: Hold, Grave: ComesDown, states: checkHingePins}

// linkPin: the same of link pins.
var linkPin = Rule{ID: "link_pin", Title: "Link pin", Severity: Hold, Grave: ComesDown, states: checkLinkPins}

func checkHingePins(c *check, s *rig.State) {
	for k := range s.Joints {
		if r := c.Ratings(k); r != nil {
			checkPin(c, "hinge pin", s, k, calc.Joint.Hinge, c.Cabinets[k].HingePins, r.Hinge)
		}
	}
}

func checkLinkPins(c *check, s *rig.State) {
	for k := range s.Joints {
		if r := c.Ratings(k); r != nil {
			checkPin(c, "link pin", s, k, linkForce, c.Cabinets[k].LinkPins, r.Link)
		}
	}
}

func linkForce(j calc.Joint) float64 { return math.Abs(j.Link) }

// checkPin holds the pins of a kind that share a force of joint k, counted from 0,
// against the rating of one, at the tilt of the state's reach at which that is most.
func checkPin(c *check, part string, s *rig.State, k int, forceOf func(calc.Joint) float64, pins int, rating float64) {
	force, at := worstTilt(s, func(at *rig.Tilted) float64 { return forceOf(at.Joints[k]) })
	load, limit := c.Job.Practice.PinLoad(force, pins), rating*c.Job.Practice.GearUse
	// Asked first, since there are many pins and a wording of each would be made.
	if c.Uses.more(part, load/limit) || rig.Over(load, limit) {
		c.rated(part, load, limit, func() (rig.Where, string, string) {
			return rig.Where{Lift: s.Lift, Joint: k + 1}, pinSum(c.Hung, force, pins) + TiltWords(at), gearLimit(c.Hung, c.Unit().ForceLimit, rating)
		})
	}
}
