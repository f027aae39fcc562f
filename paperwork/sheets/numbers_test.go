package sheets

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/layouts/paper"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// A printedPage is a page as it names itself: its sheet, and the mark beside REV.
type printedPage struct{ sheet, mark string }

var spineFoot = regexp.MustCompile(`^REV (\S+)  ([2-9A-Z]{4}) · ([0-9]+) of ([0-9]+)$`)

// namedPages reads which sheet each page is, and sees that all pages of a sheet follow
// one another, count themselves, and have one mark on the spine and beside REV.
func namedPages(t *testing.T, j *worked.Job, pages []string) (all []printedPage) {
	t.Helper()
	var says []string
	for _, page := range pages {
		words := trials.WordsOn(page)
		m := spineFoot.FindStringSubmatch(words[1].S)
		require.NotNil(t, m, words[1].S)
		assert.Equal(t, j.Revision, m[1])
		beside := slices.ContainsFunc(words[2:], func(w trials.Word) bool { return w.S == m[2] })
		assert.True(t, beside, "%s %s: no mark %s beside REV", words[0].S, m[3], m[2])
		all = append(all, printedPage{words[0].S, m[2]})
		says = append(says, m[3]+" of "+m[4])
	}
	for i := 0; i < len(all); {
		n := 1
		for i+n < len(all) && all[i+n] == all[i] {
			n++
		}
		for k := range n {
			assert.Equal(t, fmt.Sprintf("%d of %d", k+1, n), says[i+k], all[i].sheet)
		}
		i += n
	}
	return all
}

// TestPageNumbers: every page says which of its sheet's pages it is, and the cover has
// the mark and the pages of every sheet. Goldens leave these out.
func TestPageNumbers(t *testing.T) {
	listed := 0
	for name, j := range trials.ReadJobs(t) {
		_, pages := paperOf(t, j)
		all := namedPages(t, j, pages)
		first := map[string]int{}
		for i, p := range all {
			if first[p.sheet] == 0 {
				first[p.sheet] = i + 1
			}
		}
		rows := coverRows(pages, all)
		assert.Len(t, rows, len(first), name)
		for sheet, row := range rows {
			listed++
			require.NotZero(t, first[sheet], "%s: %s is in no pack", name, sheet)
			page, last, _ := strings.Cut(row[1], "-")
			assert.Equal(t, fmt.Sprint(first[sheet]), page, "%s: page of %s", name, sheet)
			if last != "" {
				assert.Equal(t, sheet, all[int(trials.Number(last))-1].sheet, "%s: last page of %s", name, sheet)
			}
			assert.Equal(t, all[first[sheet]-1].mark, row[0], "%s: mark of %s", name, sheet)
		}
	}
	require.Greater(t, listed, 200)
}

var (
	onlyMark = regexp.MustCompile(`^[2-9AC-HJ-NP-RT-Y]{4}$`)
	onlyPage = regexp.MustCompile(`^p\. [0-9]+(-[0-9]+)?$`)
)

// coverRows are the mark and the page that the cover has for each sheet: three words on
// a line.
func coverRows(pages []string, all []printedPage) map[string][2]string {
	rows := map[string][2]string{}
	for i, page := range pages {
		if all[i].sheet != "COVER" {
			continue
		}
		words := trials.WordsOn(page)
		for k := 0; k+2 < len(words); k++ {
			if !onlyMark.MatchString(words[k+1].S) || !onlyPage.MatchString(words[k+2].S) || words[k].Y != words[k+1].Y {
				continue
			}
			rows[words[k].S] = [2]string{words[k+1].S, strings.TrimPrefix(words[k+2].S, "p. ")}
			k += 2
		}
	}
	return rows
}

// TestCodesLeadToTheirSheets: every address in a code leads to the sheet that it stands
// on, by its name or by its page; those of the cover to the pins of each stack. Codes of
// text name the stack, the revision and the mark of their sheet.
func TestCodesLeadToTheirSheets(t *testing.T) {
	addresses := 0
	for name, j := range trials.ReadJobs(t) {
		pdf, pages := paperOf(t, j)
		all := namedPages(t, j, pages)
		for _, m := range pdf.Marks {
			if m.Kind != "code" {
				continue
			}
			on := all[m.Page-1]
			if !strings.HasPrefix(m.Text, "http") {
				assert.Contains(t, m.Text, fmt.Sprintf(" REV %s %s ", strings.ToUpper(j.Revision), on.mark), "%s: %s", name, on.sheet)
				continue
			}
			addresses++
			leadsTo(t, m, on.sheet, all)
		}
	}
	require.Greater(t, addresses, 40)
}

var (
	byName = regexp.MustCompile(`#nameddest=([A-Z0-9-]+)$`)
	byPage = regexp.MustCompile(`(?:#page=|/)([0-9]+)$`)
)

// leadsTo holds where the address of a code leads against the sheet that it stands on.
func leadsTo(t *testing.T, m paper.Mark, on string, all []printedPage) {
	t.Helper()
	if says := byName.FindStringSubmatch(m.Text); says != nil {
		if on == "COVER" {
			assert.Regexp(t, "-PINS$", says[1])
			assert.True(t, slices.ContainsFunc(all, func(p printedPage) bool { return strings.ReplaceAll(p.sheet, " ", "-") == says[1] }), m.Text)
			return
		}
		assert.Equal(t, strings.ReplaceAll(on, " ", "-"), says[1])
	}
	if says := byPage.FindStringSubmatch(m.Text); says != nil {
		to := int(trials.Number(says[1]))
		require.LessOrEqual(t, to, len(all), m.Text)
		if on == "COVER" {
			on = strings.Fields(all[to-1].sheet)[0] + " PINS"
		}
		assert.Equal(t, on, all[to-1].sheet)
		assert.True(t, to == 1 || all[to-2].sheet != on, "%s: not the first page of %s", m.Text, on)
	}
}
