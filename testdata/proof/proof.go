// Package proof writes down what the figures on the paper were checked against.
// Tests hand it their checks; it runs them and holds a page to what came out, so
// that the page cannot say more than the tests do.
package proof

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A Check holds figures to something outside the code that makes them.
type Check struct {
	Figure  string   // as the paper names it
	Keys    []string // its names in check -json; none for what is on paper alone
	All     bool     // it compares every figure, and so proves none of them by itself
	Against string   // a printed source with its number, a solve of its own, or a law
	Unit    string   // of the worst difference; "" for one without
	// Run fails the test where the check does not hold, and returns how many cases
	// it took and the largest difference that it saw, in Unit.
	Run func(t *testing.T) (cases int, worst float64)
}

// Page runs every check as a test of its own and holds the file to the table
// that comes of them, and to some lines after it. UPDATE_GOLDEN=1 writes the file. If
// only some checks are run, or while faults are planted (HANGPACK_FAULTS), it is left
// alone: a page that reads otherwise is no proof that a check saw anything.
func Page(t *testing.T, file, title string, checks []Check, after ...string) {
	t.Helper()
	rows := []string{"# " + title, "", "Made by the tests; see DEVELOPERS.md.", "",
		"| figure | in check -json | checked against | worst difference |", "|---|---|---|---:|"}
	ran := 0
	for _, c := range checks {
		t.Run(c.Figure, func(t *testing.T) {
			cases, worst := c.Run(t)
			require.Positive(t, cases, "a check without cases")
			rows = append(rows, row(c, worst))
			ran++
		})
	}
	if ran == len(checks) && !t.Failed() && os.Getenv("HANGPACK_FAULTS") == "" {
		held(t, file, strings.Join(append(rows, after...), "\n")+"\n")
	}
}

// Unnamed returns those of some figures that no check names, neither one of these nor
// one of another page beside the file. A figure is its path in check -json, like
// stacks.points.static_kg; a check names it by any part of that.
func Unnamed(t *testing.T, file string, checks []Check, figures []string) (left []string) {
	t.Helper()
	named := map[string]bool{}
	for _, c := range checks {
		for _, key := range c.Keys {
			named[key] = true
		}
	}
	pages, err := filepath.Glob(filepath.Join(filepath.Dir(file), "*.md"))
	require.NoError(t, err)
	for _, page := range pages {
		if page != filepath.Clean(file) {
			namedOn(t, page, named)
		}
	}
	for _, f := range figures {
		if !slices.ContainsFunc(strings.Split(f, "."), func(part string) bool { return named[part] }) {
			left = append(left, f)
		}
	}
	return left
}

// namedOn adds the keys that a page's checks name.
func namedOn(t *testing.T, page string, named map[string]bool) {
	t.Helper()
	text, err := os.ReadFile(page)
	require.NoError(t, err)
	for _, line := range strings.Split(string(text), "\n") {
		if cells := strings.Split(line, " | "); len(cells) == 4 {
			for _, key := range strings.Split(cells[1], ", ") {
				named[strings.Trim(key, "`")] = true
			}
		}
	}
}

func row(c Check, worst float64) string {
	keys := "on paper alone"
	switch {
	case len(c.Keys) > 0:
		keys = "`" + strings.Join(c.Keys, "`, `") + "`"
	case c.All:
		keys = "all figures against each other"
	}
	return fmt.Sprintf("| %s | %s | %s | %s |", c.Figure, keys, c.Against, difference(worst, c.Unit))
}

// difference rounds up to a power of ten, so that more cases seldom change the page,
// nor does a machine that rounds otherwise.
func difference(worst float64, unit string) string {
	if worst == 0 {
		return "none"
	}
	power := math.Ceil(math.Log10(worst) - 1e-6)
	if worst < 1e-6 {
		return fmt.Sprintf("below 1e%.0f %s", math.Max(-9, power), unit)
	}
	return fmt.Sprintf("at most %g %s", math.Pow(10, power), unit)
}

func held(t *testing.T, file, got string) {
	t.Helper()
	if os.Getenv("UPDATE_GOLDEN") != "" {
		require.NoError(t, os.WriteFile(file, []byte(got), 0o644))
	}
	want, err := os.ReadFile(file)
	require.NoError(t, err, "make it with UPDATE_GOLDEN=1 go test ./...")
	assert.Equal(t, string(want), got, "%s: UPDATE_GOLDEN=1 go test ./... writes it anew", file)
}
