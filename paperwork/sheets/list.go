// Package sheets turns a worked job into the words and drawings of its sheets, in the
// order of the pack. What a sheet says stands in a file of its name; how it looks, in
// layouts.
package sheets

import (
	"fmt"
	"time"

	"hangpack/layouts/paper"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/worked"
)

// A Sheet is one sheet of a pack: which kind it is of, and the stack it belongs to,
// "" where it is of the whole job.
type Sheet struct {
	Kind, Stack string
	paper.Sheet
}

// A Kind is a kind of sheet, by the word that chooses it; OfJob is one of the whole job,
// else it is of each stack.
type Kind struct {
	Name  string
	OfJob bool
}

// Order is the kinds of sheets that may be chosen, in the order of the pack.
var Order = []Kind{{"cover", true}, {"points", true}, {"pins", false}, {"dollies", false}, {"lifts", false}, {"down", false}, {"calculation", false}, {"kit", true}, {"cautions", true}}

// DoNotFly is the kind of the one sheet of a held stack. It cannot be chosen, nor
// left out where any sheet of its stack is wanted.
const DoNotFly = "do not fly"

// Version is printed small on the cover.
const Version = "hangpack 0.1"

// All are all sheets of a pack in their order: the cover and what the venue
// reads, then those of each stack, then the kit and the cautions.
func All(j *worked.Job) []Sheet {
	all := []Sheet{{"points", "", pointSheet(j)}, {"points", "", planSheet(j)}}
	for _, h := range j.Stacks {
		all = append(all, stackSheets(h)...)
	}
	all = append(all, Sheet{"kit", "", kitSheet(j)}, Sheet{"cautions", "", cautionSheet(j)})
	return append([]Sheet{{"cover", "", coverSheet(j, all)}}, all...)
}

// stackSheets are the sheets of one stack in their order: or in place of them all one
// page that says why it must not be flown.
func stackSheets(h *rules.Checked) (sheets []Sheet) {
	add := func(kind string, s paper.Sheet) { sheets = append(sheets, Sheet{kind, h.ID, s}) }
	if h.Held() {
		add(DoNotFly, doNotFlySheet(h))
		return sheets
	}
	add("pins", pinSheet(h))
	for _, s := range dollySheets(h.Hung) {
		add("dollies", s)
	}
	add("lifts", liftSheet(h))
	add("down", downSheet(h))
	add("calculation", calculationSheet(h))
	return sheets
}

// Lay cuts the whole pack into pages, and returns its sheets as paper numbers them. An
// error is of what does not fit on paper.
func Lay(j *worked.Job) (*paper.Laid, []Sheet, error) {
	sheets := All(j)
	var all []paper.Sheet
	for _, s := range sheets {
		all = append(all, s.Sheet)
	}
	pack, err := PackOf(j, all)
	if err != nil {
		return nil, nil, err
	}
	laid, err := paper.Lay(pack)
	return laid, sheets, err
}

// Draw sets the whole pack on paper. An error is of what does not fit there.
func Draw(j *worked.Job) (paper.Drawn, error) {
	laid, _, err := Lay(j)
	if err != nil {
		return paper.Drawn{}, err
	}
	return laid.Draw(func(int) bool { return true })
}

// PackOf is some sheets as a pack of this job. An error is of a date that job.Read would
// have refused.
func PackOf(j *worked.Job, sheets []paper.Sheet) (paper.Pack, error) {
	day, err := time.Parse("2006-01-02", j.Date)
	if err != nil {
		return paper.Pack{}, fmt.Errorf("date of the job: %w", err)
	}
	return paper.Pack{
		Letter: j.Letter, Title: j.Title + ", revision " + j.Revision, Day: day, Sheets: sheets,
		Revision: j.Revision, Spine: paper.Spine{Title: j.Title, Venue: j.Venue, Date: j.Date},
	}, nil
}
