package rules

import (
	"fmt"

	"hangpack/paperwork/rig"
)

// most: more cabinets of a type than the bar's maker allows.
var most = Rule{ID: "most", Title: "Too many cabinets", Severity: Hold, Grave: ComesDown, states: checkMost}

func checkMost(c *check, s *rig.State) {
	for _, m := range c.Bar.Most {
		n := 0
		for _, cabinet := range c.Cabinets[:s.Flown] {
			if cabinet.Key == m.Cabinet {
				n++
			}
		}
		c.measured("number of "+m.Cabinet, float64(m.Count-n), func() (rig.Where, string, string) {
			return rig.Where{Lift: s.Lift}, fmt.Sprint(n), fmt.Sprintf("at most %d (%s)", m.Count, c.Bar.Key)
		})
		if n > m.Count {
			c.hold(rig.Where{Lift: s.Lift, Gear: m.Cabinet}, "%d of %s is more than the %d that %s takes", n, m.Cabinet, m.Count, c.Bar.Key).By = float64(n - m.Count)
		}
	}
}
