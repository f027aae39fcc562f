package sheets

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/paperwork/report"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// Two hoists that differ: what is said of the one must not be said of the other.

// differingHoists is the plain job on two hoists, big in front and small behind
// or the other way round, with 4 kg of rigging below the front one and 10 kg
// below the rear one, used to 80 %.
func differingHoists(t *testing.T, front, rear, big, small string) string {
	return trials.Edited(t, trials.OnePick, "{picks: 2, hoist: {front: "+front+", rear: "+rear+"}, front_hole: 1, rear_hole: 41}",
		"practice: {", "practice: {hoist_use: 80 %, ",
		"    steel: 14 m\n", "    steel: 14 m\n    rigging_below: {front: {mass: 4 kg, length: 0 m}, rear: {mass: 10 kg, length: 0 m}}\n",
		"    hoist: {", "    big: {capacity: 500 kg, "+hoistOf+big+"}\n    small: {capacity: 310 kg, "+hoistOf+small+"}\n    hoist: {")
}

const hoistOf = "mass: 52 kg, chain_mass: 1.1 kg/m, chain_length: 24 m, headroom: 550 mm"

// TestOtherSlackOfEach: 288 kg and its own rigging, and 5 %, against its own
// capacity: 292 · 1.05 = 306.6 kg in front and 298 · 1.05 = 312.9 kg behind, of
// 500 · 0.8 = 400 kg or 310 · 0.8 = 248 kg.
func TestOtherSlackOfEach(t *testing.T) {
	tests := []struct{ front, rear, inFront, behind, caution string }{
		{"big", "small", "292 kg + 5 % = 307 kg of 400 kg (big at 80 %), 77 % used", "298 kg + 5 % = 313 kg of 248 kg (small at 80 %), 127 %: MORE THAN IT MAY HOLD", "one_hoist, rear"},
		{"small", "big", "292 kg + 5 % = 307 kg of 248 kg (small at 80 %), 124 %: MORE THAN IT MAY HOLD", "298 kg + 5 % = 313 kg of 400 kg (big at 80 %), 79 % used", "one_hoist, front"},
	}
	for _, tt := range tests {
		j := trials.OpenJob(t, differingHoists(t, tt.front, tt.rear, "", ""))
		_, pages := paperOf(t, j)
		points := trials.TextOf(pages, "POINTS")
		front, rear, ok := strings.Cut(points, "SL-rear")
		require.True(t, ok)
		assert.Contains(t, front, "Other slack: "+tt.inFront)
		assert.Contains(t, rear, "Other slack: "+tt.behind)
		assert.Equal(t, 1, strings.Count(points, "MORE THAN IT MAY HOLD"))
		assert.Equal(t, []string{tt.caution}, trials.OfRules(j.Figures.Stacks[0].Cautions, []string{"one_hoist"}))
	}
}

// TestClassOfEachHoist: on every sheet and list, each hoist has its own class,
// or is asked after by its own name.
func TestClassOfEachHoist(t *testing.T) {
	for _, big := range []string{"", "over people"} {
		for _, small := range []string{"", "not over people"} {
			for _, ends := range [][]string{{"big", "small"}, {"small", "big"}, {"big", "big"}} {
				said := func(class string) string { return strings.TrimSuffix(", class: "+class, ", class: ") }
				j := trials.OpenJob(t, differingHoists(t, ends[0], ends[1], said(big), said(small)))
				classesStand(t, j, ends, map[string]string{"big": big, "small": small})
			}
		}
	}
}

// classesStand: of the hoists at both ends, each type once, with its class.
func classesStand(t *testing.T, j *worked.Job, ends []string, classes map[string]string) {
	t.Helper()
	var known, unknown, all []string
	for _, key := range slices.Compact(slices.Clone(ends)) {
		class := classes[key]
		if class == "" {
			unknown, all = append(unknown, key), append(all, "Class of "+key+": not given.")
			continue
		}
		known, all = append(known, fmt.Sprintf("%s %q", key, class)), append(all, "Class of "+key+": "+class+".")
	}
	_, pages := paperOf(t, j)
	points, cautions, what := trials.TextOf(pages, "POINTS"), trials.TextOf(pages, "CAUTIONS"), fmt.Sprint(ends, classes)
	assert.Contains(t, points, strings.Join(all, " ")+" Steel:", what)
	assert.Equal(t, len(known) > 0, strings.Contains(cautions, "Hoist class, as the job gives it: "+strings.Join(known, ", ")+"."), what)
	assert.Equal(t, len(unknown) > 0, strings.Contains(cautions, "The class of hoist "+strings.Join(unknown, ", ")+" is not given:"), what)
	assert.Equal(t, strings.Join(unknown, ", "), openAt(j, "Not known: class of the hoist; may it hold over people? Ask the venue"), what)
	for i, row := range csvOf(t, j) {
		assert.Equal(t, ends[i], row["hoist"], what)
		assert.Equal(t, classes[ends[i]], row["hoist_class"], what)
	}
}

// openAt is where an open item stands, "" where it is none.
func openAt(j *worked.Job, says string) string {
	for _, o := range openItems(j) {
		if o.Says == says {
			return o.Where
		}
	}
	return ""
}

// csvOf reads the points' data back, a row per point by headings.
func csvOf(t *testing.T, j *worked.Job) (points []map[string]string) {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, report.PointsCSV(j, &b))
	rows, err := csv.NewReader(&b).ReadAll()
	require.NoError(t, err)
	for _, row := range rows[1:] {
		point := map[string]string{}
		for i, head := range rows[0] {
			point[head] = row[i]
		}
		points = append(points, point)
	}
	return points
}
