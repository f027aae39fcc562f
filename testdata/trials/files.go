// Package trials has jobs to try things on, packs read back and an independent solve:
// for the tests of all packages.
package trials

import (
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/paperwork/worked"
)

// Examples are the jobs of the examples folder, by name.
var Examples = []string{"concert", "arena", "held", "club"}

// heldOnPurpose are the stacks of the project's own jobs that are held; any other that is
// fails the test that opens it, before its pages are counted or read.
var heldOnPurpose = map[string][]string{
	"examples/held.yaml":                       {"D2"},
	"testdata/jobs/end-of-reach.yaml":          {"PUSH", "SLACK", "HOIST"},
	"testdata/jobs/pushed-and-overloaded.yaml": {"SL"},
	"testdata/jobs/unrated-joints-first.yaml":  {"SL"},
}

// OpenFile reads a job file of the project that has no complaint.
func OpenFile(t *testing.T, file string) *worked.Job {
	t.Helper()
	j := OpenJob(t, Text(t, file))
	var held []string
	for _, h := range j.Stacks {
		if h.Held() {
			held = append(held, h.ID)
		}
	}
	require.Equal(t, heldOnPurpose[file], held, "held stacks of %s", file)
	return j
}

// Golden holds what was got to what was written, or writes it.
func Golden(t *testing.T, name, got string) {
	t.Helper()
	file := File("testdata/golden/" + name)
	if os.Getenv("UPDATE_GOLDEN") != "" {
		require.NoError(t, os.MkdirAll(filepath.Dir(file), 0o755))
		require.NoError(t, os.WriteFile(file, []byte(got), 0o644))
	}
	want, err := os.ReadFile(file)
	require.NoError(t, err, "make it with UPDATE_GOLDEN=1 go test ./...")
	assert.Equal(t, strings.Split(string(want), "\n"), strings.Split(got, "\n"), "%s: read the diff, then UPDATE_GOLDEN=1 go test ./...", name)
}

func Text(t *testing.T, file string) string {
	t.Helper()
	text, err := os.ReadFile(File(file))
	require.NoError(t, err)
	return string(text)
}

// GearFile opens the gear files of examples.
func GearFile(path string) (io.ReadCloser, error) { return os.Open(File("examples/" + path)) }

// File is the path of a file of the project, whose own path is from its top.
func File(path string) string {
	dir, err := os.Getwd()
	for err == nil && dir != filepath.Dir(dir) {
		if _, none := os.Stat(filepath.Join(dir, "go.mod")); none == nil {
			return filepath.Join(dir, path)
		}
		dir = filepath.Dir(dir)
	}
	panic("no go.mod above the tests")
}
