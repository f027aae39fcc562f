package rules_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"hangpack/paperwork/rules"
	"hangpack/testdata/trials"
)

// TestHeldTwins: where a twin is held no holes are compared, which is said once of each;
// all else is compared. Two held ones that differ in nothing say nothing.
func TestHeldTwins(t *testing.T) {
	const lower = "    trim: {lowest: 4 m}\n"
	weak := strings.Replace(trials.Plain, "  hoists:\n", "  hoists:\n    weak: {capacity: 250 kg, mass: 52 kg, chain_mass: 1.1 kg/m, chain_length: 24 m, headroom: 550 mm}\n", 1) +
		"  - id: TWIN\n    twin_of: SL\n    place: {stage_right: 8 m, downstage: 0 m}\n"
	resplayed := "    cabinets: [{type: box, count: 8, splay: [0, 0.5, 0.5, 1, 2, 2, 3, 4]}]\n"
	held := strings.Replace(weak, "{picks: 1, hoist: hoist}", "{picks: 1, hoist: weak}", 1)
	for _, tt := range []struct {
		yaml string
		want []string // of SL
	}{
		{weak + resplayed + "    hang: {picks: 1, hoist: weak, pick_hole: 23}\n", []string{"hoist (motor): SL hoist, TWIN weak: on purpose? Ask", "TWIN is held, so its holes are not compared"}},
		{held + resplayed + "    hang: {picks: 1, hoist: hoist}\n", []string{"hoist (motor): SL weak, TWIN hoist: on purpose? Ask", "SL is held, so its holes are not compared"}},
		{held + resplayed, []string{"SL and TWIN are held, so their holes are not compared"}},
		{held + lower, []string{"trim: SL lowest corner at 4.5 m, TWIN lowest corner at 4 m: on purpose? Ask", "SL and TWIN are held, so their holes are not compared"}},
		{held, nil},
	} {
		j := trials.OpenJob(t, tt.yaml)
		assert.Equal(t, tt.want, cautionsOf(j.Stack("SL"), "twin_differs"))
		assert.Len(t, cautionsOf(j.Stack("TWIN"), "twin_differs"), len(tt.want))
	}
}

// cautionsOf are the sentences of a rule's cautions.
func cautionsOf(h *rules.Checked, rule string) (all []string) {
	for _, f := range h.Cautions {
		if f.Rule == rule {
			all = append(all, f.Says)
		}
	}
	return all
}
