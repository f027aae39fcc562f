package layouts

import (
	"fmt"
	"math"

	"github.com/go-pdf/fpdf"
)

// An ink is what the PDF library draws with next. It writes an instruction for every
// change it is told of, so it is told only of what does change.
type ink struct {
	face    face
	pen     float64 // mm
	fill    int     // shade, plus 1
	letters int     // shade
}

// set chooses a face.
func (c *canvas) set(f face) {
	switch {
	case f == c.now.face:
		return
	case f.bold == c.now.face.bold && c.now.face.pt > 0:
		c.pdf.SetFontSize(f.pt)
	case f.bold:
		c.pdf.SetFont("go", "B", f.pt)
	default:
		c.pdf.SetFont("go", "", f.pt)
	}
	c.now.face = f
}

// pen chooses how thick lines are, in mm.
func (c *canvas) pen(mm float64) {
	if mm != c.now.pen {
		c.now.pen = mm
		c.pdf.SetLineWidth(mm)
	}
}

// fill chooses the shade that areas are filled with.
func (c *canvas) fill(shade int) {
	if shade+1 != c.now.fill {
		c.now.fill = shade + 1
		c.pdf.SetFillColor(shade, shade, shade)
	}
}

// line draws a line.
func (c *canvas) line(x0, y0, x1, y1, pen float64) {
	m := c.mark("line", math.Min(x0, x1), math.Min(y0, y1), math.Max(x0, x1), math.Max(y0, y1))
	m.Corners, m.Pen = [][2]float64{{x0, y0}, {x1, y1}}, pen
	c.pen(pen)
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
		c.fill(fill)
		style = "F"
	}
	if pen > 0 {
		c.pen(pen)
		style += "D"
	}
	return style
}

// with records what a mark is drawn with.
func (m *Mark) with(pen float64, fill int) { m.Pen, m.Fill = pen, fill }

// rect draws a rectangle; a pen of 0 draws no line.
func (c *canvas) rect(b box, pen float64, fill int) {
	c.mark("rect", b.x, b.y, b.right(), b.bottom()).with(pen, fill)
	c.pdf.Rect(b.x, b.y, b.w, b.h, c.style(pen, fill))
}

// round draws a rectangle with round corners.
func (c *canvas) round(b box, r, pen float64, fill int) {
	c.mark("rect", b.x, b.y, b.right(), b.bottom()).with(pen, fill)
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
	m := c.mark(kind, lo.x, lo.y, hi.x, hi.y)
	m.Corners = at
	m.with(pen, fill)
	c.pdf.Polygon(points, c.style(pen, fill))
}

// disc draws a circle. Its path is the same for all of them, which writes and packs
// in a fraction of the room that the PDF library's takes.
func (c *canvas) disc(x, y, r, pen float64, fill int) {
	c.mark("disc", x-r, y-r, x+r, y+r).with(pen, fill)
	paint := "B" // fill and draw
	switch {
	case fill == none:
		paint = "S"
	case pen == 0:
		paint = "f"
	}
	if fill != none {
		c.fill(fill)
	}
	unit := r / 1000
	c.pdf.RawWriteStr(fmt.Sprintf("%s%.1f w %s %s Q", c.placed(x, y, unit, unit), pen/unit, circle, paint))
}

// circle is the path of one with a radius of 1000: four curves. Viewers make lines of
// curves in a path's own units, so these are small ones. Source: the usual
// approximation of a quarter of a circle by a cubic curve, with its control points at
// 4/3 (√2 - 1) of the radius; from memory.
const circle = "1000 0 m 1000 552 552 1000 0 1000 c -552 1000 -1000 552 -1000 0 c -1000 -552 -552 -1000 0 -1000 c 552 -1000 1000 -552 1000 0 c h"

// placed begins a path that is given in units of its own from a point of the page:
// each so many mm to the right and so many up.
func (c *canvas) placed(x, y, right, up float64) string {
	return fmt.Sprintf("q %.7f 0 0 %.7f %.3f %.3f cm\n", right*ptPerMm, up*ptPerMm, x*ptPerMm, (c.h-y)*ptPerMm)
}

// inverse writes white on black until draw returns.
func (c *canvas) inverse(draw func()) {
	c.letters(white)
	draw()
	c.letters(black)
}

// letters chooses the shade of texts. The PDF library sets the shade of each text by
// itself unless areas are filled with the same one: see text.
func (c *canvas) letters(shade int) {
	c.now.letters = shade
	c.pdf.SetTextColor(shade, shade, shade)
}
