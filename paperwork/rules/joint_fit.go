package rules

import (
	"math"

	"hangpack/calc"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// backsMeet: a joint opens further than the wedges of its cabinets leave room for.
var backsMeet = Rule{ID: "backs_meet", Title: "Backs may meet", Severity: Caution, Grave: NoFit, stack: checkBacks}

// backsSpare is how far a joint may open past the room of its wedges before
// it is worth a caution, in degrees: the play of its pins. It is a limit of hangpack's own.
const backsSpare = 0.3

func checkBacks(c *check) {
	for k := 1; k < len(c.Cabinets); k++ {
		upper, lower := c.Cabinets[k-1], c.Cabinets[k]
		room := calc.BackRoom(calc.Wedge{Front: upper.FrontHeight, Back: upper.BackHeight, Depth: upper.Depth},
			calc.Wedge{Front: lower.FrontHeight, Back: lower.BackHeight, Depth: lower.Depth}, upper.HingePitch)
		if calc.Radians(lower.Hole.Splay) > room+calc.Radians(backsSpare)+rig.Within {
			f := c.caution(rig.Where{Joint: k + 1}, "a splay of %s° with room for %s°: the backs may meet before the pin goes in",
				say.Splay(lower.Hole.Splay), say.Fixed(math.Floor(calc.Degrees(room)*10)/10, 1))
			f.ifHeld, f.By = "it opens further than its wedges leave room for: the backs may meet before the pin goes in", calc.Radians(lower.Hole.Splay)-room
		}
	}
}

// mixedArms: the link arms of a joint's two bodies differ.
var mixedArms = Rule{ID: "mixed_arms", Title: "Link arms differ", Severity: Caution, Grave: NoFit, stack: checkArms}

// armsDiffer is how much the link arms of a joint may differ, in metres,
// before it is worth a caution. It is a limit of hangpack's own.
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
