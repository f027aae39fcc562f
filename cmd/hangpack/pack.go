package main

import (
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
	if err := out.clash(j.Files()); err != nil {
		say(c.stderr, "pack: %v", err)
		return exitWrong
	}
	return c.draw(j, out)
}

// draw draws the pack and puts it where it goes.
func (c *call) draw(j *paperwork.Job, out outlet) int {
	paper, err := j.Draw()
	if err != nil {
		say(c.stderr, "%s: %v", c.operand, err)
		return exitFailed
	}
	fill := func(w io.Writer) error {
		_, err := w.Write(paper.PDF)
		return err
	}
	if out.stdout != nil {
		err = fill(out.stdout) // which keeps it to be said
	} else if err = replace(out.name, fill); err != nil {
		say(c.stderr, "cannot write %s: %v", out.name, err)
	}
	if err != nil {
		return exitFailed
	}
	if !c.has("q") {
		io.WriteString(c.aside(out), j.Summary(plain(out.name), paper.Pages))
	}
	return verdict(j)
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
		name = strings.TrimSuffix(c.operand, filepath.Ext(c.operand)) + ".pdf"
	}
	info, err := os.Stat(name)
	if name == "-" || err == nil && c.stdout.info != nil && os.SameFile(info, c.stdout.info) {
		return outlet{"standard output", c.stdout.info, c.stdout.terminal, c.stdout}
	}
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
		default:
			return fmt.Errorf("%s is %s, which the job reads; name another file with -o", out.name, file)
		}
	}
	return nil
}
