package paper

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/layouts/mm"
)

// A drawnWith is a sheet of one page that is drawn so.
type drawnWith func(c *Canvas)

func (drawnWith) Name() string { return "ONE" }

func (s drawnWith) Pages(*Canvas) []Page {
	return []Page{{Draw: func(c *Canvas, _ mm.Box) { c.In("all", c.Body(), func() { s(c) }) }}}
}

// digestOf is the digest of such a sheet in a pack.
func digestOf(t *testing.T, p Pack, s drawnWith) string {
	t.Helper()
	p.Sheets = append(p.Sheets, s)
	laid, err := Lay(p)
	require.NoError(t, err)
	all := laid.Identities()
	return all[len(all)-1].Digest
}

// seenApart are pairs of ways to draw that an eye tells apart.
var seenApart = map[string][2]drawnWith{
	"text":           {text("12"), text("21")},
	"one figure":     {text("1"), text("2")}, // which are as wide
	"size":           {text("1"), func(c *Canvas) { c.Text(60, 60, Face{false, 12.5}, "1") }},
	"face":           {text("1"), func(c *Canvas) { c.Text(60, 60, Bold(Text.Pt), "1") }},
	"place":          {text("1"), func(c *Canvas) { c.Text(60, 60.02, Text, "1") }},
	"white":          {text("1"), func(c *Canvas) { c.Inverse(func() { c.Text(60, 60, Text, "1") }) }},
	"slash of 0":     {text("0"), func(c *Canvas) { c.Hole(60, 60, Text, White, "0") }},
	"point":          {text("0.5"), func(c *Canvas) { c.Hole(60, 60, Text, White, "0.5") }},
	"pen":            {line(Light), line(Solid)},
	"way of a line":  {line(Light), func(c *Canvas) { c.Line(60, 80, 80, 60, Light) }},
	"dashes":         {line(Light), func(c *Canvas) { c.Dashed(1, 1, func() { line(Light)(c) }) }},
	"longer dashes":  {func(c *Canvas) { c.Dashed(1, 1, func() { line(Light)(c) }) }, func(c *Canvas) { c.Dashed(4, 1, func() { line(Light)(c) }) }},
	"chain":          {func(c *Canvas) { c.Dashed(4, 1, func() { line(Light)(c) }) }, func(c *Canvas) { c.Chain(60, 60, 80, 80) }},
	"fill":           {func(c *Canvas) { c.Rect(square, Light, None) }, func(c *Canvas) { c.Rect(square, Light, Grey) }},
	"round corners":  {func(c *Canvas) { c.Rect(square, Light, None) }, func(c *Canvas) { c.Round(square, 2, Light, None) }},
	"rounder":        {func(c *Canvas) { c.Round(square, 1, Light, None) }, func(c *Canvas) { c.Round(square, 2, Light, None) }},
	"kind":           {func(c *Canvas) { c.Rect(square, Light, None) }, func(c *Canvas) { c.Disc(65, 65, 5, Light, None) }},
	"corners":        {shape(0), shape(1)},
	"code":           {func(c *Canvas) { c.Code(60, 60, 30, Code{Text: "a"}) }, func(c *Canvas) { c.Code(60, 60, 30, Code{Text: "b"}) }},
	"mark of a side": {func(c *Canvas) { SideMark(c, "square", square) }, func(c *Canvas) { SideMark(c, "diamond", square) }},
	"order":          {func(c *Canvas) { c.Rect(square, 0, Black); c.Rect(square, 0, White) }, func(c *Canvas) { c.Rect(square, 0, White); c.Rect(square, 0, Black) }},
}

var square = mm.BoxAt(60, 60, 10, 10)

func text(s string) drawnWith { return func(c *Canvas) { c.Text(60, 60, Text, s) } }

func line(pen float64) drawnWith { return func(c *Canvas) { c.Line(60, 60, 80, 80, pen) } }

// shape is a cut square whose fifth corner lies here or there.
func shape(x float64) drawnWith {
	return func(c *Canvas) {
		c.Shape("one", []mm.Spot{mm.At(60, 60), mm.At(70, 60), mm.At(70, 70), mm.At(60, 70), mm.At(62+x, 65)}, Light, None)
	}
}

// digestsSeeWhatEyesSee: what an eye tells apart has other digests, each way to draw
// alone, and what says nothing has the same.
func digestsSeeWhatEyesSee(t *testing.T) (cases int, worst float64) {
	for what, two := range seenApart {
		assert.NotEqual(t, digestOf(t, Pack{}, two[0]), digestOf(t, Pack{}, two[1]), what)
		assert.Equal(t, digestOf(t, Pack{}, two[0]), digestOf(t, Pack{}, two[0]), what)
		cases++
	}
	assert.NotEqual(t, digestOf(t, Pack{}, text("1")), digestOf(t, Pack{Letter: true}, text("1")), "size of paper")
	assert.NotEqual(t, digestOf(t, Pack{}, text("1")), digestOf(t, Pack{Spine: Spine{Date: "2027-01-02"}}, text("1")), "date in the spine")
	return cases, 0
}

// TestDigestsPassOverThePack: revision, mark and page are none of what a sheet says, nor
// is what stands before it in its pack.
func TestDigestsPassOverThePack(t *testing.T) {
	s := drawnWith(func(c *Canvas) {
		c.Code(60, 60, 30, Code{Text: "{rev} {mark} {page}", To: "ONE"})
		c.Apart(func() { c.Text(60, 100, Text, fmt.Sprint(c.Revision, c.SheetMark())) })
	})
	want := digestOf(t, Pack{}, s)
	for of, p := range map[string]Pack{"revision": {Revision: "C"}, "longer revision": {Revision: "WWWWWW"}, "title of the file": {Title: "x"}, "sheets before it": {Sheets: []Sheet{called("SL"), called("SR")}}} {
		assert.Equal(t, want, digestOf(t, p, s), of)
	}
}

// TestListsChangeWithWhatTheyList: a sheet that shows the marks of others says something
// else when one of them does, and not when another sheet does.
func TestListsChangeWithWhatTheyList(t *testing.T) {
	list := drawnWith(func(c *Canvas) {
		_, _, mark := c.Listed("TWO")
		c.Apart(func() { c.Text(60, 60, Text, mark) })
	})
	with := func(two, three string) string {
		return digestOf(t, Pack{Sheets: []Sheet{as{"TWO", text(two)}, as{"THREE", text(three)}}}, list)
	}
	assert.Equal(t, with("1", "1"), with("1", "2"))
	assert.NotEqual(t, with("1", "1"), with("2", "1"))
}

// An as is a sheet under another name.
type as struct {
	name string
	drawnWith
}

func (s as) Name() string { return s.name }
