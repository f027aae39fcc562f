package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"hangpack/paperwork"
)

// A stackFile is the PDF of one stack, which stands beside the pack for phones
// whose viewer does not go to a page.
type stackFile struct {
	outlet
	paperwork.StackPaper
}

// stackFiles are those of a job whose address tells stacks apart: SL.pdf beside the
// pack. Chosen sheets are written alone, and so is a pack on standard output, where
// that is said.
func (c *call) stackFiles(j *paperwork.Job, out outlet) (files []stackFile, err error) {
	switch {
	case c.has("only") || c.has("stack") || !j.TellsStacksApart():
		return nil, nil
	case out.stdout != nil:
		c.tell(out, "no PDF per stack is written beside standard output\n")
		return nil, nil
	}
	papers, err := j.DrawStacks()
	for _, p := range papers {
		files = append(files, stackFile{fileOutlet(filepath.Join(filepath.Dir(out.name), p.ID+".pdf")), p})
	}
	return files, err
}

// clashes says which file would be written over by that of a stack: the pack, or
// one that the pack is made of.
func clashes(stacks []stackFile, pack outlet, made []string) error {
	for _, s := range stacks {
		if s.sameAs(pack) {
			return fmt.Errorf("%s is also the file of stack %s, since job.url has {stack}; name the pack otherwise with -o", pack.name, s.ID)
		}
		if err := s.clash(made); err != nil {
			return err
		}
	}
	return nil
}

// sameAs reports whether two places are one file, links and other spellings seen
// through.
func (out outlet) sameAs(other outlet) bool {
	if out.info != nil && other.info != nil {
		return os.SameFile(out.info, other.info)
	}
	return strings.EqualFold(filepath.Base(out.name), filepath.Base(other.name))
}
