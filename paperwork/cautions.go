package paperwork

import (
	"fmt"
	"math"
	"slices"

	"hangpack/calc"
	"hangpack/paperwork/job"
	"hangpack/paperwork/say"
)

// cautionAll gathers what the crew or the venue must know and what does not
// stop the work. What would repeat on every lift is given once, for the worst.
func (h *hung) cautionAll() {
	h.cautionAim()
	h.cautionLinks()
	h.cautionLightPick()
	h.cautionLiftTilt()
	h.cautionHinges()
	h.cautionOneHoist()
	h.cautionBacks()
	h.cautionArms()
	h.cautionTurning()
	h.cautionUnchecked()
}

func (h *hung) cautionAim() {
	got := h.finished.poses[0].Aim
	if off := math.Abs(got - h.Aim); off > h.job.Practice.AimTolerance+within {
		h.caution("aim_missed", Where{}, "cabinet 1 looks %s, wanted %s: %s off, tolerance %s°",
			say.Aim(got), say.Aim(h.Aim), say.Angle(off), say.Trimmed(say.Degrees(h.job.Practice.AimTolerance))).by = off
	}
}

// states are the finished stack and its lifts.
func (h *hung) states() []*state {
	return append([]*state{h.finished}, h.lifts...)
}

func (h *hung) cautionLinks() {
	states := h.states()
	for k := range h.Cabinets {
		worst, at := -alike, Where{}
		for _, s := range states {
			if k < len(s.joints) && s.joints[k].Link < worst && h.mayPush(k) {
				worst, at = s.joints[k].Link, Where{Lift: s.lift, Joint: k + 1}
			}
		}
		if at.Joint > 0 {
			h.caution("link_pushed", at, "the link is pushed with %s; its maker allows that", h.unit().Force(worst)).by = -worst
		}
	}
}

func (h *hung) cautionLightPick() {
	for i := range h.Picks {
		least, worst := h.job.Practice.LeastShare-within, (*state)(nil)
		for _, s := range h.lifts {
			if share := s.loads[i] / s.centre.Mass; share < least && s.loads[i]*calc.G >= -alike {
				least, worst = share, s
			}
		}
		if worst != nil && len(h.Picks) > 1 {
			h.caution("light_pick", Where{Lift: worst.lift, End: h.end(i)}, "%s", h.lightPick(worst, i)).by = -least
		}
	}
}

func (h *hung) cautionLiftTilt() {
	most, worst := h.job.Practice.LiftTilt+within, (*state)(nil)
	for _, s := range h.lifts {
		if math.Abs(s.tilt) > most {
			most, worst = math.Abs(s.tilt), s
		}
	}
	if worst != nil {
		h.caution("lift_tilt", Where{Lift: worst.lift}, "the bar tilts to %s, further than %s°: hold it before the dolly is free",
			say.Aim(worst.tilt), say.Trimmed(say.Degrees(h.job.Practice.LiftTilt))).by = most
	}
}

// A turn is a hinge whose pull changes sign at a lift, counted from 0: from is
// its sign before.
type turn struct {
	lift int
	from float64
}

// turning looks, lift by lift, whether the pull of the hinge of joint k, counted
// from 0, changes its sign, and where it does so first.
func (h *hung) turning(k int) (turn, bool) {
	sign := 0.0
	for n := range h.Sets {
		s := h.joined(n)
		if k >= len(s.joints) || math.Abs(s.joints[k].HingePull) < alike {
			continue
		}
		now := math.Copysign(1, s.joints[k].HingePull)
		if sign*now < 0 {
			return turn{n, sign}, true
		}
		sign = now
	}
	return turn{}, false
}

func (h *hung) cautionHinges() {
	for k := range h.Cabinets {
		if t, ok := h.turning(k); ok {
			h.caution("hinge_turns", Where{Joint: k + 1}, "the hinge goes from %s to %s when %s is lifted: expect a knock, hands off",
				pulled(t.from), pulled(-t.from), h.liftName(h.joined(t.lift)))
		}
	}
}

func pulled(sign float64) string {
	if sign > 0 {
		return "pulled"
	}
	return "pushed"
}

// liftName names the set whose lift gives a state.
func (h *hung) liftName(s *state) string { return "dolly " + letter(h.Sets.Of(s.flown)) }

// backsSpare is how far a joint may open past the room of its wedges before
// it is worth a caution, in degrees. Common practice: the play of the pins.
const backsSpare = 0.3

func (h *hung) cautionBacks() {
	for k := 1; k < len(h.Cabinets); k++ {
		upper, lower := h.Cabinets[k-1], h.Cabinets[k]
		room := calc.BackRoom(calc.Wedge{Front: upper.FrontHeight, Back: upper.BackHeight, Depth: upper.Depth},
			calc.Wedge{Front: lower.FrontHeight, Back: lower.BackHeight, Depth: lower.Depth}, upper.HingePitch)
		if say.Radians(lower.Hole.Splay) > room+say.Radians(backsSpare)+within {
			h.caution("backs_meet", Where{Joint: k + 1}, "a splay of %s° with room for %s°: the backs may meet before the pin goes in",
				say.Splay(lower.Hole.Splay), say.Fixed(math.Floor(say.Degrees(room)*10)/10, 1))
		}
	}
}

// armsDiffer is how much the link arms of a joint may differ, in metres,
// before it is worth a caution. It is a limit of this tool.
const armsDiffer = 0.005

func (h *hung) cautionArms() {
	above, name := h.LinkArm, h.Bar.Key
	for k, c := range h.Cabinets {
		if math.Abs(above-c.LinkArm) > armsDiffer+within {
			h.caution("mixed_arms", Where{Joint: k + 1}, "link arms of %s (%s) and %s (%s) differ: ask the maker whether they join; worked with the smaller",
				h.unit().Fine(above), name, h.unit().Fine(c.LinkArm), c.Key)
		}
		above, name = c.LinkArm, c.Key
	}
}

func (h *hung) cautionTurning() {
	if len(h.Picks) == 1 {
		h.caution("one_pick_turns", Where{}, "nothing in this paper keeps it from turning")
	}
}

// cautionUnchecked names every limit that the gear of this stack does not
// give, and steel whose height is not given.
func (h *hung) cautionUnchecked() {
	b := h.Bar
	unchecked := func(given bool, gear, what string) {
		if !given {
			h.caution("not_checked", Where{Gear: gear}, "NOT CHECKED: %s not given", what)
		}
	}
	unchecked(b.Rating > 0, b.Key, "rating of the bar")
	unchecked(b.PickRating > 0, b.Key, "pick_rating of the bar")
	unchecked(b.PinRatings != nil, b.Key, "pin_ratings of the bar")
	unchecked(b.Most != nil, b.Key, "most, the number of cabinets below the bar,")
	for _, t := range h.types() {
		unchecked(b.Most == nil || h.limited(t), b.Key, "most of "+t.Key+" below the bar")
	}
	unchecked(b.TiltLimit != nil, b.Key, "tilt_limit of the bar")
	for _, t := range h.types() {
		unchecked(t.PinRatings != nil, t.Key, "pin_ratings of the cabinet")
	}
	for i, p := range h.Picks {
		if i == 0 {
			unchecked(p.Steel != nil, "", fmt.Sprintf("height of the steel of %s", h.ID))
		}
	}
}

// limited reports whether the bar's maker limits how many of a type it takes.
func (h *hung) limited(t *job.Cabinet) bool {
	return slices.ContainsFunc(h.Bar.Most, func(m job.Most) bool { return m.Cabinet == t.Key })
}
