package sheets

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"hangpack/calc"
	"hangpack/testdata/trials"
)

// TestWorstJoint: no joint's pins are used more than those of the joint that the
// calculation sheet works out in full.
func TestWorstJoint(t *testing.T) {
	for name, j := range trials.ReadJobs(t) {
		for _, h := range j.Stacks {
			if h.Ratings(worstJoint(h.Hung)) == nil {
				continue
			}
			used := func(k int) float64 {
				c, r, j := h.Cabinets[k], h.Ratings(k), h.Finished.Joints[k]
				if r == nil {
					return 0
				}
				return math.Max(calc.PinForce(j.Hinge(), c.HingePins, h.Job.Practice.SideShare)/r.Hinge, calc.PinForce(j.Link, c.LinkPins, h.Job.Practice.SideShare)/r.Link)
			}
			for k := range h.Cabinets {
				assert.LessOrEqual(t, used(k), used(worstJoint(h.Hung)), "%s, %s: joint %d", name, h.ID, k+1)
			}
		}
	}
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
