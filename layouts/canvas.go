package layouts

import (
	"fmt"

	"github.com/go-pdf/fpdf"
)

// A point of the paper, in mm from its top left corner.
type spot struct{ x, y float64 }

// A box of the paper, in mm.
type box struct{ x, y, w, h float64 }

func (b box) bottom() float64 { return b.y + b.h }
func (b box) right() float64  { return b.x + b.w }

// A Mark is one piece of ink: what was drawn, on which page, in which block,
// and the room it takes. Texts have their words; outlines and lines their
// corners.
type Mark struct {
	Page           int
	Block, Kind    string
	X0, Y0, X1, Y1 float64 // mm from the top left corner
	Text           string
	Pt             float64
	Corners        [][2]float64 // of an outline; both ends of a line
	Pen            float64      // mm, of a line
}

// A canvas is the paper being drawn on, or one to measure with while sheets are cut.
// It keeps a record of its ink, and its first fault: ink outside the block it belongs
// to, or text that is too wide.
type canvas struct {
	pdf      *fpdf.Fpdf // nil where it only measures
	w, h     float64
	page     int
	revision string
	block    string
	room     box
	marks    []Mark
	err      error
	now      ink
	wanted   []Code // by the sheets that were cut with it
	codes    codes
	links    map[string]int // of each target, the PDF library's number
	pages    map[string]int // of each target, its page
}

// newCanvas returns a canvas to measure with.
func newCanvas(p Pack) *canvas {
	c := &canvas{w: 210, h: 297, revision: p.Spine.Revision}
	if p.Letter {
		c.w, c.h = 215.9, 279.4
	}
	return c
}

// in draws a block: all ink that draw makes must lie in room.
func (c *canvas) in(name string, room box, draw func()) {
	outer, outerRoom := c.block, c.room
	c.block, c.room = name, room
	draw()
	c.block, c.room = outer, outerRoom
}

// mark records ink and faults it if it leaves its block.
func (c *canvas) mark(kind string, x0, y0, x1, y1 float64) *Mark {
	const slack = 0.5 // half of a heavy line, and the dust of rounding
	m := Mark{Page: c.page, Block: c.block, Kind: kind, X0: x0, Y0: y0, X1: x1, Y1: y1}
	r := c.room
	if !(x0 >= r.x-slack && y0 >= r.y-slack && x1 <= r.right()+slack && y1 <= r.bottom()+slack) {
		c.fault("page %d: %s at (%.1f, %.1f)-(%.1f, %.1f) leaves the block %s (%.1f, %.1f)-(%.1f, %.1f)", c.page, kind, x0, y0, x1, y1, c.block, r.x, r.y, r.right(), r.bottom())
	}
	c.marks = append(c.marks, m)
	return &c.marks[len(c.marks)-1]
}

func (c *canvas) fault(format string, args ...any) {
	if c.err == nil {
		c.err = fmt.Errorf(format, args...)
	}
}
