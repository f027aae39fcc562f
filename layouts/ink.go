package layouts

import (
	"fmt"
	"math"

	"github.com/go-pdf/fpdf"
)

// An ink is what the PDF library draws with next. It writes an instruction for every
// change it is told of, so it is told only of what does change.
type ink struct {
	face face
	pen  float64 // mm
	fill int     // shade, plus 1
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

// placed begins a path that is given in units of its own from a point of the page:
// each so many mm to the right and so many up.
func (c *canvas) placed(x, y, right, up float64) string {
	return fmt.Sprintf("q %.5f 0 0 %.5f %.3f %.3f cm\n", right*ptPerMm, up*ptPerMm, x*ptPerMm, (c.h-y)*ptPerMm)
}

// inverse writes white on black until draw returns.
func (c *canvas) inverse(draw func()) {
	c.pdf.SetTextColor(255, 255, 255)
	draw()
	c.pdf.SetTextColor(0, 0, 0)
}
