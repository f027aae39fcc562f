package paperwork

import (
	"fmt"
	"math"
	"sync"

	"golang.org/x/image/font"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
	"golang.org/x/image/font/sfnt"
	units26 "golang.org/x/image/math/fixed"

	"hangpack/layouts/paper"
)

// The record of a paper's ink is read here by what the font itself says of its
// outlines, so that a text which is measured wrongly is found where it really is.
// TestInk holds the laws of ink_laws_test.go and ink_texts_test.go.

// An area is a rectangle of a page, in mm from its top left corner.
type area struct{ x0, y0, x1, y1 float64 }

func (a area) grown(by float64) area { return area{a.x0 - by, a.y0 - by, a.x1 + by, a.y1 + by} }

// within reports whether an area lies in another.
func (a area) within(b area) bool {
	return a.x0 >= b.x0 && a.y0 >= b.y0 && a.x1 <= b.x1 && a.y1 <= b.y1
}

// meets reports whether two areas share some paper.
func (a area) meets(b area) bool { return a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1 }

func (a area) holds(x, y float64) bool { return x >= a.x0 && x <= a.x1 && y >= a.y0 && y <= a.y1 }

func (a area) String() string {
	return fmt.Sprintf("(%.1f, %.1f)-(%.1f, %.1f)", a.x0, a.y0, a.x1, a.y1)
}

// clip returns which part of a line lies in an area, as shares of its length.
func (a area) clip(from, to [2]float64) (lo, hi float64, some bool) {
	lo, hi = 0, 1
	for i, edge := range [2][2]float64{{a.x0, a.x1}, {a.y0, a.y1}} {
		d := to[i] - from[i]
		if d == 0 {
			if from[i] <= edge[0] || from[i] >= edge[1] {
				return 0, 0, false
			}
			continue
		}
		s, e := (edge[0]-from[i])/d, (edge[1]-from[i])/d
		lo, hi = max(lo, min(s, e)), min(hi, max(s, e))
	}
	return lo, hi, lo < hi
}

// A glyph is a character's outline and how far the pen moves after it, in ems, y
// down the page. An advance is what PDF makes of it: whole thousandths.
type glyph struct {
	ink     area
	advance float64
	blank   bool
}

var (
	fonts  = map[bool]*sfnt.Font{false: parsed(goregular.TTF), true: parsed(gobold.TTF)}
	glyphs sync.Map // of each face and character
)

type glyphKey struct {
	bold bool
	r    rune
}

func parsed(ttf []byte) *sfnt.Font {
	f, err := sfnt.Parse(ttf)
	if err != nil {
		panic(err)
	}
	return f
}

func glyphOf(bold bool, r rune) glyph {
	key := glyphKey{bold, r}
	if g, ok := glyphs.Load(key); ok {
		return g.(glyph)
	}
	var b sfnt.Buffer
	f := fonts[bold]
	em := float64(f.UnitsPerEm())
	index, err := f.GlyphIndex(&b, r)
	if err != nil || index == 0 {
		panic(fmt.Sprintf("no glyph of %q: %v", r, err))
	}
	box, advance, err := f.GlyphBounds(&b, index, units26.I(int(em)), font.HintingNone)
	if err != nil {
		panic(err)
	}
	ems := func(v units26.Int26_6) float64 { return float64(v) / 64 / em }
	g := glyph{area{ems(box.Min.X), ems(box.Min.Y), ems(box.Max.X), ems(box.Max.Y)}, math.Round(ems(advance)*1000) / 1000, box.Empty()}
	glyphs.Store(key, g)
	return g
}

// baseline returns where a text's pen starts, and whether it is turned: its mark is
// three quarters of an em above the baseline and 0.21 below it.
func baseline(m paper.Mark) (x, y float64, turned bool) {
	const above, below = 0.75, 0.21
	em := m.Pt * 25.4 / 72
	if turned = math.Abs(m.Y1-m.Y0-em*(above+below)) > 0.01; turned {
		return m.X0 + em*above, m.Y1, true
	}
	return m.X0, m.Y0 + em*above, false
}

// inkOf is where the ink of a text really is.
func inkOf(m paper.Mark) area {
	x, y, turned := baseline(m)
	em, pen := m.Pt*25.4/72, 0.0
	ink := area{math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)}
	for _, r := range m.Text {
		g := glyphOf(m.Bold, r)
		if !g.blank {
			ink = area{min(ink.x0, pen+g.ink.x0), min(ink.y0, g.ink.y0), max(ink.x1, pen+g.ink.x1), max(ink.y1, g.ink.y1)}
		}
		pen += g.advance
	}
	if turned {
		return area{x + ink.y0*em, y - ink.x1*em, x + ink.y1*em, y - ink.x0*em}
	}
	return area{x + ink.x0*em, y + ink.y0*em, x + ink.x1*em, y + ink.y1*em}
}

// strokes are the lines that a mark is drawn with.
func strokes(m paper.Mark) (all [][2][2]float64) {
	corners := m.Corners
	switch {
	case m.Kind == "line" || m.Kind == "leader":
		return [][2][2]float64{{corners[0], corners[1]}}
	case m.Pen == 0:
		return nil
	case m.Kind == "disc":
		corners = ring(m)
	case len(corners) == 0:
		corners = [][2]float64{{m.X0, m.Y0}, {m.X1, m.Y0}, {m.X1, m.Y1}, {m.X0, m.Y1}}
	}
	for i, c := range corners {
		all = append(all, [2][2]float64{c, corners[(i+1)%len(corners)]})
	}
	return all
}

// ring is a disc as a polygon.
func ring(m paper.Mark) (corners [][2]float64) {
	const n = 24
	x, y, r := (m.X0+m.X1)/2, (m.Y0+m.Y1)/2, (m.X1-m.X0)/2
	for i := range n {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / n)
		corners = append(corners, [2]float64{x + r*cos, y + r*sin})
	}
	return corners
}

// covers reports whether a mark that is filled covers a place.
func covers(m paper.Mark, x, y float64) bool {
	if m.Fill < 0 || !(area{m.X0, m.Y0, m.X1, m.Y1}).holds(x, y) {
		return false
	}
	switch {
	case m.Kind == "disc":
		return math.Hypot(x-(m.X0+m.X1)/2, y-(m.Y0+m.Y1)/2) <= (m.X1-m.X0)/2
	case len(m.Corners) > 0:
		return inPolygon(m.Corners, x, y)
	}
	return true
}

// inPolygon counts how often a ray to the left crosses the outline.
func inPolygon(corners [][2]float64, x, y float64) (in bool) {
	for i, a := range corners {
		b := corners[(i+1)%len(corners)]
		if (a[1] > y) != (b[1] > y) && x > a[0]+(y-a[1])*(b[0]-a[0])/(b[1]-a[1]) {
			in = !in
		}
	}
	return in
}
