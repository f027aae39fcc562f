package main

import (
	"cmp"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"

	"hangpack/paperwork"
)

// pack writes the pack of a job and says what it wrote. Whether it may be
// written there is settled before anything is drawn.
func pack(c *call) int {
	out := c.outlet()
	if err := out.refuses(); err != nil {
		say(c.stderr, "pack: %v", err)
		return exitWrong
	}
	j, code, ok := c.open()
	if !ok {
		return code
	}
	choice, err := j.Choose(c.flags["only"], c.flags["stack"])
	if err == nil {
		err = out.clash(j.Files())
	}
	if err != nil {
		say(c.stderr, "pack: %v", err)
		return exitWrong
	}
	return c.draw(j, choice, out)
}

// draw draws the pack, and the sheets of each stack that go into files of their
// own, and then puts them where they go.
func (c *call) draw(j *paperwork.Job, choice paperwork.Choice, out outlet) int {
	paper, err := j.DrawChosen(choice)
	stacks, more := c.stackFiles(j, out)
	if err = cmp.Or(err, more); err != nil {
		say(c.stderr, "%s: %v", c.operand(), err)
		return exitFailed
	}
	if err := clashes(stacks, out, j.Files()); err != nil {
		say(c.stderr, "pack: %v", err)
		return exitWrong
	}
	if !c.put(out, paper.PDF) {
		return exitFailed
	}
	c.tell(out, j.Summary(plain(out.name), paper))
	for _, s := range stacks {
		if !c.put(s.outlet, s.PDF) {
			return exitFailed
		}
		c.tell(out, fmt.Sprintf("wrote %s, %d of %d pages\n", plain(s.name), s.Pages, s.Of))
	}
	return verdict(j)
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

// An outlet is where a pack goes.
type outlet struct {
	name   string      // as the user gave it
	info   os.FileInfo // of what is there; nil where nothing is
	screen bool
	stdout *stream // nil where it goes to a file
}

// outlet is where the call's pack goes: standard output also where it is named
// as a file, since the summary must not get into the pack.
func (c *call) outlet() outlet {
	name, given := c.flags["o"]
	if !given {
		name = strings.TrimSuffix(c.operand(), filepath.Ext(c.operand())) + c.chosenSuffix() + ".pdf"
	}
	info, err := os.Stat(name)
	if name == "-" || err == nil && c.stdout.info != nil && os.SameFile(info, c.stdout.info) {
		return outlet{"standard output", c.stdout.info, c.stdout.terminal, c.stdout}
	}
	return fileOutlet(name)
}

// chosenSuffix tells a file of chosen sheets from that of the whole pack, which it
// must not replace unasked: '-pins-SL'.
func (c *call) chosenSuffix() (suffix string) {
	for _, flag := range []string{"only", "stack"} {
		if c.has(flag) {
			suffix += "-" + strings.NewReplacer(",", "-", " ", "", "/", "", "\\", "").Replace(c.flags[flag])
		}
	}
	return suffix
}

// fileOutlet is a file, which may be there already.
func fileOutlet(name string) outlet {
	info, err := os.Stat(name)
	if err != nil {
		return outlet{name: name}
	}
	return outlet{name: name, info: info, screen: isTerminal(info)}
}

// aside is where that is said which must not get into the pack.
func (c *call) aside(out outlet) *stream {
	if out.stdout != nil {
		return c.stderr
	}
	return c.stdout
}

// refuses says why no pack goes there whatever the job.
func (out outlet) refuses() error {
	if out.screen {
		return errors.New("a PDF is not for a terminal; name a file with -o, or send it on with > or |")
	}
	return nil
}

// clash says which of the files that a pack is made of it would overwrite; the
// job comes first among them. Links and other spellings of a name are seen
// through.
func (out outlet) clash(files []string) error {
	for i, file := range files {
		info, err := os.Stat(file)
		switch {
		case err != nil || out.info == nil || !os.SameFile(info, out.info):
		case i == 0:
			return fmt.Errorf("%s is the job itself; name another file with -o", out.name)
		case out.name == file:
			return fmt.Errorf("%s is read for it; name another file with -o", out.name)
		default:
			return fmt.Errorf("%s is %s, which the job reads; name another file with -o", out.name, file)
		}
	}
	return nil
}
