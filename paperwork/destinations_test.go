package paperwork

import (
	"fmt"
	"math/rand"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/layouts/paper"
	"hangpack/paperwork/sheets"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// A readPack is a pack, or some sheets of it, as qpdf and pdfcpu read its file: what
// leads to its pages, and the words of each page with the sheet that its spine names.
type readPack struct {
	*testing.T
	of string // says which pack in a failure
	outlined
	content []string
	words   [][]trials.Word
	sheets  []string       // of each page
	first   map[string]int // page of each sheet, counted from 1
}

var nthOfSheet = regexp.MustCompile(`^REV \S+  ([2-9A-Z]{4}) · ([0-9]+) of ([0-9]+)$`)

// readBack reads a file with both. They have to read the same.
func readBack(t *testing.T, of string, pdf []byte) *readPack {
	t.Helper()
	p := &readPack{T: t, of: of, first: map[string]int{}}
	p.outlined, p.content = byLibrary(t, pdf)
	assert.Equal(t, byProgram(t, pdf), p.outlined, "%s: qpdf and pdfcpu read it otherwise", of)
	for i, content := range p.content {
		words := trials.WordsOn(content)
		p.words, p.sheets = append(p.words, words), append(p.sheets, words[0].S)
		if m := nthOfSheet.FindStringSubmatch(words[1].S); assert.NotNil(t, m, words[1].S) && m[2] == "1" {
			p.first[words[0].S] = i + 1
		}
	}
	return p
}

// destinationOf is what a sheet is called where blanks cannot stand.
func destinationOf(sheet string) string { return strings.ReplaceAll(sheet, " ", "-") }

// namesLead: names are sorted, which readers that search them by halves rely on, and are
// those of all sheets that are drawn, each of its first page. Source: ISO 32000-1, 7.9.6.
func (p *readPack) namesLead() {
	want := map[string]int{}
	for sheet, page := range p.first {
		want[destinationOf(sheet)] = page
	}
	got, last := map[string]int{}, ""
	for _, n := range p.Names {
		assert.Less(p, last, n.Name, "%s: names out of order", p.of)
		got[n.Name], last = n.Page, n.Name
	}
	assert.Equal(p, want, got, p.of)
}

// bookmarksLead: there is one for each page, in their order, by the name of its sheet.
func (p *readPack) bookmarksLead() {
	var want []named
	for i, sheet := range p.sheets {
		m := nthOfSheet.FindStringSubmatch(p.words[i][1].S)
		if m[3] != "1" {
			sheet += " " + m[2] + " of " + m[3]
		}
		want = append(want, named{sheet, i + 1})
	}
	assert.Equal(p, want, p.Bookmarks, p.of)
}

// TestDestinations: what leads to the sheets of a file leads to them, read back by two
// other programs, in whole packs, in some sheets of them and in the files of stacks.
func TestDestinations(t *testing.T) {
	files, names, clicks, codes := 0, 0, 0, 0
	for of, j := range trials.ReadJobs(t) {
		drawn, err := sheets.Draw(j)
		require.NoError(t, err)
		whole := readBack(t, of, drawn.PDF)
		codes += whole.codesLead(whole)
		clicks += whole.everyClick(j)
		for which, part := range partsOf(t, j, int64(len(drawn.PDF))) {
			p := readBack(t, of+", "+which, part.PDF)
			p.namesLead()
			p.bookmarksLead()
			codes += p.codesLead(whole)
			clicks += p.clicksLead()
			names, files = names+len(p.Names), files+1
		}
		whole.namesLead()
		whole.bookmarksLead()
		names, files = names+len(whole.Names), files+1
	}
	t.Logf("%d files, %d names, %d clicks, %d codes with an address", files, names, clicks, codes)
	require.Greater(t, codes, 40)
	require.Greater(t, clicks, 400)
}

// partsOf are some sheets of a job's pack: those of some kinds, and those of each stack.
func partsOf(t *testing.T, j *worked.Job, seed int64) map[string]paper.Drawn {
	t.Helper()
	all := map[string]paper.Drawn{}
	r := rand.New(rand.NewSource(seed))
	for _, first := range []string{"cover", "dollies"} {
		kinds := []string{first}
		for _, k := range Kinds() {
			if k != first && r.Intn(3) == 0 {
				kinds = append(kinds, k)
			}
		}
		drawn, err := DrawChosen(j, Choice{Kinds: kinds})
		require.NoError(t, err)
		if drawn.Pages > 0 {
			all[fmt.Sprint(kinds)] = drawn
		}
	}
	stacks, err := DrawStacks(j)
	require.NoError(t, err)
	for _, s := range stacks {
		all["stack "+s.ID] = s.Drawn
	}
	return all
}

var (
	byNameOf = regexp.MustCompile(`#nameddest=(.*)$`)
	byPageOf = regexp.MustCompile(`(?:#page=|/)([0-9]+)$`)
)

// codesLead: what the codes of a file say, as they are drawn, is in the whole pack: the
// name or the page of the sheet that they stand on, or on the cover, of the pins of a
// stack whose name stands under the code.
func (p *readPack) codesLead(whole *readPack) (addresses int) {
	for i, content := range p.content {
		for _, code := range trials.CodesOn(p.T, content) {
			to, says := 0, byNameOf.FindStringSubmatch(code)
			if says != nil {
				to = pageNamed(whole.Names, says[1])
				assert.NotZero(p, to, "%s: %s leads nowhere", p.of, code)
			} else if says = byPageOf.FindStringSubmatch(code); says == nil {
				continue
			} else if to = int(trials.Number(says[1])); !assert.LessOrEqual(p, to, len(whole.sheets), "%s: %s", p.of, code) {
				continue
			}
			addresses++
			on := p.sheets[i]
			if on == "COVER" {
				on = whole.sheets[to-1]
				assert.Regexp(p, " PINS$", on, "%s: %s on the cover", p.of, code)
			}
			assert.Equal(p, whole.first[on], to, "%s: %s on %s leads to %s", p.of, code, on, whole.sheets[to-1])
		}
	}
	return addresses
}

// pageNamed is the page of a name, 0 where there is none.
func pageNamed(names []named, name string) int {
	if i := slices.IndexFunc(names, func(n named) bool { return n.Name == name }); i >= 0 {
		return names[i].Page
	}
	return 0
}
