package layouts

import (
	"math"
	"math/rand"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	xfont "golang.org/x/image/font"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
	sfntref "golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"hangpack/layouts/mm"
)

func canvasFor() *canvas { return drawn(Pack{Day: time.Date(2027, 6, 12, 0, 0, 0, 0, time.UTC)}) }

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
			f := face{bold, 72 / 25.4 * 1000} // an em of 1000 mm
			assert.InDelta(t, float64(units)/64, c.width(f, string(r)), 0.51, "%c", r)
			cases, worst = cases+1, max(worst, math.Abs(float64(units)/64-c.width(f, string(r))))
			c.now.set(f)
			assert.InDelta(t, c.pdf.GetStringWidth(string(r)), c.width(f, string(r)), 1e-6, "%c", r)
		}
	}
	return cases, worst
}

// Ink outside its block fails the pack: here text that is wider than its room.
func TestInkOutsideItsBlockFails(t *testing.T) {
	c := canvasFor()
	c.pdf.AddPage()
	c.in("narrow", mm.BoxAt(50, 50, 10, 5), func() { c.text(50, 54, text, "wider than this") })
	require.ErrorContains(t, c.err, "leaves the block narrow")
	c = canvasFor()
	c.pdf.AddPage()
	c.in("wide", mm.BoxAt(50, 50, 60, 5), func() { c.text(50, 54, text, "not wider than this") })
	require.NoError(t, c.err)
}

// A block that leaves the block around it, or the margins of the page, fails the
// pack: ink inside it would prove nothing.
func TestBlocksOutsideTheirRoomFail(t *testing.T) {
	for what, rooms := range map[string][2]mm.Box{
		"leaves the block around it": {mm.BoxAt(50, 50, 60, 20), mm.BoxAt(90, 55, 30, 5)},
		"is as wide":                 {mm.BoxAt(50, 50, 60, 20), mm.BoxAt(50, 55, 60, 5)},
		"leaves the page":            {mm.BoxAt(50, 280, 60, 20), mm.BoxAt(55, 281, 5, 5)},
		"in the spine's margin":      {mm.BoxAt(8, 50, 60, 20), mm.BoxAt(55, 51, 5, 5)},
	} {
		c := canvasFor()
		c.start(1, page{})
		c.in("outer", rooms[0], func() { c.in("inner", rooms[1], func() {}) })
		if what == "is as wide" {
			require.NoError(t, c.err)
			assert.Equal(t, []Block{{1, "outer", 50, 50, 110, 70, -1}, {1, "inner", 50, 55, 110, 60, 0}}, c.blocks)
			continue
		}
		require.ErrorContains(t, c.err, "leaves the room around it", what)
	}
}

// Every mark knows its block, counted from the first of its page, and what it is
// drawn with.
func TestMarksKnowTheirBlocks(t *testing.T) {
	c := canvasFor()
	for n := range 2 {
		c.start(n+1, page{})
		c.in("first", mm.BoxAt(50, 50, 60, 20), func() { c.rect(mm.BoxAt(51, 51, 5, 5), 0, black) })
		c.in("second", mm.BoxAt(50, 90, 60, 20), func() {
			c.inverse(func() { c.text(51, 95, smallB, "white") })
			c.disc(60, 100, 2, heavy, none)
		})
	}
	for n := range 2 {
		m := c.marks[3*n : 3*n+3]
		assert.Equal(t, []int{0, 1, 1}, []int{m[0].In, m[1].In, m[2].In})
		assert.Equal(t, []int{black, none, none}, []int{m[0].Fill, m[1].Fill, m[2].Fill})
		assert.Equal(t, []float64{0, 0, heavy}, []float64{m[0].Pen, m[1].Pen, m[2].Pen})
		assert.True(t, m[1].White && m[1].Bold && !m[2].White)
	}
}

// Lines are no wider than their column, lose no character and never part a
// figure from its unit.
func TestWrap(t *testing.T) {
	c := canvasFor()
	const s = "front 1343 kg, rear 247 kg + 5 % = 260 kg of averyveryverylongwordindeedthatfitsnowhere 3 m"
	for w := 12.0; w < 80; w++ {
		lines := c.wrap(text, w, s)
		assert.Equal(t, strings.ReplaceAll(s, " ", ""), strings.ReplaceAll(strings.Join(lines, ""), " ", ""))
		for _, line := range lines {
			assert.LessOrEqual(t, c.width(text, line), w, line)
			assert.NotContains(t, []string{"kg", "kg,", "%", "m"}, strings.Fields(line)[0], "%v", lines)
		}
	}
	assert.Empty(t, c.wrap(text, 20, ""))
	assert.NotEmpty(t, c.wrap(text, -1, "ends all the same"))
}

// Spread labels keep their order and their distance, stay within bounds where
// there is room, and do not move where they need not.
func TestSpread(t *testing.T) {
	r := rand.New(rand.NewSource(1))
	for range 300 {
		want := make([]float64, 1+r.Intn(20))
		for i := range want {
			want[i] = r.Float64() * 100
		}
		slices.Sort(want)
		at := spread(want, 4, 0, 100)
		for i := range at {
			assert.True(t, at[i] >= -1e-9 && at[i] <= 100+1e-9)
			if i > 0 {
				assert.GreaterOrEqual(t, at[i]-at[i-1], 4-1e-9)
			}
		}
	}
	assert.Equal(t, []float64{10, 20, 30}, spread([]float64{10, 20, 30}, 4, 0, 100))
}

// Pieces go on from page to page in their order; a heading never ends a page.
func TestCutKeepsHeadingsWithRows(t *testing.T) {
	head, row := piece{h: 10, keep: true}, piece{h: 10}
	pages := cut([]piece{head, row, row, head, row, row}, 35)
	var sizes []int
	for _, p := range pages {
		sizes = append(sizes, len(p))
		assert.False(t, p[len(p)-1].keep)
	}
	assert.Equal(t, []int{3, 3}, sizes)
	assert.Len(t, cut(nil, 10), 1)
}

// panics is a sheet that a fault is in.
type panics struct{}

func (panics) pages(*canvas) []page { panic("planted") }

// A fault in one of the sheets that are cut side by side is an error and not the end
// of the process, and so is one in a code that is encoded ahead.
func TestFaultsSideBySideAreErrors(t *testing.T) {
	_, err := Draw(Pack{Sheets: []Sheet{DoNotFly{Code: Code{Text: "ONE"}}, panics{}, DoNotFly{Code: Code{Text: "TWO"}}}})
	require.ErrorContains(t, err, "planted")
	all := codes{"ONE": sync.OnceValues(func() (bitmap, error) { panic("planted") })}
	all.ahead([]string{"ONE"})
	assert.Panics(t, func() { all.modules("ONE") })
}

// A frame shows all of its drawing at the largest scale that it fits.
func TestFrame(t *testing.T) {
	room := mm.BoxAt(10, 10, 100, 50)
	f := frameFor(Ruler{}, Place{0, 0}, Place{2, 1}, room)
	assert.Equal(t, 20, f.scale)
	for _, p := range []Place{{0, 0}, {2, 1}} {
		at := f.at(p)
		assert.True(t, at.X >= 10 && at.X <= 110 && at.Y >= 10 && at.Y <= 60)
	}
	assert.InDelta(t, 50, f.at(Place{1, 0}).X-f.at(Place{0, 0}).X, 1e-9, "1 m at 1:20")
	assert.InDelta(t, 50, f.at(Place{0, 0}).Y-f.at(Place{0, 1}).Y, 1e-9, "up the page")
	assert.Equal(t, 24, frameFor(Ruler{Imperial: true}, Place{0, 0}, Place{2, 1}, room).scale)
	assert.Equal(t, 400, frameFor(Ruler{}, Place{0, 0}, Place{30, 1}, room).scale)
}

// Modules of a code are never smaller than half a millimetre.
func TestCodesGrowWithTheirText(t *testing.T) {
	c := canvasFor()
	assert.Equal(t, usualCode, c.codeSide(Code{Text: "SL REV B 3F9A1C07 PICK 22 1:0"}))
	long := Code{Text: strings.Repeat("12:WWWW ", 40)}
	side := c.codeSide(long)
	assert.Greater(t, side, usualCode)
	modules, err := encode(long.Text)
	require.NoError(t, err)
	assert.GreaterOrEqual(t, side/float64(len(modules)+2*quiet), leastModule)
}
