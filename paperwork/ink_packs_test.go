package paperwork

import (
	"fmt"
	"math/rand"
	"os"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"hangpack/layouts/paper"
	"hangpack/paperwork/changes"
	"hangpack/paperwork/sheets"
	"hangpack/paperwork/worked"
	"hangpack/testdata/deep"
	"hangpack/testdata/trials"
)

// asked is a number from the environment, or the usual one.
func asked(name string, usual int64) int64 {
	n, err := strconv.ParseInt(os.Getenv(name), 10, 64)
	if err != nil {
		return usual
	}
	return n
}

// inkJob writes the job of a seed: a plausible one, with the usual names and with
// the longest, or one at the limits of what a job may give.
func inkJob(seed int64) string {
	if seed%3 > 0 {
		return crowdOf(seed - seed/3).job()
	}
	g := trials.Gamble(50_000 + seed)
	g.Wild = seed%2 == 1
	return g.Job()
}

// TestInk: every job that has no complaint packs, whole and in part, and so do the
// changes between two such jobs; and on all of this paper the laws of ink hold.
// INK_SEEDS is how many jobs, INK_FROM the first of them. The first 23 have every kind
// of crowd among them.
func TestInk(t *testing.T) {
	from := asked("INK_FROM", 0)
	for seed := from; seed < from+asked("INK_SEEDS", int64(deep.Of(23, 60))); seed++ {
		t.Run(fmt.Sprint(seed), func(t *testing.T) {
			t.Parallel()
			yaml := inkJob(seed)
			t.Cleanup(func() { keep(t, seed, yaml) })
			const small = 100
			if pages := inkHolds(t, yaml, seed); pages < small {
				changesHold(t, yaml, inkJob(seed+3))
			}
		})
	}
}

// keep says how a seed that failed is run again.
func keep(t *testing.T, seed int64, yaml string) {
	if t.Failed() {
		file := fmt.Sprintf("%s/ink-%d.yaml", os.TempDir(), seed)
		t.Logf("its job is %s (%v); again: INK_FROM=%d INK_SEEDS=1 go test ./paperwork -run TestInk", file, os.WriteFile(file, []byte(yaml), 0o644), seed)
	}
}

// inkHolds draws a job, whole and some of its sheets, looks at both, and returns how
// many pages it has.
func inkHolds(t *testing.T, yaml string, seed int64) int {
	t.Helper()
	j := trials.OpenJob(t, yaml)
	pdf, err := sheets.Draw(j)
	require.NoError(t, err)
	lawful(t, "the pack", pdf, j)
	r := rand.New(rand.NewSource(seed))
	only := Choice{Kinds: []string{Kinds()[r.Intn(len(Kinds()))]}, Stacks: []string{j.Stacks[r.Intn(len(j.Stacks))].ID}}
	part, err := DrawChosen(j, only)
	require.NoError(t, err)
	whole := byPage(pdf.Marks)
	for n, ink := range byPage(part.Marks) {
		require.Equal(t, whole[n], ink, "page %d of %v", n, only)
	}
	return pdf.Pages
}

// lawful reports what breaks a law of ink, up to a few lines.
func lawful(t *testing.T, what string, pdf paper.Drawn, j *worked.Job) {
	t.Helper()
	const few = 12
	faults := inkFaults(pdf, j.Letter)
	for _, f := range faults[:min(few, len(faults))] {
		t.Errorf("%s, %s", what, f)
	}
	if more := len(faults) - few; more > 0 {
		t.Errorf("%s, and %d more", what, more)
	}
}

// revised is a next revision of a job: every list of splays begins with what was its
// second one, and stacks that were panned to the right are panned to the left.
func revised(yaml string) string {
	yaml = regexp.MustCompile(`splay: \[([^],]*), ([^]]*)\]`).ReplaceAllString(yaml, "splay: [$2, $1]")
	yaml = regexp.MustCompile(`revision: .*`).ReplaceAllString(yaml, "revision: NNNNNN")
	return strings.ReplaceAll(yaml, "pan: -", "pan: ")
}

// changesHold compares a job with a next revision of it, and with another job.
func changesHold(t *testing.T, yaml, another string) {
	t.Helper()
	j := trials.OpenJob(t, yaml)
	for what, other := range map[string]string{"the next revision": revised(yaml), "another job": another} {
		k := trials.OpenJob(t, other)
		c := changes.Compare(j, k)
		pdf, err := c.Paper()
		require.NoError(t, err, what)
		lawful(t, "changes to "+what, pdf, k)
		_, err = c.Report()
		require.NoError(t, err)
	}
}

// TestInkOfAThousandPages: page numbers of four digits find room below codes, on
// spines and in lists, here of sixty stacks of forty cabinets, each on a dolly of its
// own: the most that a job may have. Each day the sheets of one stack are drawn, the
// last, and those of no stack, with the numbers that they have among all.
func TestInkOfAThousandPages(t *testing.T) {
	g := crowdOf(214)
	g.stacks, g.long, g.dollies = 60, true, 1
	j := trials.OpenJob(t, g.job())
	drawn := Choice{Kinds: Kinds(), Stacks: []string{j.Stacks[59].ID}}
	if deep.On() {
		drawn = Choice{}
	}
	pdf, err := DrawChosen(j, drawn)
	require.NoError(t, err)
	require.Greater(t, pdf.Of, 1000)
	lawful(t, "the pack", pdf, j)
}
