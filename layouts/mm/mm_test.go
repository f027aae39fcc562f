package mm

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestBoxes(t *testing.T) {
	b := BoxAt(10, 20, 30, 40)
	assert.Equal(t, []float64{40, 60}, []float64{b.Right(), b.Bottom()})
	assert.Equal(t, BoxAt(8, 18, 34, 44), b.Grown(2))
	assert.Equal(t, At(40, 20), b.Nearest(At(90, 0)))
	assert.True(t, b.Holds(At(10, 60)) && !b.Holds(At(9, 60)))
	assert.True(t, b.Meets(BoxAt(39, 59, 5, 5)) && !b.Meets(BoxAt(40, 20, 5, 5)), "edges that touch share no room")
	lo, hi := Bounds([]Spot{{3, 4}, {1, 9}, {2, 0}})
	assert.Equal(t, []Spot{{1, 0}, {3, 9}}, []Spot{lo, hi})
}

func TestSegments(t *testing.T) {
	s := Segment{At(0, 0), At(10, 0)}
	assert.Equal(t, At(4, 0), s.Along(0.4))
	assert.Equal(t, []float64{3, 5}, []float64{s.From(At(5, 3)), s.From(At(13, 4))})
	assert.Equal(t, 5.0, Segment{At(0, 0), At(0, 0)}.From(At(3, 4)), "a segment without length")
	assert.True(t, s.Crosses(Segment{At(5, -1), At(5, 1)}) && !s.Crosses(Segment{At(5, 1), At(5, 2)}))
	assert.Equal(t, []float64{0, 1}, []float64{s.Gap(Segment{At(5, -1), At(5, 1)}), s.Gap(Segment{At(5, 1), At(5, 2)})})
	assert.True(t, s.Hits(BoxAt(4, -1, 2, 2)) && !s.Hits(BoxAt(4, 1, 2, 2)) && s.Hits(BoxAt(-1, -1, 20, 20)), "through it, beside it, within it")
}
