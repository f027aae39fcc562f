package changes

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"hangpack/testdata/trials"
)

// TestGoldenChanges holds the sheet of changes and its report: of the example, and
// of twenty-four cabinets in feet and pounds on Letter that all move.
func TestGoldenChanges(t *testing.T) {
	long := "testdata/jobs/twenty-four-cabinets.yaml"
	text := trials.Text(t, long)
	straight := regexp.MustCompile(`splay: .*}`).ReplaceAllString(text, "splay: ["+strings.Repeat("1, ", 23)+"1]}")
	straight = strings.Replace(straight, "splay_holes: [0,", "splay_holes_for: joint_above\n      splay_holes: [0,", 1)
	for name, c := range map[string]List{
		"concert":              Compare(trials.OpenFile(t, "examples/concert.yaml"), trials.OpenFile(t, "examples/concert-c.yaml")),
		"twenty-four-cabinets": Compare(trials.OpenFile(t, long), trials.OpenJob(t, strings.Replace(straight, "revision: D", "revision: E", 1))),
	} {
		pdf, err := c.Paper()
		require.NoError(t, err)
		trials.Golden(t, name+".changes", trials.InkIn(pdf))
		report, err := c.Report()
		require.NoError(t, err)
		trials.Golden(t, name+".changed", report)
	}
}
