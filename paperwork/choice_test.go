package paperwork

import (
	"cmp"
	"fmt"
	"math/rand"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/layouts/paper"
	"hangpack/paperwork/sheets"
	"hangpack/paperwork/worked"
	"hangpack/testdata/deep"
	"hangpack/testdata/trials"
)

// byPage is the ink of each page.
func byPage(marks []paper.Mark) map[int][]paper.Mark {
	pages := map[int][]paper.Mark{}
	for _, m := range marks {
		pages[m.Page] = append(pages[m.Page], m)
	}
	return pages
}

// kindOf is the kind of a page, by the words of its spine, and its stack.
func kindOf(t *testing.T, j *worked.Job, words []paper.Mark) (kind, stack string) {
	t.Helper()
	name := ""
	for _, m := range words {
		if m.Text != "" {
			name = m.Text
			break
		}
	}
	first, rest, _ := strings.Cut(name, " ")
	for _, h := range j.Stacks {
		if h.ID == first {
			stack = first
		}
	}
	if stack == "" {
		rest = name
	}
	begins := map[string]string{"points": "POINTS|PLAN", "dollies": "DOLLY|CABINET", "held": "DO NOT FLY"}
	for _, kind := range append(Kinds(), "held") {
		if regexp.MustCompile("^(" + cmp.Or(begins[kind], strings.ToUpper(kind)) + ")").MatchString(rest) {
			return kind, stack
		}
	}
	require.Fail(t, "which sheet is this?", name)
	return "", ""
}

// TestChosenSheets: a page that is written alone has the very ink that it has in
// the whole pack, number and code included; and of the pages of the whole just
// those are written that are asked for.
func TestChosenSheets(t *testing.T) {
	ofJob := map[string]bool{}
	for _, k := range sheets.Order {
		ofJob[k.Name] = k.OfJob
	}
	for name, j := range trials.ReadJobs(t) {
		whole, err := sheets.Draw(j)
		require.NoError(t, err)
		pages, r := byPage(whole.Marks), rand.New(rand.NewSource(int64(len(whole.PDF))))
		for range deep.Of(1, 3) {
			var only, stacks []string
			for _, k := range Kinds() {
				if r.Intn(3) == 0 {
					only = append(only, k)
				}
			}
			for _, h := range j.Stacks {
				if r.Intn(2) == 0 {
					stacks = append(stacks, h.ID)
				}
			}
			c, err := Choose(j, strings.Join(only, ","), strings.Join(stacks, ","))
			require.NoError(t, err)
			pdf, err := DrawChosen(j, c)
			require.NoError(t, err)
			got := byPage(pdf.Marks)
			assert.Equal(t, len(pages), pdf.Of)
			assert.Equal(t, len(got), pdf.Pages)
			for n, ink := range pages {
				kind, stack := kindOf(t, j, ink)
				want := stack == "" && slices.Contains(only, kind) || stack == "" && len(only)+len(stacks) == 0
				if stack != "" && (len(stacks) == 0 || slices.Contains(stacks, stack)) {
					crew := slices.ContainsFunc(only, func(k string) bool { return !ofJob[k] })
					want = len(only) == 0 || slices.Contains(only, kind) || kind == "held" && crew
				}
				if want {
					assert.Equal(t, ink, got[n], "%s: page %d with %v of %v", name, n, only, stacks)
				} else {
					assert.Empty(t, got[n], "%s: page %d with %v of %v", name, n, only, stacks)
				}
			}
			assert.LessOrEqual(t, farthest(t, string(pdf.PDF)), pdf.Pages, "%s: a click to a page that is not there", name)
		}
	}
}

// TestChoices: which sheets of the example of which a stack is held are taken.
func TestChoices(t *testing.T) {
	j := trials.OpenFile(t, "examples/held.yaml")
	for _, tt := range []struct{ kinds, stacks, takes string }{
		{"", "", "cover points kit cautions D1 D2"},
		{"", "D2", "D2"},
		{"", "D1,D2", "D1 D2"},
		{"kit", "", "kit"},
		{"kit", "D1", "kit"},
		{"kit,pins", "D2", "kit D2"},
		{"pins", "", "D1 D2"},
	} {
		c, err := Choose(j, tt.kinds, tt.stacks)
		require.NoError(t, err)
		var takes []string
		for _, s := range sheets.All(j) {
			if of := cmp.Or(s.Stack, s.Kind); c.takes(s) && !slices.Contains(takes, of) {
				takes = append(takes, of)
			}
		}
		assert.ElementsMatch(t, strings.Fields(tt.takes), takes, "%q of %q", tt.kinds, tt.stacks)
	}
}

// farthest is the page that lies furthest back of those that clicks and bookmarks
// of a PDF lead to.
func farthest(t *testing.T, pdf string) (last int) {
	t.Helper()
	var pages []string
	for _, m := range regexp.MustCompile(`(?s)([0-9]+) 0 obj\s*<<\s*/Type /Page\s`).FindAllStringSubmatch(pdf, -1) {
		pages = append(pages, m[1])
	}
	for _, m := range regexp.MustCompile(`/Dest \[([0-9]+) 0 R`).FindAllStringSubmatch(pdf, -1) {
		i := slices.Index(pages, m[1])
		require.GreaterOrEqual(t, i, 0, "%s is no page", m[0])
		last = max(last, i+1)
	}
	return last
}

// TestClicksOfChosenSheets: what can be clicked leads to the page that its number
// names.
func TestClicksOfChosenSheets(t *testing.T) {
	j := trials.OpenFile(t, "examples/concert.yaml")
	whole, err := sheets.Draw(j)
	require.NoError(t, err)
	some, err := DrawChosen(j, Choice{Kinds: []string{"cover", "pins"}})
	require.NoError(t, err)
	dests := func(pdf string) (all []int) {
		for _, m := range regexp.MustCompile(`/Subtype /Link.*?/Dest \[([0-9]+) 0 R`).FindAllStringSubmatch(pdf, -1) {
			n, _ := strconv.Atoi(m[1])
			all = append(all, n)
		}
		return all
	}
	pins := 0 // the page of SL PINS in the whole; of those written it is the second
	for n, ink := range byPage(whole.Marks) {
		if kind, stack := kindOf(t, j, ink); kind == "pins" && stack == "SL" {
			pins = n
		}
	}
	require.Greater(t, pins, 2)
	page := func(n int) int { return 2*n + 1 } // the object that it is in a PDF
	inWhole, inSome := dests(string(whole.PDF)), dests(string(some.PDF))
	assert.Contains(t, inWhole, page(pins))
	assert.Contains(t, inSome, page(2))
	assert.NotContains(t, inSome, page(pins))
	assert.Less(t, len(inSome), len(inWhole))
}

// TestStackPapers: the PDFs of the stacks are together all of their pages, each
// once, with the numbers of the whole pack; a held stack has its one page.
func TestStackPapers(t *testing.T) {
	for name, j := range trials.ReadJobs(t) {
		papers, err := DrawStacks(j)
		require.NoError(t, err)
		assert.Equal(t, strings.Contains(j.URL, "{stack}"), TellsStacksApart(j), name)
		whole, err := sheets.Draw(j)
		require.NoError(t, err)
		pages := byPage(whole.Marks)
		for _, p := range papers {
			for n, ink := range byPage(p.Marks) {
				_, stack := kindOf(t, j, ink)
				assert.Equal(t, p.ID, stack, "%s: page %d", name, n)
				assert.Equal(t, pages[n], ink, "%s: page %d", name, n)
				delete(pages, n)
			}
		}
		for n, ink := range pages {
			_, stack := kindOf(t, j, ink)
			assert.Empty(t, stack, fmt.Sprintf("%s: page %d is in no PDF of a stack", name, n))
		}
	}
}
