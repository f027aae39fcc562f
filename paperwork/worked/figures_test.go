package worked_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// TestOtherPoints: what carries no stack is counted by hand: 60 and 40 kg, at
// 1.05 · 1.25 design, beside a stack's 366.4 kg.
func TestOtherPoints(t *testing.T) {
	yaml := trials.Plain + "other_points:\n" +
		"  - {id: A1, place: {stage_right: 3 m, upstage: 2 m}, height: 12 m, mass: 60 kg, what: cable pick}\n" +
		"  - {id: A2, place: {stage_left: 0 m, downstage: 1 m}, height: 9 m, mass: 40 kg, what: drape}\n"
	j := trials.OpenJob(t, yaml)
	a := j.Figures.Others[0]
	assert.Equal(t, []float64{-3, -2, 12, 60}, []float64{a.StageLeft, a.Downstage, a.Height, a.Static})
	assert.InDelta(t, 60*1.05*1.25, a.Design, 1e-9)
	assert.InDelta(t, 366.4+100, j.Figures.Total.Static, 1e-9)
	assert.InDelta(t, (366.4+100)*1.05*1.25, j.Figures.Total.Design, 1e-9)
	others := worked.Sums(j)[1]
	assert.Equal(t, "2 points", others.Count)
	assert.InDelta(t, 100, others.Static, 1e-9)
	assert.Equal(t, "3 points, 1 hoist", worked.Sums(j)[2].Count)
}

// TestArmOfJoint1: a bar with a shorter arm of its own bears on joint 1 alone,
// and there as much more as the arm is shorter.
func TestArmOfJoint1(t *testing.T) {
	same := trials.OpenJob(t, trials.Plain).Figures.Stacks[0].Cabinets
	short := trials.OpenJob(t, trials.Edited(t, "rating: 750 kg", "rating: 750 kg\n      link_arm: 185 mm")).Figures.Stacks[0].Cabinets
	long := trials.OpenJob(t, trials.Edited(t, "rating: 750 kg", "rating: 750 kg\n      link_arm: 500 mm")).Figures.Stacks[0].Cabinets
	for k := range same {
		times := 1.0
		if k == 0 {
			times = 370.0 / 185
		}
		assert.InDelta(t, times*same[k].Link, short[k].Link, 1e-9, "joint %d", k+1)
		assert.InDelta(t, same[k].Link, long[k].Link, 1e-9, "joint %d: the smaller arm counts", k+1)
	}
}
