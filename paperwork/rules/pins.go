package rules

import (
	"math"

	"hangpack/calc"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
)

// hingePin: the force on one pin · (1 + tolerance) · dynamic > rating · gear_use.
var hingePin = Rule{ID: "hinge_pin", Title: "Hinge pin", Severity: Hold, Grave: ComesDown, states: checkHingePins}

// linkPin: the same of link pins.
var linkPin = Rule{ID: "link_pin", Title: "Link pin", Severity: Hold, Grave: ComesDown, states: checkLinkPins}

func checkHingePins(c *check, s *rig.State) { checkPins(c, s, hingePins) }

func checkLinkPins(c *check, s *rig.State) { checkPins(c, s, linkPins) }

// A kindOfPins is one kind of pins of a joint: which force of it they share, in newtons,
// how many they are, by the cabinet below, and what one is rated.
type kindOfPins struct {
	part   string
	force  func(calc.Joint) float64
	count  func(*job.Cabinet) int
	rating func(*job.PinRatings) float64
}

var (
	hingePins = kindOfPins{"hinge pin", calc.Joint.Hinge,
		func(c *job.Cabinet) int { return c.HingePins }, func(r *job.PinRatings) float64 { return r.Hinge }}
	linkPins = kindOfPins{"link pin", func(j calc.Joint) float64 { return math.Abs(j.Link) },
		func(c *job.Cabinet) int { return c.LinkPins }, func(r *job.PinRatings) float64 { return r.Link }}
)

// kindsOfPins are all kinds.
var kindsOfPins = [...]kindOfPins{hingePins, linkPins}

// at returns how many pins of the kind joint k, counted from 0, has, and what one is
// rated: 0 where that is not given.
func (p *kindOfPins) at(h *rig.Hung, k int) (pins int, rating float64) {
	pins = p.count(h.Cabinets[k].Cabinet)
	if r := h.Ratings(k); r != nil {
		rating = p.rating(r)
	}
	return pins, rating
}

// checkPins holds the pins of a kind that share a force of a joint against the rating of
// one, at the tilt of the state's reach at which that is most.
func checkPins(c *check, s *rig.State, p kindOfPins) {
	for k := range s.Joints {
		if pins, rating := p.at(c.Hung, k); rating > 0 {
			checkPin(c, s, p, k, pins, rating)
		}
	}
}

func checkPin(c *check, s *rig.State, p kindOfPins, k, pins int, rating float64) {
	force, at := worstTilt(s, func(at *rig.Tilted) float64 { return p.force(at.Joints[k]) })
	load, limit := c.Job.Practice.PinLoad(force, pins), rating*c.Job.Practice.GearUse
	// Asked first, since there are many pins and a wording of each would be made.
	if c.Uses.more(p.part, load/limit) || rig.Over(load, limit) {
		c.rated(p.part, load, limit, func() (rig.Where, string, string) {
			return rig.Where{Lift: s.Lift, Joint: k + 1}, pinSum(c.Hung, force, pins) + TiltWords(at), gearLimit(c.Hung, c.Unit().ForceLimit, rating)
		})
	}
}
