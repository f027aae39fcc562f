package layouts

import (
	"bytes"
	"fmt"
	"math"
	"strings"
	"time"

	"github.com/go-pdf/fpdf"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
)

// A face is one size of one weight of the paper's font; the size in points.
type face struct {
	bold bool
	pt   float64
}

// The faces of running text. What is read from afar is sized by the height of
// its digits: see digits.
var (
	small   = face{false, 8.5}
	smallB  = face{true, 8.5}
	text    = face{false, 10}
	textB   = face{true, 10}
	reading = face{false, 12}
	section = face{true, 14}
	title   = face{true, 24}
)

// Measures of the font, in ems. Source: the glyph outlines of Go Bold.
const (
	digitHeight = 0.741
	digitWidth  = 0.556
	pointWidth  = 0.278
	ptPerMm     = 72 / 25.4
)

// digits returns the bold face whose digits are mm tall.
func digits(mm float64) face { return face{true, mm / digitHeight * ptPerMm} }

// em returns the size of a face in mm.
func (f face) em() float64 { return f.pt / ptPerMm }

// lead returns the distance of two lines of a face, in mm.
func (f face) lead() float64 { return f.em() * 1.3 }

// Pens, in mm, and fills.
const (
	light = 0.2
	solid = 0.4
	heavy = 0.8

	none  = -1
	white = 255
	grey  = 224
	black = 0
)

// A point of the paper, in mm from its top left corner.
type spot struct{ x, y float64 }

// A box of the paper, in mm.
type box struct{ x, y, w, h float64 }

func (b box) bottom() float64 { return b.y + b.h }
func (b box) right() float64  { return b.x + b.w }

// A Mark is one piece of ink: what was drawn, on which page, in which block,
// and the room it takes. Texts have their words; outlines their corners.
type Mark struct {
	Page           int
	Block, Kind    string
	X0, Y0, X1, Y1 float64 // mm from the top left corner
	Text           string
	Pt             float64
	Corners        [][2]float64
}

// A canvas is the paper being drawn on. It keeps a record of its ink, and its
// first fault: ink outside the block it belongs to, or text that is too wide.
type canvas struct {
	pdf   *fpdf.Fpdf
	w, h  float64
	page  int
	block string
	room  box
	marks []Mark
	err   error
	ems   map[measured]float64
	now   face // the PDF library's
	codes map[string]bitmap
	links map[string]int // of each target, the PDF library's number
	pages map[string]int // of each target, its page
}

// newCanvas returns a canvas with nothing on it. All that could differ from
// run to run is fixed: dates, order, the fonts' own bytes.
func newCanvas(letter bool, day time.Time) *canvas {
	c := &canvas{w: 210, h: 297, ems: map[measured]float64{}, codes: map[string]bitmap{}, links: map[string]int{}, pages: map[string]int{}}
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

// A measured text: its width in ems does not depend on its size.
type measured struct {
	bold bool
	s    string
}

// width returns how wide a text is, in mm. Each text is measured once.
func (c *canvas) width(f face, s string) float64 {
	key := measured{f.bold, s}
	ems, ok := c.ems[key]
	if !ok {
		c.set(face{f.bold, 100})
		ems = c.pdf.GetStringWidth(s) / face{f.bold, 100}.em()
		c.ems[key] = ems
	}
	return ems * f.em()
}

// text writes s with its left end at x and its baseline at y.
func (c *canvas) text(x, y float64, f face, s string) {
	if s == "" {
		return
	}
	m := c.mark("text", x, y-f.em()*0.75, x+c.width(f, s), y+f.em()*0.21)
	m.Text, m.Pt = s, f.pt
	c.set(f)
	c.pdf.Text(x, y, s)
}

// right writes s with its right end at x.
func (c *canvas) right(x, y float64, f face, s string) { c.text(x-c.width(f, s), y, f, s) }

// centre writes s with its middle at x.
func (c *canvas) centre(x, y float64, f face, s string) { c.text(x-c.width(f, s)/2, y, f, s) }

// upwards writes s turned to the left by a right angle, its baseline at x, its
// left end at y.
func (c *canvas) upwards(x, y float64, f face, s string) {
	m := c.mark("text", x-f.em()*0.75, y-c.width(f, s), x+f.em()*0.21, y)
	m.Text, m.Pt = s, f.pt
	c.set(f)
	c.pdf.TransformBegin()
	c.pdf.TransformRotate(90, x, y)
	c.pdf.Text(x, y, s)
	c.pdf.TransformEnd()
}

// wrap breaks s into lines no wider than w: at blanks, never between a figure
// and its unit, and inside a word only where the word alone is too wide.
func (c *canvas) wrap(f face, w float64, s string) (lines []string) {
	line := ""
	for _, word := range wordsOf(s) {
		if line != "" && c.width(f, line+" "+word) > w {
			lines, line = append(lines, line), ""
		}
		if line != "" {
			word = line + " " + word
		}
		for n := c.fitting(f, w, word); n < len(word); n = c.fitting(f, w, word) {
			lines, word = append(lines, word[:n]), word[n:]
		}
		line = word
	}
	if line != "" {
		lines = append(lines, line)
	}
	return lines
}

// wordsOf cuts a text at blanks, and leaves a figure together with its unit.
func wordsOf(s string) (words []string) {
	for _, word := range strings.Fields(s) {
		n := len(words)
		if n > 0 && isUnit(strings.TrimRight(word, ".,;:)")) && strings.ContainsAny(words[n-1][len(words[n-1])-1:], "0123456789") {
			words[n-1] += " " + word
			continue
		}
		words = append(words, word)
	}
	return words
}

func isUnit(s string) bool {
	switch s {
	case "kg", "lb", "kN", "lbf", "m", "mm", "ft", "in", "%":
		return true
	}
	return false
}

// fitting returns how many bytes of s, whole characters and at least one, are
// no wider than w.
func (c *canvas) fitting(f face, w float64, s string) int {
	n := 0
	for i, r := range s {
		if end := i + len(string(r)); i == 0 || c.width(f, s[:end]) <= w {
			n = end
			continue
		}
		break
	}
	return n
}

// lines writes lines from the baseline y down and returns the next baseline.
func (c *canvas) lines(x, y float64, f face, lines []string) float64 {
	for _, s := range lines {
		c.text(x, y, f, s)
		y += f.lead()
	}
	return y
}

// paragraph writes s into a column w wide and returns the next baseline.
func (c *canvas) paragraph(x, y, w float64, f face, s string) float64 {
	return c.lines(x, y, f, c.wrap(f, w, s))
}

// line draws a line.
func (c *canvas) line(x0, y0, x1, y1, pen float64) {
	c.mark("line", math.Min(x0, x1), math.Min(y0, y1), math.Max(x0, x1), math.Max(y0, y1))
	c.pdf.SetLineWidth(pen)
	c.pdf.Line(x0, y0, x1, y1)
}

// dashed draws with broken lines.
func (c *canvas) dashed(dash, gap float64, draw func()) {
	c.pdf.SetDashPattern([]float64{dash, gap}, 0)
	draw()
	c.pdf.SetDashPattern(nil, 0)
}

// style sets pen and fill and returns the PDF library's word for both.
func (c *canvas) style(pen float64, fill int) string {
	style := ""
	if fill != none {
		c.pdf.SetFillColor(fill, fill, fill)
		style = "F"
	}
	if pen > 0 {
		c.pdf.SetLineWidth(pen)
		style += "D"
	}
	return style
}

// rect draws a rectangle; a pen of 0 draws no line.
func (c *canvas) rect(b box, pen float64, fill int) {
	c.mark("rect", b.x, b.y, b.right(), b.bottom())
	c.pdf.Rect(b.x, b.y, b.w, b.h, c.style(pen, fill))
}

// round draws a rectangle with round corners.
func (c *canvas) round(b box, r, pen float64, fill int) {
	c.mark("rect", b.x, b.y, b.right(), b.bottom())
	c.pdf.RoundedRect(b.x, b.y, b.w, b.h, r, "1234", c.style(pen, fill))
}

// shape draws a closed outline.
func (c *canvas) shape(kind string, corners []spot, pen float64, fill int) {
	var points []fpdf.PointType
	lo, hi := corners[0], corners[0]
	var at [][2]float64
	for _, p := range corners {
		points = append(points, fpdf.PointType{X: p.x, Y: p.y})
		lo = spot{math.Min(lo.x, p.x), math.Min(lo.y, p.y)}
		hi = spot{math.Max(hi.x, p.x), math.Max(hi.y, p.y)}
		at = append(at, [2]float64{p.x, p.y})
	}
	c.mark(kind, lo.x, lo.y, hi.x, hi.y).Corners = at
	c.pdf.Polygon(points, c.style(pen, fill))
}

// disc draws a circle.
func (c *canvas) disc(x, y, r, pen float64, fill int) {
	c.mark("disc", x-r, y-r, x+r, y+r)
	c.pdf.Circle(x, y, r, c.style(pen, fill))
}

// inverse writes white on black until draw returns.
func (c *canvas) inverse(draw func()) {
	c.pdf.SetTextColor(255, 255, 255)
	draw()
	c.pdf.SetTextColor(0, 0, 0)
}
