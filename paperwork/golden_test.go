package paperwork

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestGoldens holds the texts of the examples' sheets, where they stand and how
// tall they are. A golden shows change and proves nothing: read the diff before
// you commit it, and say why the paper changed. UPDATE_GOLDEN=1 writes them.
func TestGoldens(t *testing.T) {
	for _, name := range []string{"concert", "arena", "held"} {
		text, err := os.ReadFile("../examples/" + name + ".yaml")
		require.NoError(t, err)
		paper, _ := paperOf(t, open(t, string(text)))
		var b strings.Builder
		for _, m := range paper.Marks {
			if m.Text != "" {
				fmt.Fprintf(&b, "%2d  %-10s %6.1f %6.1f %5.1f  %s\n", m.Page, m.Block, m.X0, m.Y1, m.Pt, m.Text)
			}
		}
		file := filepath.Join("..", "testdata", "golden", name+".txt")
		if os.Getenv("UPDATE_GOLDEN") != "" {
			require.NoError(t, os.MkdirAll(filepath.Dir(file), 0o755))
			require.NoError(t, os.WriteFile(file, []byte(b.String()), 0o644))
		}
		want, err := os.ReadFile(file)
		require.NoError(t, err, "make it with UPDATE_GOLDEN=1 go test ./paperwork")
		assert.Equal(t, string(want), b.String(), "%s: read the diff, then UPDATE_GOLDEN=1 go test ./paperwork", name)
	}
}

// TestGoldenReports holds what check prints for people.
func TestGoldenReports(t *testing.T) {
	for _, name := range []string{"concert", "arena", "held"} {
		text, err := os.ReadFile("../examples/" + name + ".yaml")
		require.NoError(t, err)
		got := open(t, string(text)).Report()
		file := filepath.Join("..", "testdata", "golden", name+".check")
		if os.Getenv("UPDATE_GOLDEN") != "" {
			require.NoError(t, os.WriteFile(file, []byte(got), 0o644))
		}
		want, err := os.ReadFile(file)
		require.NoError(t, err, "make it with UPDATE_GOLDEN=1 go test ./paperwork")
		assert.Equal(t, string(want), got, name)
	}
}

// TestReportFitsItsColumns: whatever the names, a report is 100 columns wide.
func TestReportFitsItsColumns(t *testing.T) {
	for seed := range int64(60) {
		g := gamble(seed)
		g.wild = seed%2 == 0
		for _, line := range strings.Split(open(t, g.job()).Report(), "\n") {
			assert.LessOrEqual(t, len([]rune(line)), columns, "seed %d: %s", seed, line)
		}
	}
}
