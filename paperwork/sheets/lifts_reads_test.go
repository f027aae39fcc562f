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
	a, way := word(from)
	b, other := word(to)
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
		want := []layouts.Instrument{}
		for _, n := range []int{1, flown} {
			deg := trials.Looks(h.Stack, n, tilt) * 180 / math.Pi
			if between(deg) || between(deg-off) || between(deg+off) {
				return
			}
			want = append(want, layouts.Instrument{Of: fmt.Sprintf("cabinet %d looks", n), Is: say.Aim(calc.Radians(deg)), May: aimWords(deg-off, deg+off)})
		}
		splays := 0.0
		for _, cab := range h.Cabinets[1:flown] {
			splays += cab.Hole.Splay
		}
		reads := c.Reads[len(h.Picks):]
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
			is := solveBar(t, h.Hung)[i] + pick.Below.Mass
			low, high := is-p.ReadingFloor, is+p.ReadingFloor
			for _, off := range []float64{-p.AimTolerance, 0, p.AimTolerance} {
				for _, more := range []float64{1 - p.MassTolerance, 1 + p.MassTolerance} {
					kg := trials.Solve(t, h.Stack, 0, h.Holes, off, more).Hooks[i]/9.80665 + pick.Below.Mass*more
					low, high = math.Min(low, kg), math.Max(high, kg)
				}
			}
			least, unit, _ := strings.Cut(h.Unit().Reading(math.Max(low, 0)+own), " ")
			assert.Equal(t, least+" to "+h.Unit().Reading(high+own), card.Reads[i].May, unit)
			bars++
		}
		if h.Start != nil {
			assert.Contains(t, card.Says, h.Unit().Load(h.Bar.Mass+tied(h.Stack, 0, 0)))
			off := p.AimTolerance * 180 / math.Pi
			assert.Equal(t, layouts.Instrument{Of: "bar", Is: "level", May: aimWords(-off, off)}, card.Reads[2])
			assert.Empty(t, card.View.Cabinets)
		}
	})
	require.Greater(t, bars, 30)
	require.Greater(t, slack, 30)
}

// TestNoReadingBelowNothing: what a window lets the hook hold begins at nothing, and
// what hangs below the cell besides is added to that: the bar's centre of gravity,
// 260 mm behind the hinge, lies 5 mm behind hole 22 and 10 mm ahead of hole 23.
func TestNoReadingBelowNothing(t *testing.T) {
	for cell, own := range map[string]string{"": "0 to ", ", load_cell: below_hoist": "0 to ", ", load_cell: above_hoist": "78 to "} { // 52 kg and 24 m of 1.1 kg/m are 78.4 kg
		yaml := trials.Edited(t, trials.OnePick, "{picks: 2, hoist: hoist, front_hole: 22, rear_hole: 41"+cell+"}", "practice: {", "practice: {reading_floor: 40 kg, ")
		reads := liftSheet(trials.OpenJob(t, yaml).Stacks[0]).Cards[0].Reads
		for _, r := range reads[:2] {
			assert.True(t, strings.HasPrefix(r.May, own), "%s: %s", r.Of, r.May)
		}
	}
}
