package rules

import "hangpack/paperwork/rig"

// belowFloor: a corner is below the floor at trim.
var belowFloor = Rule{ID: "below_floor", Title: "Below the floor", Severity: Hold, Grave: Strikes, stack: checkFloor}

func checkFloor(c *check) {
	low := c.Raise + c.Finished.Lowest()
	c.measured("lowest corner", low-c.Floor, func() (rig.Where, string, string) {
		return rig.Where{}, c.Unit().Length(low), "not below the floor at " + c.Unit().Length(c.Floor)
	})
	if low < c.Floor-rig.Within {
		write := c.Unit().Apart(low, c.Floor)
		c.hold(rig.Where{}, "the lowest corner at %s is below the floor at %s", write(low), write(c.Floor)).By = c.Floor - low
	}
}
