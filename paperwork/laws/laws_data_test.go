package laws

import (
	"encoding/json"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/testdata/trials"
)

// TestFiguresAsData holds the shape of the JSON: every key that scripts depend
// on, no nulls, labels in their own type.
func TestFiguresAsData(t *testing.T) {
	text, err := json.Marshal(trials.OpenJob(t, trials.Plain).Figures)
	require.NoError(t, err)
	assert.NotContains(t, string(text), "null")
	for _, key := range strings.Fields(`job title venue date revision fingerprint stacks id name held holds cautions rule where says
		mass_kg aim_wanted_deg aim_deg tilt_deg last_aim_deg centre_of_gravity behind_hinge_m below_hinge_m picks pick_hole load_kg share
		pick_hole_options lowest_m cabinets number type set splay_deg hinge_kn hinge_pull_kn link_kn points stage_left_m downstage_m
		pick_height_m low_hook_m high_hook_m chain_needed_m most hoist hoist_use other_points static_kg design_kg lifts cabinets_flown hook_kg drop_m total`) {
		assert.Contains(t, string(text), `"`+key+`":`)
	}
	assert.Contains(t, string(text), `"pick_hole":1,`)
	assert.Contains(t, string(text), `"holds":[]`)
	two := trials.OpenJob(t, trials.Edited(t, trials.OnePick, trials.TwoPicks)).Figures
	text, err = json.Marshal(two)
	require.NoError(t, err)
	assert.Contains(t, string(text), `"pick_hole_options":[]`)
	assert.NotContains(t, string(text), "null")
}
