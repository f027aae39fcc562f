package paperwork

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestVenueIsAskedAgain: for each change that the cover wants accepted again the
// venue is asked, by name; see approvedAgain.
func TestVenueIsAskedAgain(t *testing.T) {
	end := "    steel: 14 m"
	for asks, edits := range map[string][]string{
		"cabinets of SL":      {"count: 8, splay: [0, 0.5, 0.5, 1, 1, 2, 3, 4]", "count: 7, splay: [0, 0.5, 0.5, 1, 1, 2, 3]"},
		"place of SL":         {"stage_left: 8.2 m", "stage_left: 8.3 m"},
		"bar of SL":           {"  bars:\n    bar:", "  bars:\n    other-bar:", "    bar: bar", "    bar: other-bar"},
		"trim of SL":          {"lowest: 4.5 m", "lowest: 4.51 m"},
		"hoist (motor) of SL": {"    hoist: {", "    other-hoist: {", "hoist: hoist}", "hoist: other-hoist}"},
		"steel of SL":         {end, "    steel: 14.5 m"},
		"rigging below of SL": {end, end + "\n    rigging_below: {length: 200 mm}"},
		"rigging above of SL": {end, end + "\n    rigging_above: {length: 200 mm}"},
		"secondary of SL":     {end, end + "\n    secondary: {what: steel bond, rating: 2 t}"},
		"pick holes of SL":    {onePick, "{picks: 1, hoist: hoist, pick_hole: 23}"},
		"point SL":            {"mass: 28 kg", "mass: 29 kg"},
		"venue":               {"A hall", "Another hall"},
		"date":                {"2027-06-12", "2027-06-13"},
		"datum":               {"revision: A}", "revision: A, datum: edge of the stage}"},
		"heights above":       {"revision: A}", "revision: A, heights_from: edge of the stage}"},
	} {
		says := Compare(open(t, plainJob), open(t, edited(t, edits...))).venueWords()
		require.Len(t, says, 1)
		list, found := strings.CutPrefix(strings.TrimSuffix(says[0], "."), "Ask the venue again, before it flies: ")
		assert.True(t, found, "%s: %s", asks, says[0])
		assert.Contains(t, strings.Split(list, ", "), asks)
	}
}
