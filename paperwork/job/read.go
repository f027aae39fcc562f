package job

import (
	"bytes"
	"crypto/sha256"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"gopkg.in/yaml.v3"
)

// sizeMost is the most bytes of a job file that are read.
const sizeMost = 1 << 20

// Read reads a job file of at most 1 MiB, and the gear files that it names, as
// large each. name is the path of the job, from whose folder it names them, and
// the name that complaints give; open opens them; prints reports whether the
// paper's font has a character. If anything is wrong, all of it is returned at
// once, in the order of the files and of their lines, and the Job is nil.
func Read(name string, src io.Reader, open Opener, prints func(rune) bool) (*Job, Complaints) {
	r := newReader(name, open, prints)
	var j *Job
	if text, ok := r.text(src); ok {
		if top := r.parse(text); top != nil {
			j = r.job(top)
		}
	}
	if len(r.complaints) > 0 {
		r.complaints.sort()
		return nil, r.complaints
	}
	return j, nil
}

// job reads the whole tree.
func (r *reader) job(top *yaml.Node) *Job {
	root := &value{spot: r.start(), given: true, home: r.start()}
	r.shared = r.namesGearFiles(top)
	r.readKeys(root, top)
	r.readGear(root)
	return builder{r}.build(root)
}

// namesGearFiles reports whether a job names gear files, however it spells that.
func (r *reader) namesGearFiles(top *yaml.Node) bool {
	for i := 0; i < len(top.Content); i += 2 {
		if name := top.Content[i].Value; name == "gear_files" || Near(name, r.below[""]) == "gear_files" {
			return true
		}
	}
	return false
}

func hasKey(n *yaml.Node, name string) bool {
	for i := 0; i < len(n.Content); i += 2 {
		if n.Content[i].Value == name {
			return true
		}
	}
	return false
}

// text reads the bytes of a job, or complains and returns false.
func (r *reader) text(src io.Reader) ([]byte, bool) {
	text, err := io.ReadAll(io.LimitReader(src, sizeMost+1))
	switch {
	case err != nil:
		r.complain(r.start(), "", "the file cannot be read: %v", err)
	case len(text) > sizeMost:
		r.complain(r.start(), "", "the file is larger than 1 MiB; it should be a few pages of text")
	default:
		r.split(text)
		return text, r.plain(text)
	}
	return nil, false
}

// split keeps the lines of the file, without the mark that some editors put
// before the first.
func (r *reader) split(text []byte) {
	for _, line := range strings.Split(strings.TrimPrefix(string(text), "\ufeff"), "\n") {
		r.file.lines = append(r.file.lines, strings.TrimSuffix(line, "\r"))
	}
}

// plain complains of the first byte that is not plain text.
func (r *reader) plain(text []byte) bool {
	for i, line := range bytes.Split(text, []byte("\n")) {
		if col, c := hardIndent(line); c != 0 {
			r.complain(spot{r.file, i + 1, col}, "", "%s (%U) stands in the indentation; indent with ordinary blanks", spaceName(c), c)
			return false
		}
		for col := 1; len(line) > 0; col++ {
			c, n := utf8.DecodeRune(line)
			if wrong := notText(c, n, len(line) == n); wrong != "" {
				r.complain(spot{r.file, i + 1, col}, "", "%s", wrong)
				return false
			}
			line = line[n:]
		}
	}
	return true
}

// hardIndent returns the column of the first space before the text of a line
// that only looks like a blank, and the space; 0 where there is none.
func hardIndent(line []byte) (col int, c rune) {
	for col = 1; len(line) > 0; col++ {
		c, n := utf8.DecodeRune(line)
		switch {
		case c != ' ' && unicode.Is(unicode.Zs, c):
			return col, c
		case c != ' ':
			return 0, 0
		}
		line = line[n:]
	}
	return 0, 0
}

// notText says what is wrong with a character that no job has. n is its
// number of bytes; last says that it is the last one of its line. Breaks of
// lines that editors do not count as such would put complaints off their lines.
func notText(c rune, n int, last bool) string {
	switch {
	case c == '\r' && last:
	case c == '\r', c == '\u0085', c == '\u2028', c == '\u2029':
		return fmt.Sprintf("a line ends here in an unusual way (%U); save the file with ordinary line ends", c)
	case c == utf8.RuneError && n == 1:
		return "this is not UTF-8; save the file as plain text in UTF-8"
	case c == 0:
		return "a zero byte stands here; save the file as plain text in UTF-8"
	case unicode.IsControl(c) && c != '\t':
		return fmt.Sprintf("a control character (%U) stands here; take it out", c)
	}
	return ""
}

// parse returns the keys and values that a job is, or complains and returns
// nil. A second document is complained of, and the first one read all the same.
func (r *reader) parse(text []byte) *yaml.Node {
	first, second, err := documents(text)
	switch {
	case errors.Is(err, io.EOF):
		r.complain(r.start(), "", "%s", r.file.empty())
		return nil
	case err != nil:
		r.complain(spot{r.file, r.file.blamed(faultLine(text, err)), 1}, "", "%s", syntax(err))
		r.complaints[len(r.complaints)-1].Near = true
		return nil
	case second != nil:
		r.cut, r.gearLost = true, true
		r.complain(r.spot(second), "", "a second document starts here; write one a file, without ---")
	}
	return r.top(first.Content[0])
}

// top takes the top of a document that is keys with values.
func (r *reader) top(n *yaml.Node) *yaml.Node {
	here := r.spot(n)
	if wrong := r.forbidden(n); wrong != "" {
		r.complain(here, "", "%s", wrong)
	}
	switch {
	case n.Kind == yaml.MappingNode:
		return n
	case isNull(n):
		r.complain(here, "", "%s", r.file.empty())
	case n.Kind != yaml.AliasNode:
		r.complain(here, "", "%s", r.file.notKeys())
	}
	return nil
}

// fingerprint returns 8 hex digits over all that the job gives.
func (r *reader) fingerprint() string {
	sum := sha256.Sum256([]byte(strings.Join(slices.Sorted(slices.Values(r.given)), "\n") + "\n"))
	return fmt.Sprintf("%x", sum[:4])
}
