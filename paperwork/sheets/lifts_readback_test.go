package sheets

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/calc"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/worked"
	"hangpack/testdata/deep"
	"hangpack/testdata/trials"
)

// cardsOf are the texts of the cards of a stack's sheet, read back from the pages:
// each begins with the word that says which moment it is of.
func cardsOf(pages []string, sheet string, begins ...string) (cards []string) {
	for _, page := range pages {
		words := trials.WordsOn(page)
		if !strings.HasPrefix(trials.SheetOf(words), sheet) {
			continue
		}
		card := -1
		for _, w := range words {
			for _, b := range begins {
				if w.S == b && w.Pt < 9 {
					cards, card = append(cards, ""), 0
				}
			}
			if card == 0 {
				cards[len(cards)-1] += " " + w.S
			}
		}
	}
	return cards
}

// liftSheetsReadBack finds every reading, its window, every aim and height of
// the lifts on the card of its lift, and the readings in reverse on the sheet DOWN.
func liftSheetsReadBack(t *testing.T) (cases int, worst float64) {
	for name, j := range trials.ReadJobs(t) {
		_, pages := paperOf(t, j)
		for i, h := range j.Stacks {
			if len(h.Holds) > 0 || len(h.Unknown()) > 0 {
				continue
			}
			lifts, down := cardsOf(pages, h.ID+" LIFTS", "first", "after"), cardsOf(pages, h.ID+" DOWN", "release")
			require.Len(t, lifts, len(h.Sets)+1, "%s: %s", name, h.ID)
			require.Len(t, down, len(h.Sets), "%s: %s", name, h.ID)
			for k := range h.Sets {
				for _, part := range liftParts(h, j.Figures.Stacks[i], k) {
					assert.Contains(t, lifts[k+1]+" ", " "+part, "%s: %s, lift %d: %s", name, h.ID, k+1, lifts[k+1])
					cases++
				}
				for _, part := range cellParts(h, j.Figures.Stacks[i], k) {
					assert.Contains(t, down[len(down)-1-k]+" ", " "+part, "%s: %s, down from %d", name, h.ID, k+1)
					if k+1 < len(h.Sets) {
						assert.Contains(t, down[len(down)-2-k]+" ", " "+part, "%s: %s, on dolly %d", name, h.ID, k+2)
					}
				}
			}
		}
	}
	require.Greater(t, cases, deep.Of(300, 600))
	return cases, 0
}

// cellParts are what the load cells read after lift k, counted from 0, and their
// windows, as they print.
func cellParts(h *rules.Checked, s worked.StackFigures, k int) (parts []string) {
	u, hooks := h.Unit(), s.HookFigures
	if k < len(s.Lifts) {
		hooks = s.Lifts[k].HookFigures
	}
	for n, kg := range hooks.Hooks {
		own := 0.0
		if m := h.Picks[n].Hoist; h.LoadCell == job.AboveHoist {
			own = m.Mass + m.ChainMass*m.ChainLength
		}
		parts = append(parts, u.Reading(kg+own)+" ", inwards(u.Imperial, math.Max(hooks.Low[n], 0)+own, hooks.High[n]+own))
	}
	return parts
}

// bothParts are what both load cells together read after lift k, counted from 0, and how
// far each chain is from slack, as they print; none of one hoist.
func bothParts(h *rules.Checked, s worked.StackFigures, k int) (parts []string) {
	u, hooks := h.Unit(), s.HookFigures
	if k < len(s.Lifts) {
		hooks = s.Lifts[k].HookFigures
	}
	if hooks.SumLow == nil {
		return nil
	}
	own := 0.0
	for _, p := range h.Picks {
		if h.LoadCell == job.AboveHoist {
			own += p.Hoist.Mass + p.Hoist.ChainMass*p.Hoist.ChainLength
		}
	}
	parts = append(parts, u.Reading(hooks.Hooks[0]+hooks.Hooks[1]+own), inwards(u.Imperial, *hooks.SumLow+own, *hooks.SumHigh+own))
	for _, mm := range hooks.Slack {
		parts = append(parts, "pick is "+downwards(u, mm)+" ")
	}
	return parts
}

// downwards writes a length of some mm, never as more than it is: in whole mm, or in
// sixteenths of an inch.
func downwards(u say.Units, mm float64) string {
	if u.Imperial {
		return u.Fine(math.Floor(mm/25.4*16+1e-6) / 16 * 25.4 / 1000)
	}
	return fmt.Sprintf("%.0f mm", math.Floor(mm+1e-6))
}

// liftParts are what the card of lift k, counted from 0, has to say.
func liftParts(h *rules.Checked, s worked.StackFigures, k int) []string {
	parts, u := append(cellParts(h, s, k), bothParts(h, s, k)...), h.Unit()
	if k == len(s.Lifts) {
		n := len(s.Cabinets)
		parts = append(parts, say.Aim(calc.Radians(s.Aim)), say.Aim(calc.Radians(s.LastAim)), fmt.Sprintf("%d of %d", n, n))
		return append(parts, unwrapped(u.Length(s.Lowest))...)
	}
	l := s.Lifts[k]
	parts = append(parts, say.Aim(calc.Radians(l.Aim)), say.Aim(calc.Radians(l.LastAim)), fmt.Sprintf("%d of %d", l.Cabinets, len(s.Cabinets)), u.Load(l.Mass))
	if l.PickClear != nil {
		parts = append(parts, unwrapped(u.Length(*l.PickClear))...)
		parts = append(parts, unwrapped(u.Length(*l.PickClear-l.Drop-h.Floor))...)
	}
	return parts
}

// unwrapped is a height in words that a line may part.
func unwrapped(s string) []string { return strings.Fields(s)[:1] }
