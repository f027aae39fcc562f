// Package paperwork opens a job, and draws its pack or the sheets that are chosen of it.
package paperwork

import (
	"strings"

	"hangpack/layouts/paper"
	"hangpack/paperwork/sheets"
	"hangpack/paperwork/worked"
)

// DrawChosen sets the chosen sheets on paper, with the page numbers and codes that they
// have in the whole pack. An error is of what does not fit on paper; choosing nothing
// draws no page.
func DrawChosen(j *worked.Job, c Choice) (paper.Drawn, error) {
	laid, all, err := sheets.Lay(j)
	if err != nil {
		return paper.Drawn{}, err
	}
	return laid.Draw(func(i int) bool { return c.takes(all[i]) })
}

// A StackPaper is the sheets of one stack.
type StackPaper struct {
	ID string
	paper.Drawn
}

// TellsStacksApart reports whether each stack has an address of its own in job.url.
func TellsStacksApart(j *worked.Job) bool { return strings.Contains(j.URL, "{stack}") }

// DrawStacks sets the sheets of each stack on paper of its own, in the order of the job,
// with the page numbers and codes that they have in the whole pack. An error is of what
// does not fit on paper.
func DrawStacks(j *worked.Job) (papers []StackPaper, err error) {
	laid, all, err := sheets.Lay(j)
	if err != nil {
		return nil, err
	}
	for _, h := range j.Stacks {
		drawn, err := laid.DrawStack(h.ID, func(i int) bool { return all[i].Stack == h.ID })
		if err != nil {
			return nil, err
		}
		papers = append(papers, StackPaper{h.ID, drawn})
	}
	return papers, nil
}
