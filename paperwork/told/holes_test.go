package told_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"hangpack/paperwork/report"
	"hangpack/paperwork/told"
	"hangpack/testdata/trials"
)

// TestHolesTold: which hole was nearer and why it is passed over; of a held stack whether
// another hole would do; and nothing of stacks on two picks.
func TestHolesTold(t *testing.T) {
	text := trials.Text(t, "testdata/jobs/end-of-reach.yaml")
	j := trials.OpenJob(t, text)
	passed := []string{"Pick hole 18 is nearer to the wanted aim (2.0° up) and is passed over, for the stack would be held there. Bar tilt: bar 2.0° up is more than 1.5° up (tight) (the finished stack)."}
	assert.Equal(t, passed, told.PassedOverWords(j.Stack("AUTO")))
	assert.Empty(t, told.OtherHoleWords(j.Stack("AUTO")))
	assert.Equal(t, "No other pick hole within 1° of the wanted aim is without a hold.", told.OtherHoleWords(j.Stack("HOIST")))
	assert.Empty(t, told.OtherHoleWords(j.Stack("PUSH")), "two picks hold the aim from any holes")
	check := strings.Join(strings.Fields(report.Check(j)), " ")
	assert.Contains(t, check, passed[0])
	assert.Contains(t, check, "No other pick hole within 1° of the wanted aim is without a hold.")
	named := trials.OpenJob(t, strings.Replace(text, "aim: 1.9 deg up\n    hang: {picks: 1, hoist: hoist", "aim: 1.9 deg up\n    hang: {picks: 1, hoist: hoist, pick_hole: 18", 1))
	assert.Equal(t, "From another pick hole within 1° of the wanted aim no hold is found.", told.OtherHoleWords(named.Stack("AUTO")))
}
