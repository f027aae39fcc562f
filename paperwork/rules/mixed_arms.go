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

func checkArms(h *check) {
	above, name := h.LinkArm, h.Bar.Key
	for k, c := range h.Cabinets {
		if math.Abs(above-c.LinkArm) > armsDiffer+rig.Within {
			h.caution(rig.Where{Joint: k + 1}, "link arms of %s (%s) and %s (%s) differ: ask the maker whether they join; worked with the smaller",
				h.Unit().Fine(above), name, h.Unit().Fine(c.LinkArm), c.Key)
		}
		above, name = c.LinkArm, c.Key
	}
}
