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

// TestPointsReportFitsItsColumns: whatever the names, the table is 100 columns
// wide, and nothing of it is lost.
func TestPointsReportFitsItsColumns(t *testing.T) {
	for seed := range int64(60) {
		g := trials.Gamble(seed)
		g.Wild = seed%2 == 0
		j := trials.OpenJob(t, g.Job())
		points := report.Points(j)
		for _, line := range strings.Split(points, "\n") {
			assert.LessOrEqual(t, len([]rune(line)), say.Columns, "seed %d: %s", seed, line)
		}
		u := say.Units{Imperial: j.Imperial}
		for _, s := range j.Figures.Stacks {
			for _, p := range s.Points {
				for _, figure := range []string{p.ID, u.Across(p.StageLeft), u.UpDown(p.Downstage), u.Load(p.Static), u.Load(p.Design), u.Length(p.PickHeight), u.Known(p.HighHook), say.Percent(p.HoistUse)} {
					assert.Contains(t, points, figure)
				}
			}
		}
	}
}

// TestPushedLinksHaveASign: a link that is pushed by more than a newton stands with a
// minus before its force.
func TestPushedLinksHaveASign(t *testing.T) {
	for n, force := range map[float64]string{-2500: "  -2.50 kN  ", 2500: "   2.50 kN  ", -0.9: "   0.01 kN  "} {
		j := trials.OpenJob(t, trials.Plain)
		j.Stacks[0].Finished.Joints[7].Link = n
		assert.Contains(t, report.Check(j), force, "%g N", n)
	}
}

// TestOthersThatMeetAreTold: two points that carry no stack and meet stand below the other
// points, at a terminal as on POINTS.
func TestOthersThatMeetAreTold(t *testing.T) {
	text := strings.Join(strings.Fields(report.Check(trials.OpenFile(t, "testdata/jobs/points-meet.yaml"))), " ")
	assert.Contains(t, text, "L1 and L2 are 0.14 m apart in plan, within 0.30 m: hoists and chains may touch")
}
