package main

import (
	"cmp"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"strings"
)

// What came of a fault.
type outcome int

const (
	caught outcome = iota
	unbuilt
	survived
)

// A fault is one change of the text of one file.
type fault struct {
	file      string // as it is given
	line, col int
	text      string // of the line, without what it is indented by
	kind      string
	was, now  string
	source    []byte // of the whole file, unchanged
	from, to  int
	why       string // that it cannot matter; "" where it may
	outcome   outcome
	err       error // that kept it from being tried
}

func (f *fault) String() string {
	return fmt.Sprintf("%s:%d:%d: %s: %s became %s", f.file, f.line, f.col, f.kind, oneLine(f.was), oneLine(f.now))
}

func oneLine(s string) string { return strings.Join(strings.Fields(s), " ") }

// change says what became what, and how far into its line.
func (f *fault) change() string {
	indent := len(lineAt(f.source, f.from)) - len(strings.TrimLeft(lineAt(f.source, f.from), "\t"))
	return fmt.Sprintf("%d: %s became %s", f.col-indent, oneLine(f.was), oneLine(f.now))
}

// planted returns the file with the fault in it.
func (f *fault) planted() []byte {
	return []byte(string(f.source[:f.from]) + f.now + string(f.source[f.to:]))
}

func (f *fault) compare(g *fault) int {
	return cmp.Or(strings.Compare(f.file, g.file), f.line-g.line, f.col-g.col, strings.Compare(f.now, g.now))
}

func lineAt(source []byte, at int) string {
	from := strings.LastIndexByte(string(source[:at]), '\n') + 1
	line, _, _ := strings.Cut(string(source[from:]), "\n")
	return line
}

// faultsOf returns every fault that can be planted in the files of a folder, its
// tests left out.
func faultsOf(dir string) (all []*fault, err error) {
	files, err := filepath.Glob(filepath.Join(dir, "*.go"))
	if err != nil {
		return nil, err
	}
	fset := token.NewFileSet()
	var trees []*ast.File
	var planters []*planter
	for _, file := range files {
		if strings.HasSuffix(file, "_test.go") {
			continue
		}
		source, err := os.ReadFile(file)
		if err != nil {
			return nil, err
		}
		tree, err := parser.ParseFile(fset, file, source, 0)
		if err != nil {
			return nil, err
		}
		trees, planters = append(trees, tree), append(planters, &planter{file: file, source: source, fset: fset})
	}
	for i, p := range planters {
		p.fields = fieldsOf(trees)
		ast.Inspect(trees[i], p.visit)
		all = append(all, p.found...)
	}
	if len(all) == 0 {
		return nil, fmt.Errorf("nothing to plant a fault in, in %s", dir)
	}
	return all, nil
}
