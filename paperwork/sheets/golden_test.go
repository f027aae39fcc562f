package sheets

import (
	"strings"
	"testing"

	"hangpack/testdata/trials"
)

// TestGoldens holds the ink of the examples' sheets: texts, where they stand and how
// tall they are, and a digest of each block's lines. A golden shows change and proves nothing: read the diff before
// you commit it, and say why the paper changed. UPDATE_GOLDEN=1 writes them.
func TestGoldens(t *testing.T) {
	for _, name := range trials.Examples {
		pdf, _ := paperOf(t, trials.OpenFile(t, "examples/"+name+".yaml"))
		trials.Golden(t, name+".txt", trials.InkIn(pdf, nil))
	}
}

// TestGoldenVenueSheets holds the venue's sheets of one point, of twenty-four in
// feet and pounds on Letter, and of the longest names.
func TestGoldenVenueSheets(t *testing.T) {
	for _, name := range []string{"one-point", "twenty-four-points", "longest-names"} {
		pdf, pages := paperOf(t, trials.OpenFile(t, "testdata/jobs/"+name+".yaml"))
		venues := map[int]bool{}
		for i, page := range pages {
			sheet := trials.SheetOf(trials.WordsOn(page))
			venues[i+1] = strings.HasPrefix(sheet, "COVER") || strings.HasPrefix(sheet, "POINTS") || strings.HasPrefix(sheet, "PLAN")
		}
		trials.Golden(t, name+".txt", trials.InkIn(pdf, venues))
	}
}

// TestGoldenLiftSheets holds the lift sheets and those of coming down of centres of
// gravity that are not known, of twenty-four cabinets in feet and pounds on Letter,
// of the longest names, and of one cabinet without a dolly.
func TestGoldenLiftSheets(t *testing.T) {
	for _, name := range []string{"unknown-centres", "twenty-four-cabinets", "longest-names", "one-cabinet"} {
		pdf, pages := paperOf(t, trials.OpenFile(t, "testdata/jobs/"+name+".yaml"))
		lifts := map[int]bool{}
		for i, page := range pages {
			_, sheet, _ := strings.Cut(trials.SheetOf(trials.WordsOn(page)), " ")
			lifts[i+1] = strings.HasPrefix(sheet, "LIFTS") || strings.HasPrefix(sheet, "DOWN")
		}
		trials.Golden(t, name+".lifts", trials.InkIn(pdf, lifts))
	}
}
