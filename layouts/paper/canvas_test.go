package paper

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/layouts/mm"
)

func canvasFor() *Canvas {
	return newDrawingCanvas(Pack{Day: time.Date(2027, 6, 12, 0, 0, 0, 0, time.UTC)})
}

// Ink outside its block fails the pack: here text that is wider than its room.
func TestInkOutsideItsBlockFails(t *testing.T) {
	c := canvasFor()
	c.pdf.AddPage()
	c.In("narrow", mm.BoxAt(50, 50, 10, 5), func() { c.Text(50, 54, Text, "wider than this") })
	require.ErrorContains(t, c.err, "leaves the block narrow")
	c = canvasFor()
	c.pdf.AddPage()
	c.In("wide", mm.BoxAt(50, 50, 60, 5), func() { c.Text(50, 54, Text, "not wider than this") })
	require.NoError(t, c.err)
}

// A block that leaves the block around it, or the margins of the page, fails the
// pack: ink inside it would prove nothing.
func TestBlocksOutsideTheirRoomFail(t *testing.T) {
	for what, rooms := range map[string][2]mm.Box{
		"leaves the block around it": {mm.BoxAt(50, 50, 60, 20), mm.BoxAt(90, 55, 30, 5)},
		"is as wide":                 {mm.BoxAt(50, 50, 60, 20), mm.BoxAt(50, 55, 60, 5)},
		"leaves the page":            {mm.BoxAt(50, 280, 60, 20), mm.BoxAt(55, 281, 5, 5)},
		"in the spine's margin":      {mm.BoxAt(8, 50, 60, 20), mm.BoxAt(55, 51, 5, 5)},
	} {
		c := canvasFor()
		c.start(1, "one")
		c.In("outer", rooms[0], func() { c.In("inner", rooms[1], func() {}) })
		if what == "is as wide" {
			require.NoError(t, c.err)
			assert.Equal(t, []Block{{1, "outer", 50, 50, 110, 70, -1}, {1, "inner", 50, 55, 110, 60, 0}}, c.blocks)
			continue
		}
		require.ErrorContains(t, c.err, "leaves the room around it", what)
	}
}

// Every mark knows its block, counted from the first of its page, and what it is
// drawn with.
func TestMarksKnowTheirBlocks(t *testing.T) {
	c := canvasFor()
	for n := range 2 {
		c.start(n+1, "page")
		c.In("first", mm.BoxAt(50, 50, 60, 20), func() { c.Rect(mm.BoxAt(51, 51, 5, 5), 0, Black) })
		c.In("second", mm.BoxAt(50, 90, 60, 20), func() {
			c.Inverse(func() { c.Text(51, 95, SmallBold, "white") })
			c.Disc(60, 100, 2, Heavy, None)
		})
	}
	for n := range 2 {
		m := c.marks[3*n : 3*n+3]
		assert.Equal(t, []int{0, 1, 1}, []int{m[0].In, m[1].In, m[2].In})
		assert.Equal(t, []int{Black, None, None}, []int{m[0].Fill, m[1].Fill, m[2].Fill})
		assert.Equal(t, []float64{0, 0, Heavy}, []float64{m[0].Pen, m[1].Pen, m[2].Pen})
		assert.True(t, m[1].White && m[1].Bold && !m[2].White)
	}
}
