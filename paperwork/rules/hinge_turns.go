package rules

import (
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// hingeTurns: the pull of a hinge changes its sign from lift to lift.
var hingeTurns = Rule{ID: "hinge_turns", Title: "Hinge turns over", Severity: Caution, Grave: Lurches, stack: checkHinges}

func checkHinges(c *check) {
	for k := range c.Cabinets {
		if t, ok := c.HingeTurn(k); ok {
			c.caution(rig.Where{Joint: k + 1}, "the hinge goes from %s to %s when %s is lifted: expect a knock, hands off",
				say.Pulled(t.From), say.Pulled(-t.From), "dolly "+say.Dolly(t.Lift))
		}
	}
}
