package job

import (
	"fmt"
	"strings"

	"gopkg.in/yaml.v3"
)

// A value is what was read at one place of a job: a scalar in SI units or as
// its text, or the values below it. Where a key is not given and has a
// default, the default is read in its stead.
type value struct {
	key       string // path in the job
	generic   string // path in the table
	line, col int
	given     bool
	bad       bool // a complaint was made of it; checks pass over it
	num       float64
	text      string
	quoted    bool
	form      yaml.Kind
	items     []*value
	fields    map[string]*value
	names     []string // of fields given, in the order of the file
	home      spot     // where a key that is missing below is complained of
}

// A spot is a line and column, from 1.
type spot struct{ line, col int }

// A reader walks a job file and gathers complaints, and the lines from which
// the fingerprint is made.
type reader struct {
	file       string
	prints     func(rune) bool
	complaints Complaints
	given      []string
	rows       map[string]*Key
	below      map[string][]string // of each path, the names of the keys below it
}

func newReader(file string, prints func(rune) bool) *reader {
	r := &reader{file: file, prints: prints, rows: map[string]*Key{}, below: map[string][]string{}}
	for i := range table {
		path := table[i].Path
		r.rows[path] = &table[i]
		if strings.HasSuffix(path, "[]") {
			r.below[path[:len(path)-2]] = append(r.below[path[:len(path)-2]], "[]")
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
	r.complain(spot{v.line, v.col}, v.key, format, args...)
}

func (r *reader) complain(at spot, key, format string, args ...any) {
	r.complaints = append(r.complaints, Complaint{r.file, at.line, at.col, key, fmt.Sprintf(format, args...)})
}

// read reads the node of one key. home is where keys missing below it are
// complained of.
func (r *reader) read(n *yaml.Node, generic, key string, home spot) *value {
	v := &value{key: key, generic: generic, line: n.Line, col: n.Column, given: true, form: n.Kind, home: home}
	if wrong := forbidden(n); wrong != "" {
		r.at(v, "%s", wrong)
		return v
	}
	switch {
	case n.Tag == "!!null" && n.Style&(yaml.DoubleQuotedStyle|yaml.SingleQuotedStyle) == 0:
		r.at(v, "%s has no value; write one or leave the key out", last(key))
	case n.Kind == yaml.MappingNode && r.takesKeys(generic):
		r.readKeys(v, n)
	case n.Kind == yaml.SequenceNode && r.takesItems(generic):
		r.readItems(v, n)
	case n.Kind == yaml.ScalarNode && r.rows[generic].Kind > List:
		r.readScalar(v, n)
	default:
		r.at(v, "%s does not stand like this; %s", last(key), r.wanted(generic))
	}
	return v
}

// forbidden returns what a job does not use of YAML.
func forbidden(n *yaml.Node) string {
	switch {
	case n.Kind == yaml.AliasNode:
		return fmt.Sprintf("aliases (*%s) are not used in a job; name the gear once under gear:", n.Value)
	case n.Anchor != "":
		return fmt.Sprintf("anchors (&%s) are not used in a job; name the gear once under gear:", n.Anchor)
	case n.Style&yaml.TaggedStyle != 0:
		return fmt.Sprintf("tags (%s) are not used in a job; write the value alone", n.Tag)
	}
	return ""
}

// takesKeys and takesItems report which forms a key of the table may have.
func (r *reader) takesKeys(generic string) bool {
	for _, name := range r.below[generic] {
		if name != "[]" {
			return true
		}
	}
	return false
}

func (r *reader) takesItems(generic string) bool { return r.rows[generic+"[]"] != nil }

// wanted says which forms a key may have.
func (r *reader) wanted(generic string) string {
	var forms []string
	if row := r.rows[generic]; row.Kind > List {
		forms = append(forms, "one value")
	}
	if r.takesItems(generic) {
		forms = append(forms, "a list, [ … ]")
	}
	if names := r.below[generic]; r.takesKeys(generic) && names[0] != "*" {
		forms = append(forms, "keys: "+strings.Join(names, ", "))
	} else if r.takesKeys(generic) {
		forms = append(forms, "names with what they are")
	}
	return "write " + strings.Join(forms, " or ")
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

// readKeys reads keys with their values: those of a section, or names of gear.
func (r *reader) readKeys(v *value, n *yaml.Node) {
	v.fields = map[string]*value{}
	lines := map[string]int{}
	for i := 0; i+1 < len(n.Content); i += 2 {
		k, node := n.Content[i], n.Content[i+1]
		name, ok := r.keyName(v, k)
		if !ok {
			continue
		}
		here := spot{k.Line, k.Column}
		if line, twice := lines[name]; twice {
			r.complain(here, join(v.key, name), "%s stands here again; it is already on line %d", name, line)
			continue
		}
		lines[name] = k.Line
		generic, known := r.keyPath(v, name, here)
		if known {
			v.names = append(v.names, name)
			v.fields[name] = r.read(node, generic, join(v.key, name), here)
		}
	}
	r.fill(v)
}

// keyName returns the name of a key, or complains of it.
func (r *reader) keyName(v *value, k *yaml.Node) (string, bool) {
	here := spot{k.Line, k.Column}
	switch wrong := forbidden(k); {
	case wrong != "":
		r.complain(here, v.key, "%s", wrong)
	case k.Kind == yaml.ScalarNode && k.Tag == "!!merge":
		r.complain(here, v.key, "merge keys (<<) are not used in a job; name the gear once under gear:")
	case k.Kind != yaml.ScalarNode:
		r.complain(here, v.key, "a key has to be one word; write name: value")
	default:
		return k.Value, true
	}
	return "", false
}

// keyPath returns the table's path of a key below v, and complains of a key
// that the table does not know.
func (r *reader) keyPath(v *value, name string, here spot) (string, bool) {
	names := r.below[v.generic]
	if len(names) > 0 && names[0] == "*" {
		return v.generic + ".*", r.nameFits(v, name, here)
	}
	generic := join(v.generic, name)
	if r.rows[generic] != nil && name != "[]" {
		return generic, true
	}
	wrong := fmt.Sprintf("unknown key %q", name)
	if v.key != "" {
		wrong += " under " + last(v.key)
	}
	if meant := near(name, names); meant != "" {
		r.complain(here, join(v.key, name), "%s; did you mean %q?", wrong, meant)
	} else {
		r.complain(here, join(v.key, name), "%s; known here: %s", wrong, strings.Join(plainNames(names), ", "))
	}
	return "", false
}

func plainNames(names []string) (plain []string) {
	for _, n := range names {
		if n != "[]" {
			plain = append(plain, n)
		}
	}
	return plain
}

// nameFits checks a name of gear as a text of the paper.
func (r *reader) nameFits(v *value, name string, here spot) bool {
	if wrong := r.textWrong(name, int(r.rows[v.generic].Max)); wrong != "" {
		r.complain(here, join(v.key, name), "%s", wrong)
	}
	return true
}

// fill complains of missing keys and reads the defaults of those left out.
func (r *reader) fill(v *value) {
	for _, name := range r.below[v.generic] {
		if name == "[]" || name == "*" || v.fields[name] != nil {
			continue
		}
		generic := join(v.generic, name)
		row := r.rows[generic]
		switch {
		case row.Need == Required && v.given:
			r.complain(v.home, join(v.key, name), "%s is missing; %s", name, describe(row))
			v.fields[name] = &value{key: join(v.key, name), generic: generic, bad: true, line: v.home.line, col: v.home.col}
		case row.Need == Defaulted:
			v.fields[name] = r.defaulted(row, generic, join(v.key, name), v.home)
		}
	}
}

// describe says what a missing key would hold.
func describe(row *Key) string {
	if row.Hint[0] != "" {
		return fmt.Sprintf("write %s, in %s (%s)", row.Kind, row.Hint[0], row.Meaning)
	}
	return "write it here (" + row.Meaning + ")"
}

// defaulted reads the default of a key that the job does not give.
func (r *reader) defaulted(row *Key, generic, key string, home spot) *value {
	v := &value{key: key, generic: generic, line: home.line, col: home.col, home: home}
	if row.Kind == Section {
		v.fields = map[string]*value{}
		r.fill(v)
		return v
	}
	r.scalar(v, row, row.Default)
	return v
}

// readItems reads a list.
func (r *reader) readItems(v *value, n *yaml.Node) {
	row := r.rows[v.generic]
	if len(n.Content) < int(row.Min) || row.Max > 0 && len(n.Content) > int(row.Max) {
		r.at(v, "%d in the list of %s; write %g to %g", len(n.Content), last(v.key), row.Min, row.Max)
	}
	for i, item := range n.Content {
		key := fmt.Sprintf("%s[%d]", v.key, i)
		v.items = append(v.items, r.read(item, v.generic+"[]", key, spot{item.Line, item.Column}))
	}
}
