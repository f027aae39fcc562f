package sheets

import (
	"fmt"
	"slices"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
)

// liftWarnings are the cautions that come up at lift k, counted from 0.
func liftWarnings(h *rules.Checked, k int) (all []string) {
	at := h.Joined(k).Lift
	var pushed []rules.Finding
	for _, f := range h.Cautions {
		switch {
		case f.Where.Lift != at:
		case f.Rule == rules.LinkPushed:
			pushed = append(pushed, f)
		case at > 0:
			all = append(all, f.Lead()+f.Says+jointOf(f))
		}
	}
	return append(append(pushedWarnings(h.Hung, pushed), all...), turnWarnings(h.Hung, k, 1)...)
}

// pushedWarnings warn of links that are pushed: of a few each by itself, of many in
// one sentence that names the most pushed one.
func pushedWarnings(h *rig.Hung, pushed []rules.Finding) (all []string) {
	const few = 3
	if len(pushed) > few {
		return []string{manyPushed(h, pushed)}
	}
	for _, f := range pushed {
		all = append(all, f.Lead()+f.Says+jointOf(f))
	}
	return all
}

// manyPushed says of many pushed links which they are, and how far the worst is pushed.
func manyPushed(h *rig.Hung, pushed []rules.Finding) string {
	most, at := pushed[0], map[int]bool{}
	for _, f := range pushed {
		if f.By > most.By {
			most = f
		}
		at[f.Where.Joint] = true
	}
	runs := say.Those(len(h.Cabinets), func(n int) bool { return at[n] })
	return fmt.Sprintf("%sat %s; the most is that %s%s. Each stands on sheet CAUTIONS.", most.Lead(), say.Joints(runs), most.Says, jointOf(most))
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
