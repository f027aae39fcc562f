package job

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestLargeEnds: files as large as may be read end in a complaint. A list on one
// line once took minutes: the time has to grow with the size of a file, not with
// its square, or this test runs into its limit.
func TestLargeEnds(t *testing.T) {
	for name, text := range map[string]string{
		"a long line":    "stacks: [" + strings.Repeat("0,", 500_000) + "]",
		"deep brackets":  strings.Repeat("[", 1_000_000),
		"an open quote":  "job: \"" + strings.Repeat("x\n", 500_000),
		"an open list":   strings.Repeat("job: x\n", 140_000) + "gear: [",
		"the same key":   strings.Repeat("job: x\n", 140_000),
		"an alias often": "job: &a [x]\ngear: [" + strings.Repeat("*a,", 300_000) + "]",
	} {
		j, complaints := readText(text)
		assert.Nil(t, j, name)
		assert.NotEmpty(t, complaints, name)
	}
}

// TestManyNamesEnd: gear by the ten thousand, all of it wrong, is looked through
// no further than a person would; near misses among all names once took minutes.
func TestManyNamesEnd(t *testing.T) {
	names := func(format string, n int) string {
		var b strings.Builder
		for i := range n {
			fmt.Fprintf(&b, format, i)
		}
		return b.String()
	}
	whole := base(t)
	for name, text := range map[string]string{
		"cabinets": strings.Replace(whole, "  cabinets:\n", "  cabinets:\n"+names("    c%05d: {}\n", 60_000), 1),
		"bars":     strings.Replace(whole, "  bars:\n", "  bars:\n"+names("    b%05d: {most: {x: 1}}\n", 30_000), 1),
		"most":     strings.Replace(whole, "most: {big-cabinet: 12}", "most: {"+names("d%05d: 1, ", 60_000)+"}", 1),
		"items":    strings.Replace(whole, "extras:\n", "extras:\n"+names("      - {name: n%05d}\n", 40_000), 1),
	} {
		j, complaints := readText(text)
		assert.Nil(t, j, name)
		assert.NotEmpty(t, complaints, name)
		assert.LessOrEqual(t, len(complaints), ComplaintsMost, name)
	}
}
