// Package paper is what sheets are drawn with: a canvas for ink and texts, pieces that
// flow from page to page, tables, codes, and the PDF that comes of them. It alone knows
// the PDF library, and it knows no sheet.
//
// Lengths are millimetres from the top left corner of the page.
package paper

import (
	"fmt"

	"github.com/go-pdf/fpdf"

	"hangpack/layouts/mm"
)

// A Mark is one piece of ink: what was drawn, on which page, in which block,
// and the room it takes. Texts have their words; outlines and lines their
// corners.
type Mark struct {
	Page           int
	Block, Kind    string
	In             int     // which of its page's blocks that is, from 0
	X0, Y0, X1, Y1 float64 // mm from the top left corner
	Text           string
	Pt             float64
	Corners        [][2]float64 // of an outline; both ends of a line
	Pen            float64      // mm, of a line or an outline; 0 for none
	Fill           int          // 0 black to 255 white, -1 for none
	Bold, White    bool         // a text's face, and that it is set white
	Dashes         []float64    // of a broken line, each and its gap, in mm
	Rounded        float64      // mm, of a rectangle's corners
	Open           bool         // a text of holes: see Canvas.Hole
	Apart          bool         // what the sheet says is the same without it: see Canvas.Apart
}

// A Block is the room on a page that some ink belongs to.
type Block struct {
	Page           int
	Name           string
	X0, Y0, X1, Y1 float64 // mm from the top left corner
	Within         int     // which block of the page this one stands in, -1 for none
}

// The frame of every page, in mm: margin, spine, gutter, foot.
const (
	margin     = 10.0
	spineWidth = 12.0
	gutter     = 6.0
	footHeight = 10.0
	punch      = 40.0 // a binder's holes, above and below the middle
	punchSide  = 12.0
)

// A Canvas is the paper being drawn on, or one to measure with while sheets are cut.
// It keeps a record of its ink, and its first fault: ink outside the block it belongs
// to, or text that is too wide.
type Canvas struct {
	pdf      *fpdf.Fpdf // nil where it only measures
	w, h     float64
	page     int    // of the pack
	sheet    string // that is cut or drawn
	mark     string // of that sheet
	Revision string // of the job, for heads
	block    string
	room     mm.Box
	within   int // which block of the page is drawn, -1 for none
	blocks   []Block
	before   int // blocks of the pages before
	marks    []Mark
	err      error
	now      ink
	dashes   []float64
	apart    bool
	wanted   []Code   // by the sheets that were cut with it
	shows    []string // sheets whose marks are shown
	codes    codes
	sheets   map[string]laidSheet // of the pack, by their names
	links    map[string]int       // of each sheet that is drawn, the PDF library's number

	destinations []destination
}

// newCanvas returns a canvas to measure with, A4 or Letter.
func newCanvas(letter bool, revision string) *Canvas {
	c := &Canvas{w: 210, h: 297, within: -1, Revision: revision}
	if letter {
		c.w, c.h = 215.9, 279.4
	}
	return c
}

// Body is the room that the sheets have, beside the spine and above the foot.
func (c *Canvas) Body() mm.Box {
	x := margin + spineWidth + gutter
	return mm.BoxAt(x, margin, c.w-margin-x, c.h-2*margin-footHeight)
}

// In draws a block: all ink that draw makes must lie in room, and room in that of the
// block around it, or within the margins of the page. Else it is a fault.
func (c *Canvas) In(name string, room mm.Box, draw func()) {
	outer, outerRoom, around := c.block, c.room, c.within
	if around < 0 {
		outerRoom = mm.BoxAt(margin, margin, c.w-2*margin, c.h-2*margin)
	}
	if !outerRoom.Grown(dust).Holds(mm.At(room.X, room.Y)) || !outerRoom.Grown(dust).Holds(mm.At(room.Right(), room.Bottom())) {
		c.Fault("page %d: the block %s (%.1f, %.1f)-(%.1f, %.1f) leaves the room around it", c.page, name, room.X, room.Y, room.Right(), room.Bottom())
	}
	c.block, c.room, c.within = name, room, len(c.blocks)-c.before
	c.blocks = append(c.blocks, Block{c.page, name, room.X, room.Y, room.Right(), room.Bottom(), around})
	draw()
	c.block, c.room, c.within = outer, outerRoom, around
}

// dust is what rounding may do to a length, in mm.
const dust = 1e-6

// ink records ink and faults it if it leaves its block.
func (c *Canvas) ink(kind string, x0, y0, x1, y1 float64) *Mark {
	const slack = 0.5 // half of a heavy line, and the dust of rounding
	m := Mark{Page: c.page, Block: c.block, In: c.within, Kind: kind, Dashes: c.dashes, Apart: c.apart, Fill: None, X0: x0, Y0: y0, X1: x1, Y1: y1}
	r := c.room
	if !(x0 >= r.X-slack && y0 >= r.Y-slack && x1 <= r.Right()+slack && y1 <= r.Bottom()+slack) {
		c.Fault("page %d: %s at (%.1f, %.1f)-(%.1f, %.1f) leaves the block %s (%.1f, %.1f)-(%.1f, %.1f)", c.page, kind, x0, y0, x1, y1, c.block, r.X, r.Y, r.Right(), r.Bottom())
	}
	c.marks = append(c.marks, m)
	return &c.marks[len(c.marks)-1]
}

// Fault keeps what is wrong, if nothing was before: the pack then fails.
func (c *Canvas) Fault(format string, args ...any) {
	if c.err == nil {
		c.err = fmt.Errorf(format, args...)
	}
}

// Record keeps a mark of ink that other calls draw, under a name for all of it.
func (c *Canvas) Record(kind string, x0, y0, x1, y1 float64) { c.ink(kind, x0, y0, x1, y1) }

// Inked returns how many marks there are so far, for ClearSince to begin with.
func (c *Canvas) Inked() int { return len(c.marks) }

// ClearSince reports whether no line or text that was drawn since a mark meets a box.
func (c *Canvas) ClearSince(first int, b mm.Box) bool {
	for _, m := range c.marks[first:] {
		if at := (mm.BoxAt(m.X0, m.Y0, m.X1-m.X0, m.Y1-m.Y0)); at.Grown(dust).Meets(b) && m.meets(b) {
			return false
		}
	}
	return true
}

// meets reports whether a mark's lines, or its room where it has none, meet a box.
func (m Mark) meets(b mm.Box) bool {
	for i, p := range m.Corners {
		q := m.Corners[(i+1)%len(m.Corners)]
		if (mm.Segment{A: mm.At(p[0], p[1]), B: mm.At(q[0], q[1])}).Hits(b) {
			return true
		}
	}
	return len(m.Corners) == 0
}

// Sheet returns the name of the sheet that is cut or drawn.
func (c *Canvas) Sheet() string { return c.sheet }

// SheetMark returns the mark of the sheet that is drawn. What is drawn with it belongs
// into Apart; what is measured for it takes WidestMark.
func (c *Canvas) SheetMark() string { return c.mark }

// Apart draws ink that leaves what the sheet says as it is, whatever it is: mark,
// revision, numbers of pages.
func (c *Canvas) Apart(draw func()) {
	outer := c.apart
	c.apart = true
	draw()
	c.apart = outer
}

// Listed returns the pages of a sheet, counted from 1 in the whole pack, and its mark.
// They belong into Apart: who shows them says something else when that sheet does.
func (c *Canvas) Listed(sheet string) (first, last int, mark string) {
	c.shows = append(c.shows, sheet)
	s := c.sheets[sheet]
	return s.first, s.first + len(s.pages) - 1, s.Mark
}

// LeadsTo makes some room of the page a click to a sheet, if that is drawn.
func (c *Canvas) LeadsTo(b mm.Box, sheet string) {
	if link, ok := c.links[sheet]; ok {
		c.pdf.Link(b.X, b.Y, b.W, b.H, link)
	}
}
