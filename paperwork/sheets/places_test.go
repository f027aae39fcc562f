package sheets

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/paperwork/rules"
	"hangpack/testdata/trials"
)

// TestOthersThatMeetStandOnPoints: two points that carry no stack and meet are told to the
// venue with its table.
func TestOthersThatMeetStandOnPoints(t *testing.T) {
	j := trials.OpenFile(t, "testdata/jobs/points-meet.yaml")
	_, pages := paperOfKind(t, j, "points")
	says := rules.OthersMeet(j.Job)
	require.Len(t, says, 1)
	text := ""
	for _, page := range pages {
		for _, w := range trials.WordsOn(page) {
			text += w.S
		}
	}
	assert.Contains(t, solid(text), solid(says[0]))
}
