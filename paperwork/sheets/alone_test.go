package sheets

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/calc"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/testdata/trials"
)

// aloneRow is a row of the table of one hoist alone: front, its use, rear, its use.
func aloneRow(h *rules.Checked, of string) []string {
	for _, r := range aloneTable(h.Hung).Rows {
		if r[0] == of {
			return []string{r[1], r[2], r[4], r[5]}
		}
	}
	return nil
}

// TestUnratedJointsHideNothing: a joint without a rating hides no overloaded one, and
// stands beside it as not checked.
func TestUnratedJointsHideNothing(t *testing.T) {
	j := trials.OpenFile(t, "testdata/jobs/unrated-joints-first.yaml")
	assert.Equal(t, []string{"one_hoist_gear, joint 3, rear", "one_hoist_gear, joint 4, rear"}, trials.Found(j.Figures.Stacks[0].Holds))
	row := aloneRow(j.Stacks[0], "link pin")
	assert.Contains(t, row[2], "joint 3: ")
	assert.Contains(t, row[2], "MORE THAN 2.30 kN")
	assert.Contains(t, row[2], "NOT CHECKED: joints 1, 2, not rated") // top on bar, top on top
	assert.Equal(t, "1, 2", unratedJoints(j.Stacks[0].Hung))
	assert.Empty(t, unratedJoints(trials.OpenJob(t, trials.Plain).Stacks[0].Hung))
	bare := trials.OpenJob(t, trials.Edited(t, "      pin_ratings: {hinge: 6 kN, link: 4.5 kN}\n  bars", "  bars", "      pin_ratings: {hinge: 6 kN, link: 4.5 kN}\n", ""))
	assert.Equal(t, "1 to 8", unratedJoints(bare.Stacks[0].Hung))
}

// TestForbiddenPushFirst: a link that may not be pushed is told before one that is
// pushed harder and may be.
func TestForbiddenPushFirst(t *testing.T) {
	h := trials.OpenFile(t, "testdata/jobs/two-pushed-links.yaml").Stacks[0]
	joints := h.Finished.Alone[0].Joints
	require.Less(t, joints[0].Link, joints[2].Link)
	require.Less(t, joints[2].Link, -rig.Alike)
	assert.True(t, h.MayPush(0) && !h.MayPush(2))
	assert.Equal(t, "joint 3: "+h.Unit().Force(joints[2].Link*1.05)+"; IT MAY ONLY BE PULLED", aloneRow(h, "link most pushed")[0])
}

// TestLimitsOfUnknownCentres: one hoist alone is held against the bar's tilt limit
// wherever an unknown centre of gravity lies, and says where it has to lie for the
// worst.
func TestLimitsOfUnknownCentres(t *testing.T) {
	yaml := strings.Replace(trials.UnknownJob(t), "pick_rating: 700 kg", "pick_rating: 700 kg\n      tilt_limit: {down: 60 deg, up: 60 deg}", 1)
	h := trials.OpenJob(t, yaml).Stacks[1]
	least, most := h.Between(func(v *rig.Hung) float64 { return -v.Finished.Alone[0].Tilt })
	require.Greater(t, calc.Degrees(most-least), 1.0)
	for limit, past := range map[float64]bool{calc.Degrees(least) - 0.5: true, calc.Degrees(most) - 0.1: true, calc.Degrees(most) + 0.1: false} {
		with := strings.Replace(yaml, "up: 60 deg", "up: "+say.Fixed(limit, 2)+" deg", 1)
		assert.Equal(t, past, strings.Contains(aloneRow(trials.OpenJob(t, with).Stacks[1], "cabinet 1 looks")[0], "PAST its limit"), "%g°", limit)
	}
	assert.Contains(t, strings.Join(aloneRow(h, "hinge pin"), " ")+strings.Join(aloneRow(h, "link pin"), " "), "if the centre of gravity that is not known lies")
}
