package paperwork

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"hangpack/layouts/paper"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/sheets"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// arena reads the example of 58 pages.
func arena(b *testing.B) *worked.Job {
	b.Helper()
	text, err := os.ReadFile(trials.File("examples/arena.yaml"))
	if err != nil {
		b.Fatal(err)
	}
	j, complaints, err := Open("arena.yaml", strings.NewReader(string(text)), trials.GearFile)
	if err != nil || complaints != nil {
		b.Fatal(complaints, err)
	}
	return j
}

// BenchmarkOpen reads and works out the arena example.
func BenchmarkOpen(b *testing.B) {
	for b.Loop() {
		arena(b)
	}
}

// BenchmarkThousandStacks works out the figures of 1,000 stacks of 16 cabinets that
// are read already, in every lift, from each hoist alone and against every rule.
func BenchmarkThousandStacks(b *testing.B) {
	j := *arena(b).Job
	one := j.Stacks[0]
	if len(one.Cabinets) != 16 || len(one.Picks) != 2 {
		b.Fatal("the arena's first stack is no longer one of 16 cabinets on two hoists")
	}
	j.Stacks = make([]job.Stack, 1000)
	for i := range j.Stacks {
		j.Stacks[i] = one
	}
	for b.Loop() {
		stacks := make([]*rules.Checked, len(j.Stacks))
		for i := range j.Stacks {
			h, err := rig.Hang(&j, &j.Stacks[i])
			if err != nil {
				b.Fatal(err)
			}
			stacks[i] = rules.Check(h)
		}
		worked.FiguresOf(&j, stacks)
	}
}

// BenchmarkPack draws the arena example.
func BenchmarkPack(b *testing.B) {
	j := arena(b)
	for b.Loop() {
		if _, err := sheets.Draw(j); err != nil {
			b.Fatal(err)
		}
	}
}

// again is a sheet once more, under a name of its own.
type again struct {
	paper.Sheet
	n int
}

func (a again) Name() string { return fmt.Sprint(a.Sheet.Name(), " ", a.n) }

// BenchmarkPages draws the stacks' sheets of the arena example again and again, to
// packs of about 60, 600 and 3,000 pages: time and memory for each page.
func BenchmarkPages(b *testing.B) {
	j := arena(b)
	for _, times := range []int{1, 11, 56} {
		var all []paper.Sheet
		for n := range times {
			for _, s := range sheets.All(j) {
				if s.Stack != "" {
					all = append(all, again{s.Sheet, n})
				}
			}
		}
		pack, err := sheets.PackOf(j, all)
		if err != nil {
			b.Fatal(err)
		}
		b.Run(fmt.Sprint(times), func(b *testing.B) {
			pages := 0
			b.ReportAllocs()
			for b.Loop() {
				pdf, err := paper.DrawAll(pack)
				if err != nil {
					b.Fatal(err)
				}
				pages = pdf.Pages
			}
			b.ReportMetric(float64(pages), "pages")
			b.ReportMetric(float64(b.Elapsed().Microseconds())/1000/float64(b.N*pages), "ms/page")
		})
	}
}
