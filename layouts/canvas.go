package layouts

import (
	"bytes"
	"fmt"
	"time"

	"github.com/go-pdf/fpdf"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
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

// A canvas is the paper being drawn on. It keeps a record of its ink, and its
// first fault: ink outside the block it belongs to, or text that is too wide.
type canvas struct {
	pdf      *fpdf.Fpdf
	w, h     float64
	page     int
	revision string
	block    string
	room     box
	marks    []Mark
	err      error
	now      face // the PDF library's
	codes    map[string]bitmap
	links    map[string]int // of each target, the PDF library's number
	pages    map[string]int // of each target, its page
}

// newCanvas returns a canvas with nothing on it. All that could differ from
// run to run is fixed: dates, order, the fonts' own bytes.
func newCanvas(letter bool, day time.Time) *canvas {
	c := &canvas{w: 210, h: 297, codes: map[string]bitmap{}, links: map[string]int{}, pages: map[string]int{}}
	if letter {
		c.w, c.h = 215.9, 279.4
	}
	c.pdf = fpdf.NewCustom(&fpdf.InitType{UnitStr: "mm", Size: fpdf.SizeType{Wd: c.w, Ht: c.h}})
	c.pdf.SetMargins(0, 0, 0)
	c.pdf.SetAutoPageBreak(false, 0)
	c.pdf.SetCatalogSort(true)
	c.pdf.SetCreationDate(day.UTC())
	c.pdf.SetModificationDate(day.UTC())
	c.pdf.SetProducer("hangpack", true)
	// The PDF library writes into the bytes it is given.
	c.pdf.AddUTF8FontFromBytes("go", "", bytes.Clone(goregular.TTF))
	c.pdf.AddUTF8FontFromBytes("go", "B", bytes.Clone(gobold.TTF))
	c.set(text)
	return c
}

// set chooses a face, if it is not the one in use.
func (c *canvas) set(f face) {
	if f == c.now {
		return
	}
	c.now = f
	style := ""
	if f.bold {
		style = "B"
	}
	c.pdf.SetFont("go", style, f.pt)
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
