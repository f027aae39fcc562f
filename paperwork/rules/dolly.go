package rules

import (
	"fmt"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// dolly: a set is larger than its dolly takes.
var dolly = Rule{ID: "dolly", Title: "Dolly", Severity: Hold, Grave: NoFit, stack: checkDollies}

func checkDollies(c *check) {
	if c.Dolly == nil {
		return
	}
	for k, n := range c.Sets {
		at := rig.Where{Set: k + 1}
		c.measured("dolly", float64(c.Dolly.Takes-n), func() (rig.Where, string, string) {
			return at, say.Count(n, "cabinet"), fmt.Sprintf("at most %d (%s)", c.Dolly.Takes, c.Dolly.Key)
		})
		if n > c.Dolly.Takes {
			c.hold(at, "%s on a %s that takes %d", say.Count(n, "cabinet"), c.Dolly.Key, c.Dolly.Takes)
		}
	}
}
