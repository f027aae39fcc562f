package sheets

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"hangpack/calc"
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
	assert.Contains(t, words, fmt.Sprintf("between %s and %s", say.Aim(calc.Radians(least)), say.Aim(calc.Radians(largest))))
	assert.Contains(t, words, "Not known: its centre of gravity")
	assert.Contains(t, words, "Centre of gravity not known: wide-box")
	return seen.Cases, seen.Worst
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
