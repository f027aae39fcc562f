package rules

import (
	"fmt"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// dolly: a set is larger than its dolly takes.
var dolly = Rule{ID: "dolly", Title: "Dolly", Severity: Hold, stack: checkDollies}

// checkDollies: a set larger than its dolly takes.
func checkDollies(h *check) {
	if h.Dolly == nil {
		return
	}
	for k, n := range h.Sets {
		at := rig.Where{Set: k + 1}
		h.measured("dolly", float64(h.Dolly.Takes-n), func() (rig.Where, string, string) {
			return at, say.Count(n, "cabinet"), fmt.Sprintf("at most %d (%s)", h.Dolly.Takes, h.Dolly.Key)
		})
		if n > h.Dolly.Takes {
			h.hold(at, "%s on a %s that takes %d", say.Count(n, "cabinet"), h.Dolly.Key, h.Dolly.Takes)
		}
	}
}
