package job

import (
	"bytes"
	"crypto/sha256"
	"errors"
	"fmt"
	"io"
	"regexp"
	"sort"
	"strconv"
	"strings"
	"unicode/utf8"

	"gopkg.in/yaml.v3"
)

// sizeMost is the most bytes of a job file that are read.
const sizeMost = 1 << 20

// Read reads a job file. file is the name that complaints give; prints reports
// whether the paper's font has a character. If anything is wrong all of it is
// returned at once, in the order of the file, and the Job is nil.
func Read(file string, src io.Reader, prints func(rune) bool) (*Job, Complaints) {
	r := newReader(file, prints)
	n := r.parse(src)
	if n == nil {
		return nil, r.complaints
	}
	j := r.job(n)
	if len(r.complaints) > 0 {
		r.complaints.sort()
		return nil, r.complaints
	}
	return j, nil
}

// job reads the whole tree.
func (r *reader) job(n *yaml.Node) *Job {
	root := &value{line: 1, col: 1, given: true, home: spot{1, 1}}
	r.readKeys(root, n)
	return r.build(root)
}

// parse reads bytes into the one mapping that a job is, or complains.
func (r *reader) parse(src io.Reader) *yaml.Node {
	text, err := io.ReadAll(io.LimitReader(src, sizeMost+1))
	top := func(format string, args ...any) *yaml.Node {
		r.complain(spot{1, 1}, "", format, args...)
		return nil
	}
	switch {
	case err != nil:
		return top("the file cannot be read: %v", err)
	case len(text) > sizeMost:
		return top("the file is larger than 1 MiB; a job is a few pages of text")
	case !utf8.Valid(text) || bytes.IndexByte(text, 0) >= 0:
		return top("the file is not plain text; save it as UTF-8")
	}
	dec := yaml.NewDecoder(bytes.NewReader(text))
	doc, err := decode(dec)
	switch {
	case errors.Is(err, io.EOF):
		return top("the job is empty; it needs job, gear and stacks")
	case err != nil:
		r.complain(spot{lineOf(err), 1}, "", "%s", syntax(err))
		return nil
	}
	if next, err := decode(dec); err == nil {
		r.complain(spot{next.Line, next.Column}, "", "a second document starts here; a job is one document, without ---")
		return nil
	} else if !errors.Is(err, io.EOF) {
		r.complain(spot{lineOf(err), 1}, "", "%s", syntax(err))
		return nil
	}
	if len(doc.Content) == 0 {
		return top("the job is empty; it needs job, gear and stacks")
	}
	return r.mapping(doc.Content[0])
}

// mapping takes the top of a document that is keys with values.
func (r *reader) mapping(n *yaml.Node) *yaml.Node {
	here := spot{n.Line, n.Column}
	if n.Tag == "!!null" {
		r.complain(here, "", "the job is empty; it needs job, gear and stacks")
		return nil
	}
	if wrong := forbidden(n); wrong != "" {
		r.complain(here, "", "%s", wrong)
		return nil
	}
	if n.Kind != yaml.MappingNode {
		r.complain(here, "", "a job is keys with their values; start with job:")
		return nil
	}
	return n
}

// decode reads the next document. The YAML library panics on some inputs.
func decode(dec *yaml.Decoder) (n *yaml.Node, err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("yaml: %v", r)
		}
	}()
	n = &yaml.Node{}
	err = dec.Decode(n)
	return n, err
}

var lineNumber = regexp.MustCompile(`line ([0-9]+)`)

// lineOf returns the line that a fault of the YAML library names, or 1.
func lineOf(err error) int {
	if m := lineNumber.FindStringSubmatch(err.Error()); m != nil {
		n, _ := strconv.Atoi(m[1])
		return max(n, 1)
	}
	return 1
}

// syntax says in our words what the YAML library could not read.
func syntax(err error) string {
	for _, known := range []struct{ theirs, ours string }{
		{"cannot start any token", "a character cannot stand here; indent with blanks, not tabs, and quote texts that begin with @ or `"},
		{"mapping values are not allowed", "a colon cannot stand here; begin a new line, or quote a text that has a colon in it"},
		{"expected ',' or", "a bracket is not closed; close it, or put a comma between items"},
		{"unknown anchor", "aliases are not used in a job; name the gear once under gear:"},
		{"unexpected end of stream", "a quote is not closed; close it"},
		{"found unexpected", "a quote or a bracket is not closed; close it"},
		{"exceeded max depth", "brackets stand too deep; a job needs five"},
		{"control characters", "a control character stands in the text; take it out"},
	} {
		if strings.Contains(err.Error(), known.theirs) {
			return "near this line " + known.ours
		}
	}
	return "near this line the indentation, a colon or a bracket is off; keys of one section start in one column"
}

// fingerprint returns 8 hex digits over all that the job gives.
func (r *reader) fingerprint() string {
	sort.Strings(r.given)
	sum := sha256.Sum256([]byte(strings.Join(r.given, "\n") + "\n"))
	return fmt.Sprintf("%x", sum[:4])
}
