package job

import (
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
)

// TestLargeIsQuick: the time to read grows with the size of a file, not with
// its square. A list on one line once took minutes; this is far above what it
// takes on a slow machine, and far below that.
func TestLargeIsQuick(t *testing.T) {
	for name, text := range map[string]string{
		"a long line":    "stacks: [" + strings.Repeat("0,", 500_000) + "]",
		"deep brackets":  strings.Repeat("[", 1_000_000),
		"an open quote":  "job: \"" + strings.Repeat("x\n", 500_000),
		"an open list":   strings.Repeat("job: x\n", 140_000) + "gear: [",
		"the same key":   strings.Repeat("job: x\n", 140_000),
		"an alias often": "job: &a [x]\ngear: [" + strings.Repeat("*a,", 300_000) + "]",
	} {
		start := time.Now()
		j, complaints := readText(text)
		assert.Nil(t, j, name)
		assert.NotEmpty(t, complaints, name)
		assert.Less(t, time.Since(start), 30*time.Second, name)
	}
}
