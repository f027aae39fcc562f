package paperwork

import (
	"fmt"
	"math"
	"slices"

	"hangpack/calc"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// cautionAll gathers what the crew or the venue must know and what does not
// stop the work. What would repeat on every lift is given once, for the worst.
func (h *checked) cautionAll() {
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

func (h *checked) cautionAim() {
	got := h.Finished.Poses[0].Aim
	if off := math.Abs(got - h.Aim); off > h.Job.Practice.AimTolerance+rig.Within {
		h.caution("aim_missed", rig.Where{}, "cabinet 1 looks %s, wanted %s: %s off, tolerance %s°",
			say.Aim(got), say.Aim(h.Aim), say.Angle(off), say.Trimmed(say.Degrees(h.Job.Practice.AimTolerance))).by = off
	}
}

func (h *checked) cautionLinks() {
	states := h.States()
	for k := range h.Cabinets {
		worst, at := -rig.Alike, rig.Where{}
		for _, s := range states {
			if k < len(s.Joints) && s.Joints[k].Link < worst && h.MayPush(k) {
				worst, at = s.Joints[k].Link, rig.Where{Lift: s.Lift, Joint: k + 1}
			}
		}
		if at.Joint > 0 {
			h.caution("link_pushed", at, "the link is pushed with %s; its maker allows that", h.Unit().Force(worst)).by = -worst
		}
	}
}

func (h *checked) cautionLightPick() {
	for i := range h.Picks {
		least, worst := h.Job.Practice.LeastShare-rig.Within, (*rig.State)(nil)
		for _, s := range h.Lifts {
			if share := s.Loads[i] / s.Centre.Mass; share < least && s.Loads[i]*calc.G >= -rig.Alike {
				least, worst = share, s
			}
		}
		if worst != nil && len(h.Picks) > 1 {
			h.caution("light_pick", rig.Where{Lift: worst.Lift, End: h.End(i)}, "%s", h.lightPick(worst, i)).by = -least
		}
	}
}

func (h *checked) cautionLiftTilt() {
	most, worst := h.Job.Practice.LiftTilt+rig.Within, (*rig.State)(nil)
	for _, s := range h.Lifts {
		if math.Abs(s.Tilt) > most {
			most, worst = math.Abs(s.Tilt), s
		}
	}
	if worst != nil {
		h.caution("lift_tilt", rig.Where{Lift: worst.Lift}, "the bar tilts to %s, further than %s°: hold it before the dolly is free",
			say.Aim(worst.Tilt), say.Trimmed(say.Degrees(h.Job.Practice.LiftTilt))).by = most
	}
}

func (h *checked) cautionHinges() {
	for k := range h.Cabinets {
		if t, ok := h.Turning(k); ok {
			h.caution("hinge_turns", rig.Where{Joint: k + 1}, "the hinge goes from %s to %s when %s is lifted: expect a knock, hands off",
				say.Pulled(t.From), say.Pulled(-t.From), h.liftName(h.Joined(t.Lift)))
		}
	}
}

// liftName names the set whose lift gives a state.
func (h *checked) liftName(s *rig.State) string { return "dolly " + say.Dolly(h.Sets.Of(s.Flown)) }

// backsSpare is how far a joint may open past the room of its wedges before
// it is worth a caution, in degrees. Common practice: the play of the pins.
const backsSpare = 0.3

func (h *checked) cautionBacks() {
	for k := 1; k < len(h.Cabinets); k++ {
		upper, lower := h.Cabinets[k-1], h.Cabinets[k]
		room := calc.BackRoom(calc.Wedge{Front: upper.FrontHeight, Back: upper.BackHeight, Depth: upper.Depth},
			calc.Wedge{Front: lower.FrontHeight, Back: lower.BackHeight, Depth: lower.Depth}, upper.HingePitch)
		if say.Radians(lower.Hole.Splay) > room+say.Radians(backsSpare)+rig.Within {
			h.caution("backs_meet", rig.Where{Joint: k + 1}, "a splay of %s° with room for %s°: the backs may meet before the pin goes in",
				say.Splay(lower.Hole.Splay), say.Fixed(math.Floor(say.Degrees(room)*10)/10, 1))
		}
	}
}

// armsDiffer is how much the link arms of a joint may differ, in metres,
// before it is worth a caution. It is a limit of this tool.
const armsDiffer = 0.005

func (h *checked) cautionArms() {
	above, name := h.LinkArm, h.Bar.Key
	for k, c := range h.Cabinets {
		if math.Abs(above-c.LinkArm) > armsDiffer+rig.Within {
			h.caution("mixed_arms", rig.Where{Joint: k + 1}, "link arms of %s (%s) and %s (%s) differ: ask the maker whether they join; worked with the smaller",
				h.Unit().Fine(above), name, h.Unit().Fine(c.LinkArm), c.Key)
		}
		above, name = c.LinkArm, c.Key
	}
}

func (h *checked) cautionTurning() {
	if len(h.Picks) == 1 {
		h.caution("one_pick_turns", rig.Where{}, "nothing in this paper keeps it from turning")
	}
}

// cautionUnchecked names every limit that the gear of this stack does not
// give, and steel whose height is not given.
func (h *checked) cautionUnchecked() {
	b := h.Bar
	unchecked := func(given bool, gear, what string) {
		if !given {
			h.caution("not_checked", rig.Where{Gear: gear}, "NOT CHECKED: %s not given", what)
		}
	}
	unchecked(b.Rating > 0, b.Key, "rating of the bar")
	unchecked(b.PickRating > 0, b.Key, "pick_rating of the bar")
	unchecked(b.PinRatings != nil, b.Key, "pin_ratings of the bar")
	unchecked(b.Most != nil, b.Key, "most, the number of cabinets below the bar,")
	for _, t := range h.Types() {
		unchecked(b.Most == nil || h.limited(t), b.Key, "most of "+t.Key+" below the bar")
	}
	unchecked(b.TiltLimit != nil, b.Key, "tilt_limit of the bar")
	for _, t := range h.Types() {
		unchecked(t.PinRatings != nil, t.Key, "pin_ratings of the cabinet")
	}
	for i, p := range h.Picks {
		if i == 0 {
			unchecked(p.Steel != nil, "", fmt.Sprintf("height of the steel of %s", h.ID))
		}
	}
}

// limited reports whether the bar's maker limits how many of a type it takes.
func (h *checked) limited(t *job.Cabinet) bool {
	return slices.ContainsFunc(h.Bar.Most, func(m job.Most) bool { return m.Cabinet == t.Key })
}
