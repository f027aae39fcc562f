package paperwork

import (
	"fmt"
	"hash/fnv"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/layouts"
	"hangpack/paperwork/worked"
)

// examples are the jobs of the examples folder, by name.
var examples = []string{"concert", "arena", "held", "club"}

// openFile reads a job file that has no complaint.
func openFile(t *testing.T, file string) *worked.Job {
	t.Helper()
	text, err := os.ReadFile(file)
	require.NoError(t, err)
	return open(t, string(text))
}

// TestGoldens holds the ink of the examples' sheets: texts, where they stand and how
// tall they are, and a digest of each block's lines. A golden shows change and proves nothing: read the diff before
// you commit it, and say why the paper changed. UPDATE_GOLDEN=1 writes them.
func TestGoldens(t *testing.T) {
	for _, name := range examples {
		paper, _ := paperOf(t, openFile(t, "../examples/"+name+".yaml"))
		golden(t, name+".txt", inkIn(paper, nil))
	}
}

// TestGoldenVenueSheets holds the venue's sheets of one point, of twenty-four in
// feet and pounds on Letter, and of the longest names.
func TestGoldenVenueSheets(t *testing.T) {
	for _, name := range []string{"one-point", "twenty-four-points", "longest-names"} {
		paper, pages := paperOf(t, openFile(t, "../testdata/jobs/"+name+".yaml"))
		venues := map[int]bool{}
		for i, page := range pages {
			sheet := sheetOf(wordsOn(page))
			venues[i+1] = strings.HasPrefix(sheet, "COVER") || strings.HasPrefix(sheet, "POINTS") || strings.HasPrefix(sheet, "PLAN")
		}
		golden(t, name+".txt", inkIn(paper, venues))
	}
}

// TestGoldenLiftSheets holds the lift sheets and those of coming down of centres of
// gravity that are not known, of twenty-four cabinets in feet and pounds on Letter,
// of the longest names, and of one cabinet without a dolly.
func TestGoldenLiftSheets(t *testing.T) {
	for _, name := range []string{"unknown-centres", "twenty-four-cabinets", "longest-names", "one-cabinet"} {
		paper, pages := paperOf(t, openFile(t, "../testdata/jobs/"+name+".yaml"))
		lifts := map[int]bool{}
		for i, page := range pages {
			_, sheet, _ := strings.Cut(sheetOf(wordsOn(page)), " ")
			lifts[i+1] = strings.HasPrefix(sheet, "LIFTS") || strings.HasPrefix(sheet, "DOWN")
		}
		golden(t, name+".lifts", inkIn(paper, lifts))
	}
}

// TestGoldenChanges holds the sheet of changes and its report: of the example, and
// of twenty-four cabinets in feet and pounds on Letter that all move.
func TestGoldenChanges(t *testing.T) {
	long := "../testdata/jobs/twenty-four-cabinets.yaml"
	text, err := os.ReadFile(long)
	require.NoError(t, err)
	straight := regexp.MustCompile(`splay: .*}`).ReplaceAllString(string(text), "splay: ["+strings.Repeat("1, ", 23)+"1]}")
	straight = strings.Replace(straight, "splay_holes: [0,", "splay_holes_for: joint_above\n      splay_holes: [0,", 1)
	for name, c := range map[string]Changes{
		"concert":              Compare(openFile(t, "../examples/concert.yaml"), openFile(t, "../examples/concert-c.yaml")),
		"twenty-four-cabinets": Compare(openFile(t, long), open(t, strings.Replace(straight, "revision: D", "revision: E", 1))),
	} {
		paper, err := c.Paper()
		require.NoError(t, err)
		golden(t, name+".changes", inkIn(paper, nil))
		report, err := c.Report()
		require.NoError(t, err)
		golden(t, name+".changed", report)
	}
}

// inkIn is the texts of a pack, of all pages or of those that are wanted, and after
// those of a block how many lines and outlines it has, with a digest of where they
// stand and what they are drawn with.
func inkIn(paper layouts.Paper, wanted map[int]bool) string {
	var b strings.Builder
	last, strokes, digest := layouts.Mark{}, 0, fnv.New32a()
	end := func() {
		if strokes > 0 {
			fmt.Fprintf(&b, "%2d  %-10s %d drawn %08x\n", last.Page, last.Block, strokes, digest.Sum32())
		}
		strokes, digest = 0, fnv.New32a()
	}
	for _, m := range paper.Marks {
		if m.Page != last.Page || m.In != last.In {
			end()
		}
		last = m
		switch {
		case wanted != nil && !wanted[m.Page]:
		case m.Text != "":
			fmt.Fprintf(&b, "%2d  %-10s %6.1f %6.1f %5.1f  %s\n", m.Page, m.Block, m.X0, m.Y1, m.Pt, m.Text)
		default:
			strokes++
			fmt.Fprintf(digest, "%s %.1f %.1f %.1f %.1f %.1f %.1f %d;", m.Kind, m.X0, m.Y0, m.X1, m.Y1, m.Corners, m.Pen, m.Fill)
		}
	}
	end()
	return b.String()
}

// golden holds what was got to what was written, or writes it.
func golden(t *testing.T, name, got string) {
	t.Helper()
	file := filepath.Join("..", "testdata", "golden", name)
	if os.Getenv("UPDATE_GOLDEN") != "" {
		require.NoError(t, os.WriteFile(file, []byte(got), 0o644))
	}
	want, err := os.ReadFile(file)
	require.NoError(t, err, "make it with UPDATE_GOLDEN=1 go test ./paperwork")
	assert.Equal(t, strings.Split(string(want), "\n"), strings.Split(got, "\n"), "%s: read the diff, then UPDATE_GOLDEN=1 go test ./paperwork", name)
}

// TestGoldenReports holds what check and points print for people.
func TestGoldenReports(t *testing.T) {
	for _, name := range examples {
		j := openFile(t, "../examples/"+name+".yaml")
		golden(t, name+".check", Check(j))
		golden(t, name+".points", Points(j))
	}
}

// TestReportFitsItsColumns: whatever the names, a report is 100 columns wide.
func TestReportFitsItsColumns(t *testing.T) {
	for seed := range int64(60) {
		g := gamble(seed)
		g.wild = seed%2 == 0
		for _, line := range strings.Split(Check(open(t, g.job())), "\n") {
			assert.LessOrEqual(t, len([]rune(line)), Columns, "seed %d: %s", seed, line)
		}
	}
}
