package rules

import (
	"math"

	"hangpack/paperwork/rig"
)

// mixedArms: the link arms of a joint's two bodies differ.
var mixedArms = Rule{ID: "mixed_arms", Title: "Link arms differ", Severity: Caution, stack: checkArms}

// armsDiffer is how much the link arms of a joint may differ, in metres,
// before it is worth a caution. It is a limit of this tool.
const armsDiffer = 0.005

func checkArms(c *check) {
	above, name := c.LinkArm, c.Bar.Key
	for k, cabinet := range c.Cabinets {
		if math.Abs(above-cabinet.LinkArm) > armsDiffer+rig.Within {
			c.caution(rig.Where{Joint: k + 1}, "link arms of %s (%s) and %s (%s) differ: ask the maker whether they join; worked with the smaller",
				c.Unit().Fine(above), name, c.Unit().Fine(cabinet.LinkArm), cabinet.Key)
		}
		above, name = cabinet.LinkArm, cabinet.Key
	}
}
