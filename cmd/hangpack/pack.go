package main

import (
	"cmp"
	"fmt"
	"io"

	"hangpack/paperwork"
	"hangpack/paperwork/report"
	"hangpack/paperwork/worked"
)

// pack writes the packs of jobs and says what it wrote.
func pack(c *call) int {
	if len(c.operands) > 1 {
		return packSeveral(c)
	}
	t := &task{call: c}
	if t.code = t.settle(); t.code == exitDone {
		t.code = t.write()
	}
	return t.code
}

// A task is one job to be packed.
type task struct {
	*call  // with this job alone
	job    *worked.Job
	choice paperwork.Choice
	out    outlet
	stacks []stackFile
	among  bool // several
	code   int
	pages  int // that were written
}

// settle reads the job and settles whether its pack may be written where it goes,
// before anything is drawn.
func (t *task) settle() int {
	t.out = t.outlet()
	if err := t.out.refuses(t.among); err != nil {
		return t.wrong(err)
	}
	j, code, ok := t.open()
	if !ok {
		return code
	}
	t.job, t.stacks = j, t.stackFiles(j)
	choice, err := paperwork.Choose(j, t.flags["only"], t.flags["stack"])
	t.choice = choice
	if err = cmp.Or(err, t.out.clash(j.Files()), clashes(t.stacks, t.out, j.Files())); err != nil {
		return t.wrong(err)
	}
	return exitDone
}

// wrong says why the job is not packed, by its name where it is one of several.
func (t *task) wrong(err error) int {
	name := ""
	if t.among {
		name = t.operand() + ": "
	}
	say(t.stderr, "pack: %s%v", name, err)
	return exitWrong
}

// write draws the pack, and the sheets of each stack that go into files of their
// own, and then puts them where they go.
func (t *task) write() int {
	pdf, err := paperwork.DrawChosen(t.job, t.choice)
	stacks, more := t.drawStacks()
	if err = cmp.Or(err, more); err != nil {
		say(t.stderr, "%s: %v", t.operand(), err)
		return exitFailed
	}
	if !t.put(t.out, pdf.PDF) {
		return exitFailed
	}
	t.pages = pdf.Pages
	summary := report.Summary
	if t.among {
		summary = report.ShortSummary
	}
	t.tell(t.out, summary(t.job, plain(t.out.name), pdf))
	for i, s := range stacks {
		out := t.stacks[i].outlet
		if !t.put(out, s.PDF) {
			return exitFailed
		}
		t.tell(out, fmt.Sprintf("wrote %s, %d of %d pages\n", plain(out.name), s.Pages, s.Of))
	}
	return verdict(t.job)
}

// tell says what was written, unless the call is to be quiet.
func (c *call) tell(out outlet, says string) {
	if !c.has("q") {
		io.WriteString(c.aside(out), says)
	}
}

// put puts a PDF where it goes and reports whether it is there.
func (c *call) put(out outlet, pdf []byte) bool {
	fill := func(w io.Writer) error {
		_, err := w.Write(pdf)
		return err
	}
	if out.stdout != nil {
		return fill(out.stdout) == nil // which keeps it to be said
	}
	if err := replace(out.name, fill); err != nil {
		say(c.stderr, "cannot write %s: %v", out.name, err)
		return false
	}
	return true
}
