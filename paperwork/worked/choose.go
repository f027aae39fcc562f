package worked

import (
	"math"
	"slices"

	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
)

// choose holds every rule against a stack. With one pick and a pick hole that is left to
// the figures, a stack that is held at the closest one is hung from the next closest
// within the aim's tolerance at which it is not held, if there is one; else it stays. Of a
// stack that is held it finds out whether another hole within the tolerance would not be.
// An error is a fault of hangpack: see rig.Hang.
func choose(h *rig.Hung) (*rules.Checked, error) {
	c := rules.Check(h)
	if !c.Held() || len(h.Picks) > 1 {
		return c, nil
	}
	passed := []rules.PassedOver{{Hole: h.Holes[0], Aim: h.Options[h.Holes[0]].Aim, Why: c.Holds[0]}}
	for _, hole := range holesWithin(h) {
		there, why, err := from(h, hole)
		switch {
		case err != nil:
			return nil, err
		case why != nil:
			passed = append(passed, rules.PassedOver{Hole: hole, Aim: h.Options[hole].Aim, Why: *why})
		case h.Stack.Picks[0].Hole == job.Auto:
			there.PassedOver = passed
			return there, nil
		default:
			c.OtherHole = true
			return c, nil
		}
	}
	return c, nil
}

// from hangs a stack from another pick hole, and returns it, or the first hold that is
// found there.
func from(h *rig.Hung, hole int) (there *rules.Checked, why *rules.Finding, err error) {
	other, err := h.From(hole, func(way *rig.Hung) bool {
		f, held := rules.FirstHold(way)
		if held {
			why = &f
		}
		return !held
	})
	if err != nil || why != nil {
		return nil, why, err
	}
	return rules.Check(other), nil, nil
}

// holesWithin are the pick holes of the bar but the one in use that give the wanted aim within
// its tolerance and do not tip over, the closest first.
func holesWithin(h *rig.Hung) (holes []int) {
	off := func(hole int) float64 { return math.Abs(h.Options[hole].Aim - h.Aim) }
	for hole, o := range h.Options {
		if hole != h.Holes[0] && !o.Tips && off(hole) <= h.Job.Practice.AimTolerance+rig.Within {
			holes = append(holes, hole)
		}
	}
	slices.SortStableFunc(holes, func(a, b int) int {
		if off(a) < off(b)-rig.Within {
			return -1
		}
		if off(b) < off(a)-rig.Within {
			return 1
		}
		return 0
	})
	return holes
}
