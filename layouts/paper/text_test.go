package paper

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	xfont "golang.org/x/image/font"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
	sfntref "golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
)

// The two faces have the same characters, so that one set serves for both.
func TestFacesHaveTheSameCharacters(t *testing.T) {
	for r := range rune(1 << 16) {
		assert.Equal(t, advanceOf(advances[0](), r) > 0, advanceOf(advances[1](), r) > 0, "%c", r)
	}
	for _, r := range "AZaz09 °·×½→←–…ÄßŁřČñΩЖя" {
		assert.True(t, Prints(r), "%c", r)
	}
	for _, r := range "漢☐✓א" {
		assert.False(t, Prints(r), "%c", r)
	}
}

// Texts are as wide as golang.org/x/image says the font's glyphs are, within what
// the rounding of an advance to a thousandth of an em makes, and as the PDF library
// writes them into the PDF, by which a reader sets them.
func widthsAsReadersSetThem(t *testing.T) (cases int, worst float64) {
	c := canvasFor()
	for bold, ttf := range map[bool][]byte{false: goregular.TTF, true: gobold.TTF} {
		font, err := sfntref.Parse(ttf)
		require.NoError(t, err)
		var buf sfntref.Buffer
		for r := range rune(1 << 16) {
			if !Prints(r) {
				continue
			}
			glyph, err := font.GlyphIndex(&buf, r)
			require.NoError(t, err)
			units, err := font.GlyphAdvance(&buf, glyph, fixed.I(1000), xfont.HintingNone)
			require.NoError(t, err)
			f := Face{bold, 72 / 25.4 * 1000} // an em of 1000 mm
			assert.InDelta(t, float64(units)/64, c.Width(f, string(r)), 0.51, "%c", r)
			cases, worst = cases+1, max(worst, math.Abs(float64(units)/64-c.Width(f, string(r))))
			c.now.set(f)
			assert.InDelta(t, c.pdf.GetStringWidth(string(r)), c.Width(f, string(r)), 1e-6, "%c", r)
		}
	}
	return cases, worst
}

// Lines are no wider than their column, lose no character and never part a
// figure from its unit.
func TestWrap(t *testing.T) {
	c := canvasFor()
	const s = "front 1343 kg, rear 247 kg + 5 % = 260 kg of averyveryverylongwordindeedthatfitsnowhere 3 m"
	for w := 12.0; w < 80; w++ {
		lines := c.Wrap(Text, w, s)
		assert.Equal(t, strings.ReplaceAll(s, " ", ""), strings.ReplaceAll(strings.Join(lines, ""), " ", ""))
		for _, line := range lines {
			assert.LessOrEqual(t, c.Width(Text, line), w, line)
			assert.NotContains(t, []string{"kg", "kg,", "%", "m"}, strings.Fields(line)[0], "%v", lines)
		}
	}
	for w := 12.0; w < 80; w++ { // a length stays on one line, or its inches read as another one
		for _, line := range c.Wrap(Text, w, "clearance: 11 13/16 in, reserve: 1 ft 2 1/2 in, 3 in") {
			for _, apart := range []string{" 11", " 1", "ft", " 2"} {
				assert.False(t, strings.HasSuffix(" "+line, apart), line)
			}
		}
	}
	for w := 14.0; w < 80; w++ { // a hole's degrees stand beside its label
		for _, line := range c.Wrap(Text, w, "then link pins out, to hole C (1.5°), locked, and hole A (0°).") {
			assert.False(t, strings.HasPrefix(line, "("), line)
		}
	}
	assert.Empty(t, c.Wrap(Text, 20, ""))
	assert.NotEmpty(t, c.Wrap(Text, -1, "ends all the same"))
}
