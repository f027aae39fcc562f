package sheets

import (
	"go/ast"
	"go/parser"
	"go/token"
	"path/filepath"
	"reflect"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/layouts/paper"
	"hangpack/testdata/trials"
)

// elsewhere are sheets of layouts that are in no pack, with what has them instead.
var elsewhere = map[string]string{"layouts.Changes": "hangpack changes"}

// TestEverySheetHasItsPlace: every kind of paper that layouts can draw stands in the
// pack of some example, and its kind in the list of kinds, in the order of the pack.
func TestEverySheetHasItsPlace(t *testing.T) {
	drawn := map[string]bool{}
	for _, name := range trials.Examples {
		j := trials.OpenFile(t, "examples/"+name+".yaml")
		last, stack := -1, ""
		for _, s := range All(j) {
			drawn[reflect.TypeOf(s.Sheet).String()] = true
			if joined, ok := s.Sheet.(paper.Joined); ok {
				drawn[reflect.TypeOf(joined.Parts[0]).String()] = true
			}
			if s.Kind == DoNotFly {
				continue
			}
			at := slices.IndexFunc(Order, func(k Kind) bool { return k.Name == s.Kind })
			require.GreaterOrEqual(t, at, 0, "%s: give the kind %q its place in Order (list.go)", name, s.Kind)
			assert.Equal(t, Order[at].OfJob, s.Stack == "", "%s: Order (list.go) says whether a %q is of the job or of a stack", name, s.Kind)
			if s.Stack == stack {
				assert.GreaterOrEqual(t, at, last, "%s: %q stands in Order (list.go) before what it comes after in the pack", name, s.Kind)
			}
			last, stack = at, s.Stack
		}
	}
	for _, name := range sheetTypes(t) {
		if elsewhere[name] == "" {
			assert.True(t, drawn[name], "%s is in no pack: add it to All or to stackSheets (list.go)", name)
		}
	}
}

// sheetTypes are the types of layouts that can be cut into pages, by package and name.
func sheetTypes(t *testing.T) (names []string) {
	t.Helper()
	for _, folder := range []string{"layouts", "layouts/plan"} {
		files, err := filepath.Glob(trials.File(folder + "/*.go"))
		require.NoError(t, err)
		for _, file := range files {
			parsed, err := parser.ParseFile(token.NewFileSet(), file, nil, parser.SkipObjectResolution)
			require.NoError(t, err)
			for _, d := range parsed.Decls {
				if f, ok := d.(*ast.FuncDecl); ok && f.Recv != nil && f.Name.Name == "Pages" && !strings.HasSuffix(file, "_test.go") {
					names = append(names, filepath.Base(folder)+"."+f.Recv.List[0].Type.(*ast.Ident).Name)
				}
			}
		}
	}
	require.NotEmpty(t, names)
	return names
}
