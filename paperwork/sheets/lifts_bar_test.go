package sheets

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/layouts"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// TestBarToRead: what is read of the bar alone, and of chains that carry nothing but
// their rigging, with its window.
func TestBarToRead(t *testing.T) {
	bars, slack := 0, 0
	eachFlown(t, 49_000, func(t *testing.T, h *rules.Checked, f worked.StackFigures) {
		card, p := startCard(h.Hung), h.Job.Practice
		for i, pick := range h.Picks {
			own := 0.0
			if h.LoadCell == job.AboveHoist {
				own = pick.Hoist.Mass + pick.Hoist.ChainMass*pick.Hoist.ChainLength
			}
			if h.Start == nil {
				assert.Equal(t, "at most "+h.Unit().Reading(pick.Below.Mass+own+p.ReadingFloor), card.Reads[i].May)
				slack++
				continue
			}
			low, high := barWindow(t, h.Hung, i)
			assert.Equal(t, inwards(h.Job.Imperial, low+own, high+own), card.Reads[i].May)
			bars++
		}
		if h.Start != nil {
			assert.Contains(t, card.Says, h.Unit().Load(h.Bar.Mass+tied(h.Stack, 0, 0)))
			up, down := barOffs(h.Hung)
			assert.Equal(t, layouts.Instrument{Of: "bar", Is: "level", May: aimWords(-up*180/math.Pi, down*180/math.Pi)}, card.Reads[2])
			assert.Empty(t, card.View.Cabinets)
		}
	})
	require.Greater(t, bars, 30)
	require.Greater(t, slack, 30)
}

// barOffs are how far the bar alone may be off level, up and down, in radians: the
// tolerance of aims, and never past the bar's limit.
func barOffs(h *rig.Hung) (up, down float64) {
	up, down = h.Job.Practice.AimTolerance, h.Job.Practice.AimTolerance
	if l := h.Bar.TiltLimit; l != nil {
		up, down = math.Min(up, l.Up), math.Min(down, l.Down)
	}
	return up, down
}

// barWindow is what hook i may hold of the bar alone, by the system of equations: masses
// and tilts within their tolerance, the floor of readings, then cut to where hoist, pick
// hole or bar would be over, and to half of the least that the pick carries.
func barWindow(t *testing.T, h *rig.Hung, i int) (low, high float64) {
	p, below := h.Job.Practice, h.Picks[i].Below.Mass
	is := solveBar(t, h)[i] + below
	low, high = is-p.ReadingFloor, is+p.ReadingFloor
	least, up, down := math.Inf(1), 0.0, 0.0
	up, down = barOffs(h)
	for _, off := range []float64{-up, 0, down} {
		for _, more := range []float64{1 - p.MassTolerance, 1 + p.MassTolerance} {
			pick := trials.Solve(t, h.Stack, 0, h.Holes, off, more).Hooks[i] / 9.80665
			low, high, least = math.Min(low, pick+below*more), math.Max(high, pick+below*more), math.Min(least, pick)
		}
	}
	high = math.Min(high, h.Picks[i].Hoist.Capacity*p.HoistUse/9.80665)
	if r := h.Bar.PickRating; r > 0 {
		high = math.Min(high, r*p.GearUse/p.DynamicFactor/9.80665+below)
	}
	if r := h.Bar.Rating; r > 0 {
		high = math.Min(high, (is-below)*r*p.GearUse/(p.DynamicFactor*9.80665*(h.Bar.Mass+tied(h.Stack, 0, 0)))+below)
	}
	return math.Max(low, below+least/2), high
}

// inwards writes a window in whole kg or lb, of which none lies outside it; to the nearest
// where none lies inside.
func inwards(imperial bool, low, high float64) string {
	per, unit := 1.0, "kg"
	if imperial {
		per, unit = 0.45359237, "lb"
	}
	first, last := math.Ceil(low/per-1e-6), math.Floor(high/per+1e-6)
	if first > last {
		first, last = math.Round(low/per), math.Round(high/per)
	}
	return fmt.Sprintf("%.0f to %.0f %s", first, last, unit)
}

// TestNoWindowBeginsSlack: a window never begins where the chain is slack, whatever the
// floor of readings: the bar's centre of gravity lies 260 mm behind the hinge, hole 20 at
// 225 mm and hole 41 at 540 mm, so that the rear pick carries 28 x 35/315 = 3.1 kg of the
// bar, and half of it less 5 % is 1.5 kg.
func TestNoWindowBeginsSlack(t *testing.T) {
	for cell, own := range map[string]string{"": "2 to ", ", load_cell: below_hoist": "2 to ", ", load_cell: above_hoist": "80 to "} { // 52 kg and 24 m of 1.1 kg/m are 78.4 kg
		yaml := trials.Edited(t, trials.OnePick, "{picks: 2, hoist: hoist, front_hole: 20, rear_hole: 41"+cell+"}", "practice: {", "practice: {reading_floor: 40 kg, aim_tolerance: 0 deg, ")
		rear := liftSheet(trials.OpenJob(t, yaml).Stacks[0]).Cards[0].Reads[1]
		assert.True(t, strings.HasPrefix(rear.May, own), "%s: %s", rear.Of, rear.May)
	}
}

// TestBothCellsCountTheirOwnHoists: cells above two hoists that differ read what hangs and,
// each, its own hoist: 288 kg, 52 kg with 24 m of 1.1 kg/m, and 60 kg with 20 m of 2 kg/m.
func TestBothCellsCountTheirOwnHoists(t *testing.T) {
	other := "    other: {capacity: 500 kg, mass: 60 kg, chain_mass: 2 kg/m, chain_length: 20 m, headroom: 550 mm}\n"
	yaml := trials.Edited(t, trials.OnePick, "{picks: 2, hoist: {front: hoist, rear: other}, front_hole: 5, rear_hole: 33, load_cell: above_hoist}", "  hoists:\n", "  hoists:\n"+other)
	h := trials.OpenJob(t, yaml).Stacks[0]
	assert.Equal(t, "466 kg", sumRead(h, len(h.Lifts)).Is) // 288 + 78.4 + 100 = 466.4
}

// TestReadingsOfUnknownCentres: what a cell should read lies between the least and the most
// that the system gives, wherever the centres that are not known lie.
func TestReadingsOfUnknownCentres(t *testing.T) {
	h := trials.OpenJob(t, trials.UnknownJob(t)).Stacks[1]
	least, most := []float64{math.Inf(1), math.Inf(1)}, []float64{0, 0}
	parts := trials.Parts(t, h.Stack, len(h.Cabinets), h.Holes, h.Finished.Tilt)
	for _, mix := range trials.Mixes(h.Unknown()) {
		for i, n := range trials.Together(parts, mix, func(trials.Part) float64 { return 1 }).Hooks {
			kg := n/9.80665 + h.Picks[i].Below.Mass
			least[i], most[i] = math.Min(least[i], kg), math.Max(most[i], kg)
		}
	}
	for i, r := range cellReads(h.Hung, h.Readings(len(h.Lifts))) {
		assert.Equal(t, fmt.Sprintf("between %.0f and %.0f kg", least[i], most[i]), r.Is)
	}
}

// TestAimsOfUnknownCentresEndAtTheLimit: no inclinometer may read past the bar's limit,
// wherever the centres that are not known lie: the bar that tilts most has 0.2 degrees left.
func TestAimsOfUnknownCentresEndAtTheLimit(t *testing.T) {
	yaml := trials.UnknownJob(t)
	_, most := trials.OpenJob(t, yaml).Stacks[0].Between(func(v *rig.Hung) float64 { return v.Finished.Tilt })
	limit := most*180/math.Pi + 0.2
	with := strings.Replace(yaml, "pick_rating: 700 kg", fmt.Sprintf("pick_rating: 700 kg\n      tilt_limit: {down: %.9f deg, up: 60 deg}", limit), 1)
	h := trials.OpenJob(t, with).Stacks[0]
	_, down := aimWindow(h.Hung, len(h.Lifts), 1)
	assert.InDelta(t, limit, down*180/math.Pi, 1e-6) // its splay is 0
}
