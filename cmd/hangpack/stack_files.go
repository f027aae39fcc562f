package main

import (
	"fmt"
	"path/filepath"

	"hangpack/paperwork"
	"hangpack/paperwork/worked"
)

// A stackFile is the PDF of one stack, which stands beside the pack for phones
// whose viewer does not go to a page.
type stackFile struct {
	outlet
	id string
}

// stackFiles are those of a job whose address tells stacks apart: SL.pdf beside the
// pack. Chosen sheets are written alone, and so is a pack on standard output.
func (t *task) stackFiles(j *worked.Job) (files []stackFile) {
	if !t.wantsStacks(j) || t.out.stdout != nil {
		return nil
	}
	for _, s := range j.Figures.Stacks {
		files = append(files, stackFile{fileOutlet(filepath.Join(filepath.Dir(t.out.name), s.ID+".pdf")), s.ID})
	}
	return files
}

// wantsStacks reports whether the whole pack is wanted of a job whose address tells
// stacks apart.
func (t *task) wantsStacks(j *worked.Job) bool {
	return !t.has("only") && !t.has("stack") && paperwork.TellsStacksApart(j)
}

// drawStacks draws what goes into the stack files, in their order. Where there are
// none because the pack goes to standard output, it says so.
func (t *task) drawStacks() ([]paperwork.StackPaper, error) {
	switch {
	case len(t.stacks) > 0:
		return paperwork.DrawStacks(t.job)
	case t.wantsStacks(t.job):
		t.tell(t.out, "no PDF per stack is written beside standard output\n")
	}
	return nil, nil
}

// clashes says which file would be written over by that of a stack: the pack, or
// one that the pack is made of.
func clashes(stacks []stackFile, pack outlet, made []string) error {
	for _, s := range stacks {
		if s.sameAs(pack) {
			return fmt.Errorf("%s is also the file of stack %s, since job.url has {stack}; name the pack otherwise with -o", pack.name, s.id)
		}
		if err := s.clash(made); err != nil {
			return err
		}
	}
	return nil
}
