package main

import (
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"strings"
)

// An equivalent is a fault that cannot matter, as equivalent.txt names it: four
// lines (file; the line's text; the change; why), then an empty one.
type equivalent struct{ file, text, change, why string }

type equivalents []equivalent

func sourceFile() string {
	_, file, _, _ := runtime.Caller(0)
	return file
}

func readEquivalents(file string) (all equivalents, err error) {
	text, err := os.ReadFile(file)
	if err != nil {
		return nil, err
	}
	for _, one := range strings.Split(strings.TrimSpace(string(text)), "\n\n") {
		var lines []string
		for _, line := range strings.Split(one, "\n") {
			if line = strings.TrimSpace(line); line != "" && line[0] != '#' {
				lines = append(lines, line)
			}
		}
		switch len(lines) {
		case 0:
		case 4:
			all = append(all, equivalent{lines[0], lines[1], lines[2], lines[3]})
		default:
			return nil, fmt.Errorf("%s: file, line, change and why are four lines, not %d: %q", file, len(lines), one)
		}
	}
	return all, nil
}

// mark gives the faults that are named their reasons, and returns what of this
// folder is named but is not there.
func (e equivalents) mark(all []*fault, dir string) (stale []equivalent) {
	for _, named := range e {
		if filepath.Dir(named.file) != filepath.Clean(dir) {
			continue
		}
		found := false
		for _, f := range all {
			if named.file == filepath.ToSlash(filepath.Clean(f.file)) && named.text == f.text && named.change == f.change() {
				f.why, found = named.why, true
			}
		}
		if !found {
			stale = append(stale, named)
		}
	}
	return stale
}
