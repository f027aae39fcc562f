package job

import (
	"io"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestLimitsOfBarsAreSorted: in whatever order a bar's limits are written.
func TestLimitsOfBarsAreSorted(t *testing.T) {
	text := strings.ReplaceAll(example(t, "arena.yaml"), "gear/harbour-lights.yaml", "limits.yaml")
	gear := strings.Replace(example(t, "gear/harbour-lights.yaml"), "{long-throw: 16, wide-throw: 8, any: 20}", "{any: 20, wide-throw: 8, long-throw: 16}", 1)
	j, complaints := Read("job.yaml", strings.NewReader(text), func(string) (io.ReadCloser, error) { return io.NopCloser(strings.NewReader(gear)), nil }, anything)
	require.Empty(t, complaints)
	for _, s := range j.Stacks {
		if len(s.Bar.Most) == 3 {
			assert.Equal(t, []Most{{"long-throw", 16}, {"wide-throw", 8}, {OfAnyType, 20}}, s.Bar.Most)
			return
		}
	}
	require.Fail(t, "no bar of three limits")
}
