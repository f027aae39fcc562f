package main

import (
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// planted plants every fault of a sample.
func planted(t *testing.T, sample string) (all []*fault, ok bool) {
	t.Helper()
	dir := filepath.Join("samples", sample)
	all, err := faultsOf(dir)
	require.NoError(t, err)
	was, err := os.ReadFile(all[0].file)
	require.NoError(t, err)
	require.NoError(t, ownTests(dir))
	tried, took, err := plantAll(dir, all, 0)
	require.NoError(t, err)
	require.Len(t, tried, len(all))
	is, err := os.ReadFile(all[0].file)
	require.NoError(t, err)
	assert.Equal(t, string(was), string(is), "no source is touched")
	return tried, report(io.Discard, tried, len(all), 0, took, nil)
}

// A good test sees every fault but those that change nothing.
func TestGoodSample(t *testing.T) {
	all, ok := planted(t, "good")
	for _, f := range all {
		if f.String() == "samples/good/area.go:8:10: operator: > became >=" {
			assert.Equal(t, survived, f.outcome, "nought is nought either way")
			f.why = "nought is nought either way"
			continue
		}
		assert.NotEqual(t, survived, f.outcome, "%s", f)
	}
	assert.False(t, ok, "a survivor that is not named")
}

// A test that runs every line but looks at little lets faults through, and the
// report says so.
func TestBadSample(t *testing.T) {
	all, ok := planted(t, "bad")
	assert.False(t, ok)
	var out strings.Builder
	report(&out, all, len(all), 0, 0, nil)
	assert.Contains(t, out.String(), "samples/bad/area.go:7:11: operator: * became /")
	assert.Contains(t, out.String(), "samples/bad/area.go:8:12: constant: 0 became 1")
}

// Naming faults as equivalent cannot stand in for tests, and no name may be stale.
func TestEnough(t *testing.T) {
	assert.True(t, count{caught: 95, survived: 5, named: 5}.enough())
	assert.False(t, count{caught: 94, survived: 6, named: 6}.enough())
	assert.False(t, count{caught: 99, survived: 1}.enough())
	stale := equivalents{{"samples/good/area.go", "left := a*b - h", "11: * became +", ""}}.mark(nil, "samples/good")
	assert.Len(t, stale, 1)
	assert.False(t, report(io.Discard, nil, 0, 0, 0, stale))
	f := fault{outcome: caught, why: "it was thought to be one"}
	assert.False(t, report(io.Discard, []*fault{&f}, 1, 0, 0, nil))
}
