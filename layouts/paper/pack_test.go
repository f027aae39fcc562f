package paper

import (
	"regexp"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/layouts/mm"
)

// A oneCode is a sheet with a code of its text.
type oneCode string

func (s oneCode) Name() string { return string(s) }

func (s oneCode) Pages(c *Canvas) []Page {
	code := Code{Text: string(s)}
	side := c.CodeSide(code)
	return []Page{{Draw: func(c *Canvas, room mm.Box) { c.Code(room.X, room.Y, side, code) }}}
}

// panics is a sheet that a fault is in.
type panics struct{}

func (panics) Name() string { return "PANICS" }

func (panics) Pages(*Canvas) []Page { panic("planted") }

// A fault in one of the sheets that are cut side by side is an error and not the end
// of the process, and so is one in a code that is encoded ahead.
func TestFaultsSideBySideAreErrors(t *testing.T) {
	_, err := DrawAll(Pack{Sheets: []Sheet{oneCode("ONE"), panics{}, oneCode("TWO")}})
	require.ErrorContains(t, err, "planted")
	all := codes{"ONE": sync.OnceValues(func() (bitmap, error) { panic("planted") })}
	all.ahead([]string{"ONE"})
	assert.Panics(t, func() { all.modules("ONE") })
}

// The same pack is the same bytes, whatever is drawn beside it, and a pack that says
// something else has another identifier.
func TestPacksAreRepeatable(t *testing.T) {
	draw := func(title string) []byte {
		drawn, err := DrawAll(Pack{Title: title, Day: time.Date(2027, 1, 2, 0, 0, 0, 0, time.UTC), Sheets: []Sheet{oneCode("ONE")}})
		require.NoError(t, err)
		return drawn.PDF
	}
	id := regexp.MustCompile(`/ID \[<[0-9a-f]+>`)
	all := make([][]byte, 8)
	onAllCores(len(all), func(i int) { all[i] = draw("one") })
	for _, pdf := range all {
		assert.Equal(t, all[0], pdf)
	}
	assert.NotEqual(t, id.FindString(string(all[0])), id.FindString(string(draw("two"))))
}

// called is a sheet of two pages that codes lead to by a name.
type called string

func (s called) Name() string { return string(s) }

func (s called) Pages(*Canvas) []Page {
	page := Page{Draw: func(*Canvas, mm.Box) {}}
	return []Page{page, page}
}

// Two sheets that are called alike are an error: a code of the second would lead to the
// first. Blanks and dashes are one to them.
func TestTwoSheetsOfOneName(t *testing.T) {
	_, err := Lay(Pack{Sheets: []Sheet{called("SL"), called("SR")}})
	require.NoError(t, err)
	_, err = Lay(Pack{Sheets: []Sheet{called("SL A"), called("SR"), called("SL-A")}})
	require.ErrorContains(t, err, "two sheets are called SL-A")
}
