package rules

import (
	"math"

	"hangpack/paperwork/rig"
)

// tipsOver: the centre of gravity is not below the pick hole, or with two picks not below
// the line through both.
var tipsOver = Rule{ID: "tips_over", Title: "Tips over", Severity: Hold, Grave: ComesDown, states: checkBalance}

func checkBalance(c *check, s *rig.State) {
	of, falls := "the pick hole", "it tips over"
	if len(c.Picks) == 2 {
		of, falls = "the line through both pick holes", "it rolls over sideways"
	}
	u := c.Unit()
	c.measured("centre of gravity", s.Lever, func() (rig.Where, string, string) {
		return rig.Where{Lift: s.Lift}, u.Fine(s.Lever) + " below " + of, "more than " + u.Fine(0) + " below"
	})
	if s.Lever > rig.Within {
		return
	}
	above := "level with"
	if by := u.Fine(math.Max(-s.Lever, 0)); by != u.Fine(0) {
		above = by + " above"
	}
	c.hold(rig.Where{Lift: s.Lift}, "the centre of gravity is %s %s: %s", above, of, falls).By = -s.Lever
}
