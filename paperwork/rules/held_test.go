package rules_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

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

// TestCautionsOfAHeldStack: cautions that tell a hole or an aim say what to do without it
// where the stack is held, also where that comes up with a centre of gravity elsewhere.
func TestCautionsOfAHeldStack(t *testing.T) {
	edits := []string{"splay: [0, 0.5, 0.5, 1, 1, 2, 3, 4]", "splay: [0, 0.5, 0.5, 1, 1, 2, 3, 12]", trials.OnePick, "{picks: 1, hoist: hoist, pick_hole: 28}",
		"practice: {", "practice: {lift_tilt: 0.2 deg, "}
	free := trials.OpenJob(t, trials.Edited(t, edits...)).Stacks[0]
	held := trials.OpenJob(t, trials.Edited(t, append(edits, "capacity: 500 kg", "capacity: 250 kg")...)).Stacks[0]
	require.False(t, free.Held())
	require.True(t, held.Held())
	assert.Equal(t, []string{"a splay of 12° with room for 8.8°: the backs may meet before the pin goes in"}, cautionsOf(free, "backs_meet"))
	for rule, says := range map[string]string{
		"backs_meet": "it opens further than its wedges leave room for: the backs may meet before the pin goes in",
		"aim_missed": "cabinet 1 looks more than the tolerance of 1° off the aim wanted",
		"lift_tilt":  "the bar tilts further than 0.2°: hold it before the dolly is free",
	} {
		assert.Equal(t, []string{says}, cautionsOf(held, rule))
	}
	assert.Equal(t, trials.Found(free.Cautions), trials.Found(held.Cautions))
	unknown := append(edits, "capacity: 500 kg", "capacity: 250 kg", "centre_of_gravity: {behind_hinge: 190 mm, below_hinge: 145 mm}", "centre_of_gravity: not_known")
	said := cautionsOf(trials.OpenJob(t, trials.Edited(t, unknown...)).Stacks[0], "lift_tilt")
	assert.Equal(t, []string{"the bar tilts further than 0.2°: hold it before the dolly is free (if the centre of gravity that is not known lies: front and high)"}, said)
}
