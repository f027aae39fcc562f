package job

import (
	"fmt"
	"slices"
	"strings"

	"gopkg.in/yaml.v3"
)

// A value is what was read at one place of a job: a scalar in SI units or as
// its text, or the values below it. Where a key is not given and has a
// default, the default is read in its stead.
type value struct {
	key     string // path in the job
	name    string // the last part of it
	generic string // path in the table
	spot
	given   bool
	bad     bool // a complaint was made of it; checks pass over it
	num     float64
	text    string
	quoted  bool
	items   []*value
	fields  map[string]*value
	names   []string        // of fields given, in the order of the file
	excused map[string]bool // fields whose absence another complaint accounts for
	home    spot            // of its key, or of the first line of a list item
}

// A spot is a line and column of a file, from 1.
type spot struct {
	file      *file
	line, col int
}

// A file is a job file or a gear file, as it is read.
type file struct {
	name  string
	order int      // of the files that are read, the job first
	lines []string // without their ends
	at    int      // the line that was looked at last
	runes []rune   // of it
}

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

// from says where something stands, to a reader of another place: 'on line 12',
// or 'on line 12 of gear/columns.yaml'.
func (s spot) from(at spot) string {
	if s.file == at.file {
		return fmt.Sprintf("on line %d", s.line)
	}
	return fmt.Sprintf("on line %d of %s", s.line, s.file.name)
}

// read reads the node of one key.
func (r *reader) read(n *yaml.Node, generic, key, name string, home spot) *value {
	v := &value{key: key, name: name, generic: generic, spot: r.spot(n), given: true, home: home}
	wrong := r.forbidden(n)
	if wrong != "" {
		r.at(v, "%s", wrong)
	}
	switch {
	case n.Kind == yaml.AliasNode, wrong != "" && n.Kind == yaml.ScalarNode:
	case isNull(n):
		r.noValue(v, n)
	case n.Kind == yaml.MappingNode && r.takesKeys(generic):
		r.readKeys(v, n)
	case n.Kind == yaml.SequenceNode && r.takesItems(generic):
		r.readItems(v, n)
	case n.Kind == yaml.ScalarNode && r.rows[generic].Kind.single():
		r.readScalar(v, n)
	case n.Kind == yaml.ScalarNode && slices.Contains(r.rows[generic].Choices, n.Value):
		v.text = n.Value
		r.given = append(r.given, v.key+"="+v.text)
	case n.Kind == yaml.ScalarNode && r.rows[generic].Nought && isNought(n.Value):
		r.given = append(r.given, v.key+"=0") // without keys, all of which are nought
	default:
		r.at(v, "%s is not written like this; write %s", name, r.forms(generic))
	}
	return v
}

func isNought(s string) bool { return number.MatchString(s) && float(s) == 0 }

// noValue complains of a key that stands alone, at the key.
func (r *reader) noValue(v *value, n *yaml.Node) {
	if n.Value == "" {
		v.spot = v.home
	}
	row, right := r.rows[v.generic], "write one or leave the key out"
	switch {
	case row.Need == Required:
		right = describe(row)
	case strings.HasSuffix(row.Path, "[]"):
		right = "write one or take the item out"
	}
	r.at(v, "%s has no value; %s", v.name, right)
}

func isNull(n *yaml.Node) bool {
	return n.Kind == yaml.ScalarNode && n.Tag == "!!null" && n.Style&^yaml.TaggedStyle == 0
}

const noAnchors = "anchors (&) and aliases (*) are not used in a job; name the gear once under gear:"

// forbidden returns what a job does not use of YAML.
func (r *reader) forbidden(n *yaml.Node) string {
	switch {
	case n.Kind == yaml.AliasNode, n.Anchor != "":
		return noAnchors
	case n.Style&yaml.TaggedStyle != 0, r.bareTag(n):
		return "tags (!) are not used in a job; write the value alone"
	}
	return ""
}

// bareTag reports whether a lone ! stands before a value. The YAML library
// drops it, so the line of the file is looked at.
func (r *reader) bareTag(n *yaml.Node) bool {
	if n.Kind != yaml.ScalarNode && n.Style&yaml.FlowStyle == 0 {
		return false
	}
	line := r.file.line(n.Line)
	return n.Column <= len(line) && line[n.Column-1] == '!'
}

// takesKeys and takesItems report which forms a key of the table may have.
func (r *reader) takesKeys(generic string) bool { return len(r.below[generic]) > 0 }

func (r *reader) takesItems(generic string) bool { return r.rows[generic+"[]"] != nil }

// forms says which forms a key may have.
func (r *reader) forms(generic string) string {
	var forms []string
	if r.rows[generic].Kind.single() {
		forms = append(forms, "one value")
	}
	if row := r.rows[generic]; row.Nought {
		forms = append(forms, "0")
	} else if row.Kind == Section {
		forms = append(forms, row.Choices...)
	}
	if r.takesItems(generic) {
		forms = append(forms, "a list: [ … ]")
	}
	if names := r.below[generic]; r.takesKeys(generic) && names[0] != "*" {
		forms = append(forms, "keys of its own: "+strings.Join(names, ", "))
	} else if r.takesKeys(generic) {
		forms = append(forms, "names, each with what it is")
	}
	return strings.Join(forms, ", or ")
}

// last returns the last part of a path.
func last(key string) string { return key[strings.LastIndexByte(key, '.')+1:] }

// join adds a name to a path.
func join(path, name string) string {
	if path == "" {
		return name
	}
	return path + "." + name
}

// readItems reads a list, as far as it may go.
func (r *reader) readItems(v *value, n *yaml.Node) {
	row := r.rows[v.generic]
	if c := float64(len(n.Content)); c < row.Min || c > row.Max {
		r.at(v, "%s lists %g; write %g to %g", v.name, c, row.Min, row.Max)
	}
	for i, item := range n.Content[:min(len(n.Content), int(row.Max))] {
		index := fmt.Sprintf("[%d]", i)
		v.items = append(v.items, r.read(item, v.generic+"[]", v.key+index, v.name+index, r.spot(item)))
	}
}
