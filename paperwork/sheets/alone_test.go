package sheets

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/calc"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/worked"
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

// TestAloneTable: each column is of its own hoist, in the order front, rear.
func TestAloneTable(t *testing.T) {
	tables := 0
	eachFlown(t, 37_000, func(t *testing.T, h *rules.Checked, f worked.StackFigures) {
		for _, row := range aloneTable(h.Hung).Rows {
			for i, says := range []string{row[1], row[4]} {
				u, p := h.Unit(), h.Picks[i]
				switch row[0] {
				case "cabinet 1 looks":
					tilt := solveTilt(h, i)
					if !strings.Contains(says, "tips over") {
						assert.True(t, strings.HasPrefix(says, say.Aim(tilt+h.Cabinets[0].Hole.Splay*math.Pi/180)), "%s: %s", h.End(i), says)
						past := h.Bar.TiltLimit != nil && (tilt > h.Bar.TiltLimit.Down || -tilt > h.Bar.TiltLimit.Up)
						assert.Equal(t, past, strings.Contains(says, "PAST"), says)
					}
				case "roof point":
					kg := (f.Mass + p.Below.Mass + p.Hoist.Mass + p.Hoist.ChainMass*p.Hoist.ChainLength + p.Above.Mass) * (1 + h.Job.Practice.MassTolerance) * h.Job.Practice.DynamicFactor
					assert.Equal(t, u.Both(kg), says)
				case "aim 3° off":
					assert.Equal(t, p.Hoist.Speed == 0, strings.Contains(says, "not given"), says)
					if p.Hoist.Speed > 0 {
						assert.Contains(t, says, "alone at "+u.Pace(p.Hoist.Speed))
					}
				case "hoist":
					kg := (f.Mass + p.Below.Mass) * (1 + h.Job.Practice.MassTolerance)
					over := kg*9.80665 > p.Hoist.Capacity*h.Job.Practice.HoistUse*(1+1e-9)
					assert.Equal(t, over, strings.Contains(says, "MORE THAN"), says)
				}
			}
		}
		tables += min(1, len(h.Finished.Alone))
	})
	require.Greater(t, tables, 20)
}

// solveTilt is the tilt at which the whole stack hangs from pick i alone: found by
// halving, where the bare turning moment of the system is nothing.
func solveTilt(h *rules.Checked, i int) float64 {
	turn := func(tilt float64) float64 {
		x, kg := 0.0, 0.0
		weigh := func(m float64, place complex128) { x, kg = x+m*real(place), kg+m }
		weigh(h.Bar.Mass, trials.At(h.Bar.CentreOfGravity, tilt))
		aim, pin := tilt, complex128(0)
		for _, e := range h.Extras {
			if e.Cabinet == 0 {
				weigh(e.Mass, trials.At(e.At, tilt))
			}
		}
		for k, c := range h.Cabinets {
			aim += c.Hole.Splay * math.Pi / 180
			weigh(c.Mass, pin+trials.At(c.CentreOfGravity, aim))
			for _, e := range h.Extras {
				if e.Cabinet == k+1 {
					weigh(e.Mass, pin+trials.At(e.At, aim))
				}
			}
			pin += trials.At(calc.Offset{Below: c.HingePitch}, aim)
		}
		return x/kg - real(trials.At(h.Bar.PickHoles[h.Holes[i]].At, tilt))
	}
	lo, hi := -math.Pi/2, math.Pi/2 // front up and front down by a right angle
	for range 100 {
		mid := (lo + hi) / 2
		if (turn(mid) > 0) == (turn(lo) > 0) {
			lo = mid
		} else {
			hi = mid
		}
	}
	return (lo + hi) / 2
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
