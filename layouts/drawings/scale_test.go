package drawings

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"hangpack/layouts/mm"
)

// A frame shows all of its drawing at the largest scale that it fits.
func TestFrame(t *testing.T) {
	room := mm.BoxAt(10, 10, 100, 50)
	f := FrameFor(Ruler{}, Place{0, 0}, Place{2, 1}, room)
	assert.Equal(t, 20, f.Scale)
	for _, p := range []Place{{0, 0}, {2, 1}} {
		at := f.At(p)
		assert.True(t, at.X >= 10 && at.X <= 110 && at.Y >= 10 && at.Y <= 60)
	}
	assert.InDelta(t, 50, f.At(Place{1, 0}).X-f.At(Place{0, 0}).X, 1e-9, "1 m at 1:20")
	assert.InDelta(t, 50, f.At(Place{0, 0}).Y-f.At(Place{0, 1}).Y, 1e-9, "up the page")
	assert.Equal(t, 24, FrameFor(Ruler{Imperial: true}, Place{0, 0}, Place{2, 1}, room).Scale)
	assert.Equal(t, 400, FrameFor(Ruler{}, Place{0, 0}, Place{30, 1}, room).Scale)
}
