package sheets

import (
	"fmt"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/paperwork/report"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// Holes whose labels are letters: wherever one is named, its degrees stand beside it.

// lettered is the plain job with a letter for each hole, and its degrees.
func lettered(t *testing.T, edits ...string) (*worked.Job, map[string]string) {
	t.Helper()
	degrees := map[string]string{"A": "0", "C": "0.5", "D": "1", "E": "2", "F": "3", "G": "4", "T": "12"}
	var list []string
	for _, label := range []string{"A", "C", "D", "E", "F", "G", "T"} {
		list = append(list, fmt.Sprintf("{label: %s, splay: %s}", label, degrees[label]))
	}
	holes := "splay_holes: [" + strings.Join(list, ", ") + "]"
	return trials.OpenJob(t, trials.Edited(t, append([]string{"splay_holes: [0, 0.5, 1, 2, 3, 4, 12]", holes + "\n      transport: T",
		"      rating: 750 kg\n", "      " + holes + "\n      rating: 750 kg\n", "splay: [0, 0.5,", "splay: [1, 0.5,"}, edits...)...)), degrees
}

var letteredHole = regexp.MustCompile(`\bhole ([A-Z])\b(?: \(([0-9.]+)°\))?`)

// TestDegreesStandBesideLetters reads every hole that the paper and the check name.
func TestDegreesStandBesideLetters(t *testing.T) {
	for name, tt := range map[string]struct {
		edits []string
		said  map[string][]string // of each kind of sheet
	}{
		"dollies": {nil, map[string][]string{
			"SL DOLLY A": {"hole D (1°) goes with dolly B", "joints above cabinets 2 to 4: pins to hole T (12°); then release"},
			"SL DOLLY B": {"joints above cabinets 6 to 8: pins to hole T (12°); then release"},
			"SL LIFTS":   {"its link in hole D (1°).", "then link, hole D (1°)."},
			"SL DOWN":    {"link pins out, to hole T (12°), locked"},
		}},
		"sheets of one set": {[]string{"    dolly: dolly\n", "", "count: 8, splay: [1, 0.5, 0.5, 1, 1, 2, 3, 4]", "count: 9, splay: [1, 0.5, 0.5, 1, 1, 2, 3, 4, 0]"}, map[string][]string{
			"SL CABINETS 1-8": {"hole A (0°) on the next sheet", "pins to hole T (12°)"},
		}},
	} {
		j, degrees := lettered(t, tt.edits...)
		require.False(t, j.Stacks[0].Held(), "%v", j.Stacks[0].Holds)
		_, pages := paperOf(t, j)
		for sheet, says := range tt.said {
			for _, s := range says {
				assert.Contains(t, trials.TextOf(pages, sheet), s, "%s: %s", name, sheet)
			}
		}
		named := letteredHole.FindAllStringSubmatch(trials.TextOf(pages, "")+report.Check(j), -1)
		assert.NotEmpty(t, named)
		for _, m := range named {
			assert.Equal(t, degrees[m[1]], m[2], "%s: %s", name, m[0])
		}
	}
}

// TestDegreesStandBesideLettersInTables: on the tabs, beside the drawing and in the check.
func TestDegreesStandBesideLettersInTables(t *testing.T) {
	j, degrees := lettered(t)
	_, pages := paperOf(t, j)
	check := strings.Join(strings.Fields(report.Check(j)), " ")
	for k, label := range []string{"D", "C", "C", "D", "D", "E", "F", "G"} {
		assert.Contains(t, check, fmt.Sprintf(" %d %s (%s°) %d box ", k+1, label, degrees[label], k+1))
	}
	for sheet, each := range map[string]int{"SL PINS": 8, "SL DOLLY A": 4, "SL DOLLY B": 4} {
		drawn, tabs := 0, 0
		for _, page := range pages {
			words := trials.WordsOn(page)
			if !strings.HasPrefix(trials.SheetOf(words), sheet) {
				continue
			}
			for i, w := range words {
				label, beside, _ := strings.Cut(w.S, " ")
				switch {
				case degrees[w.S] != "" && i+1 < len(words) && words[i+1].S == degrees[w.S]+"°":
					tabs++
				case degrees[label] != "" && beside == "("+degrees[label]+"°)":
					drawn++
				case degrees[w.S] != "" && w.S != "A":
					assert.Fail(t, "a letter without its degrees", "%s: %s", sheet, w.S)
				}
			}
		}
		assert.Equal(t, each, tabs, "tabs of %s", sheet)
		assert.Equal(t, map[string]int{"SL PINS": 8}[sheet], drawn, "beside the drawing of %s", sheet)
	}
}

// TestCodesNameLabelsAlone: the text of a code stays short, and in the letters of its mode.
func TestCodesNameLabelsAlone(t *testing.T) {
	j, _ := lettered(t)
	assert.Contains(t, pinText(j.Stacks[0].Hung, 1, 8), " 1:D 2:C 3:C 4:D 5:D 6:E 7:F 8:G")
}
