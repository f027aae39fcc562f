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
	passed := []rules.PassedOver{passedOver(c)}
	for _, hole := range holesWithin(h) {
		other, err := h.From(hole)
		if err != nil {
			return nil, err
		}
		there := rules.Check(other)
		switch {
		case there.Held():
			passed = append(passed, passedOver(there))
		case h.Stack.Picks[0].Hole == job.Auto:
			there.PassedOver = passed
			return there, nil
		default:
			c.NotHeldAt = &hole
			return c, nil
		}
	}
	return c, nil
}

// passedOver is the pick hole of a stack that is held there.
func passedOver(c *rules.Checked) rules.PassedOver {
	hole := c.Holes[0]
	return rules.PassedOver{Hole: hole, Aim: c.Options[hole].Aim, Why: c.Holds[0]}
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
