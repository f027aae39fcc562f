package paper

import (
	"fmt"
	"math"

	"github.com/go-pdf/fpdf"

	"hangpack/layouts/mm"
)

// Line draws a line with a pen so thick, in mm.
func (c *Canvas) Line(x0, y0, x1, y1, pen float64) {
	m := c.ink("line", math.Min(x0, x1), math.Min(y0, y1), math.Max(x0, x1), math.Max(y0, y1))
	m.Corners, m.Pen = [][2]float64{{x0, y0}, {x1, y1}}, pen
	c.now.pen(pen)
	c.now.on(func(p *fpdf.Fpdf) { p.Line(x0, y0, x1, y1) })
}

// Leader draws a leader, and keeps both its ends on record.
func (c *Canvas) Leader(s mm.Segment, pen float64) {
	c.ink("leader", min(s.A.X, s.B.X), min(s.A.Y, s.B.Y), max(s.A.X, s.B.X), max(s.A.Y, s.B.Y)).Corners = [][2]float64{{s.A.X, s.A.Y}, {s.B.X, s.B.Y}}
	c.now.pen(pen)
	c.now.on(func(p *fpdf.Fpdf) { p.Line(s.A.X, s.A.Y, s.B.X, s.B.Y) })
}

// Dashed draws with broken lines, dash and gap in mm, until draw returns.
func (c *Canvas) Dashed(dash, gap float64, draw func()) { c.broken([]float64{dash, gap}, draw) }

// broken draws with lines that are broken by a pattern, in mm, until draw returns.
func (c *Canvas) broken(pattern []float64, draw func()) {
	c.now.on(func(p *fpdf.Fpdf) { p.SetDashPattern(pattern, 0) })
	c.dashes = pattern
	draw()
	c.dashes = nil
	c.now.on(func(p *fpdf.Fpdf) { p.SetDashPattern(nil, 0) })
}

// Chain draws a chain-dotted line.
func (c *Canvas) Chain(x0, y0, x1, y1 float64) {
	c.broken([]float64{4, 0.9, 0.5, 0.9}, func() { c.Line(x0, y0, x1, y1, Light) })
}

// Rect draws a rectangle; a pen of 0 draws no line.
func (c *Canvas) Rect(b mm.Box, pen float64, fill int) {
	c.ink("rect", b.X, b.Y, b.Right(), b.Bottom()).with(pen, fill)
	c.now.on(func(p *fpdf.Fpdf) { p.Rect(b.X, b.Y, b.W, b.H, c.now.style(pen, fill)) })
}

// Round draws a rectangle with corners rounded by r mm.
func (c *Canvas) Round(b mm.Box, r, pen float64, fill int) {
	m := c.ink("rect", b.X, b.Y, b.Right(), b.Bottom())
	m.with(pen, fill)
	m.Rounded = r
	c.now.on(func(p *fpdf.Fpdf) { p.RoundedRect(b.X, b.Y, b.W, b.H, r, "1234", c.now.style(pen, fill)) })
}

// Shape draws a closed outline, which is recorded as a kind. There is a corner.
func (c *Canvas) Shape(kind string, corners []mm.Spot, pen float64, fill int) {
	var points []fpdf.PointType
	var at [][2]float64
	for _, p := range corners {
		points = append(points, fpdf.PointType{X: p.X, Y: p.Y})
		at = append(at, [2]float64{p.X, p.Y})
	}
	lo, hi := mm.Bounds(corners)
	m := c.ink(kind, lo.X, lo.Y, hi.X, hi.Y)
	m.Corners = at
	m.with(pen, fill)
	c.now.on(func(p *fpdf.Fpdf) { p.Polygon(points, c.now.style(pen, fill)) })
}

// with records what a mark is drawn with.
func (m *Mark) with(pen float64, fill int) { m.Pen, m.Fill = pen, fill }

// Disc draws a circle. Its path is the same for all of them, which writes and packs
// in a fraction of the room that the PDF library's takes.
func (c *Canvas) Disc(x, y, r, pen float64, fill int) {
	c.ink("disc", x-r, y-r, x+r, y+r).with(pen, fill)
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
	c.now.on(func(p *fpdf.Fpdf) {
		p.RawWriteStr(fmt.Sprintf("%s%.1f w %s %s Q", c.placed(x, y, unit, unit), pen/unit, circle, paint))
	})
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
