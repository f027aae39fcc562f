package rules

import "hangpack/paperwork/rig"

// checkPins: the force on one pin·(1+tolerance)·dynamic > rating · gear_use,
// for the hinge and the link pins of every joint.
func checkPins(h *Checked, s *rig.State) {
	for k, j := range s.Joints {
		if r := h.Ratings(k); r != nil {
			checkPin(h, "hinge_pin", "hinge pin", s, k, j.Hinge(), h.Cabinets[k].HingePins, r.Hinge)
		}
	}
	for k, j := range s.Joints {
		if r := h.Ratings(k); r != nil {
			checkPin(h, "link_pin", "link pin", s, k, j.Link, h.Cabinets[k].LinkPins, r.Link)
		}
	}
}

func checkPin(h *Checked, rule, part string, s *rig.State, k int, force float64, pins int, rating float64) {
	load, limit := h.Job.Practice.PinLoad(force, pins), rating*h.Job.Practice.GearUse
	// Asked first, since there are many pins and a wording of each would be made.
	if h.more(part, load/limit) || load > limit+rig.Alike {
		h.rated(rule, part, load, limit, func() (rig.Where, string, string) {
			return rig.Where{Lift: s.Lift, Joint: k + 1}, pinSum(h.Hung, force, pins), pinLimit(h.Hung, rating)
		})
	}
}

// unrated counts the parts of a stack for which the job gives no rating.
func unrated(h *Checked) (n int) {
	for _, given := range []bool{h.Bar.Rating > 0, h.Bar.PickRating > 0, h.Bar.PinRatings != nil} {
		if !given {
			n++
		}
	}
	for _, t := range h.Types() {
		if t.PinRatings == nil {
			n++
		}
	}
	return n
}
