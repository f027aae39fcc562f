package sheets

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"hangpack/calc"
	"hangpack/paperwork/rules"
	"hangpack/testdata/trials"
)

// TestWorstJoint: no joint's pins are used more, in any state at any tilt of its reach,
// than those of the joint that the calculation sheet works out in full, and the table of
// checks has that use.
func TestWorstJoint(t *testing.T) {
	rated := 0
	for name, j := range trials.ReadJobs(t) {
		for _, h := range j.Stacks {
			w, worst := mostUsedJoint(h.Hung)
			if h.Ratings(worst) == nil {
				continue
			}
			rated++
			most, checked := 0.0, 0.0
			for _, v := range h.Ways() {
				for _, s := range v.States() {
					for _, at := range s.Reach {
						for k, j := range at.Joints {
							most = math.Max(most, pinsUsed(h, k, j))
						}
					}
				}
			}
			for _, u := range h.Uses {
				if strings.HasSuffix(u.Part, " pin") {
					checked = math.Max(checked, u.Share)
				}
			}
			assert.InDelta(t, most, pinsUsed(h, worst, w.at.Joints[worst]), 1e-9, "%s, %s", name, h.ID)
			assert.InDelta(t, most, checked, 1e-9, "%s, %s", name, h.ID)
		}
	}
	assert.Greater(t, rated, 10)
}

// pinsUsed is how much the pins of a joint, counted from 0, are used, and 0 without a
// rating.
func pinsUsed(h *rules.Checked, k int, j calc.Joint) float64 {
	c, r, p := h.Cabinets[k], h.Ratings(k), h.Job.Practice
	if r == nil {
		return 0
	}
	one := math.Max(calc.PinForce(j.Hinge(), c.HingePins, p.SideShare)/r.Hinge, calc.PinForce(j.Link, c.LinkPins, p.SideShare)/r.Link)
	return one * (1 + p.MassTolerance) * p.DynamicFactor / p.GearUse
}

// TestOpenItemsOfTheVenue: what the job does not say of secondaries and classes
// is an open item, once for all that lack it, and no item where it says so.
func TestOpenItemsOfTheVenue(t *testing.T) {
	items := func(yaml string) string {
		var all []string
		for _, o := range openItems(trials.OpenJob(t, yaml)) {
			all = append(all, o.Where+": "+o.Says)
		}
		return strings.Join(all, "\n")
	}
	bare := items(trials.Plain)
	assert.Contains(t, bare, "SL: Not known: no secondary named: ask the venue")
	const datum, dolly = "job: Not known: the datum that every place in plan is measured from", "SL: NOT CHECKED: chain and headroom down to the dollies: no dolly given"
	assert.Contains(t, bare, datum)
	assert.NotContains(t, items(trials.Edited(t, "revision: A}", "revision: A, datum: a mark}")), datum)
	assert.NotContains(t, bare, dolly)
	assert.Contains(t, items(trials.Edited(t, "    dolly: dolly\n", "")), dolly)
	assert.Contains(t, bare, "hoist: Not known: class of the hoist; may it hold over people? Ask the venue")
	given := trials.Edited(t, "headroom: 550 mm}", "headroom: 550 mm, class: any}", "    steel: 14 m\n", "    steel: 14 m\n    secondary: {what: bond, rating: 200 kg}\n")
	assert.NotContains(t, items(given), "Not known: no secondary")
	assert.NotContains(t, items(given), "Not known: class")
	assert.Contains(t, items(given), "SL: Secondary rated 200 kg is less than the stack, 288 kg: ask who chose it")
	assert.NotContains(t, items(strings.Replace(given, "rating: 200 kg", "rating: 288 kg", 1)), "Secondary rated")
}
