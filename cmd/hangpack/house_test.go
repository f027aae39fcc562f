package main

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"maps"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// rooms are the packages of the product from the ground up, each with what it imports
// of ours. All that it imports stands above it in the list. A new package takes its
// place here.
var rooms = []struct{ path, imports string }{
	{"calc", ""},
	{"layouts/mm", ""},
	{"layouts/tagging", "layouts/mm"},
	{"layouts/paper", "layouts/mm"},
	{"layouts/drawings", "layouts/mm layouts/tagging layouts/paper"},
	{"layouts/parts", "layouts/mm layouts/paper"},
	{"layouts/plan", "layouts/mm layouts/tagging layouts/paper layouts/drawings layouts/parts"},
	{"layouts", "layouts/mm layouts/paper layouts/drawings layouts/parts"},
	{"paperwork/job", "calc"},
	{"paperwork/say", "calc"},
	{"paperwork/rig", "calc paperwork/job paperwork/say"},
	{"paperwork/rules", "calc paperwork/job paperwork/say paperwork/rig"},
	{"paperwork/told", "calc paperwork/say paperwork/rig paperwork/rules"},
	{"paperwork/worked", "calc paperwork/job paperwork/say paperwork/rig paperwork/rules"},
	{"paperwork/laws", ""},
	{"paperwork/sheets", "calc layouts layouts/paper layouts/drawings layouts/parts layouts/plan paperwork/job paperwork/say paperwork/rig paperwork/rules paperwork/told paperwork/worked"},
	{"paperwork/report", "layouts/paper paperwork/say paperwork/rig paperwork/rules paperwork/told paperwork/worked"},
	{"paperwork/changes", "calc layouts layouts/paper layouts/parts paperwork/job paperwork/say paperwork/rig paperwork/rules paperwork/told paperwork/worked paperwork/sheets"},
	{"paperwork", "layouts/paper paperwork/job paperwork/worked paperwork/sheets"},
	{"cmd/hangpack", "layouts/paper paperwork/job paperwork/worked paperwork/sheets paperwork/report paperwork/changes paperwork"},
}

// libraries are what others wrote, each with the only package that imports it.
var libraries = map[string]string{
	"github.com/go-pdf/fpdf": "layouts/paper", "github.com/skip2/go-qrcode": "layouts/paper",
	"golang.org/x/image/font/gofont/goregular": "layouts/paper", "golang.org/x/image/font/gofont/gobold": "layouts/paper",
	"gopkg.in/yaml.v3": "paperwork/job",
}

// TestImportsGoOneWay: each package imports those of ours that the list of rooms says,
// which stand before it there; one importer of each library, and no other library.
func TestImportsGoOneWay(t *testing.T) {
	out, err := exec.Command("go", "list", "-f", `{{.ImportPath}} {{join .Imports " "}}`, "hangpack/...").Output()
	require.NoError(t, err)
	found := map[string][]string{}
	for _, line := range strings.Split(strings.TrimSpace(string(out)), "\n") {
		words := strings.Fields(strings.ReplaceAll(line, "hangpack/", ""))
		if strings.HasPrefix(line, "hangpack/cmd/hangpack") {
			words = strings.Fields(strings.ReplaceAll(strings.Replace(line, "hangpack/cmd/hangpack", "cmd/hangpack", 1), " hangpack/", " "))
		}
		found[words[0]] = words[1:]
	}
	above := map[string]bool{}
	for _, r := range rooms {
		imports, has := found[r.path]
		require.True(t, has, "there is no package %s", r.path)
		assert.Empty(t, libraryFaults(r.path, imports))
		own := slices.DeleteFunc(slices.Clone(imports), func(p string) bool { return found[p] == nil && !above[p] })
		assert.ElementsMatch(t, strings.Fields(r.imports), own, "imports of %s: mend it, or its row in the list of rooms", r.path)
		for _, p := range own {
			assert.True(t, above[p], "%s imports %s, which stands below it in the list of rooms", r.path, p)
		}
		above[r.path] = true
		delete(found, r.path)
	}
	assert.Empty(t, found, "packages without a row in the list of rooms")
}

// opensFiles are packages of the standard library that reach out of the program: cmd
// alone opens files.
var opensFiles = map[string]bool{"os": true, "os/exec": true, "syscall": true, "net": true, "net/http": true}

// libraryFaults are imports that a package may not have.
func libraryFaults(path string, imports []string) (faults []string) {
	for _, p := range imports {
		if importer, library := libraries[p]; library && importer != path || !library && strings.Contains(p, ".") || opensFiles[p] && path != "cmd/hangpack" {
			faults = append(faults, path+" imports "+p)
		}
	}
	return faults
}

// What a stranger can look through: files in a folder, and methods of a type with
// those of what it embeds.
const (
	filesMost   = 30
	methodsMost = 60
)

// TestFoldersAndTypesAreSmall: no folder has more than 30 files that are not tests, and
// no type more than 60 methods, those of what it embeds counted in.
func TestFoldersAndTypesAreSmall(t *testing.T) {
	types := holders{}
	for _, r := range rooms {
		files, err := filepath.Glob(filepath.Join("..", "..", r.path, "*.go"))
		require.NoError(t, err)
		files = slices.DeleteFunc(files, func(f string) bool { return strings.HasSuffix(f, "_test.go") })
		assert.LessOrEqual(t, len(files), filesMost, "files in %s", r.path)
		types.read(t, filepath.Join("..", "..", r.path))
	}
	require.NotEmpty(t, types)
	for _, name := range slices.Sorted(maps.Keys(types)) {
		assert.LessOrEqual(t, len(types.methods(name)), methodsMost, "methods of %s", name)
	}
}

// A holder is a type: its own methods, and the types that it embeds, named by package.
type holder struct{ methods, embeds []string }

// holders are types by package and name, as in 'rig.Hung'.
type holders map[string]*holder

func (h holders) of(name string) *holder {
	if h[name] == nil {
		h[name] = &holder{}
	}
	return h[name]
}

// methods are those of a type and of all that it embeds, each once.
func (h holders) methods(name string) map[string]bool {
	all := map[string]bool{}
	if one := h[name]; one != nil {
		for _, m := range one.methods {
			all[m] = true
		}
		for _, e := range one.embeds {
			maps.Copy(all, h.methods(e))
		}
	}
	return all
}

// read reads the types of the package in a folder.
func (h holders) read(t *testing.T, folder string) {
	t.Helper()
	product := func(f fs.FileInfo) bool { return !strings.HasSuffix(f.Name(), "_test.go") }
	packages, err := parser.ParseDir(token.NewFileSet(), folder, product, parser.SkipObjectResolution)
	require.NoError(t, err)
	for name, p := range packages {
		for _, file := range p.Files {
			for _, d := range file.Decls {
				h.declared(name, d)
			}
		}
	}
}

func (h holders) declared(in string, d ast.Decl) {
	switch d := d.(type) {
	case *ast.FuncDecl:
		if d.Recv != nil {
			one := h.of(typeName(in, d.Recv.List[0].Type))
			one.methods = append(one.methods, d.Name.Name)
		}
	case *ast.GenDecl:
		for _, s := range d.Specs {
			if s, ok := s.(*ast.TypeSpec); ok {
				h.embedded(in, s)
			}
		}
	}
}

func (h holders) embedded(in string, s *ast.TypeSpec) {
	body, ok := s.Type.(*ast.StructType)
	if !ok {
		return
	}
	for _, f := range body.Fields.List {
		if len(f.Names) == 0 {
			one := h.of(in + "." + s.Name.Name)
			one.embeds = append(one.embeds, typeName(in, f.Type))
		}
	}
}

// typeName names a type of a package, or one of another package that it names.
func typeName(in string, e ast.Expr) string {
	switch e := e.(type) {
	case *ast.StarExpr:
		return typeName(in, e.X)
	case *ast.SelectorExpr:
		return e.X.(*ast.Ident).Name + "." + e.Sel.Name
	case *ast.Ident:
		return in + "." + e.Name
	}
	return ""
}

// TestMethodsAreCounted: those of an embedded type count, each once.
func TestMethodsAreCounted(t *testing.T) {
	h := holders{"a.A": {methods: []string{"x", "y"}, embeds: []string{"a.B", "b.C"}}, "a.B": {methods: []string{"y", "z"}, embeds: []string{"b.C"}}, "b.C": {methods: []string{"w"}}}
	assert.Len(t, h.methods("a.A"), 4)
	assert.Empty(t, h.methods("c.D"))
}
