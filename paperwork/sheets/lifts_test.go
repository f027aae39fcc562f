package sheets

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/worked"
	"hangpack/testdata/proof"
	"hangpack/testdata/trials"
)

// unknownCentresAsJobs: what follows from centres of gravity that are not
// known is what the same job gives with each corner of the middle third written
// out: the widest window, the worst finding.
func unknownCentresAsJobs(t *testing.T) (cases int, worst float64) {
	yaml := strings.Replace(trials.UnknownJob(t), "picks: 1, hoist: half-tonne", "picks: 1, hoist: half-tonne, pick_hole: 14", 1)
	j := trials.OpenJob(t, yaml)
	var known []*worked.Job
	// depth 480 mm, front 300 mm: a third of each is 160 and 100 mm
	for _, at := range [][2]int{{240, 150}, {160, 100}, {160, 200}, {320, 100}, {320, 200}} {
		centre := fmt.Sprintf("centre_of_gravity: {behind_hinge: %d mm, below_hinge: %d mm}", at[0], at[1])
		known = append(known, trials.OpenJob(t, strings.Replace(yaml, "centre_of_gravity: not_known", centre, 1)))
	}
	var seen proof.OffBy
	for i, s := range j.Figures.Stacks {
		seen.Cases++
		middle := known[0].Figures.Stacks[i]
		seen.InDelta(t, middle.Aim, s.Aim, 1e-9)
		seen.InDelta(t, middle.Lifts[0].Hooks[0], s.Lifts[0].Hooks[0], 1e-9)
		for n := range s.Hooks {
			low, high, most := math.Inf(1), math.Inf(-1), 0.0
			for _, k := range known {
				low, high = math.Min(low, k.Figures.Stacks[i].Low[n]), math.Max(high, k.Figures.Stacks[i].High[n])
				most = math.Max(most, k.Figures.Stacks[i].Points[n].Static)
			}
			seen.InDelta(t, low, s.Low[n], 1e-9)
			seen.InDelta(t, high, s.High[n], 1e-9)
			seen.InDelta(t, most, s.Points[n].Most.Static, 1e-9)
			seen.InDelta(t, middle.Points[n].Static, s.Points[n].Static, 1e-9, "the finished stack as worked out is that of the middle")
		}
		assert.Less(t, s.Low[0], s.High[0])
	}
	_, pages := paperOf(t, j)
	words := trials.TextOf(pages, "")
	least, largest := math.Inf(1), math.Inf(-1)
	for _, k := range known {
		a := k.Figures.Stacks[0].Aim
		least, largest = math.Min(least, a), math.Max(largest, a)
	}
	assert.Contains(t, words, fmt.Sprintf("between %s and %s", say.Aim(say.Radians(least)), say.Aim(say.Radians(largest))))
	assert.Contains(t, words, "Not known: its centre of gravity")
	assert.Contains(t, words, "Centre of gravity not known: wide-box")
	return seen.Cases, seen.Worst
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
	low := strings.Replace(trials.UnknownJob(t), "pick_rating: 700 kg", "pick_rating: 150 kg", 1)
	j, s := trials.OpenJob(t, low), rules.Finding{}
	for _, f := range j.Figures.Stacks[1].Holds {
		if f.Rule == "pick_hole" && f.Where.End == rig.Rear {
			s = f
		}
	}
	rear := j.Figures.Stacks[1].Points[1].Most.Static - j.Figures.Stacks[1].Points[1].Static + j.Figures.Stacks[1].Picks[1].Load
	assert.Greater(t, rear, j.Figures.Stacks[1].Picks[1].Load+5)
	assert.Contains(t, s.Says, say.Units{}.Addend(rear)+" x 1.05 x 1.25")
	assert.Contains(t, s.Says, "if the centre of gravity that is not known lies rear and low")
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

// TestBarAlone: the bar is lifted alone where both hooks pull then; where one would
// have to push it is pinned to the first dolly before, and the sheet says why.
func TestBarAlone(t *testing.T) {
	// its centre of gravity is 260 mm behind the hinge, hole n at 15 mm · (n - 1) - 60 mm
	for holes, level := range map[string]bool{"front_hole: 1, rear_hole: 41": true, "front_hole: 1, rear_hole: 22": false, "front_hole: 23, rear_hole: 41": false, "front_hole: 22, rear_hole: 41": true, "front_hole: 1, rear_hole: 23": true} {
		h := trials.OpenJob(t, trials.Edited(t, trials.OnePick, "{picks: 2, hoist: hoist, "+holes+"}")).Stacks[0]
		assert.Equal(t, level, h.Start != nil, holes)
		card := startCard(h.Hung)
		assert.Equal(t, level, len(card.Warnings) == 0, holes)
		assert.Equal(t, level, card.Joint == nil, holes)
	}
}

// TestAloneCells: what is more than may be held says so, and a bar past its limit,
// each way by its own.
func TestAloneCells(t *testing.T) {
	cell := func(yaml, row string, i int) string { return aloneRow(trials.OpenJob(t, yaml).Stacks[0], row)[2*i] }
	two := trials.Edited(t, trials.OnePick, trials.TwoPicks)
	small := strings.Replace(two, "capacity: 500 kg", "capacity: 300 kg", 1)
	assert.Contains(t, cell(two, "hoist", 0), " of 500 kg")
	assert.Contains(t, cell(small, "hoist", 0), ", MORE THAN 300 kg (hoist)") // 288 kg + 5 %
	for limit, past := range map[string][2]bool{"{down: 90 deg, up: 90 deg}": {false, false}, "{down: 90 deg, up: 1 deg}": {true, false}, "{down: 1 deg, up: 90 deg}": {false, true}} {
		yaml := strings.Replace(two, "tilt_limit: {down: 15 deg, up: 8 deg}", "tilt_limit: "+limit, 1)
		yaml = strings.Replace(yaml, "aim: 1 deg down", "aim: level", 1)
		for i := range 2 {
			assert.Equal(t, past[i], strings.Contains(cell(yaml, "cabinet 1 looks", i), "PAST its limit"), "%s, pick %d: %s", limit, i, cell(yaml, "cabinet 1 looks", i))
		}
	}
}
