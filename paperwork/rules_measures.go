package paperwork

import (
	"fmt"
	"math"
	"slices"

	"hangpack/calc"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// A measure is a height, an angle or a number of things held against what it
// may be, where that is closest: the finished stack or a lift.
type measure struct {
	of    string
	spare float64 // how far inside its limit, in its own SI unit
	says  wording
}

// measured keeps the closest of a kind of measure.
func (h *checked) measured(of string, spare float64, says wording) {
	if h.closer(of, spare) {
		h.keepMeasure(measure{of, spare, says})
	}
}

// keepMeasure keeps a measure in the place of the one of its kind.
func (h *checked) keepMeasure(m measure) {
	if i := h.measureOf(m.of); i >= 0 {
		h.measures[i] = m
		return
	}
	h.measures = append(h.measures, m)
}

func (h *checked) measureOf(of string) int {
	return slices.IndexFunc(h.measures, func(m measure) bool { return m.of == of })
}

// closer reports whether a measure is closer to its limit than what is kept of its
// kind.
func (h *checked) closer(of string, spare float64) bool {
	i := h.measureOf(of)
	return i < 0 || spare < h.measures[i].spare-rig.Within
}

// checkMost: more cabinets of a type than the bar's maker allows.
func (h *checked) checkMost(s *rig.State) {
	for _, m := range h.Bar.Most {
		n := 0
		for _, c := range h.Cabinets[:s.Flown] {
			if c.Key == m.Cabinet {
				n++
			}
		}
		h.measured("number of "+m.Cabinet, float64(m.Count-n), func() (rig.Where, string, string) {
			return rig.Where{Lift: s.Lift}, fmt.Sprint(n), fmt.Sprintf("at most %d (%s)", m.Count, h.Bar.Key)
		})
		if n > m.Count {
			h.hold("most", rig.Where{Lift: s.Lift, Gear: m.Cabinet}, "%d of %s is more than the %d that %s takes", n, m.Cabinet, m.Count, h.Bar.Key)
		}
	}
}

// checkTilt: the bar tilts further than its maker allows.
func (h *checked) checkTilt(s *rig.State) {
	limit := h.Bar.TiltLimit
	if limit == nil {
		return
	}
	down := func() string { return say.Trimmed(say.Degrees(limit.Down)) + "° down" }
	up := func() string { return say.Trimmed(say.Degrees(limit.Up)) + "° up" }
	h.measured("bar tilt", math.Min(limit.Down-s.Tilt, limit.Up+s.Tilt), func() (rig.Where, string, string) {
		return rig.Where{Lift: s.Lift}, say.Aim(s.Tilt), "within " + down() + ", " + up() + " (" + h.Bar.Key + ")"
	})
	if s.Tilt > limit.Down+rig.Within {
		h.hold("bar_tilt", rig.Where{Lift: s.Lift}, "bar %s is more than %s (%s)", say.AimPast(s.Tilt, limit.Down), down(), h.Bar.Key).by = s.Tilt
	}
	if -s.Tilt > limit.Up+rig.Within {
		h.hold("bar_tilt", rig.Where{Lift: s.Lift}, "bar %s is more than %s (%s)", say.AimPast(s.Tilt, limit.Up), up(), h.Bar.Key).by = -s.Tilt
	}
}

// checkPicks: a pick that would have to push, on the finished stack or on a
// lift; and one that carries less than its least share of the finished stack.
func (h *checked) checkPicks(s *rig.State) {
	if len(s.Loads) == 1 {
		return
	}
	least := h.Job.Practice.LeastShare
	for i, kg := range s.Loads {
		at, part := rig.Where{Lift: s.Lift, End: h.End(i)}, math.Max(kg, 0)/s.Centre.Mass
		h.measured(string(h.End(i))+" pick's share", part-least, func() (rig.Where, string, string) {
			return rig.Where{Lift: s.Lift}, h.pickShare(s, i), "at least " + say.Share(least) + " finished"
		})
		switch {
		case kg*calc.G < -rig.Alike:
			h.hold("light_pick", at, "the %s pick would have to push %s: its chain goes slack", h.End(i), h.Unit().Load(-kg)).by = least - kg/s.Centre.Mass
		case s.Lift == 0 && part < least-rig.Within:
			h.hold("light_pick", at, "%s", h.lightPick(s, i)).by = least - part
		}
	}
}

// pickShare writes what a pick carries of the stack: '35 kg of 302 kg is 11.6 %'.
func (h *checked) pickShare(s *rig.State, i int) string {
	kg := math.Max(s.Loads[i], 0)
	return fmt.Sprintf("%s of %s is %s %%", h.Unit().Load(kg), h.Unit().Load(s.Centre.Mass), say.Fixed(100*kg/s.Centre.Mass, 1))
}

func (h *checked) lightPick(s *rig.State, i int) string {
	return h.pickShare(s, i) + ", less than " + say.Share(h.Job.Practice.LeastShare)
}

// checkBalance: the centre of gravity is not below the pick hole, or with two
// picks not below the line through both.
func (h *checked) checkBalance(s *rig.State) {
	of, falls := "the pick hole", "it tips over"
	if len(h.Picks) == 2 {
		of, falls = "the line through both pick holes", "it rolls over sideways"
	}
	u := h.Unit()
	h.measured("centre of gravity", s.Lever, func() (rig.Where, string, string) {
		return rig.Where{Lift: s.Lift}, u.Fine(s.Lever) + " below " + of, "more than " + u.Fine(0) + " below"
	})
	if s.Lever > rig.Within {
		return
	}
	if above := u.Fine(math.Max(-s.Lever, 0)); above == u.Fine(0) {
		h.hold("tips_over", rig.Where{Lift: s.Lift}, "the centre of gravity is level with %s: %s", of, falls).by = -s.Lever
	} else {
		h.hold("tips_over", rig.Where{Lift: s.Lift}, "the centre of gravity is %s above %s: %s", above, of, falls).by = -s.Lever
	}
}

// checkFloor: a corner below the floor, at trim.
func (h *checked) checkFloor() {
	low := h.Raise + h.Finished.Lowest()
	h.measured("lowest corner", low-h.Floor, func() (rig.Where, string, string) {
		return rig.Where{}, h.Unit().Length(low), "not below the floor at " + h.Unit().Length(h.Floor)
	})
	if low < h.Floor-rig.Within {
		write := h.Unit().Apart(low, h.Floor)
		h.hold("below_floor", rig.Where{}, "the lowest corner at %s is below the floor at %s", write(low), write(h.Floor)).by = h.Floor - low
	}
}

// checkDollies: a set larger than its dolly takes.
func (h *checked) checkDollies() {
	if h.Dolly == nil {
		return
	}
	for k, n := range h.Sets {
		at := rig.Where{Set: k + 1}
		h.measured("dolly", float64(h.Dolly.Takes-n), func() (rig.Where, string, string) {
			return at, say.Count(n, "cabinet"), fmt.Sprintf("at most %d (%s)", h.Dolly.Takes, h.Dolly.Key)
		})
		if n > h.Dolly.Takes {
			h.hold("dolly", at, "%s on a %s that takes %d", say.Count(n, "cabinet"), h.Dolly.Key, h.Dolly.Takes)
		}
	}
}

// unrated counts the parts of a stack for which the job gives no rating.
func (h *checked) unrated() (n int) {
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
