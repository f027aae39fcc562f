package report_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"hangpack/paperwork/report"
	"hangpack/paperwork/say"
	"hangpack/testdata/trials"
)

// TestGoldenReports holds what check and points print for people.
func TestGoldenReports(t *testing.T) {
	for _, name := range trials.Examples {
		j := trials.OpenFile(t, "examples/"+name+".yaml")
		trials.Golden(t, name+".check", report.Check(j))
		trials.Golden(t, name+".points", report.Points(j))
	}
}

// TestReportFitsItsColumns: whatever the names, a report is 100 columns wide.
func TestReportFitsItsColumns(t *testing.T) {
	for seed := range int64(60) {
		g := trials.Gamble(seed)
		g.Wild = seed%2 == 0
		for _, line := range strings.Split(report.Check(trials.OpenJob(t, g.Job())), "\n") {
			assert.LessOrEqual(t, len([]rune(line)), say.Columns, "seed %d: %s", seed, line)
		}
	}
}
