package job

import (
	"fmt"
	"strings"

	"gopkg.in/yaml.v3"
)

// A reader walks a job file and its gear files and gathers complaints, and the
// lines from which the fingerprint is made.
type reader struct {
	file       *file // that is being read
	open       Opener
	paths      []string // of the gear files read
	gearIn     []*value // the gear sections, the job's own first
	shared     bool     // the job names gear files, so that no one file need have all gear
	cut        bool     // a second document has what the first may lack
	gearLost   bool     // gear stands where it was not read, so that no name of gear is judged
	prints     func(rune) bool
	complaints Complaints
	given      []string
	rows       map[string]*Key
	below      map[string][]string // of each path, the names of the keys below it
}

// A file is a job file or a gear file, as it is read.
type file struct {
	name  string
	order int      // of the files that are read, the job first
	lines []string // without their ends
	at    int      // the line that was looked at last
	runes []rune   // of it
}

// A spot is a line and column of a file, from 1.
type spot struct {
	file      *file
	line, col int
}

// newReader returns a reader of the job file of a name, with the table of keys by path.
func newReader(name string, open Opener, prints func(rune) bool) *reader {
	r := &reader{file: &file{name: name}, open: open, prints: prints, rows: map[string]*Key{}, below: map[string][]string{}}
	for i := range table {
		path := table[i].Path
		r.rows[path] = &table[i]
		if strings.HasSuffix(path, "[]") {
			continue
		}
		cut := strings.LastIndexByte(path, '.')
		parent, name := path[:max(cut, 0)], path[cut+1:]
		r.below[parent] = append(r.below[parent], name)
	}
	return r
}

// at complains of a value.
func (r *reader) at(v *value, format string, args ...any) {
	v.bad = true
	r.complain(v.spot, v.key, format, args...)
}

// ComplaintsMost is the most complaints that are kept of a job: far more than a
// person mends before the next run.
const ComplaintsMost = 10_000

// complain keeps a complaint of a place, unless there are very many.
func (r *reader) complain(at spot, key, format string, args ...any) {
	if len(r.complaints) == ComplaintsMost {
		return
	}
	c := Complaint{File: at.file.name, Line: at.line, Col: at.col, Key: key, Message: onOneLine(fmt.Sprintf(format, args...)), order: at.file.order}
	if at.line <= len(at.file.lines) {
		c.Text = at.file.lines[at.line-1]
	}
	r.complaints = append(r.complaints, c)
}

// spot is where a node stands in the file that is being read.
func (r *reader) spot(n *yaml.Node) spot { return spot{r.file, n.Line, n.Column} }

// start is the beginning of the file that is being read.
func (r *reader) start() spot { return spot{r.file, 1, 1} }

// line returns the characters of a line, or none where there is no such line.
func (f *file) line(n int) []rune {
	if n != f.at {
		f.at, f.runes = n, nil
		if n <= len(f.lines) {
			f.runes = []rune(f.lines[n-1])
		}
	}
	return f.runes
}

// empty says what an empty file lacks.
func (f *file) empty() string {
	if f.order > 0 {
		return "the gear file is empty; write its section gear"
	}
	return "the job is empty; write its sections job, gear and stacks"
}

// notKeys says how a file begins that is not keys with their values.
func (f *file) notKeys() string {
	if f.order > 0 {
		return "a gear file is keys with their values; start with gear:"
	}
	return "a job is keys with their values; start with job:"
}

// from says where something stands, to a reader of another place: 'on line 12',
// or 'on line 12 of gear/columns.yaml'.
func (s spot) from(at spot) string {
	if s.file == at.file {
		return fmt.Sprintf("on line %d", s.line)
	}
	return fmt.Sprintf("on line %d of %s", s.line, s.file.name)
}
