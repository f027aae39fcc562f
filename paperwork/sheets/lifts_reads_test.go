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

// TestSlackOfUnknownCentres: where a centre of gravity is not known the sheets also say the
// least distance to slack that any of its places leaves.
func TestSlackOfUnknownCentres(t *testing.T) {
	h := trials.OpenJob(t, trials.UnknownJob(t)).Stacks[1]
	require.Len(t, h.Corners, 4)
	for i := range h.Picks {
		least := math.Abs(h.ToSlack(h.Finished, i))
		for _, v := range h.Corners {
			least = math.Min(least, math.Abs(v.ToSlack(v.Finished, i)))
		}
		require.Less(t, least, math.Abs(h.ToSlack(h.Finished, i))-0.005)
		assert.Contains(t, slackWords(h.Hung, h.Finished), fmt.Sprintf("%.0f mm", math.Floor(least*1000)))
	}
	assert.NotContains(t, slackWords(trials.OpenFile(t, "examples/arena.yaml").Stacks[0].Hung, trials.OpenFile(t, "examples/arena.yaml").Stacks[0].Finished), "as little as")
}
