package main

import (
	"cmp"
	"fmt"
	"io"
	"os"
	"regexp"
	"strings"

	"hangpack/layouts/paper"
	"hangpack/paperwork/job"
	"hangpack/paperwork/worked"
)

// standingMost is how large a file may be, in bytes, for hangpack to look at what it is:
// more than any pack.
const standingMost = 64 << 20

// colophon is what a PDF of a kind will say of itself, but for its sheets.
func colophon(j *worked.Job, kind, stack string) paper.Colophon {
	return paper.Colophon{Kind: kind, Stack: stack, Title: j.Title, Venue: j.Venue, Date: j.Date, Revision: j.Revision}
}

// overOwn says what of ours stands at the place of the job's pack, or of sheets chosen of
// it, or why that or the file of a stack is not written over.
func (t *task) overOwn() (pack paper.Colophon, err error) {
	other := "name another file with -o"
	if t.among {
		other = "pack this job alone and " + other
	}
	pack, err = t.out.over(colophon(t.job, paper.WholePack, ""), other)
	for _, s := range t.stacks {
		_, more := s.over(colophon(t.job, paper.StackSheets, s.id), "give each job with {stack} a folder of its own")
		err = cmp.Or(err, more)
	}
	return pack, err
}

// over says what of ours stands where a PDF is to go, or why it is not written over:
// it is a job or a gear file, or a PDF of ours that is not the new one's own. What else
// could be done is for the user to read. Where nothing or anything else stands, it says
// nothing.
func (out outlet) over(new paper.Colophon, other string) (old paper.Colophon, err error) {
	text, err := out.standing()
	if err != nil {
		return old, fmt.Errorf("what %s is cannot be read (%v); it is not written over: move it away, or %s", out.name, err, other)
	}
	old, ours := paper.ReadColophon(text)
	line, key := jobKey(text)
	switch {
	case ours && !replaces(new, old):
		return old, fmt.Errorf("%s %s; it is not written over: move it away, or %s", out.name, whatItIs(old), other)
	case key != "":
		return old, fmt.Errorf("%s reads like a job or a gear file ('%s:' in line %d); it is not written over: move it away, or %s", out.name, key, line, other)
	}
	return old, nil
}

// standing is what stands in a place that is a regular file and not too large; nil
// elsewhere.
func (out outlet) standing() ([]byte, error) {
	info, err := os.Stat(out.name)
	if out.stdout != nil || err != nil || !info.Mode().IsRegular() || info.Size() > standingMost {
		return nil, nil
	}
	f, err := os.Open(out.name)
	if err != nil {
		return nil, reason(err)
	}
	defer f.Close()
	text, err := io.ReadAll(io.LimitReader(f, standingMost))
	return text, reason(err)
}

// replaces reports whether a PDF may stand in place of an old one unasked: both are of
// one job, known by its title, venue and date, and of one kind. The whole pack and chosen
// sheets of it are one kind.
func replaces(new, old paper.Colophon) bool {
	if new.Title != old.Title || new.Venue != old.Venue || new.Date != old.Date {
		return false
	}
	if new.Kind == paper.WholePack {
		return old.Kind == paper.WholePack || old.Kind == paper.ChosenSheets
	}
	return old.Kind == new.Kind && old.Stack == new.Stack
}

// whatItIs says of a PDF of ours what it is, and of which job.
func whatItIs(c paper.Colophon) string {
	of := fmt.Sprintf("%s, %s, %s, revision %s", c.Title, c.Venue, c.Date, c.Revision)
	switch c.Kind {
	case paper.WholePack:
		return "is the pack of " + of
	case paper.ChosenSheets:
		return "has chosen sheets of " + of
	case paper.StackSheets:
		return "has the sheets of stack " + c.Stack + " of " + of
	case paper.ChangesSheet:
		return "is the sheet of changes of " + of
	}
	return "is made by hangpack, and of which job cannot be read"
}

// jobKeyAt is a key of a job or a gear file at the start of a line; quoted, or behind a
// brace, as other ways to write it have it.
var jobKeyAt = regexp.MustCompile(`(?:^|[\r\n])(?:[ \t]*["']|\{[ \t]*["']?)?(` + strings.Join(topKeys(), "|") + `)["']?[ \t]*:`)

// topKeys are the keys that stand at the top of a job.
func topKeys() (keys []string) {
	for _, k := range job.Keys() {
		if !strings.ContainsAny(k.Path, ".[") {
			keys = append(keys, k.Path)
		}
	}
	return keys
}

// jobKey finds the first key of a job or a gear file in a text that is no PDF, and its
// line; "" where there is none.
func jobKey(text []byte) (line int, key string) {
	text = text[:min(len(text), readMost)]
	s := strings.TrimPrefix(string(text), "\ufeff")
	at := jobKeyAt.FindStringSubmatchIndex(s)
	if at == nil || strings.HasPrefix(s, "%PDF-") {
		return 0, ""
	}
	return 1 + strings.Count(s[:at[2]], "\n"), s[at[2]:at[3]]
}
