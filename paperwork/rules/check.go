package rules

import (
	"fmt"
	"math"

	"hangpack/paperwork/rig"
)

// A check is one rule being held against one stack.
type check struct {
	*Checked
	rule *Rule
}

// hold adds a hold of the rule. The caller may set Of and By of what it returns before
// the next finding is added.
func (c *check) hold(at rig.Where, format string, args ...any) *Finding {
	return c.add(&c.Holds, at, fmt.Sprintf(format, args...))
}

// caution adds a caution of the rule, as hold does a hold.
func (c *check) caution(at rig.Where, format string, args ...any) *Finding {
	return c.add(&c.Cautions, at, fmt.Sprintf(format, args...))
}

// add adds a finding of the rule to holds or to cautions.
func (c *check) add(to *[]Finding, at rig.Where, says string) *Finding {
	if cap(*to) == 0 {
		*to = make([]Finding, 0, 16) // many come together, or none
	}
	*to = append(*to, Finding{Rule: c.rule.ID, Title: c.rule.Title, Where: at, Says: says})
	return &(*to)[len(*to)-1]
}

// rated holds a load against its limit, both in newtons with all factors in them: it
// keeps the most used part of its kind, and adds a hold where the load is more.
func (c *check) rated(part string, load, limit float64, says Wording) {
	c.Uses.take(Use{part, load / limit, says})
	if rig.Over(load, limit) {
		at, worked, most := says()
		c.hold(at, "%s is more than %s", worked, most).By = load / limit
	}
}

// measured keeps the measure of its kind that is closest to its limit; spare is how far
// inside it is, in SI units.
func (c *check) measured(what string, spare float64, says Wording) {
	c.Measures.take(Measure{what, spare, says})
}

// heaviest is the tilt of a state's reach at which pick i carries most.
func heaviest(c *check, s *rig.State, i int) *rig.Tilted {
	_, at := worstTilt(s, func(at *rig.Tilted) float64 { return c.Most(at.Loads[i]) })
	return at
}

// worstTilt returns the most of a figure over the reach of a state, and the tilt where
// that is: the nominal one of equals.
func worstTilt(s *rig.State, figure func(*rig.Tilted) float64) (worst float64, at *rig.Tilted) {
	for i := range s.Reach {
		is := figure(&s.Reach[i])
		if at == nil || is > worst+math.Abs(worst)*rig.Within {
			worst, at = is, &s.Reach[i]
		}
	}
	return worst, at
}

// ifSo says where unknown centres of gravity have to lie for what is said.
func ifSo(t rig.Third) string {
	return "if the centre of gravity that is not known lies: " + t.Name
}
