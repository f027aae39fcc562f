package rules_test

import (
	"fmt"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/paperwork/sheets"
	"hangpack/testdata/trials"
)

// twice is a random job whose first stack stands a second time, written out in
// full, and the same with that as a twin.
func twice(t *testing.T, seed int64) (full, short string) {
	t.Helper()
	yaml := trials.Gamble(21_000 + seed).Job()
	head, rest, _ := strings.Cut(yaml, "stacks:\n")
	stack, others, _ := strings.Cut(rest, "other_points:")
	if i := strings.Index(stack[4:], "  - id:"); i >= 0 {
		stack = stack[:4+i]
	}
	if others != "" {
		others = "other_points:" + others
	}
	place := regexp.MustCompile(`(?m)^    place: .*\n`).FindString(stack)
	second := regexp.MustCompile(`id: S0\n(    name: .*\n)`).ReplaceAllString(stack, "id: TWIN\n    name: Other side\n")
	require.NotEqual(t, stack, second)
	twin := "  - id: TWIN\n    twin_of: S0\n    name: Other side\n" + place
	if shape := regexp.MustCompile(`(?m)^    shape: .*\n`).FindString(stack); shape != "" {
		twin += shape
	}
	return head + "stacks:\n" + stack + second + others, head + "stacks:\n" + stack + twin + others
}

// A twin is the same stack written out in full, whichever of the two comes first.
func TestTwinIsTheStackInFull(t *testing.T) {
	for seed := range int64(60) {
		full, short := twice(t, seed)
		want, got := trials.OpenJob(t, full).Figures, trials.OpenJob(t, short).Figures
		want.Job.Fingerprint = got.Job.Fingerprint
		assert.Equal(t, want, got, "seed %d", seed)
		head, rest, _ := strings.Cut(short, "stacks:\n")
		stack, twin, _ := strings.Cut(rest, "  - id: TWIN\n")
		twin, others, more := strings.Cut(twin, "other_points:")
		if more {
			others = "other_points:" + others
		}
		turned := trials.OpenJob(t, head+"stacks:\n  - id: TWIN\n"+twin+stack+others).Figures
		assert.Equal(t, got.Stacks[0], turned.Stacks[1], "seed %d", seed)
		assert.Equal(t, got.Stacks[1], turned.Stacks[0], "seed %d", seed)
	}
}

// Every difference of two twins is found, on both of them and on the cover, and
// says how each has it.
func TestTwinsDiffer(t *testing.T) {
	tests := []struct{ gives, where, says string }{
		{"    cabinets: [{type: box, count: 8, splay: [0, 0.5, 0.5, 1, 2, 2, 3, 4]}]", "joint 5", "hole of joint 5: SL 1, TWIN 2"},
		{"    cabinets: [{type: box, count: 7, splay: [0, 0.5, 0.5, 1, 1, 2, 3]}]", "", "number of cabinets: SL 8, TWIN 7"},
		{"    aim: 1.25 deg up", "", "aim wanted: SL 1° down, TWIN 1.25° up"},
		{"    trim: {highest_pick: 9 m}", "", "trim: SL lowest corner at 4.5 m, TWIN highest pick hole at 9 m"},
		{"    hang: {picks: 1, hoist: hoist, pick_hole: 23}", "", "pick holes: SL pick hole 22, TWIN pick hole 23"},
		{"    hang: {picks: 1, hoist: hoist, load_cell: above_hoist}", "", "load cell: SL not given, TWIN above_hoist"},
		{"    steel: 14.001 m", "", "steel: SL 14 m, TWIN 14.001 m"},
		{"    rigging_below: {mass: 0.25 kg}", "", "rigging below: SL 0 kg, 0 m, TWIN 0.25 kg, 0 m"},
		{"    rigging_above: {length: 0.25 m}", "", "rigging above: SL 0 kg, 0 m, TWIN 0 kg, 0.25 m"},
		{"    sets: [3, 3, 2]", "", "sets: SL 4 4, TWIN 3 3 2"},
		{"    pins_set: in_the_air", "", "pins set: SL not given, TWIN in the air"},
		{"    floor: 0.5 m", "", "floor: SL 0 m, TWIN 0.5 m"},
		{"    extras: [{name: laser, mass: 2 kg, on_cabinet: 3, behind_hinge: 0, below_hinge: 0}]", "", "extras: SL none, TWIN laser 2 kg on cabinet 3, 0 m behind, 0 m below its hinge"},
		{"    secondary: {what: steel bond, rating: 2 t}", "", "secondary: SL not given, TWIN steel bond, rated 2000 kg"},
	}
	for _, tt := range tests {
		yaml := trials.Plain + "  - id: TWIN\n    twin_of: SL\n    place: {stage_right: 8 m, downstage: 0 m}\n"
		alike := trials.OpenJob(t, yaml)
		require.Empty(t, trials.OfRules(alike.Figures.Stacks[1].Cautions, []string{"twin_differs"}))
		j := trials.OpenJob(t, yaml+tt.gives+"\n")
		for i, s := range j.Figures.Stacks {
			says := tt.says
			if i == 1 {
				of, rest, _ := strings.Cut(tt.says, ": SL ")
				a, b, _ := strings.Cut(rest, ", TWIN ")
				says = fmt.Sprintf("%s: TWIN %s, SL %s", of, b, a)
			}
			var got []string
			for _, c := range s.Cautions {
				if c.Rule == "twin_differs" {
					got = append(got, c.Where.String()+"|"+c.Says)
				}
			}
			require.NotEmpty(t, got, tt.gives)
			assert.True(t, strings.Contains(strings.Join(got, "\n"), tt.where+"|"+says), "%s: %q is not in %q", tt.gives, says, got)
		}
		pdf, err := sheets.Draw(j)
		require.NoError(t, err)
		cover := ""
		for _, m := range pdf.Marks {
			if m.Page <= 2 {
				cover += m.Text + " "
			}
		}
		assert.Contains(t, cover, "Twins differ", tt.gives)
	}
}
