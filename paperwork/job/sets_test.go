package job

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestSets: nine cabinets, counted off on the fingers.
func TestSets(t *testing.T) {
	s := Sets{4, 1, 4}
	var of []int
	for n := 1; n <= 9; n++ {
		of = append(of, s.Of(n))
	}
	assert.Equal(t, []int{0, 0, 0, 0, 1, 2, 2, 2, 2}, of)
	assert.Equal(t, []int{0, 4, 5}, []int{s.First(0), s.First(1), s.First(2)})
	assert.PanicsWithValue(t, "cabinet is 1 below the last set", func() { s.Of(10) })
	assert.Panics(t, func() { Sets{}.Of(1) })
}
