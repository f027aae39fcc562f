package sheets

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// TestOneNewtonHasNoSign: a link or a hinge is pulled or pushed from more than
// 1 N on, and at 1 N it is neither: on the sheets, for the hold and for both cautions.
func TestOneNewtonHasNoSign(t *testing.T) {
	pushes := trials.Edited(t, "link_arm: 370 mm", "link_arm: 370 mm\n      link_pushes: yes")
	for n, want := range map[float64]struct {
		way    string
		pushed bool
	}{
		0: {"none", false}, 0.9: {"none", false}, -0.9: {"none", false},
		1.1: {"0.01 kN pull", false}, -1.1: {"0.01 kN push", true},
	} {
		strict, allowed := trials.OpenJob(t, trials.Plain).Stacks[0], trials.OpenJob(t, pushes).Stacks[0]
		for _, h := range []*rules.Checked{strict, allowed} {
			for _, at := range h.Finished.Reach { // of which the first has the joints of the nominal tilt
				at.Joints[7].Link, at.Spread[7] = n, 0
			}
		}
		row := jointRow(strict.Hung, 7)
		assert.Equal(t, want.way, row[5], "%g N", n)
		assert.NotEqual(t, want.way, row[4], "%g N: the hinge has its own", n)
		strict.Finished.Joints[7].HingePull = n
		assert.Equal(t, want.way, jointRow(strict.Hung, 7)[4], "%g N", n)
		for _, s := range jointSteps(nominal(strict.Hung), 7) {
			if left, _, _ := strings.Cut(s.Symbols, " = "); left == "link" || left == "pull" {
				assert.Equal(t, want.way, s.Prints, "%g N: %s", n, left)
			}
		}
		must, may := rules.Check(strict.Hung), rules.Check(allowed.Hung)
		at := "link_pushed, joint 8"
		assert.Equal(t, want.pushed, slices.Contains(trials.Found(must.Holds), at), "%g N: %v", n, must.Holds)
		assert.NotContains(t, trials.Found(may.Holds), at, "%g N", n)
		assert.Equal(t, want.pushed, slices.Contains(trials.Found(may.Cautions), at), "%g N: %v", n, may.Cautions)
	}
}

// TestGearUseOnPaper: what practice allows of a rating stands in every sum that
// it is in: of 6 and 4.5 kN half are 3 and 2.25 kN, and the percents of the
// calculation sheet are of those.
func TestGearUseOnPaper(t *testing.T) {
	half := []string{"practice: {", "practice: {gear_use: 50 %, aim_tolerance: 0 deg, ", "capacity: 500 kg", "capacity: 2000 kg", "rating: 750 kg", "rating: 2000 kg", "pick_rating: 600 kg", "pick_rating: 2000 kg"}
	j := trials.OpenJob(t, trials.Edited(t, half...))
	h := j.Stacks[0]
	require.Empty(t, h.Holds)
	_, pages := paperOf(t, j)
	pdf := trials.TextOf(pages, "SL CALCULATION")
	assert.Contains(t, pdf, "use of gear: 50 %")
	for _, limit := range []string{"6.00 kN x 50 % = 3.00 kN", "4.50 kN x 50 % = 2.25 kN", "2000 kg x 50 % = 1000 kg (bar)", "2000 kg x 50 % = 1000 kg (one pick hole of bar)"} {
		assert.Contains(t, pdf, limit)
	}
	uses := 0
	for _, s := range calculationSheet(h).Joint.Formulas {
		if strings.HasPrefix(s.Symbols, "use = ") {
			uses++
			require.Contains(t, pdf, s.Symbols+" = "+s.Numbers+" = "+s.Is)
			assert.True(t, strings.HasSuffix(s.Numbers, " · 0.5)"), s.Numbers)
			redo(t, s.Symbols, s)
		}
	}
	assert.Equal(t, 2, uses)

	// A rating whose half the worst pin is just past, or just within.
	one := j.Figures.Stacks[0].Cabinets[0].Link * 0.6 * 1.05 * 1.25 * 1000
	for past, want := range map[float64][]string{-0.01: nil, 0.01: {"link_pin, joint 1"}} {
		rating := fmt.Sprintf("link: %.3f N}\n  bars", 2*(one-past))
		held := trials.OpenJob(t, trials.Edited(t, append(half, "link: 4.5 kN}\n  bars", rating)...))
		assert.Equal(t, want, trials.Found(held.Stacks[0].Holds), "%g N past", past)
	}
}

// TestCountsInTheChecks: numbers of things stand in the calculation sheet's
// table of checks, as the stack has them where it is closest to its limit.
func TestCountsInTheChecks(t *testing.T) {
	j := trials.OpenJob(t, trials.Edited(t, "{takes: 4,", "{takes: 5,", "    dolly: dolly\n", "    dolly: dolly\n    sets: [2, 4, 2]\n"))
	assert.Contains(t, calculationOf(t, j), "dolly dolly B 4 cabinets at most 5 (dolly) -")
	assert.Contains(t, calculationOf(t, j), "number of box the finished stack 8 at most 12 (bar) -")
	seen := 0
	for name, j := range trials.ReadJobs(t) {
		for _, h := range j.Stacks {
			if h.Held() {
				continue
			}
			rows := map[string]bool{}
			for _, row := range checkRows(h) {
				rows[strings.Join(row, " ")] = true
			}
			if h.Dolly != nil {
				seen++
				assert.True(t, rows[largestSet(h)], "%s, %s: %s", name, h.ID, largestSet(h))
			}
			for _, m := range h.Bar.Most {
				n, of := len(h.Cabinets), "all types together"
				if m.Cabinet != "any" {
					n, of = 0, m.Cabinet
				}
				for _, c := range h.Cabinets {
					n += map[bool]int{true: 1}[c.Key == of]
				}
				row := fmt.Sprintf("number of %s the finished stack %d at most %d (%s) -", of, n, m.Count, h.Bar.Key)
				assert.True(t, rows[row], "%s, %s: %s", name, h.ID, row)
			}
		}
	}
	assert.NotZero(t, seen)
}

func calculationOf(t *testing.T, j *worked.Job) string {
	t.Helper()
	_, pages := paperOf(t, j)
	return trials.TextOf(pages, j.Stacks[0].ID+" CALCULATION")
}

// largestSet is the row of the first of the largest sets of a stack.
func largestSet(h *rules.Checked) string {
	k := 0
	for i, n := range h.Sets {
		if n > h.Sets[k] {
			k = i
		}
	}
	things := "cabinets"
	if h.Sets[k] == 1 {
		things = "cabinet"
	}
	return fmt.Sprintf("dolly dolly %s %d %s at most %d (%s) -", say.Dolly(k), h.Sets[k], things, h.Dolly.Takes, h.Dolly.Key)
}
