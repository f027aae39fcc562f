package paperwork

import (
	"fmt"
	"math"

	"hangpack/paperwork/job"
	"hangpack/paperwork/say"
)

// checkPins: the force on one pin·(1+tolerance)·dynamic > rating · gear_use,
// for the hinge and the link pins of every joint.
func (h *checked) checkPins(s *State) {
	for k, j := range s.Joints {
		if r := h.Ratings(k); r != nil {
			h.checkPin("hinge_pin", "hinge pin", s, k, j.Hinge(), h.Cabinets[k].HingePins, r.Hinge)
			h.checkPin("link_pin", "link pin", s, k, j.Link, h.Cabinets[k].LinkPins, r.Link)
		}
	}
}

func (h *checked) checkPin(rule, part string, s *State, k int, force float64, pins int, rating float64) {
	load, limit := h.Job.Practice.PinLoad(force, pins), rating*h.Job.Practice.GearUse
	// Asked first, since there are many pins and a wording of each would be made.
	if h.more(part, load/limit) || load > limit+Alike {
		h.rated(rule, part, load, limit, func() (Where, string, string) {
			return Where{Lift: s.Lift, Joint: k + 1}, pinSum(h.Hung, force, pins), pinLimit(h.Hung, rating)
		})
	}
}

// pinSum writes the force on one pin: '9.0 kN x 60 % x 1.05 x 1.25 = 7.1 kN'.
func pinSum(h *Hung, force float64, pins int) string {
	one := h.Job.Practice.PinLoad(force, pins)
	of := h.Unit().Force(force)
	if pins > 1 {
		of += " x " + say.Share(h.Job.Practice.SideShare)
	}
	return fmt.Sprintf("%s x %s = %s", of, factorsOf(h), h.Unit().Force(one))
}

// pinLimit writes a pin's rating and, where it is not used whole, how much is.
func pinLimit(h *Hung, rating float64) string {
	use := h.Job.Practice.GearUse
	if use == 1 {
		return h.Unit().ForceLimit(rating)
	}
	return fmt.Sprintf("%s x %s = %s", h.Unit().ForceLimit(rating), say.Share(use), h.Unit().ForceLimit(rating*use))
}

// Ratings returns what the pins of joint k, counted from 0, are rated: the
// lower of its two bodies' ratings, the other's where one gives none, nil
// where neither does.
func (h *Hung) Ratings(k int) *job.PinRatings {
	above, below := h.Bar.PinRatings, h.Cabinets[k].PinRatings
	if k > 0 {
		above = h.Cabinets[k-1].PinRatings
	}
	switch {
	case above == nil || above == below:
		return below
	case below == nil:
		return above
	}
	return &job.PinRatings{Hinge: math.Min(above.Hinge, below.Hinge), Link: math.Min(above.Link, below.Link)}
}

// MayPush reports whether the makers let the link of joint k, counted from 0,
// take compression: every cabinet of the joint must say so.
func (h *Hung) MayPush(k int) bool {
	return h.Cabinets[k].LinkPushes && (k == 0 || h.Cabinets[k-1].LinkPushes)
}

// checkLinks: a link in compression where its makers do not allow that.
func (h *checked) checkLinks(s *State) {
	for k, j := range s.Joints {
		if !h.MayPush(k) && h.closer("rear link", j.Link) {
			h.measured("rear link", j.Link, func() (Where, string, string) {
				return Where{Lift: s.Lift, Joint: k + 1}, h.Unit().Newtons(j.Link) + ", below 0 is push", "may only be pulled"
			})
		}
		if j.Link < -Alike && !h.MayPush(k) {
			h.hold("link_pushed", Where{Lift: s.Lift, Joint: k + 1}, "the link is pushed with %s; it may only be pulled", h.Unit().Force(j.Link)).by = -j.Link
		}
	}
}

// Joint names joint k, counted from 0, as people count.
func Joint(k int) string { return fmt.Sprintf("joint %d", k+1) }
