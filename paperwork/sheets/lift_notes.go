package sheets

import (
	"fmt"
	"math"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// liftNotes say what the readings assume, and how the next joint comes together.
func liftNotes(h *rig.Hung, k int) (notes []string) {
	s := h.Joined(k)
	from, to := h.Over(func(v *rig.Hung) float64 { return v.Joined(k).Tilt })
	bar := "Bar " + say.Between(from, to, say.Aim) + ", as it settles."
	if len(h.Picks) == 2 {
		bar = fmt.Sprintf("Readings assume the bar %s. %s", say.Aim(s.Tilt), movedWords(h, s))
	}
	notes = append(notes, bar)
	if k == len(h.Lifts) {
		return notes
	}
	return append(notes, fmt.Sprintf("To join %s: cabinet %d hangs %s; bring the two together as their maker says. %s", SetName(h, k+1), s.Flown, offLevel(h, k), swingWords(h, k+1)))
}

// offLevel says how far the lowest cabinet is off level after lift k, counted
// from 0.
func offLevel(h *rig.Hung, k int) string {
	from, to := h.Over(func(v *rig.Hung) float64 { return v.Joined(k).LastAim() })
	words := say.Between(from, to, say.Aim)
	if words == say.Aim(0) {
		return words
	}
	return words + ", that much off level"
}

// movedWords say what a degree of tilt does to two readings.
func movedWords(h *rig.Hung, s *rig.State) string {
	kg := h.Moved(s)
	from, to := "front", "rear"
	if kg < 0 {
		from, to = to, from
	}
	return fmt.Sprintf("Each degree more front down moves %s from %s to %s.", h.Unit().Reading(math.Abs(kg)), from, to)
}

// swingWords say how the flown part turns when set k, counted from 0, hangs on it,
// from hanging free before to hanging free after.
func swingWords(h *rig.Hung, k int) string {
	words := swingOf(h, k, 1)
	if words == "" {
		return "Joined and free it keeps that aim."
	}
	return "Joined and free it hangs " + words + " of that, and may swing further on the way: hands off."
}
