package main

import (
	"encoding/json"
	"maps"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/paperwork"
	"hangpack/paperwork/rules"
	"hangpack/testdata/trials"
)

// TestHeldStackLeaksNothing: whichever rule holds a stack, no output for people names a
// hole of it, by label or by splay, or a pick hole of its bar: no sheet and no code of the
// pack or of chosen sheets, neither check nor a sentence of its data, nor the venue's
// table, nor changes to or from that revision.
func TestHeldStackLeaksNothing(t *testing.T) {
	t.Chdir(t.TempDir())
	moved := movedJob(t)
	for _, r := range rules.All() {
		if r.Severity == rules.Caution {
			continue
		}
		t.Run(r.ID, func(t *testing.T) {
			yaml := heldJob(t, r.ID)
			ids, by := heldOf(t, yaml)
			require.Equal(t, []string{"HELD"}, ids)
			require.Contains(t, by, r.ID)
			leaksNothing(t, yaml, moved)
		})
	}
	for name, yaml := range map[string]string{
		"unknown centres":       replaced(t, heldJob(t, "hoist"), "{behind_hinge: 190 mm, below_hinge: 145 mm}", "not_known"),
		"another hole would do": replaced(t, twinsJob(), heldPick, "pick_hole: XEG", "{down: 25 deg", "{down: 5.3 deg"),
		"both twins":            strings.ReplaceAll(twinsJob(), "capacity: 500 kg", "capacity: 250 kg"),
	} {
		t.Run(name, func(t *testing.T) {
			h := trials.OpenJob(t, yaml).Stack("HELD")
			require.True(t, h.Held())
			require.Equal(t, name == "another hole would do", h.OtherHole)
			leaksNothing(t, yaml, moved)
		})
	}
}

// TestLeaksAreFound: of the same job with no stack held the same search finds holes in
// every output but those that never name any, so that it would find a leak there; and all
// of them in the pack and at the terminal.
func TestLeaksAreFound(t *testing.T) {
	t.Chdir(t.TempDir())
	yaml := twinsJob()
	ids, _ := heldOf(t, yaml)
	require.Empty(t, ids)
	all := outputs(t, yaml, movedJob(t))
	var without []string
	for _, name := range slices.Sorted(maps.Keys(all)) {
		if len(leaksIn(all[name])) == 0 {
			without = append(without, name)
		}
	}
	assert.Equal(t, []string{"pack -only kit", "pack -only points", "points", "points -csv"}, without)
	for _, name := range []string{"pack", "check"} {
		assert.Subset(t, leaksIn(all[name]), append(slices.Concat(heldLabels, heldSplays), "XFH"), name)
	}
}

// leaksNothing holds all outputs of a job whose stack HELD is held, and of its changes
// from and to another revision, to what a held stack keeps to itself. The figures of its
// data are whole all the same: programs depend on them.
func leaksNothing(t *testing.T, yaml, other string) {
	t.Helper()
	for name, text := range outputs(t, yaml, other) {
		if leaks := leaksIn(text); len(leaks) > 0 {
			i := strings.Index(strings.ToUpper(text), leaks[0])
			assert.Fail(t, "a held stack's holes are named", "%s: %v, as in …%s…", name, leaks, text[max(0, i-80):min(len(text), i+40)])
		}
	}
	assert.Subset(t, leaksIn(printed(t, "check job.yaml -json")), heldSplays)
	for _, f := range findingsOf(t, yaml) {
		tellsNoAim(t, f)
	}
}

var aims = regexp.MustCompile(`[0-9]° (down|up)`)

// tellsNoAim: a finding of a held stack tells no aim that it would have, since a pick hole
// can be worked out of it, but where the hold is of that. What is wanted may be told.
func tellsNoAim(t *testing.T, f rules.Finding) {
	t.Helper()
	if f.Rule != "bar_tilt" && !strings.HasPrefix(f.Says, "aim wanted: ") {
		assert.NotRegexp(t, aims, f.Says, f.Rule)
	}
}

// findingsOf are those of the stack HELD.
func findingsOf(t *testing.T, yaml string) []rules.Finding {
	t.Helper()
	h := trials.OpenJob(t, yaml).Stack("HELD")
	return slices.Concat(h.Holds, h.Cautions)
}

var wordsOf = regexp.MustCompile(`[A-Z0-9.]*[A-Z0-9]`)

// leaksIn are what stands in a text, as a word of its own, of all that a held stack keeps
// to itself.
func leaksIn(text string) (found []string) {
	said := map[string]bool{}
	for _, word := range wordsOf.FindAllString(strings.ToUpper(text), -1) {
		said[word] = true
	}
	for _, hole := range slices.Concat(heldLabels, heldSplays, heldPicks) {
		if said[hole] {
			found = append(found, hole)
		}
	}
	return found
}

// outputs are all that hangpack prints and writes of a job for people, and of its changes
// to and from another revision, each by the command that does.
func outputs(t *testing.T, yaml, other string) map[string]string {
	t.Helper()
	require.NoError(t, os.WriteFile("job.yaml", []byte(yaml), 0o644))
	require.NoError(t, os.WriteFile("other.yaml", []byte(other), 0o644))
	all := map[string]string{"check -json": sentencesOf(t, printed(t, "check job.yaml -json"))}
	for _, command := range []string{"check", "points", "points -csv"} {
		all[command] = printed(t, command+" job.yaml")
	}
	for _, way := range []string{"changes job.yaml other.yaml", "changes other.yaml job.yaml"} {
		all[way+" -json"] = printed(t, way+" -json")
		all[way] = printedAndWritten(t, way)
	}
	all["pack"] = printedAndWritten(t, "pack job.yaml")
	all["pack -stack"] = printedAndWritten(t, "pack job.yaml -stack HELD")
	for _, kind := range paperwork.Kinds() {
		all["pack -only "+kind] = printedAndWritten(t, "pack job.yaml -only "+kind)
	}
	return all
}

// printed is what a command prints, which does its work whether a stack is held or not.
func printed(t *testing.T, command string) string {
	t.Helper()
	out, errs, code := apart(t, "hangpack "+command)
	require.Contains(t, []int{exitDone, exitHeld}, code, errs)
	return out + errs
}

// printedAndWritten is what a command prints and what its PDF says, texts and codes.
func printedAndWritten(t *testing.T, command string) string {
	t.Helper()
	said := []string{printed(t, command+" -o written.pdf")}
	pdf, err := os.ReadFile("written.pdf")
	require.NoError(t, err)
	require.NoError(t, os.Remove("written.pdf")) // which is not the next one's own
	for _, page := range trials.Contents(t, pdf) {
		if _, read := pagesSaid[page]; !read {
			pagesSaid[page] = textsOn(t, page)
		}
		said = append(said, pagesSaid[page]...)
	}
	return strings.Join(said, "\n")
}

// pagesSaid are the texts of pages that were read: chosen sheets are those of the pack.
var pagesSaid = map[string][]string{}

// textsOn are the texts of a page, and what its codes say.
func textsOn(t *testing.T, page string) (all []string) {
	t.Helper()
	for _, w := range trials.WordsOn(page) {
		all = append(all, w.S)
	}
	return append(all, trials.CodesOn(t, page)...)
}

// sentencesOf are all sentences of the figures: what holds and cautions say.
func sentencesOf(t *testing.T, figures string) string {
	t.Helper()
	type finding struct{ Says string }
	var f struct {
		Stacks []struct{ Holds, Cautions []finding }
	}
	require.NoError(t, json.Unmarshal([]byte(figures), &f))
	var all []string
	for _, s := range f.Stacks {
		for _, one := range slices.Concat(s.Holds, s.Cautions) {
			all = append(all, one.Says)
		}
	}
	require.NotEmpty(t, all)
	return strings.Join(all, "\n")
}
