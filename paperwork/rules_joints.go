package paperwork

import (
	"fmt"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// checkPins: the force on one pin·(1+tolerance)·dynamic > rating · gear_use,
// for the hinge and the link pins of every joint.
func (h *checked) checkPins(s *rig.State) {
	for k, j := range s.Joints {
		if r := h.Ratings(k); r != nil {
			h.checkPin("hinge_pin", "hinge pin", s, k, j.Hinge(), h.Cabinets[k].HingePins, r.Hinge)
			h.checkPin("link_pin", "link pin", s, k, j.Link, h.Cabinets[k].LinkPins, r.Link)
		}
	}
}

func (h *checked) checkPin(rule, part string, s *rig.State, k int, force float64, pins int, rating float64) {
	load, limit := h.Job.Practice.PinLoad(force, pins), rating*h.Job.Practice.GearUse
	// Asked first, since there are many pins and a wording of each would be made.
	if h.more(part, load/limit) || load > limit+rig.Alike {
		h.rated(rule, part, load, limit, func() (rig.Where, string, string) {
			return rig.Where{Lift: s.Lift, Joint: k + 1}, pinSum(h.Hung, force, pins), pinLimit(h.Hung, rating)
		})
	}
}

// pinSum writes the force on one pin: '9.0 kN x 60 % x 1.05 x 1.25 = 7.1 kN'.
func pinSum(h *rig.Hung, force float64, pins int) string {
	one := h.Job.Practice.PinLoad(force, pins)
	of := h.Unit().Force(force)
	if pins > 1 {
		of += " x " + say.Share(h.Job.Practice.SideShare)
	}
	return fmt.Sprintf("%s x %s = %s", of, factorsOf(h), h.Unit().Force(one))
}

// pinLimit writes a pin's rating and, where it is not used whole, how much is.
func pinLimit(h *rig.Hung, rating float64) string {
	use := h.Job.Practice.GearUse
	if use == 1 {
		return h.Unit().ForceLimit(rating)
	}
	return fmt.Sprintf("%s x %s = %s", h.Unit().ForceLimit(rating), say.Share(use), h.Unit().ForceLimit(rating*use))
}

// checkLinks: a link in compression where its makers do not allow that.
func (h *checked) checkLinks(s *rig.State) {
	for k, j := range s.Joints {
		if !h.MayPush(k) && h.closer("rear link", j.Link) {
			h.measured("rear link", j.Link, func() (rig.Where, string, string) {
				return rig.Where{Lift: s.Lift, Joint: k + 1}, h.Unit().Newtons(j.Link) + ", below 0 is push", "may only be pulled"
			})
		}
		if j.Link < -rig.Alike && !h.MayPush(k) {
			h.hold("link_pushed", rig.Where{Lift: s.Lift, Joint: k + 1}, "the link is pushed with %s; it may only be pulled", h.Unit().Force(j.Link)).by = -j.Link
		}
	}
}
