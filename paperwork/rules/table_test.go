package rules_test

import (
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/paperwork/rules"
	"hangpack/testdata/trials"
)

// rarelyHeld are edits of the plain job that rules hold which no random job breaks.
var rarelyHeld = [][]string{
	{"rating: 750 kg", "rating: 300 kg"},
	{"steel: 14 m", "steel: 5 m"},
	{"lowest: 4.5 m", "lowest: -4.5 m"},
	{trials.OnePick, trials.TwoPicks, "practice: {", "practice: {one_must_hold: yes, ", "capacity: 500 kg", "capacity: 250 kg"},
}

// TestEveryRuleIsFound: every rule of the table finds something in a random job, in one
// of the project's own or in an edit of the plain one, and is what its row says that it may be: a hold, a caution
// or either.
func TestEveryRuleIsFound(t *testing.T) {
	holds, cautions := map[string]bool{}, map[string]bool{}
	look := func(yaml string) {
		for _, h := range trials.OpenJob(t, yaml).Stacks {
			for _, f := range h.Holds {
				holds[f.Rule] = true
			}
			for _, f := range h.Cautions {
				cautions[f.Rule] = true
			}
		}
	}
	for seed := range int64(300) {
		look(trials.Gamble(50_000 + seed).Job())
	}
	for _, folder := range []string{"examples", "testdata/jobs"} {
		files, err := filepath.Glob(trials.File(folder + "/*.yaml"))
		require.NoError(t, err)
		for _, file := range files {
			look(trials.Text(t, folder+"/"+filepath.Base(file)))
		}
	}
	for _, edits := range rarelyHeld {
		look(trials.Edited(t, edits...))
	}
	for _, r := range rules.All() {
		assert.Equal(t, r.Severity == rules.Hold || r.Severity == rules.Either, holds[r.ID], "holds of %s: its row says what it may be; where nothing finds it, add an edit to rarelyHeld that it holds", r.ID)
		assert.Equal(t, r.Severity == rules.Caution || r.Severity == rules.Either, cautions[r.ID], "cautions of %s: its row says what it may be; where nothing gives one, add an edit to rarelyHeld that does", r.ID)
		delete(holds, r.ID)
		delete(cautions, r.ID)
	}
	assert.Empty(t, holds, "findings of no rule in the table")
	assert.Empty(t, cautions, "findings of no rule in the table")
}

// TestEveryRuleStandsInTheTable: a rule that is written and stands in no table is held
// against no stack.
func TestEveryRuleStandsInTheTable(t *testing.T) {
	files, err := filepath.Glob("*.go")
	require.NoError(t, err)
	written := 0
	for _, file := range files {
		if !strings.HasSuffix(file, "_test.go") {
			written += strings.Count(trials.Text(t, "paperwork/rules/"+file), "= Rule{ID: ")
		}
	}
	assert.Len(t, rules.All(), written, "rules that are written: give the new one its place in table (table.go)")
}

// TestRulesAreToldApart: each has an id of its own.
func TestRulesAreToldApart(t *testing.T) {
	seen := map[string]bool{}
	for _, r := range rules.All() {
		assert.False(t, seen[r.ID], r.ID)
		seen[r.ID] = true
	}
}
