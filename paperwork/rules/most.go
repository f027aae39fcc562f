package rules

import (
	"fmt"

	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
)

// most: more cabinets of a type, or of all types together, than the bar's maker allows.
var most = Rule{ID: "most", Title: "Too many cabinets", Severity: Hold, Grave: ComesDown, states: checkMost}

func checkMost(c *check, s *rig.State) {
	for _, m := range c.Bar.Most {
		n, what := flownOf(c.Hung, s, m.Cabinet), m.Cabinet
		if what == job.OfAnyType {
			what = "all types together"
		}
		c.measured("number of "+what, float64(m.Count-n), func() (rig.Where, string, string) {
			return rig.Where{Lift: s.Lift}, fmt.Sprint(n), fmt.Sprintf("at most %d (%s)", m.Count, c.Bar.Key)
		})
		if n > m.Count {
			c.hold(rig.Where{Lift: s.Lift, Gear: m.Cabinet}, "%d of %s is more than the %d that %s takes", n, what, m.Count, c.Bar.Key).By = float64(n - m.Count)
		}
	}
}

// flownOf counts the cabinets of a type, or of any type, that hang in a state.
func flownOf(h *rig.Hung, s *rig.State, key string) (n int) {
	for _, cabinet := range h.Cabinets[:s.Flown] {
		if cabinet.Key == key || key == job.OfAnyType {
			n++
		}
	}
	return n
}
