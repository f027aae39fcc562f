// Package paperwork opens a job and draws its pack, or those of its sheets that are
// chosen.
package paperwork

import (
	"strings"

	"hangpack/layouts/paper"
	"hangpack/paperwork/sheets"
	"hangpack/paperwork/worked"
)

// DrawChosen sets the chosen sheets on paper, with the page numbers and codes that
// they have in the whole pack.
func DrawChosen(j *worked.Job, c Choice) (paper.Drawn, error) {
	laid, sheets, err := sheets.Lay(j)
	if err != nil {
		return paper.Drawn{}, err
	}
	return laid.Draw(func(i int) bool { return c.takes(sheets[i]) })
}

// A StackPaper is the sheets of one stack.
type StackPaper struct {
	ID string
	paper.Drawn
}

// TellsStacksApart reports whether the job's address is another one for each stack.
func TellsStacksApart(j *worked.Job) bool { return strings.Contains(j.URL, "{stack}") }

// DrawStacks sets the sheets of each stack on paper of its own, with the page
// numbers and codes that they have in the whole pack.
func DrawStacks(j *worked.Job) (papers []StackPaper, err error) {
	laid, sheets, err := sheets.Lay(j)
	if err != nil {
		return nil, err
	}
	for _, h := range j.Stacks {
		pdf, err := laid.Draw(func(i int) bool { return sheets[i].Stack == h.ID })
		if err != nil {
			return nil, err
		}
		papers = append(papers, StackPaper{h.ID, pdf})
	}
	return papers, nil
}
