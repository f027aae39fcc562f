package paper

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	xfont "golang.org/x/image/font"
	"golang.org/x/image/font/gofont/gobold"
	sfntref "golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"hangpack/testdata/proof"
	"hangpack/testdata/published"
)

// TestChecked writes testdata/checked/paper.md.
func TestChecked(t *testing.T) {
	printed := func(file string, work func(published.Row) map[string]float64) func(t *testing.T) (int, float64) {
		return func(t *testing.T) (int, float64) { return published.Held(t, "../../testdata/published/"+file, work) }
	}
	proof.Page(t, "../../testdata/checked/paper.md", "Paper, and what it was checked against", []proof.Check{
		{Figure: "sizes of paper, points in a millimetre", Against: "printed sizes: testdata/published/paper.csv", Unit: "of half a last digit", Run: printed("paper.csv", paperOf)},
		{Figure: "modules and bytes of codes, quiet zone", Against: "printed capacities: testdata/published/codes.csv", Unit: "of half a last digit", Run: printed("codes.csv", codesOf(t))},
		{Figure: "height of figures that are read from afar", Against: "printed heights: testdata/published/legibility.csv", Unit: "of half a last digit",
			Run: printed("legibility.csv", func(published.Row) map[string]float64 {
				return map[string]float64{"preferred": capitalOf(t, Digits(AfarTall))}
			})},
		{Figure: "widths of texts", Against: "golang.org/x/image, which reads the font's glyphs, and the widths that the PDF carries", Unit: "thousandths of an em", Run: widthsAsReadersSetThem},
		{Figure: "marks of sheets: how often each letter comes", Against: "a printed critical value of chi-square (NIST/SEMATECH e-Handbook, 1.3.6.7.4, 28 degrees of freedom, 0.001), over 100,000 random digests", Unit: "of the critical value", Run: lettersOfMarks},
		{Figure: "marks of sheets: how often two are equal", Against: "what the birthday problem gives for 29^4, over 100,000 random digests", Unit: "of four standard deviations", Run: equalMarks},
		{Figure: "marks of sheets: what they are made of", Against: "pairs of drawings that an eye tells apart, and pairs that it does not", Run: digestsSeeWhatEyesSee},
	})
}

func paperOf(r published.Row) map[string]float64 {
	c := newDrawingCanvas(Pack{Letter: r.Text("paper") == "Letter"})
	c.pdf.AddPage()
	w, h := c.pdf.GetPageSize()
	k := c.pdf.GetConversionRatio()
	return map[string]float64{"mm wide": w, "mm high": h, "points wide": w * k, "points high": h * k, "mm in a point": 1 / ptPerMm}
}

// codesOf finds by trial how many bytes a code of each size takes.
func codesOf(t *testing.T) func(published.Row) map[string]float64 {
	bytes := map[int]int{}
	for n := 1; n <= 300; n++ {
		modules, err := encode(strings.Repeat("a", n))
		require.NoError(t, err)
		bytes[len(modules)] = n
	}
	return func(r published.Row) map[string]float64 {
		if r.Text("version") == "" {
			return map[string]float64{"quiet zone": quiet}
		}
		sizes := 0
		for side := 1; ; side++ {
			if bytes[side] > 0 {
				sizes++
			}
			if sizes == int(r.In("version")) {
				return map[string]float64{"modules": float64(side), "bytes": float64(bytes[side])}
			}
		}
	}
}

// capitalOf measures the outline of a capital of the font in a face, in mm.
func capitalOf(t *testing.T, f Face) float64 {
	ttf, err := sfntref.Parse(gobold.TTF)
	require.NoError(t, err)
	var b sfntref.Buffer
	glyph, err := ttf.GlyphIndex(&b, 'H')
	require.NoError(t, err)
	em := fixed.I(1000)
	bounds, _, err := ttf.GlyphBounds(&b, glyph, em, xfont.HintingNone)
	require.NoError(t, err)
	return f.Em() * float64(bounds.Max.Y-bounds.Min.Y) / float64(em)
}
