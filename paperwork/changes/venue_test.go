package changes

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/paperwork/say"
	"hangpack/testdata/trials"
)

// TestChangedAtALift: a load that is another one only while the stack is being built
// is a change that the venue has to accept.
func TestChangedAtALift(t *testing.T) {
	file := "testdata/jobs/lift-loads-more.yaml"
	old := trials.OpenFile(t, file)
	require.NotEmpty(t, old.Figures.Stacks[0].Points[0].Most.Where)
	yaml := strings.Replace(trials.Text(t, file), "    dolly: dolly\n", "    dolly: dolly\n    sets: [6, 6]\n", 1)
	c := Compare(old, trials.OpenJob(t, yaml))
	require.Len(t, c.Points, 1)
	p := c.Points[0]
	assert.Equal(t, "SL-front", p.ID)
	assert.InDelta(t, p.From, p.To, 1e-9, "finished it carries the same")
	assert.Greater(t, math.Abs(p.ToMost-p.FromMost), 1.0)
	text, err := c.Report()
	require.NoError(t, err)
	flat := strings.Join(strings.Fields(text), " ")
	assert.Contains(t, flat, "point SL-front: finished, loads as they were; same place; at the most, at a lift, design "+say.Units{}.Load(p.FromMost)+", now "+say.Units{}.Load(p.ToMost))
	assert.Contains(t, flat, "Ask the venue again, before it flies: point SL-front.")
}

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
		"pick holes of SL":    {trials.OnePick, "{picks: 1, hoist: hoist, pick_hole: 23}"},
		"point SL":            {"mass: 28 kg", "mass: 29 kg"},
		"venue":               {"A hall", "Another hall"},
		"date":                {"2027-06-12", "2027-06-13"},
		"datum":               {"revision: A}", "revision: A, datum: edge of the stage}"},
		"heights above":       {"revision: A}", "revision: A, heights_from: edge of the stage}"},
	} {
		says := Compare(trials.OpenJob(t, trials.Plain), trials.OpenJob(t, trials.Edited(t, edits...))).venueWords()
		require.Len(t, says, 1)
		list, found := strings.CutPrefix(strings.TrimSuffix(says[0], "."), "Ask the venue again, before it flies: ")
		assert.True(t, found, "%s: %s", asks, says[0])
		assert.Contains(t, strings.Split(list, ", "), asks)
	}
}

// TestPlacesInWords: how far and which way a point went, and never by nothing.
func TestPlacesInWords(t *testing.T) {
	metric, imperial := say.Units{}, say.Units{Imperial: true}
	for _, tt := range []struct {
		u     say.Units
		p     PointChange
		words string
	}{
		{metric, PointChange{hook: "pick"}, "same place"},
		{metric, PointChange{hook: "pick", Raised: 0.5}, "pick 0.50 m higher, same place"},
		{metric, PointChange{hook: "hook", Raised: -0.25}, "hook 0.25 m lower, same place"},
		{metric, PointChange{hook: "pick", Moved: true, StageLeft: 0.4, Downstage: -0.1}, "MOVED 0.40 m to stage left, 0.10 m upstage"},
		{metric, PointChange{hook: "pick", Moved: true, StageLeft: -2, Raised: -1}, "pick 1.00 m lower, MOVED 2.00 m to stage right"},
		{metric, PointChange{hook: "pick", Moved: true, Downstage: 0.3, StageLeft: 0.001}, "MOVED 0.30 m downstage"},
		{imperial, PointChange{hook: "pick", Raised: 0.3048}, "pick 1 ft 0 in higher, same place"},
		{imperial, PointChange{hook: "pick", Raised: 0.0055}, "pick 3/16 in higher, same place"},
	} {
		assert.Equal(t, tt.words, tt.p.placeWords(tt.u))
	}
}
