package sheets

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/layouts/paper"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// solid is a text without its blanks, so that it does not matter where lines
// were broken.
func solid(s string) string { return strings.Join(strings.Fields(s), "") }

// cautionPages reads the texts of a pack's caution pages, without blanks, and
// how many pages they are. None is small, and no ink runs off the page.
func cautionPages(t *testing.T, j *worked.Job) (string, []paper.Mark, int) {
	t.Helper()
	pdf, pages := paperOfKind(t, j, "cautions")
	var b strings.Builder
	var marks []paper.Mark
	n, bottom := 0, 287.0
	if j.Letter {
		bottom = 269.4
	}
	for i, page := range pages {
		words := trials.WordsOn(page)
		if !strings.HasPrefix(trials.SheetOf(words), "CAUTIONS") {
			continue
		}
		n++
		for _, w := range words {
			assert.Greater(t, w.Pt, 8.49, w.S)
			b.WriteString(w.S)
		}
		for _, m := range pdf.Marks {
			if m.Page == i+1 {
				assert.Less(t, m.Y1, bottom+0.5, m.Text)
				marks = append(marks, m)
			}
		}
	}
	require.NotZero(t, n)
	return solid(b.String()), marks, n
}

// TestCautionsReadBack finds on paper every word that the sheet has: findings,
// general cautions each with its source, roles, criteria each with its source
// and a box to tick.
func TestCautionsReadBack(t *testing.T) {
	for name, j := range trials.ReadJobs(t) {
		text, marks, _ := cautionPages(t, j)
		s := cautionSheet(j)
		want := append([]string{s.Hoist, s.Sources, s.Anyone.Do + s.Anyone.Says + s.Anyone.From}, s.Rules...)
		for _, stack := range s.Stacks {
			for _, item := range stack.Items {
				want = append(want, item.Says)
			}
		}
		for _, g := range printedGenerals(j) {
			want = append(want, g.Do+g.Says+g.From)
		}
		for _, c := range append(s.Checks.Items, s.Checks.When) {
			want = append(want, c.Thing+c.Out+c.From)
		}
		for _, r := range s.Roles {
			want = append(want, r.Is+r.Does+"nameradio,phone")
		}
		for _, w := range want {
			assert.True(t, strings.Contains(text, solid(w)), "%s: %q is not on paper", name, w)
		}
		boxes := 0
		for _, m := range marks {
			if m.Kind == "rect" && m.X1-m.X0 > 5.99 && m.X1-m.X0 < 6.01 && m.Y1-m.Y0 > 5.99 {
				boxes++
			}
		}
		assert.Equal(t, len(criteria), boxes, "%s: boxes to tick", name)
	}
}

// TestLongestWordsFit: the longest that a job may say of hoist and secondary,
// and the most twins, find room.
func TestLongestWordsFit(t *testing.T) {
	const steel = "    steel: 14 m\n"
	for _, long := range []string{strings.Repeat("W", 48), strings.Repeat("Wm ", 15) + "WWW"} {
		j := trials.OpenJob(t, trials.Edited(t, steel, steel+"    secondary: {what: "+long+", rating: 1 t}\n", "hoist: {capacity", "hoist: {class: "+long+", capacity"))
		text, _, _ := cautionPages(t, j)
		assert.Equal(t, 2, strings.Count(text, solid(long)))
	}
	head, stack, _ := strings.Cut(trials.Plain, "  - id: SL\n")
	for i := range 60 { // as many as a job may have
		head += fmt.Sprintf("  - id: WWWW%d\n", 10+i) + strings.Replace(stack, "stage_left: 8.2 m", fmt.Sprintf("stage_left: %d m", i), 1)
	}
	for _, pdf := range []string{"", "paper: {size: Letter}\n"} {
		j := trials.OpenJob(t, pdf+head)
		require.Len(t, cautionSheet(j).Stacks, 1)
		cautionPages(t, j)
		require.Equal(t, 60, openItemsOf(j, "Not known: no secondary named: ask the venue"), "each stack stands at the item, however many rows it takes")
	}
}

// openItemsOf counts the stacks and gear entries at which an open item stands.
func openItemsOf(j *worked.Job, says string) (n int) {
	for _, o := range openItems(j) {
		if o.Says == says {
			n += len(strings.Split(o.Where, ", "))
		}
	}
	return n
}

// TestHoistIsAMotor: where the sheet first says hoist, it says that crews call
// it motor.
func TestHoistIsAMotor(t *testing.T) {
	for name, j := range trials.ReadJobs(t) {
		text, _, _ := cautionPages(t, j)
		first := strings.Index(text, "chainhoist")
		require.Positive(t, first, name)
		assert.True(t, strings.HasPrefix(text[first:], "chainhoist(motor)"), name)
		assert.Less(t, first, strings.Index(text, "Whoanswersforwhat"), name)
	}
}

// TestTwinsShareTheirCautions: stacks of which the very same was found stand
// over one list, held ones first; an ordinary job takes two pages.
func TestTwinsShareTheirCautions(t *testing.T) {
	open := func(name string) *worked.Job { return trials.OpenFile(t, "examples/"+name+".yaml") }
	s := cautionSheet(open("concert"))
	require.Len(t, s.Stacks, 1)
	assert.Equal(t, "SL", s.Stacks[0].Of[0].ID)
	assert.Equal(t, "SR", s.Stacks[0].Of[1].ID)
	_, _, pages := cautionPages(t, open("concert"))
	assert.Equal(t, 2, pages)
	s = cautionSheet(open("held"))
	require.Len(t, s.Stacks, 2)
	assert.Equal(t, "D2", s.Stacks[0].Of[0].ID)
	assert.True(t, strings.HasPrefix(s.Stacks[0].Items[0].Says, "HELD. "))
}
