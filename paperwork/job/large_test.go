package job

import (
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
