package rules_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// Findings of one hoist alone, and of centres of gravity that are not known, whose
// corners are tried one by one.

// TestHingeTurnsFromANewton: a hinge that goes from pulled to pushed is worth a
// caution where both are more than a newton.
func TestHingeTurnsFromANewton(t *testing.T) {
	for n, want := range map[float64][]string{-0.9: {}, -1.1: {"hinge_turns, joint 2"}, 0.9: {}, 1.1: {}} {
		h := trials.OpenJob(t, trials.Plain).Stacks[0]
		require.Len(t, h.Lifts, 1)
		require.Greater(t, h.Finished.Joints[1].HingePull, 1.1)
		h.Lifts[0].Joints[1].HingePull = n
		turns := slices.DeleteFunc(trials.Found(rules.Check(h.Hung).Cautions), func(f string) bool { return !strings.HasPrefix(f, "hinge_turns") })
		assert.Equal(t, want, slices.Clip(turns), "%g N", n)
	}
}

// TestTwoFindingsAtOnePlace: of two findings of one rule at one joint neither takes
// the place of the other, wherever an unknown centre of gravity lies.
func TestTwoFindingsAtOnePlace(t *testing.T) {
	says := ""
	for _, f := range trials.OpenFile(t, "testdata/jobs/pushed-and-overloaded.yaml").Figures.Stacks[0].Holds {
		if f.Where.String() == "joint 1, front" {
			says += f.Says + "\n"
		}
	}
	assert.Equal(t, 1, strings.Count(says, "hinge pin, with the front hoist alone"), says)
	assert.Equal(t, 1, strings.Count(says, "link, with the front hoist alone: pushed"), says)
}

// TestUnknownCentresHold: a limit that only a corner passes is a hold, at the load
// of that corner.
func TestUnknownCentresHold(t *testing.T) {
	j := trials.OpenJob(t, strings.Replace(trials.UnknownJob(t), "pick_rating: 700 kg", "pick_rating: 205 kg", 1))
	s := j.Figures.Stacks[1]
	require.True(t, s.Held)
	var found []string
	for _, f := range s.Holds {
		found = append(found, say.Listed(f.Rule, f.Where.String()))
		assert.Contains(t, f.Says, "if the centre of gravity that is not known lies")
	}
	assert.Equal(t, []string{"pick_hole, rear"}, found)
}

// TestOneMustHold: with practice.one_must_hold what is a caution of one hoist alone
// is a hold, and nothing else changes.
func TestOneMustHold(t *testing.T) {
	yaml := trials.Edited(t, trials.OnePick, trials.TwoPicks, "capacity: 500 kg", "capacity: 310 kg")
	may, must := trials.OpenJob(t, yaml).Figures.Stacks[0], trials.OpenJob(t, strings.Replace(yaml, "practice: {", "practice: {one_must_hold: yes, ", 1)).Figures.Stacks[0]
	alone := func(f []rules.Finding) (all []rules.Finding) {
		for _, one := range f {
			if strings.HasPrefix(one.Rule, "one_hoist") {
				one.By = 0
				all = append(all, one)
			}
		}
		return all
	}
	require.NotEmpty(t, alone(may.Cautions))
	assert.Empty(t, may.Holds)
	assert.Equal(t, alone(may.Cautions), alone(must.Holds))
	assert.Empty(t, alone(must.Cautions))
	assert.True(t, must.Held)
}

// TestUnknownCentresWorsen: a limit that is passed as worked out and further in a
// corner is held with the sum of that corner.
func TestUnknownCentresWorsen(t *testing.T) {
	low := strings.NewReplacer("pick_rating: 700 kg", "pick_rating: 150 kg", "practice: {", "practice: {aim_tolerance: 0 deg, ").Replace(trials.UnknownJob(t))
	j, s := trials.OpenJob(t, low), rules.Finding{}
	for _, f := range j.Figures.Stacks[1].Holds {
		if f.Rule == "pick_hole" && f.Where.End == rig.Rear {
			s = f
		}
	}
	rear := j.Figures.Stacks[1].Points[1].Most.Static - j.Figures.Stacks[1].Points[1].Static + j.Figures.Stacks[1].Picks[1].Load
	assert.Greater(t, rear, j.Figures.Stacks[1].Picks[1].Load+5)
	assert.Contains(t, s.Says, say.Units{}.Addend(rear)+" x 1.05 x 1.25")
	assert.Contains(t, s.Says, "if the centre of gravity that is not known lies: rear and low")
}

// TestTipsOverAlone: from a pick hole that does not lie above the centre of gravity
// the stack tips over when the other hoist goes slack.
func TestTipsOverAlone(t *testing.T) {
	yaml := trials.Edited(t, trials.OnePick, "{picks: 2, hoist: hoist, front_hole: T1, rear_hole: T2}",
		"pick_holes: {count: 41, ahead_of_hinge: 60 mm, spacing: 15 mm, above_hinge: 95 mm}",
		"pick_holes: [{label: T1, behind_hinge: 0 mm, below_hinge: 3 m}, {label: T2, behind_hinge: 900 mm, above_hinge: 4 m}]")
	s := trials.OpenJob(t, yaml)
	assert.Contains(t, trials.Found(append(s.Figures.Stacks[0].Cautions, s.Figures.Stacks[0].Holds...)), "one_hoist_gear, front")
	says := ""
	for _, f := range s.Figures.Stacks[0].Cautions {
		says += f.Says
	}
	assert.Contains(t, says, "on the front hoist alone the centre of gravity is not below the pick hole: it tips over")
	assert.NotContains(t, says, "on the rear hoist alone the centre")
}

// TestWorstLiftOnce: what is cautioned of one lift for all is given once, for the worst,
// wherever unknown centres of gravity lie: a tilt once, a light pick once at an end, a
// pushed link once at a joint.
func TestWorstLiftOnce(t *testing.T) {
	seen := 0
	once := func(t *testing.T, h *rules.Checked, f worked.StackFigures) {
		told := map[string]int{}
		for _, c := range f.Cautions {
			if slices.Contains([]string{"lift_tilt", "light_pick", "link_pushed"}, c.Rule) {
				at := c.Where
				at.Lift = 0
				told[say.Listed(c.Rule, at.String())]++
			}
		}
		for what, times := range told {
			assert.Equal(t, 1, times, "%s: %s", h.ID, what)
		}
		if len(h.Corners) > 0 {
			seen += len(told)
		}
	}
	trials.EachStack(t, 211_000, once)
	require.Greater(t, seen, 20)
	tilts := trials.Gamble(211) // whose worst lift is another one with a centre elsewhere
	tilts.Wild = true
	j := trials.OpenJob(t, tilts.Job())
	for i, h := range j.Stacks {
		once(t, h, j.Figures.Stacks[i])
	}
}

// TestEveryCombination: of two types whose centres nobody knows the worst is one of 16
// combinations of corners, and here none of the four in which both lie alike. Each is
// worked out as a job that knows both: a third of 480 mm is 160 mm, so that corners lie
// 80 mm from the middle at 240 mm, and 50 mm from the one at 150 mm.
func TestEveryCombination(t *testing.T) {
	text := trials.Text(t, "testdata/jobs/two-unknown-types.yaml")
	front := func(upper, lower [2]int) float64 {
		known := text
		for _, at := range [][2]int{upper, lower} {
			known = strings.Replace(known, "not_known", fmt.Sprintf("{behind_hinge: %d mm, below_hinge: %d mm}", 240+80*at[0], 150+50*at[1]), 1)
		}
		return trials.OpenJob(t, known).Figures.Stacks[0].Points[0].Governing.Design
	}
	corners := [][2]int{{-1, -1}, {-1, 1}, {1, -1}, {1, 1}}
	alike, most := 0.0, 0.0
	for _, upper := range corners {
		alike = math.Max(alike, front(upper, upper))
		for _, lower := range corners {
			most = math.Max(most, front(upper, lower))
		}
	}
	require.Greater(t, most, alike+1)
	assert.InDelta(t, most, trials.OpenJob(t, text).Figures.Stacks[0].Points[0].Governing.Design, 1e-9)
}
