package rules_test

import (
	"fmt"
	"math"
	"math/rand"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/calc"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// saysOf are the sentences of a rule's cautions on a stack.
func saysOf(s worked.StackFigures, rule string) (all []string) {
	for _, c := range s.Cautions {
		if c.Rule == rule {
			all = append(all, c.Where.String()+c.Says)
		}
	}
	return all
}

// besides is the plain job with a second stack, alike but for what is edited in it.
func besides(edits ...string) string {
	_, stack, _ := strings.Cut(trials.Plain, "stacks:\n")
	return trials.Plain + strings.NewReplacer(append([]string{"id: SL", "id: OL"}, edits...)...).Replace(stack)
}

// The only pick of two stacks alike, one 0.3 m beside the other, and a tenth of a millimetre more.
func TestPointsMeetAtTheirLimit(t *testing.T) {
	for place, meet := range map[string]bool{"8.5 m": true, "8.5001 m": false, "8.2 m": true, "7.9 m": true, "7.899 m": false} {
		for i, s := range trials.OpenJob(t, besides("stage_left: 8.2 m", "stage_left: "+place)).Figures.Stacks {
			says := saysOf(s, "points_meet")
			assert.Equal(t, meet, len(says) == 1, place)
			if meet {
				assert.True(t, strings.HasPrefix(says[0], [2]string{"SL and OL are ", "OL and SL are "}[i]), says)
			}
		}
	}
	down := trials.OpenJob(t, besides("downstage: 0.6 m", "downstage: 0.9 m"))
	assert.Len(t, saysOf(down.Figures.Stacks[0], "points_meet"), 1)
	// A diagonal of 0.3 m across and 0.3 m down is 0.42 m.
	both := trials.OpenJob(t, besides("stage_left: 8.2 m", "stage_left: 8.5 m", "downstage: 0.6 m", "downstage: 0.9 m"))
	assert.Empty(t, saysOf(both.Figures.Stacks[0], "points_meet"))
}

// The points of one stack may be as near each other as its pick holes.
func TestPointsOfOneStackDoNotMeet(t *testing.T) {
	j := trials.OpenJob(t, trials.Edited(t, trials.OnePick, "{picks: 2, hoist: hoist, front_hole: 17, rear_hole: 30}"))
	p := j.Figures.Stacks[0].Points
	require.Less(t, p[0].Downstage-p[1].Downstage, 0.3)
	assert.Empty(t, saysOf(j.Figures.Stacks[0], "points_meet"))
}

// Points that carry no stack: each stack is cautioned of those that it meets, and of two
// that meet each other the venue is told.
func TestOtherPointsMeet(t *testing.T) {
	j := trials.OpenFile(t, "testdata/jobs/points-meet.yaml")
	sl, ol := saysOf(j.Figures.Stacks[0], "points_meet"), saysOf(j.Figures.Stacks[1], "points_meet")
	require.Len(t, sl, 2)
	require.Len(t, ol, 1)
	assert.True(t, strings.HasPrefix(sl[0], "SL-rear and OL-rear are 0.21 m apart in plan, within 0.30 m: "), sl)
	assert.True(t, strings.HasPrefix(sl[1], "SL-front and CABLE are 0.20 m apart in plan"), sl)
	assert.True(t, strings.HasPrefix(ol[0], "OL-rear and SL-rear are 0.21 m apart in plan"), ol)
	assert.Empty(t, append(saysOf(j.Figures.Stacks[0], "stacks_overlap"), saysOf(j.Figures.Stacks[1], "stacks_overlap")...))
	others := rules.OthersMeet(j.Job)
	require.Len(t, others, 1)
	assert.True(t, strings.HasPrefix(others[0], "L1 and L2 are 0.14 m apart in plan"), others)
}

// Two stacks alike, 0.78 m wide, side by side: touching they do not overlap.
func TestStacksOverlapAtTheirLimit(t *testing.T) {
	for place, cross := range map[string]bool{"8.98 m": false, "8.979 m": true, "7.42 m": false, "7.421 m": true, "8.2 m": true} {
		for i, s := range trials.OpenJob(t, besides("stage_left: 8.2 m", "stage_left: "+place)).Figures.Stacks {
			says := saysOf(s, "stacks_overlap")
			assert.Equal(t, cross, len(says) == 1, place)
			if cross {
				assert.Regexp(t, [2]string{"of SL and .* of OL cross in plan", "of OL and .* of SL cross in plan"}[i], says[0])
				assert.NotContains(t, says[0], "above", "they share a height")
			}
		}
	}
}

// A stack and its twin at one place, one of them held, and one that hangs above another.
func TestStacksOverlapWhateverElse(t *testing.T) {
	twin := trials.OpenJob(t, trials.Plain+"  - id: TWIN\n    twin_of: SL\n    place: {stage_left: 8.2 m, downstage: 0.6 m}\n    steel: 5 m\n")
	require.True(t, twin.Stacks[1].Held())
	for _, s := range twin.Figures.Stacks {
		assert.Len(t, saysOf(s, "stacks_overlap"), 1, s.ID)
		assert.Len(t, saysOf(s, "points_meet"), 1, s.ID)
	}
	share := trials.OpenJob(t, besides("lowest: 4.5 m", "lowest: 5 m")).Figures.Stacks
	assert.NotContains(t, saysOf(share[0], "stacks_overlap")[0]+saysOf(share[1], "stacks_overlap")[0], "above")
	high := trials.OpenJob(t, besides("lowest: 4.5 m", "lowest: 9 m")).Figures
	lower := high.Stacks[0]
	gap := fmt.Sprintf("; OL hangs %.2f m above SL, whose chains go up past it: ", 9-lower.Points[0].PickHeight)
	assert.Contains(t, saysOf(lower, "stacks_overlap")[0], gap)
	assert.Contains(t, saysOf(high.Stacks[1], "stacks_overlap")[0], gap)
}

// The bar reaches back further than any cabinet, and is as wide as cabinet 1.
func TestStacksOverlapByTheBar(t *testing.T) {
	long := []string{"{count: 41, ahead_of_hinge: 60 mm", "{count: 200, ahead_of_hinge: 60 mm"}
	yaml := strings.Replace(besides("stage_left: 8.2 m, downstage: 0.6 m", "stage_left: 8.2 m, upstage: 1.8 m, pan: 180 deg stage_left"), long[0], long[1], 1)
	says := saysOf(trials.OpenJob(t, yaml).Figures.Stacks[0], "stacks_overlap")
	require.Len(t, says, 1)
	assert.True(t, strings.HasPrefix(says[0], "the bar of SL and "), says)
	assert.Empty(t, saysOf(trials.OpenJob(t, strings.Replace(yaml, "upstage: 1.8 m", "upstage: 6.8 m", 1)).Figures.Stacks[0], "stacks_overlap"))
}

// Whether two stacks of a random job, moved close together, overlap is as it is found by
// trying a grid of places over all their bodies.
func TestOverlapByTrying(t *testing.T) {
	found, clear := 0, 0
	for seed := range int64(60) {
		j := trials.OpenJob(t, trials.Gamble(52_000+seed).Job())
		if len(j.Stacks) < 2 {
			continue
		}
		r := rand.New(rand.NewSource(seed))
		a, b := j.Stacks[0], j.Stacks[1]
		b.StageLeft, b.Downstage = a.StageLeft+4*r.Float64()-2, a.Downstage+4*r.Float64()-2
		a.Cautions, b.Cautions = nil, nil
		rules.CompareStacks(j.Job, j.Stacks[:2])
		got := strings.Contains(fmt.Sprint(trials.Found(a.Cautions)), "stacks_overlap")
		assert.Equal(t, got, strings.Contains(fmt.Sprint(trials.Found(b.Cautions)), "stacks_overlap"), seed)
		if ground := triedGround(a, b); ground {
			found++
			assert.True(t, got, "seed %d: a place lies below both", seed)
		} else if !got {
			clear++
		}
	}
	assert.Greater(t, found, 5)
	assert.Greater(t, clear, 5)
}

// triedGround looks for a place in plan, on a grid over each cabinet of one stack, that lies
// below a cabinet of the other.
func triedGround(a, b *rules.Checked) bool {
	const n = 20
	for k, c := range a.Finished.Corners {
		rear, front, half := min(c[0].X, c[1].X, c[2].X, c[3].X), max(c[0].X, c[1].X, c[2].X, c[3].X), a.Cabinets[k].Width/2
		for i := range n + 1 {
			for m := range n + 1 {
				left, down := a.Plan(rear + (front-rear)*float64(i)/n)
				left, down = calc.Plan(left, down, a.Pan+math.Pi/2, half*(2*float64(m)/n-1))
				if below(b, left, down) {
					return true
				}
			}
		}
	}
	return false
}

// below reports whether a place in plan lies below a cabinet.
func below(h *rules.Checked, left, down float64) bool {
	sin, cos := math.Sincos(h.Pan)
	ahead := (left-h.StageLeft)*sin + (down-h.Downstage)*cos
	beside := (left-h.StageLeft)*cos - (down-h.Downstage)*sin
	for k, c := range h.Finished.Corners {
		if ahead > min(c[0].X, c[1].X, c[2].X, c[3].X) && ahead < max(c[0].X, c[1].X, c[2].X, c[3].X) && math.Abs(beside) < h.Cabinets[k].Width/2 {
			return true
		}
	}
	return false
}
