package paper

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// Pieces go on from page to page in their order; a heading never ends a page.
func TestCutKeepsHeadingsWithRows(t *testing.T) {
	head, row := Piece{H: 10, Keep: true}, Piece{H: 10}
	pages := IntoPages([]Piece{head, row, row, head, row, row}, 35)
	var sizes []int
	for _, p := range pages {
		sizes = append(sizes, len(p))
		assert.False(t, p[len(p)-1].Keep)
	}
	assert.Equal(t, []int{3, 3}, sizes)
	assert.Len(t, IntoPages(nil, 10), 1)
}
