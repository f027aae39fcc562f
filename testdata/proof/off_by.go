package proof

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
)

// OffBy is how many cases a check has had, and the largest difference that it saw.
type OffBy struct {
	Cases int
	Worst float64
}

func (a *OffBy) InDelta(t *testing.T, want, got, most float64, says ...any) {
	t.Helper()
	assert.InDelta(t, want, got, most, says...)
	a.Worst = math.Max(a.Worst, math.Max(math.Abs(want-got), Untold))
}

// Untold is what one machine may be off by and another one not: it is not told from
// none.
const Untold = 0x1p-52
