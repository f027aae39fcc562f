package paperwork

import (
	"encoding/json"
	"fmt"
	"math"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Laws on the figures of random jobs: they need no source and no tolerance
// beyond rounding. A failure names its seed.

func eachJob(t *testing.T, law func(t *testing.T, yaml string, f Figures)) {
	t.Helper()
	for seed := range int64(150) {
		yaml := gamble(5000 + seed).job()
		law(t, yaml, open(t, yaml).Figures)
		if t.Failed() {
			t.Fatalf("seed %d", 5000+seed)
		}
	}
}

// The forces of a stack balance: picks carry all of it, shares are one, and a
// point carries what is in its line.
func TestForcesOfFiguresBalance(t *testing.T) {
	eachJob(t, func(t *testing.T, _ string, f Figures) {
		total := Carried{}
		for _, s := range f.Stacks {
			load, share, static := 0.0, 0.0, 0.0
			for _, p := range s.Picks {
				load, share = load+p.Load, share+p.Share
			}
			for _, p := range s.Points {
				static += p.Static
				total.Static, total.Design = total.Static+p.Static, total.Design+p.Design
			}
			assert.InDelta(t, s.Mass, load, 1e-6)
			assert.InDelta(t, 1, share, 1e-9)
			assert.Greater(t, static, s.Mass)
			for _, l := range s.Lifts {
				assert.Less(t, l.Mass, s.Mass)
			}
		}
		for _, o := range f.Others {
			total.Static, total.Design = total.Static+o.Static, total.Design+o.Design
		}
		assert.InDelta(t, f.Total.Static, total.Static, 1e-6)
		assert.InDelta(t, f.Total.Design, total.Design, 1e-6)
	})
}

var places = regexp.MustCompile(`place: \{stage_(left|right): ([0-9.]+) m, (up|down)stage: ([0-9.]+) m`)

// A shifted datum shifts the plan and nothing else.
func TestShiftedDatumShiftsThePlan(t *testing.T) {
	const left, down = 3.25, -1.5
	eachJob(t, func(t *testing.T, yaml string, f Figures) {
		moved := places.ReplaceAllStringFunc(yaml, func(s string) string {
			m := places.FindStringSubmatch(s)
			x, y := number(m[2]), number(m[4])
			if m[1] == "right" {
				x = -x
			}
			if m[3] == "up" {
				y = -y
			}
			return fmt.Sprintf("place: {stage_left: %.2f m, downstage: %.2f m", x+left, y+down)
		})
		shifted := open(t, moved).Figures
		for i, s := range shifted.Stacks {
			for k := range s.Points {
				assert.InDelta(t, f.Stacks[i].Points[k].StageLeft+left, s.Points[k].StageLeft, 1e-9)
				assert.InDelta(t, f.Stacks[i].Points[k].Downstage+down, s.Points[k].Downstage, 1e-9)
				s.Points[k].StageLeft, s.Points[k].Downstage = f.Stacks[i].Points[k].StageLeft, f.Stacks[i].Points[k].Downstage
			}
		}
		for i := range shifted.Others {
			assert.InDelta(t, f.Others[i].StageLeft+left, shifted.Others[i].StageLeft, 1e-9)
			assert.InDelta(t, f.Others[i].Downstage+down, shifted.Others[i].Downstage, 1e-9)
			shifted.Others[i].StageLeft, shifted.Others[i].Downstage = f.Others[i].StageLeft, f.Others[i].Downstage
		}
		shifted.Job.Fingerprint = f.Job.Fingerprint
		assert.Equal(t, f, shifted)
	})
}

// Aims add up from the bar's tilt, and the lowest corner is some cabinet's.
func TestAimsFollowSplays(t *testing.T) {
	eachJob(t, func(t *testing.T, _ string, f Figures) {
		for _, s := range f.Stacks {
			aim := s.Tilt
			lowest := math.Inf(1)
			for _, c := range s.Cabinets {
				aim += c.Splay
				lowest = math.Min(lowest, c.Lowest)
				assert.InDelta(t, aim, c.Aim, 1e-9)
				assert.GreaterOrEqual(t, c.Hinge, math.Abs(c.HingePull)-1e-12, "a resultant is never less than its part")
			}
			assert.InDelta(t, s.LastAim, aim, 1e-9)
			assert.InDelta(t, s.Lowest, lowest, 1e-9)
			if len(s.Options) == 0 {
				assert.InDelta(t, s.AimWanted, s.Aim, 1e-9, "two picks hold the wanted aim")
			}
		}
	})
}

// TestFiguresAsData holds the shape of the JSON: every key that scripts depend
// on, no nulls, labels in their own type.
func TestFiguresAsData(t *testing.T) {
	text, err := json.Marshal(open(t, plainJob).Figures)
	require.NoError(t, err)
	assert.NotContains(t, string(text), "null")
	for _, key := range strings.Fields(`job title venue date revision fingerprint stacks id name held holds cautions rule where says
		mass_kg aim_wanted_deg aim_deg tilt_deg last_aim_deg centre_of_gravity behind_hinge_m below_hinge_m picks pick_hole load_kg share
		pick_hole_options lowest_m cabinets number type set splay_deg hinge_kn hinge_pull_kn link_kn points stage_left_m downstage_m
		pick_height_m low_hook_m high_hook_m chain_needed_m most hoist hoist_use other_points static_kg design_kg lifts cabinets_flown hook_kg drop_m total`) {
		assert.Contains(t, string(text), `"`+key+`":`)
	}
	assert.Contains(t, string(text), `"pick_hole":1,`)
	assert.Contains(t, string(text), `"holds":[]`)
	two := open(t, edited(t, onePick, twoPicks)).Figures
	text, err = json.Marshal(two)
	require.NoError(t, err)
	assert.Contains(t, string(text), `"pick_hole_options":[]`)
	assert.NotContains(t, string(text), "null")
}
