package job

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestFactors: by hand, with 5 % of tolerance, a factor of 1.25, 60 % on the busier of
// two pins, and half of a rating allowed.
func TestFactors(t *testing.T) {
	p := Practice{MassTolerance: 0.05, DynamicFactor: 1.25, SideShare: 0.6, GearUse: 0.5}
	assert.InDelta(t, 131.25, p.Design(100), 1e-9)          // 100 · 1.05 · 1.25
	assert.InDelta(t, 1312.5, p.PinLoad(1000, 1), 1e-9)     // one pin carries all
	assert.InDelta(t, 787.5, p.PinLoad(1000, 2), 1e-9)      // 1000 · 0.6 · 1.05 · 1.25
	assert.InDelta(t, 0.35, p.PinUsed(1000, 2, 4500), 1e-9) // 787.5 / (4500 · 0.5)
	assert.InDelta(t, 0.35, p.PinUsed(-1000, 2, 4500), 1e-9, "pushed is used as pulled")
}
