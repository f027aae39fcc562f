package sheets

import (
	"fmt"
	"slices"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/told"
)

// liftWarnings are the cautions that come up at lift k, counted from 0. What one hoist alone
// could not hold stands in a table of its own.
func liftWarnings(h *rules.Checked, k int) []string {
	at := h.Joined(k).Lift
	all := warningsOf(h, func(f rules.Finding) bool {
		alone := f.Rule == rules.OneHoist || f.Rule == rules.OneHoistGear
		return f.Where.Lift == at && !alone && (at > 0 || f.Rule == rules.LinkPushed)
	})
	return append(all, turnWarnings(h.Hung, k, 1)...)
}

// warningsOf are some cautions of one lift, those that repeat at once: '… (joints 2 to 5)'.
func warningsOf(h *rules.Checked, some func(rules.Finding) bool) (all []string) {
	var here []rules.Finding
	for _, f := range h.Cautions {
		if some(f) {
			f.Where.Lift = 0
			here = append(here, f)
		}
	}
	for _, l := range told.Gathered(here) {
		words := l.OnPaper()
		if at := told.Places(l.At...); at != "" {
			words += " (" + at + ")"
		}
		all = append(all, words)
	}
	return all
}

// turnWarnings warn of the hinges that turn over at lift k, counted from 0; way is 1
// going up, and -1 coming down.
func turnWarnings(h *rig.Hung, k int, way float64) (all []string) {
	for _, from := range []float64{1, -1} {
		if joints := turnsFrom(h, k, from*way); joints != "" {
			all = append(all, fmt.Sprintf("Hinge turns over from %s to %s at %s: expect a knock, hands off.", say.Pulled(from), say.Pulled(-from), say.Joints(joints)))
		}
	}
	return all
}

// turnsFrom lists the joints whose hinges turn over at lift k, counted from 0, from
// a sign of their pull: '3, 5 to 7'.
func turnsFrom(h *rig.Hung, k int, from float64) string {
	return say.Those(h.Joined(k).Flown, func(n int) bool { return turnsAt(h, n, rig.Turn{Lift: k, From: from}) })
}

// turnsAt reports whether joint n, counted from 1, turns over so.
func turnsAt(h *rig.Hung, n int, so rig.Turn) bool {
	return slices.ContainsFunc(h.Ways(), func(v *rig.Hung) bool {
		t, ok := v.HingeTurn(n - 1)
		return ok && t == so
	})
}
