package parts

import (
	"fmt"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
)

// A drawn is a sheet of one page that is drawn by a test.
type drawn func(c *paper.Canvas, room mm.Box)

func (drawn) Name() string { return "DRAWN" }

func (d drawn) Pages(*paper.Canvas) []paper.Page { return []paper.Page{{Draw: d}} }

func draw(t *testing.T, d drawn) paper.Drawn {
	t.Helper()
	whole, err := paper.DrawAll(paper.Pack{Sheets: []paper.Sheet{d}})
	require.NoError(t, err)
	return whole
}

// A tab is no wider than it may be, or its digits are as small as they get; all labels
// stay within the tab.
func TestTabsKeepToTheirRoom(t *testing.T) {
	draw(t, func(c *paper.Canvas, room mm.Box) {
		for _, holes := range [][]JointHole{
			{{Label: "0"}, {Label: "0.5"}, {Label: "10"}},
			{{Label: "A"}, {Label: "12J", Splay: "1.5°"}},
			{{Label: "WWWWWWWW", Splay: "10.25°"}},
		} {
			for width := 12.0; width < 60; width += 6 {
				tabs := TabsWithin(c, width, 9, 5.8, holes)
				assert.True(t, tabs.Width() <= width || tabs.Digit == 3, "%v in %v mm", holes, width)
				for _, h := range holes {
					b := mm.BoxAt(40, 40, tabs.Width(), tabs.Height)
					c.In("tab", b, func() { tabs.Draw(c, b.X, b.Y+b.H/2, h) })
				}
			}
		}
	})
}

// Every label stands in the middle of its tab, or of what a splay beside it leaves.
func TestLabelsStandInTheMiddle(t *testing.T) {
	holes := []JointHole{{Label: "0.5"}, {Label: "1"}, {Label: "10.25"}, {Label: "A"}, {Label: "C", Splay: "1.5°"}}
	var tabs Tabs
	whole := draw(t, func(c *paper.Canvas, room mm.Box) {
		tabs = TabsFor(c, 12, 8, paper.Small, holes)
		for i, h := range holes {
			tabs.Draw(c, room.X, room.Y+20*float64(i+1), h)
		}
	})
	found := 0
	for i, m := range whole.Marks {
		if m.Pt > 20 && m.Kind == "text" && slices.ContainsFunc(holes, func(h JointHole) bool { return h.Label == m.Text }) {
			found++
			tab := whole.Marks[i-1]
			if m.Text == "C" {
				splay := whole.Marks[i+1]
				assert.Equal(t, "1.5°", splay.Text)
				assert.Less(t, m.X1, splay.X0)
				assert.Greater(t, m.X0, tab.X0)
				continue
			}
			assert.InDelta(t, tab.X0+tab.X1, m.X0+m.X1, 0.02, m.Text)
		}
	}
	assert.Equal(t, len(holes), found)
}

// A ladder shows nine holes at most, the right one always among them.
func TestLaddersShowTheRightHole(t *testing.T) {
	for _, of := range []int{1, 3, 9, 10, 23} {
		for right := range of {
			whole := draw(t, func(c *paper.Canvas, room mm.Box) {
				c.In("ladder", room, func() { Ladder{Of: of, Right: right}.Draw(c, room.X+5, room.Y+5, 2.3) })
			})
			black, all := 0, 0
			for _, m := range whole.Marks {
				if m.Block == "ladder" && m.X1-m.X0 > 1 { // not the dots of a list that goes on
					all++
					if m.Fill == paper.Black {
						black++
					}
				}
			}
			assert.Equal(t, 1, black, "%d of %d", right, of)
			assert.LessOrEqual(t, all, LadderMost)
		}
	}
}

// Names that have no room in their rows stand as letters that the legend explains.
func TestLongNamesGetLetters(t *testing.T) {
	draw(t, func(c *paper.Canvas, room mm.Box) {
		long := "a very long name of a cabinet indeed, which takes many lines"
		n := NamesFor(c, []string{"short", long, "short", long}, paper.Small, 30, 2)
		assert.Equal(t, []string{"short"}, n.Lines("short"))
		assert.Equal(t, []string{"type a"}, n.Lines(long))
		assert.Equal(t, []string{fmt.Sprintf("type a: %s", long)}, n.Legend)
	})
}
