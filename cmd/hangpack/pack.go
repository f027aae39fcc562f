package main

import (
	"cmp"
	"fmt"
	"io"

	"hangpack/layouts/paper"
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

// write draws what goes into the job's files, and then puts it there, over nothing that is
// not their own.
func (t *task) write() int {
	old, err := t.overOwn()
	if err != nil {
		return t.wrong(err)
	}
	pdf, stacks, err := t.draw()
	if err != nil {
		say(t.stderr, "%s: %v", t.operand(), err)
		return exitFailed
	}
	if !t.put(t.placed(pdf, stacks)...) {
		return exitFailed
	}
	t.pages = pdf.Pages
	t.tellWritten(pdf, stacks)
	if says := mixedUp(t.out.name, old, pdf.Colophon); says != "" {
		say(t.stderr, "%s", says)
	}
	return verdict(t.job)
}

// draw draws the pack, and the sheets of each stack that go into files of their own.
func (t *task) draw() (paper.Drawn, []paperwork.StackPaper, error) {
	pdf, err := paperwork.DrawChosen(t.job, t.choice)
	stacks, more := t.drawStacks()
	return pdf, stacks, cmp.Or(err, more)
}

// placed are the PDFs of the job with where they go.
func (t *task) placed(pdf paper.Drawn, stacks []paperwork.StackPaper) []placed {
	all := []placed{{t.out, pdf.PDF}}
	for i, s := range stacks {
		all = append(all, placed{t.stacks[i].outlet, s.PDF})
	}
	return all
}

// tellWritten says which files were written.
func (t *task) tellWritten(pdf paper.Drawn, stacks []paperwork.StackPaper) {
	summary := report.Summary
	if t.among {
		summary = report.ShortSummary
	}
	t.tell(t.out, summary(t.job, plain(t.out.name), pdf))
	for i, s := range stacks {
		out := t.stacks[i].outlet
		t.tell(out, fmt.Sprintf("wrote %s, %d of %d pages\n", plain(out.name), s.Pages, s.Of))
	}
}

// tell says what was written, unless the call is to be quiet.
func (c *call) tell(out outlet, says string) {
	if !c.has("q") {
		io.WriteString(c.aside(out), says)
	}
}

// A placed PDF is one with where it goes.
type placed struct {
	outlet
	pdf []byte
}

// put puts PDFs where they go, all or none, and reports whether they are there. On
// standard output one stands alone.
func (c *call) put(papers ...placed) bool {
	var files []fresh
	for _, p := range papers {
		fill := func(w io.Writer) error {
			_, err := w.Write(p.pdf)
			return err
		}
		if p.stdout != nil {
			return fill(p.stdout) == nil // which keeps it to be said
		}
		files = append(files, fresh{p.name, fill})
	}
	failed, err := together(files...)
	if err != nil {
		say(c.stderr, "cannot write %s: %v", failed, err)
	}
	return err == nil
}
