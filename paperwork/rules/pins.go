package rules

import "hangpack/paperwork/rig"

// hingePin: the force on one pin · (1 + tolerance) · dynamic > rating · gear_use.
var hingePin = Rule{ID: "hinge_pin", Title: "Hinge pin", Severity: Hold, Grave: ComesDown, states: checkHingePins}

// linkPin: the same of link pins.
var linkPin = Rule{ID: "link_pin", Title: "Link pin", Severity: Hold, Grave: ComesDown, states: checkLinkPins}

func checkHingePins(c *check, s *rig.State) {
	for k, j := range s.Joints {
		if r := c.Ratings(k); r != nil {
			checkPin(c, "hinge pin", s, k, j.Hinge(), c.Cabinets[k].HingePins, r.Hinge)
		}
	}
}

func checkLinkPins(c *check, s *rig.State) {
	for k, j := range s.Joints {
		if r := c.Ratings(k); r != nil {
			checkPin(c, "link pin", s, k, j.Link, c.Cabinets[k].LinkPins, r.Link)
		}
	}
}

// checkPin holds the pins of a kind that share a force, in newtons, at joint k, counted
// from 0, against the rating of one.
func checkPin(c *check, part string, s *rig.State, k int, force float64, pins int, rating float64) {
	load, limit := c.Job.Practice.PinLoad(force, pins), rating*c.Job.Practice.GearUse
	// Asked first, since there are many pins and a wording of each would be made.
	if c.Uses.more(part, load/limit) || load > limit+rig.Alike {
		c.rated(part, load, limit, func() (rig.Where, string, string) {
			return rig.Where{Lift: s.Lift, Joint: k + 1}, pinSum(c.Hung, force, pins), gearLimit(c.Hung, c.Unit().ForceLimit, rating)
		})
	}
}
