package rules

import (
	"math"

	"hangpack/paperwork/rig"
)

// armsDiffer is how much the link arms of a joint may differ, in metres,
// before it is worth a caution. It is a limit of this tool.
const armsDiffer = 0.005

func cautionArms(h *Checked) {
	above, name := h.LinkArm, h.Bar.Key
	for k, c := range h.Cabinets {
		if math.Abs(above-c.LinkArm) > armsDiffer+rig.Within {
			h.caution("mixed_arms", rig.Where{Joint: k + 1}, "link arms of %s (%s) and %s (%s) differ: ask the maker whether they join; worked with the smaller",
				h.Unit().Fine(above), name, h.Unit().Fine(c.LinkArm), c.Key)
		}
		above, name = c.LinkArm, c.Key
	}
}
