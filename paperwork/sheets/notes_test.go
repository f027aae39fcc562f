package sheets

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/testdata/trials"
)

// noted is the plain job with a note of its own and one of its stack, and three stacks
// more: a twin that gives no note, a twin that gives another one, and one that is held.
func noted(t *testing.T) string {
	return trials.Edited(t, "revision: A}", "revision: A, note: Doors at noon}", "  - id: SL\n", "  - id: SL\n    note: Mind the balcony rail\n") +
		"  - {id: MUTE, twin_of: SL, place: {stage_right: 8.2 m, downstage: 0.6 m}}\n" +
		"  - {id: OTHER, twin_of: SL, note: Cable from above, place: {stage_right: 18 m, downstage: 0.6 m}}\n" +
		"  - {id: LOW, twin_of: SL, note: Hole D of joint 5, steel: 5 m, place: {stage_left: 18 m, downstage: 0.6 m}}\n"
}

// TestNotes: a note is on the cover, and of a stack also on its pin sheet. A twin has its
// own or none, and that of a held stack is nowhere.
func TestNotes(t *testing.T) {
	j := trials.OpenJob(t, noted(t))
	require.True(t, j.Stacks[3].Held())
	_, pages := paperOf(t, j)
	cover := trials.TextOf(pages, "COVER")
	assert.Contains(t, cover, "Note Doors at noon Stacks")
	_, rows, _ := strings.Cut(cover, "Stacks")
	for id, note := range map[string]string{"SL": "Note: Mind the balcony rail", "MUTE": "", "OTHER": "Note: Cable from above", "LOW": "Note: not printed while it is held"} {
		_, row, _ := strings.Cut(rows, " "+id+" "+id+" · ")
		row, _, _ = strings.Cut(strings.Replace(row, "DO NOT FLY:", "held:", 1), id+map[bool]string{true: " DO NOT FLY", false: " PINS"}[id == "LOW"])
		require.NotEmpty(t, row, id)
		assert.Equal(t, note != "", strings.Contains(row, "Note:"), id)
		assert.Contains(t, row, note, id)
		pins := trials.TextOf(pages, id+" PINS")
		printed := note != "" && id != "LOW"
		assert.Equal(t, printed, strings.Contains(pins, "Note:"), id)
		if printed {
			assert.Contains(t, pins, note, id)
		}
	}
	assert.NotContains(t, trials.TextOf(pages, ""), "Hole D")
}

// TestNoteOnFirstPinSheet: of a stack whose pin sheet takes several pages the first has its note.
func TestNoteOnFirstPinSheet(t *testing.T) {
	yaml := trials.Text(t, "testdata/jobs/twenty-four-cabinets.yaml")
	yaml = strings.Replace(yaml, "    bar: ", "    note: Mind the balcony rail\n    bar: ", 1)
	j := trials.OpenJob(t, yaml)
	_, pages := paperOf(t, j)
	var pins []string
	for _, page := range pages {
		if text := trials.TextOf([]string{page}, j.Stacks[0].ID+" PINS"); text != "" {
			pins = append(pins, text)
		}
	}
	require.Greater(t, len(pins), 1)
	assert.Contains(t, pins[0], "Note: Mind the balcony rail")
	assert.NotContains(t, strings.Join(pins[1:], " "), "Note:")
}

// TestLongestNotes: notes of the most and the widest characters wrap, and nothing of them
// is lost; drawing them is an error where they find no room.
func TestLongestNotes(t *testing.T) {
	for _, note := range []string{strings.Repeat("W", 240), strings.Repeat("Wm ", 79) + "Wm."} {
		yaml := strings.NewReplacer("Doors at noon", note, "Mind the balcony rail", note).Replace(noted(t))
		_, pages := paperOf(t, trials.OpenJob(t, yaml))
		solid := func(s string) string { return strings.ReplaceAll(s, " ", "") }
		assert.Equal(t, 2, strings.Count(solid(trials.TextOf(pages, "COVER")), solid(note)))
		assert.Equal(t, 1, strings.Count(solid(trials.TextOf(pages, "SL PINS")), solid(note)))
	}
}
