package job

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"regexp"
	"sort"
	"strconv"
	"strings"

	"gopkg.in/yaml.v3"
)

// documents returns the first document of a text and the second, nil if there
// is none. A text without any is io.EOF.
func documents(text []byte) (first, second *yaml.Node, err error) {
	dec := yaml.NewDecoder(bytes.NewReader(text))
	if first, err = decode(dec); err != nil {
		return nil, nil, err
	}
	if second, err = decode(dec); errors.Is(err, io.EOF) {
		return first, nil, nil
	}
	return first, second, err
}

// decode reads the next document. The YAML library panics on some inputs.
func decode(dec *yaml.Decoder) (n *yaml.Node, err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("yaml: %v", r)
		}
	}()
	n = &yaml.Node{}
	if err = dec.Decode(n); err == nil && len(n.Content) != 1 {
		err = errors.New("yaml: a document without content")
	}
	return n, err
}

var alias = regexp.MustCompile(`unknown anchor '(.*)' referenced`)

// faultLine returns the line near which a text cannot be read. The YAML
// library names the start of the block, the line above, or none; so this looks
// for the line with which the fault arises, and goes back to where the text
// above it was whole.
func faultLine(text []byte, fault error) int {
	lines := bytes.SplitAfter(text, []byte("\n"))
	if m := alias.FindStringSubmatch(fault.Error()); m != nil {
		return lineWith(lines, "*"+m[1])
	}
	if len(text) > searchMost {
		return lineNamed(fault, len(lines))
	}
	left := readMost // bytes that may still be read over again
	failure := func(n int) string {
		for _, line := range lines[:n] {
			left -= len(line)
		}
		_, _, err := documents(bytes.Join(lines[:n], nil))
		if err == nil || errors.Is(err, io.EOF) {
			return ""
		}
		return err.Error()
	}
	last := sort.Search(len(lines), func(n int) bool { return failure(n) == fault.Error() })
	for whole := last - 1; whole >= max(0, last-backMost) && left > 0; whole-- {
		if failure(whole) == "" {
			return whole + 1
		}
	}
	return max(last, 1)
}

// How long a line of a fault is looked for. These are limits of this tool, to
// be done with any file in a second or so; a job of 60 stacks is within them.
const (
	backMost   = 40        // lines in which a bracket is looked for that was not closed
	searchMost = 200 << 10 // bytes of a file in which a line is looked for
	readMost   = 4 << 20   // bytes that are read over again
)

var lineIn = regexp.MustCompile(`line ([0-9]+):`)

// lineNamed returns the line that the YAML library names, 1 where it names none.
func lineNamed(fault error, most int) int {
	m := lineIn.FindStringSubmatch(fault.Error())
	if m == nil {
		return 1
	}
	n, _ := strconv.Atoi(m[1])
	return min(max(n, 1), most)
}

func lineWith(lines [][]byte, what string) int {
	for i, line := range lines {
		if bytes.Contains(line, []byte(what)) {
			return i + 1
		}
	}
	return 1
}

// syntax says in our words what the YAML library could not read.
func syntax(fault error) string {
	for _, known := range []struct{ theirs, ours string }{
		{"cannot start any token", "a character cannot stand here; indent with blanks, not tabs, and quote a text that begins with @, % or `"},
		{"tab character", "a tab cannot stand here; indent with blanks"},
		{"mapping values are not allowed", "a colon or the indentation is off; keys of one section start in one column, and a text with a colon in it is quoted"},
		{"expected ',' or", "a bracket is not closed or a comma is missing; write [a, b] or {key: value, key: value}"},
		{"did not find expected node content", "a value is missing, or a comma or bracket stands too many; write [a, b] or {key: value, key: value}"},
		{"unknown anchor", noAnchors},
		{"undefined tag handle", "a word begins with !; write the value alone, or quote a text that begins so"},
		{"while scanning a quoted scalar", "a quote is not closed; close it"},
		{"unexpected end of stream", "a quote is not closed; close it"},
		{"unknown escape", `a backslash stands in double quotes; write \\ for it`},
		{"could not find expected ':'", "a key has no colon; write key: value"},
		{"exceeded max depth", "brackets stand too deep; a job needs five"},
	} {
		if strings.Contains(fault.Error(), known.theirs) {
			return "near this line " + known.ours
		}
	}
	return "near this line the indentation, a colon or a bracket is off; keys of one section start in one column"
}
