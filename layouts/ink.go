package layouts

import (
	"fmt"
	"math"

	"github.com/go-pdf/fpdf"

	"hangpack/layouts/mm"
)

// An ink is what the PDF library draws with next. It writes an instruction for every
// change it is told of, so it is told only of what does change.
type ink struct {
	pdf     *fpdf.Fpdf // nil where nothing is drawn
	face    face
	thick   float64 // of lines, mm
	ground  int     // shade of areas, plus 1
	letters int     // shade of texts
}

// set chooses a face.
func (k *ink) set(f face) {
	switch {
	case f == k.face:
		return
	case f.bold == k.face.bold && k.face.pt > 0:
		k.pdf.SetFontSize(f.pt)
	case f.bold:
		k.pdf.SetFont("go", "B", f.pt)
	default:
		k.pdf.SetFont("go", "", f.pt)
	}
	k.face = f
}

// pen chooses how thick lines are, in mm.
func (k *ink) pen(thick float64) {
	if thick != k.thick {
		k.thick = thick
		k.pdf.SetLineWidth(thick)
	}
}

// fill chooses the shade that areas are filled with.
func (k *ink) fill(shade int) {
	if shade+1 != k.ground {
		k.ground = shade + 1
		k.pdf.SetFillColor(shade, shade, shade)
	}
}

// style sets pen and fill and returns the PDF library's word for both.
func (k *ink) style(pen float64, fill int) string {
	style := ""
	if fill != none {
		k.fill(fill)
		style = "F"
	}
	if pen > 0 {
		k.pen(pen)
		style += "D"
	}
	return style
}

// write chooses the shade of texts. The PDF library sets the shade of each text by
// itself unless areas are filled with the same one: see text.
func (k *ink) write(shade int) {
	k.letters = shade
	k.pdf.SetTextColor(shade, shade, shade)
}

// line draws a line.
func (c *canvas) line(x0, y0, x1, y1, pen float64) {
	m := c.mark("line", math.Min(x0, x1), math.Min(y0, y1), math.Max(x0, x1), math.Max(y0, y1))
	m.Corners, m.Pen = [][2]float64{{x0, y0}, {x1, y1}}, pen
	c.now.pen(pen)
	c.pdf.Line(x0, y0, x1, y1)
}

// dashed draws with broken lines.
func (c *canvas) dashed(dash, gap float64, draw func()) {
	c.pdf.SetDashPattern([]float64{dash, gap}, 0)
	draw()
	c.pdf.SetDashPattern(nil, 0)
}

// chain draws a chain-dotted line.
func (c *canvas) chain(x0, y0, x1, y1 float64) {
	c.pdf.SetDashPattern([]float64{4, 0.9, 0.5, 0.9}, 0)
	c.line(x0, y0, x1, y1, light)
	c.pdf.SetDashPattern(nil, 0)
}

// leader draws a leader, and keeps both its ends on record.
func (c *canvas) leader(s mm.Segment, pen float64) {
	c.mark("leader", min(s.A.X, s.B.X), min(s.A.Y, s.B.Y), max(s.A.X, s.B.X), max(s.A.Y, s.B.Y)).Corners = [][2]float64{{s.A.X, s.A.Y}, {s.B.X, s.B.Y}}
	c.now.pen(pen)
	c.pdf.Line(s.A.X, s.A.Y, s.B.X, s.B.Y)
}

// with records what a mark is drawn with.
func (m *Mark) with(pen float64, fill int) { m.Pen, m.Fill = pen, fill }

// rect draws a rectangle; a pen of 0 draws no line.
func (c *canvas) rect(b mm.Box, pen float64, fill int) {
	c.mark("rect", b.X, b.Y, b.Right(), b.Bottom()).with(pen, fill)
	c.pdf.Rect(b.X, b.Y, b.W, b.H, c.now.style(pen, fill))
}

// round draws a rectangle with round corners.
func (c *canvas) round(b mm.Box, r, pen float64, fill int) {
	c.mark("rect", b.X, b.Y, b.Right(), b.Bottom()).with(pen, fill)
	c.pdf.RoundedRect(b.X, b.Y, b.W, b.H, r, "1234", c.now.style(pen, fill))
}

// shape draws a closed outline.
func (c *canvas) shape(kind string, corners []mm.Spot, pen float64, fill int) {
	var points []fpdf.PointType
	lo, hi := corners[0], corners[0]
	var at [][2]float64
	for _, p := range corners {
		points = append(points, fpdf.PointType{X: p.X, Y: p.Y})
		lo = mm.At(math.Min(lo.X, p.X), math.Min(lo.Y, p.Y))
		hi = mm.At(math.Max(hi.X, p.X), math.Max(hi.Y, p.Y))
		at = append(at, [2]float64{p.X, p.Y})
	}
	m := c.mark(kind, lo.X, lo.Y, hi.X, hi.Y)
	m.Corners = at
	m.with(pen, fill)
	c.pdf.Polygon(points, c.now.style(pen, fill))
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
		c.now.fill(fill)
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
	c.now.write(white)
	draw()
	c.now.write(black)
}

// onWhite clears the paper for a text, so that no line runs through it.
func (c *canvas) onWhite(x, y float64, f face, s string) {
	const air = 0.3
	left, right := max(x-air, c.room.X), min(x+c.width(f, s)+air, c.room.Right())
	top, low := max(y-f.em()*0.75-air, c.room.Y), min(y+f.em()*0.21+air, c.room.Bottom())
	c.rect(mm.BoxAt(left, top, right-left, low-top), 0, white)
}
