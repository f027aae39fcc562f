package sheets

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/calc"
	"hangpack/layouts"
	"hangpack/layouts/drawings"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// What the cards of random stacks show and ask to read, against geometry and statics
// of their own.

// tied is what is tied to cabinets from to, 0 for the bar, in kg.
func tied(s *job.Stack, from, to int) (kg float64) {
	for _, e := range s.Extras {
		if e.Cabinet >= from && e.Cabinet <= to {
			kg += e.Mass
		}
	}
	return kg
}

// aimWords writes what an aim may lie between, in degrees and positive down.
func aimWords(from, to float64) string {
	word := func(deg float64) (figure, way string) {
		figure = fmt.Sprintf("%.1f°", math.Abs(deg))
		switch {
		case figure == "0.0°":
			return "level", ""
		case deg > 0:
			return figure, " down"
		}
		return figure, " up"
	}
	a, way := word(math.Ceil(from*10-1e-6) / 10) // inwards
	b, other := word(math.Floor(to*10+1e-6) / 10)
	if way == other && way != "" {
		return a + " to " + b + way
	}
	return "between " + a + way + " and " + b + other
}

// between reports whether an angle lies half way between two tenths of a degree, so
// that dust decides which of them is printed.
func between(deg float64) bool {
	halves := deg*10 + 0.5
	return math.Abs(halves-math.Round(halves)) < 1e-6
}

// onlyLifts asks of the cards after the bar's: lift k, counted from 0, its cabinets
// flown and the tilt of the figures in radians.
func onlyLifts(t *testing.T, from int64, ask func(h *rules.Checked, c layouts.Card, k, flown int, tilt float64)) {
	t.Helper()
	cards := 0
	eachFlown(t, from, func(t *testing.T, h *rules.Checked, f worked.StackFigures) {
		flown := 0
		for k, c := range liftSheet(h).Cards[1:] {
			flown += h.Sets[k]
			ask(h, c, k, flown, tiltsOf(f)[k]*math.Pi/180)
			cards++
		}
	})
	require.Greater(t, cards, 200)
}

// TestCardsSayWhichLift: the dolly, how many cabinets of how many fly, what hangs
// with them, and the two bodies of the joint.
func TestCardsSayWhichLift(t *testing.T) {
	onlyLifts(t, 41_000, func(h *rules.Checked, c layouts.Card, k, flown int, _ float64) {
		kg, first := h.Bar.Mass+tied(h.Stack, 0, flown), flown-h.Sets[k]
		for _, cab := range h.Cabinets[:flown] {
			kg += cab.Mass
		}
		of := fmt.Sprintf("%d of %d cabinets", flown, len(h.Cabinets))
		assert.Equal(t, []string{strings.TrimSuffix(of, map[bool]string{true: "s"}[len(h.Cabinets) == 1]), h.Unit().Load(kg) + " with bar"}, c.Says)
		if h.Dolly != nil {
			assert.Equal(t, "dolly "+string("ABCDEFGHIJKLMNOPQRSTUVWXYZ"[k]), c.Which)
		}
		if k > 0 {
			assert.Equal(t, []string{fmt.Sprint(first), fmt.Sprint(first + 1)}, []string{c.Joint.Above, c.Joint.Below})
		} else if c.Joint != nil {
			assert.Equal(t, []string{"bar", "1"}, []string{c.Joint.Above, c.Joint.Below})
		}
	})
}

// TestCardsAimsToRead: of cabinet 1, of the lowest one and their difference, with the
// tolerance of aims either way.
func TestCardsAimsToRead(t *testing.T) {
	onlyLifts(t, 43_000, func(h *rules.Checked, c layouts.Card, _, flown int, tilt float64) {
		off := h.Job.Practice.AimTolerance * 180 / math.Pi
		up, down := off, off
		if l := h.Bar.TiltLimit; l != nil && tilt <= l.Down && -tilt <= l.Up { // never past the bar's limit
			up, down = math.Min(off, (l.Up+tilt)*180/math.Pi), math.Min(off, (l.Down-tilt)*180/math.Pi)
		}
		want := []layouts.Instrument{}
		for _, n := range []int{1, flown} {
			deg := trials.Looks(h.Stack, n, tilt) * 180 / math.Pi
			if between(deg) || between(deg-up) || between(deg+down) {
				return
			}
			want = append(want, layouts.Instrument{Of: fmt.Sprintf("cabinet %d looks", n), Is: say.Aim(calc.Radians(deg)), May: aimWords(deg-up, deg+down)})
		}
		splays := 0.0
		for _, cab := range h.Cabinets[1:flown] {
			splays += cab.Hole.Splay
		}
		reads := c.Reads[map[int]int{1: 1, 2: 3}[len(h.Picks)]:] // cells, of two their sum too
		if flown == 1 {
			assert.Equal(t, want[:1], reads)
			return
		}
		assert.Equal(t, want, reads[:2])
		require.Len(t, reads, 3)
		assert.Equal(t, "difference", reads[2].Of)
		assert.InDelta(t, splays, trials.Number(strings.TrimSuffix(reads[2].Is, "°")), 0.0501)
	})
}

// TestCardsShowTheLift: the drawing of each card has the cabinets that fly then, where
// they hang then.
func TestCardsShowTheLift(t *testing.T) {
	onlyLifts(t, 45_000, func(h *rules.Checked, c layouts.Card, _, flown int, tilt float64) {
		shows(t, *c.View, h.Stack, flown, tilt)
	})
}

func shows(t *testing.T, e drawings.Elevation, s *job.Stack, n int, tilt float64) {
	t.Helper()
	require.Len(t, e.Cabinets, n)
	for k, corners := range trials.Outline(s, n, tilt) {
		for i, c := range corners {
			assert.InDelta(t, real(c), e.Cabinets[k].Corners[i].X, 1e-9)
			assert.InDelta(t, imag(c), e.Cabinets[k].Corners[i].Z, 1e-9)
		}
	}
}

// TestAloneShows: of one hoist alone each drawing is the whole stack turned until its
// weight is below that hoist, and says which.
func TestAloneShows(t *testing.T) {
	views := 0
	eachFlown(t, 47_000, func(t *testing.T, h *rules.Checked, f worked.StackFigures) {
		for i, v := range aloneTable(h.Hung).Views {
			assert.Equal(t, []string{"front hoist alone", "rear hoist alone"}[i], v.Says)
			if !strings.Contains(aloneTable(h.Hung).Rows[0][1+3*i], "tips over") {
				shows(t, v.Side, h.Stack, len(h.Cabinets), solveTilt(h, i))
				views++
			}
		}
	})
	require.Greater(t, views, 40)
}

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
