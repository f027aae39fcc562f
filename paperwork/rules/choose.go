package rules

import (
	"fmt"
	"math"
	"slices"

	"hangpack/calc"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// A PassedOver is a pick hole that is nearer to the wanted aim than the one in use, and
// at which the stack would be held.
type PassedOver struct {
	Hole int     // of the bar, counted from 0
	Aim  float64 // of cabinet 1 there, rad, positive down
	Why  Finding // the first hold there
}

// Choose holds every rule against a stack. With one pick and a pick hole that is left to
// the figures, a stack that is held at the closest one is hung from the next closest
// within the aim's tolerance at which it is not held, if there is one; else it stays. Of a
// stack that is held it finds out whether another hole within the tolerance would not be.
// An error is a fault of hangpack: see rig.Hang.
func Choose(h *rig.Hung) (*Checked, error) {
	c := Check(h)
	if !c.Held() || len(h.Picks) > 1 {
		return c, nil
	}
	passed := []PassedOver{{h.Holes[0], h.Options[h.Holes[0]].Aim, c.Holds[0]}}
	for _, hole := range within(h) {
		other, err := h.From(hole)
		if err != nil {
			return nil, err
		}
		there := Check(other)
		switch {
		case there.Held():
			passed = append(passed, PassedOver{hole, h.Options[hole].Aim, there.Holds[0]})
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

// within are the pick holes of the bar but the one in use that give the wanted aim within
// its tolerance and do not tip over, the closest first.
func within(h *rig.Hung) (holes []int) {
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

// PassedOverWords say which pick holes are nearer to the wanted aim than the one in use,
// and why each is passed over.
func PassedOverWords(h *Checked) (all []string) {
	for _, p := range h.PassedOver {
		all = append(all, fmt.Sprintf("Pick hole %s is nearer (%s) and is passed over, for the stack would be held there: %s.", h.Label(p.Hole).Text, say.Aim(p.Aim), p.Why.Sentence()))
	}
	return all
}

// OtherHoleWords say of a held stack on one pick whether another pick hole would do; ""
// of others.
func OtherHoleWords(h *Checked) string {
	tolerance := say.Trimmed(calc.Degrees(h.Job.Practice.AimTolerance))
	switch {
	case !h.Held() || len(h.Picks) > 1:
		return ""
	case h.NotHeldAt == nil:
		return fmt.Sprintf("No other pick hole within %s° of the wanted aim is without a hold.", tolerance)
	}
	return fmt.Sprintf("From pick hole %s (cabinet 1 %s, wanted %s) no hold is found.", h.Label(*h.NotHeldAt).Text, say.Aim(h.Options[*h.NotHeldAt].Aim), say.Aim(h.Aim))
}
