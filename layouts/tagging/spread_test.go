package tagging

import (
	"math/rand"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
)

// Spread labels keep their order and their distance, stay within bounds where
// there is room, and do not move where they need not.
func TestSpread(t *testing.T) {
	r := rand.New(rand.NewSource(1))
	for range 300 {
		want := make([]float64, 1+r.Intn(20))
		for i := range want {
			want[i] = r.Float64() * 100
		}
		slices.Sort(want)
		at := Spread(want, 4, 0, 100)
		for i := range at {
			assert.True(t, at[i] >= -1e-9 && at[i] <= 100+1e-9)
			if i > 0 {
				assert.GreaterOrEqual(t, at[i]-at[i-1], 4-1e-9)
			}
		}
	}
	assert.Equal(t, []float64{10, 20, 30}, Spread([]float64{10, 20, 30}, 4, 0, 100))
}
