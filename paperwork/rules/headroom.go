package rules

import (
	"fmt"

	"hangpack/paperwork/rig"
)

// headroom: low hook + headroom + limit_reserve > high hook, at trim and at the roll-in
// after each lift. It needs the height of the steel, and at the roll-ins a dolly.
var headroom = Rule{ID: "headroom", Title: "Headroom", Severity: Hold, Grave: Strikes, stack: checkHeadroom}

func checkHeadroom(c *check) {
	for i := range c.Picks {
		headroomAt(c, i, rig.Where{End: c.End(i)}, c.PickHeight(i))
	}
	if c.Dolly == nil {
		return
	}
	for k, s := range c.Lifts {
		for i := range c.Picks {
			headroomAt(c, i, rig.Where{Lift: s.Lift, End: c.End(i)}, c.PickAtRollIn(k, i))
		}
	}
}

// headroomAt holds hoist i against its high hook with its pick at a height, in m above
// heights_from.
func headroomAt(c *check, i int, at rig.Where, pick float64) {
	p, hook := c.Picks[i], c.HighHook(i)
	if hook == nil {
		return
	}
	reserve := c.Job.Practice.LimitReserve
	low, high := pick+p.Below.Length, *hook
	need := low + p.Hoist.Headroom + reserve
	says := func(write func(float64) string) string {
		return fmt.Sprintf("low hook %s + headroom %s + reserve %s = %s", write(low), write(p.Hoist.Headroom), write(reserve), write(need))
	}
	c.measured("headroom", high-need, func() (rig.Where, string, string) {
		return at, says(c.Unit().Length), "not above the high hook at " + c.Unit().Length(high)
	})
	if need > high+rig.Within {
		write := c.Unit().Apart(need, high)
		c.hold(at, "%s is more than the high hook at %s", says(write), write(high)).By = need - high
	}
}
