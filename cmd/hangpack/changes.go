package main

import (
	"io"

	"hangpack/paperwork"
)

// changes prints what moved between two revisions of a job, and writes the sheet of
// that where the line says so.
func changes(c *call) int {
	var out *outlet
	if _, given := c.flags["o"]; given {
		to := c.outlet()
		out = &to
	}
	if out != nil && out.stdout != nil && c.has("json") {
		say(c.stderr, "changes: -json and -o %s both want standard output; name a file with -o", c.flags["o"])
		return exitWrong
	}
	if out != nil && out.refuses() != nil {
		say(c.stderr, "changes: %v", out.refuses())
		return exitWrong
	}
	old, new, code := c.both()
	if code != exitDone {
		return code
	}
	moved := paperwork.Compare(old, new)
	if out != nil {
		if code := c.writeChanges(moved, *out, append(old.Files(), new.Files()...)); code != exitDone {
			return code
		}
	}
	if c.has("json") {
		printJSON(c.stdout, moved)
		return exitDone
	}
	says := c.stdout
	if out != nil {
		says = c.aside(*out)
	}
	return c.reportChanges(says, moved)
}

// both reads the two jobs of a call. What is wrong with either is said of both.
func (c *call) both() (old, new *paperwork.Job, code int) {
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

// writeChanges writes the sheet of changes, over none of the files of both jobs.
func (c *call) writeChanges(moved paperwork.Changes, out outlet, files []string) int {
	if err := out.clash(files); err != nil {
		say(c.stderr, "changes: %v", err)
		return exitWrong
	}
	paper, err := moved.Paper()
	if err != nil {
		say(c.stderr, "%s: %v", c.operands[1], err)
		return exitFailed
	}
	if !c.put(out, paper.PDF) {
		return exitFailed
	}
	return exitDone
}

// reportChanges prints them for a person.
func (c *call) reportChanges(to *stream, moved paperwork.Changes) int {
	text, err := moved.Report()
	if err != nil {
		say(c.stderr, "%s: %v", c.operands[1], err)
		return exitFailed
	}
	io.WriteString(to, text)
	return exitDone
}
