package main

import (
	"fmt"
	"io"

	"hangpack/layouts/paper"
	"hangpack/paperwork/changes"
	"hangpack/paperwork/worked"
)

// changesOf prints what moved between two revisions of a job, and writes the sheet of
// that where the line says so.
func changesOf(c *call) int {
	var out outlet // of the sheet, if there is to be one
	if c.has("o") {
		out = c.outlet()
	}
	if err := c.refusesChanges(out); err != nil {
		say(c.stderr, "changes: %v", err)
		return exitWrong
	}
	old, new, code := c.both()
	if code != exitDone {
		return code
	}
	moved := changes.Compare(old, new)
	if c.has("o") {
		if code := c.writeChanges(moved, out, old, new); code != exitDone {
			return code
		}
	}
	return c.tellChanges(c.aside(out), moved)
}

// refusesChanges says why no sheet of changes goes there whatever the jobs.
func (c *call) refusesChanges(out outlet) error {
	if out.stdout != nil && c.has("json") {
		return fmt.Errorf("-json and -o %s both want standard output; name a file with -o", c.flags["o"])
	}
	return out.refuses(false)
}

// both reads the two jobs of a call. What is wrong with either is said of both.
func (c *call) both() (old, new *worked.Job, code int) {
	old, complaints, okOld := c.read(c.operands[0])
	new, more, okNew := c.read(c.operands[1])
	switch all := append(complaints, more...); {
	case len(all) > 0:
		c.complain(all)
		return nil, nil, exitWrong
	case !okOld || !okNew:
		return nil, nil, exitFailed
	}
	return old, new, exitDone
}

// writeChanges writes the sheet of changes, over none of the files of both jobs and
// over no PDF of ours but the sheet of changes of the new one.
func (c *call) writeChanges(moved changes.List, out outlet, old, new *worked.Job) int {
	err := out.clash(append(old.Files(), new.Files()...))
	if err == nil {
		_, err = out.over(colophon(new, paper.ChangesSheet, ""), "name another file with -o")
	}
	if err != nil {
		say(c.stderr, "changes: %v", err)
		return exitWrong
	}
	pdf, err := moved.Paper()
	if err != nil {
		say(c.stderr, "%s: %v", c.operands[1], err)
		return exitFailed
	}
	if !c.put(placed{out, pdf.PDF}) {
		return exitFailed
	}
	return exitDone
}

// tellChanges prints them, for a program or for a person.
func (c *call) tellChanges(to *stream, moved changes.List) int {
	if c.has("json") {
		printJSON(to, moved)
		return exitDone
	}
	text, err := moved.Report()
	if err != nil {
		say(c.stderr, "%s: %v", c.operands[1], err)
		return exitFailed
	}
	io.WriteString(to, text)
	return exitDone
}
