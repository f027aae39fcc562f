package paper

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
	face    Face
	thick   float64 // of lines, mm
	ground  int     // shade of areas, plus 1
	letters int     // shade of texts
}

// set chooses a face.
func (k *ink) set(f Face) {
	switch {
	case f == k.face:
		return
	case f.Bold == k.face.Bold && k.face.Pt > 0:
		k.pdf.SetFontSize(f.Pt)
	case f.Bold:
		k.pdf.SetFont("go", "B", f.Pt)
	default:
		k.pdf.SetFont("go", "", f.Pt)
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
	if fill != None {
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

// Line draws a line.
func (c *Canvas) Line(x0, y0, x1, y1, pen float64) {
	m := c.mark("line", math.Min(x0, x1), math.Min(y0, y1), math.Max(x0, x1), math.Max(y0, y1))
	m.Corners, m.Pen = [][2]float64{{x0, y0}, {x1, y1}}, pen
	c.now.pen(pen)
	c.pdf.Line(x0, y0, x1, y1)
}

// Dashed draws with broken lines.
func (c *Canvas) Dashed(dash, gap float64, draw func()) {
	c.pdf.SetDashPattern([]float64{dash, gap}, 0)
	draw()
	c.pdf.SetDashPattern(nil, 0)
}

// Chain draws a chain-dotted line.
func (c *Canvas) Chain(x0, y0, x1, y1 float64) {
	c.pdf.SetDashPattern([]float64{4, 0.9, 0.5, 0.9}, 0)
	c.Line(x0, y0, x1, y1, Light)
	c.pdf.SetDashPattern(nil, 0)
}

// Leader draws a leader, and keeps both its ends on record.
func (c *Canvas) Leader(s mm.Segment, pen float64) {
	c.mark("leader", min(s.A.X, s.B.X), min(s.A.Y, s.B.Y), max(s.A.X, s.B.X), max(s.A.Y, s.B.Y)).Corners = [][2]float64{{s.A.X, s.A.Y}, {s.B.X, s.B.Y}}
	c.now.pen(pen)
	c.pdf.Line(s.A.X, s.A.Y, s.B.X, s.B.Y)
}

// with records what a mark is drawn with.
func (m *Mark) with(pen float64, fill int) { m.Pen, m.Fill = pen, fill }

// Rect draws a rectangle; a pen of 0 draws no line.
func (c *Canvas) Rect(b mm.Box, pen float64, fill int) {
	c.mark("rect", b.X, b.Y, b.Right(), b.Bottom()).with(pen, fill)
	c.pdf.Rect(b.X, b.Y, b.W, b.H, c.now.style(pen, fill))
}

// Round draws a rectangle with round corners.
func (c *Canvas) Round(b mm.Box, r, pen float64, fill int) {
	c.mark("rect", b.X, b.Y, b.Right(), b.Bottom()).with(pen, fill)
	c.pdf.RoundedRect(b.X, b.Y, b.W, b.H, r, "1234", c.now.style(pen, fill))
}

// Shape draws a closed outline.
func (c *Canvas) Shape(kind string, corners []mm.Spot, pen float64, fill int) {
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

// Disc draws a circle. Its path is the same for all of them, which writes and packs
// in a fraction of the room that the PDF library's takes.
func (c *Canvas) Disc(x, y, r, pen float64, fill int) {
	c.mark("disc", x-r, y-r, x+r, y+r).with(pen, fill)
	paint := "B" // fill and draw
	switch {
	case fill == None:
		paint = "S"
	case pen == 0:
		paint = "f"
	}
	if fill != None {
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
func (c *Canvas) placed(x, y, right, up float64) string {
	return fmt.Sprintf("q %.7f 0 0 %.7f %.3f %.3f cm\n", right*ptPerMm, up*ptPerMm, x*ptPerMm, (c.h-y)*ptPerMm)
}

// Inverse writes white on black until draw returns.
func (c *Canvas) Inverse(draw func()) {
	c.now.write(White)
	draw()
	c.now.write(Black)
}

// OnWhite clears the paper for a text, so that no line runs through it.
func (c *Canvas) OnWhite(x, y float64, f Face, s string) {
	const air = 0.3
	left, right := max(x-air, c.room.X), min(x+c.Width(f, s)+air, c.room.Right())
	top, low := max(y-f.Em()*0.75-air, c.room.Y), min(y+f.Em()*0.21+air, c.room.Bottom())
	c.Rect(mm.BoxAt(left, top, right-left, low-top), 0, White)
}
