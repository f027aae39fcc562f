package sheets

import (
	"fmt"

	"hangpack/calc"
	"hangpack/layouts"
	"hangpack/layouts/drawings"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
)

// liftSheet is the stack from the bar to trim, lift by lift: what to do, what to
// read, and how to get down.
func liftSheet(h *rules.Checked) layouts.Sequence {
	s := layouts.Sequence{
		Sheet: h.ID + " LIFTS", Head: stackHead(h.Hung),
		Says:  []string{cellWords(h.Hung) + " Zero it with nothing hanging on it. " + heightWords(h.Hung) + " Inclinometer on the flat of front or back, where its maker marks it, not on the lid." + say.After(" ", steerWords(h.Hung)) + say.After(" ", betweenWords(h.Hung))},
		Stop:  stopWords(h.Hung),
		Ruler: drawings.Ruler{Imperial: h.Job.Imperial}, Cards: []layouts.Card{startCard(h.Hung)},
		Alone: aloneTable(h.Hung),
	}
	for k := range h.Sets {
		s.Cards = append(s.Cards, liftCard(h, k))
	}
	return s
}

// steerWords ask who steers a stack that hangs from one hook, and are "" where two hold
// it.
func steerWords(h *rig.Hung) string {
	if len(h.Picks) == 2 {
		return ""
	}
	return "Nothing in this paper keeps it from turning; steered by: ______________________"
}

// stopWords say what to do when a reading is not as it should be. Reasons: common
// practice; no published tolerance of a load cell against a calculation was found.
func stopWords(h *rig.Hung) []string {
	p, u := h.Job.Practice, h.Unit()
	may := fmt.Sprintf("masses %s more or less", say.Share(p.MassTolerance))
	if len(h.Picks) == 2 {
		may += fmt.Sprintf(", the bar %s° off its tilt", say.Trimmed(calc.Degrees(p.AimTolerance)))
	}
	return []string{
		"Reads outside 'may read'? Stop, lower, find out why. Then go on or go down.",
		fmt.Sprintf("'May read' is %s, and at least %s either way; of aims %s° either way. This job sets it: no standard does.", may, u.Reading(p.ReadingFloor), say.Trimmed(calc.Degrees(p.AimTolerance))),
		"Usual reasons: a cable that hangs on the bar and not on its own pick; bar or dolly still touching; a cabinet too many, too few or of another type; wet covers; a hook not plumb; " +
			"the bar not at its tilt; the cell not zeroed or pulled sideways; hoist and chain counted or not. A wrong pin shows in the difference of two aims; two that cancel do not: touch every pin.",
	}
}
