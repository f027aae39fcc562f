package sheets

import (
	"fmt"
	"math"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/layouts"
	"hangpack/layouts/drawings"
	"hangpack/layouts/paper"
	"hangpack/paperwork/rules"
	"hangpack/testdata/deep"
	"hangpack/testdata/trials"
)

// The cards as ink: each thing where the eye and the pen look for it, and to scale.

// A sequence is one sheet of cards with the ink of its pieces, from the top.
type sequence struct {
	h     *rules.Checked
	cards []layouts.Card
	stop  []string
	slips []slip
}

// sequences are the lift sheets and those of coming down of the jobs that many read.
func sequences(t *testing.T, ask func(s sequence)) {
	t.Helper()
	n := 0
	for _, j := range trials.ReadJobs(t) {
		pdf, pages := paperOf(t, j)
		for _, h := range j.Stacks {
			if h.Held() {
				continue
			}
			up, down := liftSheet(h), downSheet(h)
			ask(sequence{h, up.Cards, up.Stop, slipsOf(pdf, pages, h.ID+" LIFTS")})
			ask(sequence{h, down.Cards, down.Stop, slipsOf(pdf, pages, h.ID+" DOWN")})
			n++
		}
	}
	require.Greater(t, n, deep.Of(15, 40))
}

// ofCards are the slips of the cards, in the order of the pages.
func (s sequence) ofCards() (cards []slip) {
	for _, p := range s.slips {
		if says := p.texts(); len(says) > 0 && (says[0] == "first" || says[0] == "after" || says[0] == "release") {
			cards = append(cards, p)
		}
	}
	return cards
}

// eachCard asks of every card and its ink.
func eachCard(t *testing.T, ask func(h *rules.Checked, c layouts.Card, ink slip)) {
	t.Helper()
	sequences(t, func(s sequence) {
		ink := s.ofCards()
		require.Len(t, ink, len(s.cards))
		for i, c := range s.cards {
			ask(s.h, c, ink[i])
		}
	})
}

// text is the first mark with some words.
func (s slip) text(says string) (m paper.Mark, ok bool) {
	for _, m := range s {
		if m.Kind == "text" && m.Text == says {
			return m, true
		}
	}
	return m, false
}

// words are what a slip says between two of its texts, lines joined.
func (s slip) words(from, to int) string {
	var all []string
	for _, m := range s[from:to] {
		if m.Kind == "text" {
			all = append(all, m.Text)
		}
	}
	return strings.Join(all, " ")
}

// TestStepsInTheirOrder: what is to be done is numbered from 1 down the card, each
// sentence whole beside its own number; then comes what is read, then warnings and
// notes.
func TestStepsInTheirOrder(t *testing.T) {
	eachCard(t, func(h *rules.Checked, c layouts.Card, ink slip) {
		var starts []int
		low := 0.0
		for n := range c.Steps {
			for i, m := range ink {
				column := len(starts) == 0 || math.Abs(m.X0-ink[starts[0]].X0) < 0.1 // no figure at the end of a sentence
				if m.Kind == "text" && m.Text == fmt.Sprintf("%d.", n+1) && column {
					starts = append(starts, i)
					assert.Greater(t, m.Y0, low, "%s %s", h.ID, c.Which)
					low = m.Y0
				}
			}
		}
		require.Len(t, starts, len(c.Steps))
		end := len(ink)
		for i, m := range ink {
			if m.Text == "should, may read" {
				end = i
			}
		}
		for n, i := range starts {
			to := end
			if n+1 < len(starts) {
				to = starts[n+1]
			}
			assert.Equal(t, squeezed(c.Steps[n].Says), squeezed(ink.words(i+1, to)))
			assert.InDelta(t, ink[i].Y0, ink[i+1].Y0, 0.1, "its first line stands beside its number")
		}
		tail := squeezed(strings.Join(append(append([]string{}, c.Warnings...), c.Notes...), " "))
		assert.True(t, strings.HasSuffix(squeezed(ink.words(end, len(ink))), tail), "%s %s: %s", h.ID, c.Which, tail)
	})
}

// squeezed leaves out the blanks, at which lines part.
func squeezed(s string) string { return strings.Join(strings.Fields(s), "") }

// TestReadsHaveTheirBoxes: beside each reading stands an empty box under 'you read',
// and over its window what should be read, in larger type.
func TestReadsHaveTheirBoxes(t *testing.T) {
	eachCard(t, func(h *rules.Checked, c layouts.Card, ink slip) {
		you, ok := ink.text("you read")
		require.True(t, ok)
		var boxes []paper.Mark
		for _, m := range ink {
			if m.Kind == "rect" && math.Abs(m.X0-you.X0) < 0.1 {
				boxes = append(boxes, m)
			}
		}
		require.Len(t, boxes, len(c.Reads), "%s %s", h.ID, c.Which)
		for i, r := range c.Reads {
			assert.Empty(t, ink.inside("text", boxes[i]))
			assert.True(t, boxes[i].X1-boxes[i].X0 > 12 && boxes[i].Y1-boxes[i].Y0 > 6, "room for a figure")
			assert.True(t, i == 0 || boxes[i].Y0 > boxes[i-1].Y1-0.5, "one below the other")
			var beside slip
			for _, m := range ink {
				if m.Kind == "text" && m.X1 < you.X0 && m.X0 > you.X0-50 && m.Y0 > boxes[i].Y0-1 && m.Y1 < boxes[i].Y1+1 {
					beside = append(beside, m)
				}
			}
			assert.Equal(t, squeezed(r.Of+r.Is+r.May), squeezed(beside.words(0, len(beside))), "%s %s", h.ID, c.Which)
			assert.Greater(t, pointsOf(beside, r.Is), pointsOf(beside, r.May))
		}
	})
}

// pointsOf is how large the first words of a text are set.
func pointsOf(s slip, says string) float64 {
	for _, m := range s {
		if m.Text != "" && strings.HasPrefix(says, m.Text) {
			return m.Pt
		}
	}
	return math.NaN()
}

// TestCardHasTimeAndInitials: two boxes, each under its word and empty.
func TestCardHasTimeAndInitials(t *testing.T) {
	eachCard(t, func(h *rules.Checked, c layouts.Card, ink slip) {
		for _, word := range []string{"time", "initials"} {
			says, ok := ink.text(word)
			require.True(t, ok, word)
			boxes := 0
			for _, m := range ink {
				if m.Kind == "rect" && math.Abs(m.X0-says.X0) < 0.1 && m.Y0 > says.Y0 && m.Y0 < says.Y1+2 && m.X1-m.X0 > 8 && m.Y1-m.Y0 > 6 {
					assert.Empty(t, ink.inside("text", m))
					boxes++
				}
			}
			assert.Equal(t, 1, boxes, "%s: %s %s", word, h.ID, c.Which)
		}
	})
}

// TestTabOfTheCard: the hole stands on the line between the two bodies, the one above
// over it.
func TestTabOfTheCard(t *testing.T) {
	tabs := 0
	eachCard(t, func(h *rules.Checked, c layouts.Card, ink slip) {
		if c.Joint == nil {
			return
		}
		var bodies []paper.Mark
		for _, m := range ink {
			if m.Kind == "rect" && math.Abs(m.Y1-m.Y0-7) < 0.01 && m.X1-m.X0 > 20 {
				bodies = append(bodies, m)
			}
		}
		require.Len(t, bodies, 2, "%s %s", h.ID, c.Which)
		line := bodies[0].Y1
		require.InDelta(t, line, bodies[1].Y0, 0.01)
		for i, name := range []string{c.Joint.Above, c.Joint.Below} {
			inside := slip(ink.inside("text", bodies[i])).texts()
			assert.Contains(t, inside, name)
			assert.Contains(t, inside, c.Joint.Hole.Label)
		}
		for _, m := range ink.inside("text", bodies[0]) {
			if m.Text == c.Joint.Hole.Label && m.Pt > 11 {
				assert.InDelta(t, line, (m.Y0+m.Y1)/2, 1.2, "%s %s", h.ID, c.Which)
				tabs++
			}
		}
	})
	require.Greater(t, tabs, deep.Of(60, 100))
}

// hangsAt reads the scale of the drawings of a sheet.
var hangsAt = regexp.MustCompile(`^From the side as it hangs, 1:([0-9]+), ticks the way cabinets look, audience →$`)

// TestCardsToScale: outlines on the cards are as large as the cabinets at the scale
// that stands above them, level by level, with the audience to the right, and the
// scale bar is as long as it says.
func TestCardsToScale(t *testing.T) {
	drawn := 0
	sequences(t, func(s sequence) {
		scale := 0.0
		for _, p := range s.slips {
			for _, says := range p.texts() {
				if m := hangsAt.FindStringSubmatch(says); m != nil {
					scale = trials.Number(m[1])
					sketch{scale: scale, marks: p}.scaleBar(t, s.h.ID)
				}
			}
		}
		for i, ink := range s.ofCards() {
			if view := s.cards[i].View; view != nil {
				require.NotZero(t, scale)
				drawnTo(t, ink, *view, scale)
				drawn++
			}
		}
	})
	require.Greater(t, drawn, deep.Of(40, 60))
}

// drawnTo asserts that the cabinets of a view are drawn to a scale.
func drawnTo(t *testing.T, ink slip, e drawings.Elevation, scale float64) {
	t.Helper()
	var all []paper.Mark
	for _, m := range ink {
		if m.Kind == "cabinet" {
			all = append(all, m)
		}
	}
	require.Len(t, all, len(e.Cabinets))
	for k, c := range e.Cabinets {
		from, o := e.Cabinets[0].Corners[0], all[0].Corners[0]
		for i, p := range c.Corners {
			assert.InDelta(t, o[0]+(p.X-from.X)*1000/scale, all[k].Corners[i][0], 0.1)
			assert.InDelta(t, o[1]-(p.Z-from.Z)*1000/scale, all[k].Corners[i][1], 0.1)
		}
	}
}
