package report_test

import (
	"bytes"
	"encoding/csv"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/paperwork/report"
	"hangpack/testdata/trials"
)

// TestNoSpreadsheetRunsTheData: whatever text of a job begins like a formula has an
// apostrophe before it, and nothing else has one; numbers stay numbers, below nought too.
func TestNoSpreadsheetRunsTheData(t *testing.T) {
	for _, begins := range []string{"=", "+", "-", "@", "(", "A"} {
		text := begins + "SUM(A1)"
		yaml := trials.Edited(t, "stage_left: 8.2 m", "stage_right: 8.2 m", "  - id: SL\n", "  - id: SL\n    name: \""+text+"\"\n    secondary: {what: \""+text+"\", rating: 2 t}\n",
			"    hoist: {", "    \""+text+"\": {class: \""+text+"\", ", "hoist: hoist", "hoist: \""+text+"\"") +
			"other_points:\n  - {id: CP, place: {stage_left: -1 m, upstage: 2 m}, height: -3 m, mass: 85 kg, what: \"" + text + "\"}\n"
		var b bytes.Buffer
		require.NoError(t, report.PointsCSV(trials.OpenJob(t, yaml), &b))
		rows, err := csv.NewReader(&b).ReadAll()
		require.NoError(t, err)
		want := text
		if strings.Contains("=+-@", begins) {
			want = "'" + text
		}
		texts, below := 0, 0
		for _, row := range rows[1:] {
			for i, cell := range row {
				_, err := strconv.ParseFloat(cell, 64)
				switch number := err == nil; {
				case strings.Contains(cell, "SUM"):
					assert.Equal(t, want, cell, rows[0][i])
					texts++
				case number && cell[0] == '-':
					below++
				case cell != "":
					assert.NotContains(t, "=+-@'", cell[:1], rows[0][i])
				}
			}
		}
		assert.Equal(t, []int{5, 4}, []int{texts, below}, "five texts; both points right of the datum, one upstage and low")
	}
}

// TestTabsAndReturnsAreInert: no job has them, for they are refused where it is read.
func TestTabsAndReturnsAreInert(t *testing.T) {
	for _, begins := range []string{"\t", "\r"} {
		j := trials.OpenJob(t, trials.Plain)
		j.Stacks[0].Name = begins + "=SUM(A1)"
		var b bytes.Buffer
		require.NoError(t, report.PointsCSV(j, &b))
		assert.Contains(t, strings.ReplaceAll(b.String(), `"`, ""), "SL,SL,'")
	}
}
