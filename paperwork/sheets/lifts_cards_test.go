package sheets

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/layouts"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// The words of the cards against the job and its figures: which hole, which way
// round, how many, in which order.

func stepsOf(c layouts.Card) string {
	var all []string
	for _, d := range c.Steps {
		all = append(all, d.Says)
	}
	return strings.Join(all, " | ")
}

// eachFlown asks of the stacks of random jobs that are not held and have no unknown
// centres of gravity.
func eachFlown(t *testing.T, from int64, ask func(t *testing.T, h *rules.Checked, f worked.StackFigures)) {
	t.Helper()
	trials.EachStack(t, from, func(t *testing.T, h *rules.Checked, f worked.StackFigures) {
		if !h.Held() && len(h.Unknown()) == 0 {
			ask(t, h, f)
		}
	})
}

// tiltsOf are the bar's tilts after each lift, in degrees.
func tiltsOf(f worked.StackFigures) (tilts []float64) {
	for _, l := range f.Lifts {
		tilts = append(tilts, l.Tilt)
	}
	return append(tilts, f.Tilt)
}

// TestSwings: what swings, and which way, follows from the tilts of two lifts; going
// down it is the other way.
func TestSwings(t *testing.T) {
	swings := 0
	eachFlown(t, 31_000, func(t *testing.T, h *rules.Checked, f worked.StackFigures) {
		tilts, up, down := tiltsOf(f), liftSheet(h), downSheet(h)
		for k := 1; k < len(tilts); k++ {
			turn := tilts[k] - tilts[k-1]
			notes := strings.Join(up.Cards[k].Notes, " ") // the card of lift k, counted from 1, is the one after the bar's
			freed := stepsOf(down.Cards[len(tilts)-1-k])
			if math.Abs(turn) < 0.0499 {
				assert.NotContains(t, notes, "may swing further")
				assert.NotContains(t, freed, "hangs swings")
				continue
			}
			if math.Abs(turn) < 0.0501 {
				continue
			}
			way, back := "front down", "front up"
			if turn < 0 {
				way, back = back, way
			}
			assert.Contains(t, notes, fmt.Sprintf("Joined and free it hangs %.1f° %s of that", math.Abs(turn), way))
			assert.Contains(t, freed, fmt.Sprintf("what still hangs swings %.1f° %s", math.Abs(turn), back))
			swings++
		}
	})
	require.Greater(t, swings, 40)
}

// TestEachDegreeMoves: what a degree of tilt moves is what the system gives at the
// two tilts.
func TestEachDegreeMoves(t *testing.T) {
	moves := 0
	eachFlown(t, 33_000, func(t *testing.T, h *rules.Checked, f worked.StackFigures) {
		if len(h.Holes) == 1 {
			return
		}
		for k, card := range liftSheet(h).Cards[1:] {
			tilt := tiltsOf(f)[k] * math.Pi / 180
			before, after := trials.Solve(t, h.Stack, h.Joined(k).Flown, h.Holes, tilt, 1), trials.Solve(t, h.Stack, h.Joined(k).Flown, h.Holes, tilt+math.Pi/180, 1)
			kg := (after.Hooks[1] - before.Hooks[1]) / 9.80665
			from, to := "front", "rear"
			if kg < 0 {
				from, to = to, from
			}
			assert.Contains(t, strings.Join(card.Notes, " "), fmt.Sprintf("Each degree more front down moves %s from %s to %s.", h.Unit().Reading(math.Abs(kg)), from, to))
			moves++
		}
	})
	require.Greater(t, moves, 40)
}

// TestCardsOfTheJob: the hole on a card is that of its set's first joint, steps name
// it, hooks go into their own holes, slack chains read their rigging, and on the way
// down each set's pins are counted, the lowest set first.
func TestCardsOfTheJob(t *testing.T) {
	eachFlown(t, 35_000, func(t *testing.T, h *rules.Checked, f worked.StackFigures) {
		up, down := liftSheet(h), downSheet(h)
		require.Len(t, up.Cards, len(h.Sets)+1)
		require.Len(t, down.Cards, len(h.Sets))
		firstCard(h.Hung, t, up.Cards[0])
		first := 1
		for k, n := range h.Sets {
			label := h.Cabinets[first-1].Hole.Label
			card, back := up.Cards[k+1], down.Cards[len(h.Sets)-1-k]
			if card.Joint != nil {
				assert.Equal(t, []string{label, fmt.Sprint(first)}, []string{card.Joint.Hole.Label, card.Joint.Below})
				assert.Contains(t, stepsOf(card), fmt.Sprintf("Joint above cabinet %d: hinge first, then link, %s.", first, holeRead(h.Cabinets[first-1].Hole)))
			}
			if h.PinsSet == job.InTheAir && n > 1 {
				assert.Contains(t, stepsOf(card), "Link pins of the joints above "+say.Span{From: first + 1, To: first + n - 1}.Cabinets()+", as on the sheet of "+SetName(h.Hung, k))
			} else {
				assert.NotContains(t, stepsOf(card), "Link pins of")
			}
			assert.Equal(t, h.PinsSet == job.AtTheHoist && n > 1, strings.Contains(stepsOf(card), "Links of the joints above "+say.Span{From: first + 1, To: first + n - 1}.Cabinets()+", from the top joint down, one at a time: from their truck holes to their show holes"))
			assert.Equal(t, h.PinsSet == "" && n > 1, strings.Contains(stepsOf(card), "When link pins go in is not known: ask."))
			assert.Equal(t, label, back.Joint.Hole.Label)
			downCardOf(h.Hung, t, back, first, n)
			if h.Dolly != nil && k < len(f.Lifts) {
				clear := *f.Lifts[k].PickClear - f.Lifts[k].Drop
				assert.Contains(t, stepsOf(card), "lowest corner "+h.Unit().Length(clear-h.Floor)+" above ")
				if h.Floor != 0 {
					assert.Contains(t, stepsOf(card), "above what dollies roll on (height "+h.Unit().Length(clear)+")")
				}
				assert.Contains(t, stepsOf(card), "Highest pick hole then at "+h.Unit().Length(*f.Lifts[k].PickClear))
			}
			first += n
		}
		high := math.Max(f.Points[0].PickHeight, f.Points[len(f.Points)-1].PickHeight)
		assert.Contains(t, stepsOf(up.Cards[len(h.Sets)]), fmt.Sprintf("lowest corner %s, highest pick hole %s.", h.Unit().Length(f.Lowest), h.Unit().Length(high)))
	})
}

// firstCard holds the card of the bar.
func firstCard(h *rig.Hung, t *testing.T, c layouts.Card) {
	t.Helper()
	label := func(i int) string { return h.Bar.PickHoles[h.Holes[i]].Label }
	if len(h.Holes) == 1 {
		assert.Contains(t, stepsOf(c), "Hook on at pick hole "+label(0)+";")
	} else {
		assert.Contains(t, stepsOf(c), "front at pick hole "+label(0)+", rear at "+label(1)+";")
	}
	bar := solveBar(t, h)
	for i, r := range c.Reads[:len(h.Picks)] {
		p := h.Picks[i]
		kg := p.Below.Mass
		if h.Start != nil {
			kg += bar[i]
		}
		if h.LoadCell == job.AboveHoist {
			kg += p.Hoist.Mass + p.Hoist.ChainMass*p.Hoist.ChainLength
		}
		assert.Equal(t, h.Unit().Reading(kg), r.Is, "%s", r.Of)
	}
	if len(h.Holes) == 2 {
		assert.Equal(t, bar[0] >= 0 && bar[1] >= 0 && !barAbovePicks(h), h.Start != nil, "the bar hangs level where both hooks pull and it does not roll over")
	}
}

// barAbovePicks reports whether the bar's own centre of gravity is not below the
// line through both pick holes, so that it would roll over.
func barAbovePicks(h *rig.Hung) bool {
	a, b := h.Bar.PickHoles[h.Holes[0]].At, h.Bar.PickHoles[h.Holes[1]].At
	kg, behind, below := h.Bar.Mass, h.Bar.Mass*h.Bar.CentreOfGravity.Behind, h.Bar.Mass*h.Bar.CentreOfGravity.Below
	for _, e := range h.Extras {
		if e.Cabinet == 0 {
			kg, behind, below = kg+e.Mass, behind+e.Mass*e.At.Behind, below+e.Mass*e.At.Below
		}
	}
	at := (behind/kg - a.Behind) / (b.Behind - a.Behind)
	return below/kg-(a.Below+at*(b.Below-a.Below)) <= 1e-9
}

// solveBar is what each of two hooks holds of the bar alone, level, in kg: moments
// about the other one.
func solveBar(t *testing.T, h *rig.Hung) []float64 {
	t.Helper()
	if len(h.Holes) == 1 {
		return nil
	}
	w := trials.Solve(t, h.Stack, 0, h.Holes, 0, 1)
	return []float64{w.Hooks[0] / 9.80665, w.Hooks[1] / 9.80665}
}

// downCardOf holds the card of the release of n cabinets from first on.
func downCardOf(h *rig.Hung, t *testing.T, c layouts.Card, first, n int) {
	t.Helper()
	hinges, links := 0, 0
	for _, cab := range h.Cabinets[first-1 : first-1+n] {
		hinges, links = hinges+cab.HingePins, links+cab.LinkPins
	}
	counts := map[string]string{}
	for _, r := range c.Reads {
		counts[r.Of] = r.Is
	}
	assert.Equal(t, []string{say.Count(links, "pin"), say.Count(hinges, "pin")}, []string{counts["link pins in"], counts["hinge pins in"]})
	steps := stepsOf(c)
	if first > 1 {
		_, release, _ := strings.Cut(steps, fmt.Sprintf("Joint above cabinet %d: hinge and link slack", first))
		owner := h.Cabinets[first-2]
		if own := h.Cabinets[first-1]; own.HolesForJointAbove {
			owner = own
		}
		if owner.Transport == nil {
			assert.Contains(t, release, "NOT GIVEN")
		} else {
			assert.Contains(t, release, "to "+holeRead(*owner.Transport)+", locked")
		}
	}
	told := map[int]string{}
	for _, m := range innerJoints.FindAllStringSubmatch(steps, -1) {
		from, to := int(trials.Number(m[1])), int(trials.Number(m[1]))
		if m[2] != "" {
			to = int(trials.Number(m[2]))
		}
		for k := from; k <= to; k++ {
			told[k] = m[3]
		}
	}
	for k := first + 1; k < first+n; k++ {
		owner := h.Cabinets[k-2]
		if own := h.Cabinets[k-1]; own.HolesForJointAbove {
			owner = own
		}
		want := "their truck hole"
		if owner.Transport != nil {
			want = holeRead(*owner.Transport)
		}
		assert.Equal(t, want, told[k], "joint above cabinet %d: %s", k, steps)
	}
	assert.Len(t, told, n-1)
}

// holeRead is how a hole is read out: with its degrees where they are not its label.
func holeRead(at job.Hole) string {
	degrees := strconv.FormatFloat(at.Splay, 'f', -1, 64)
	if at.Label == degrees {
		return "hole " + at.Label
	}
	return "hole " + at.Label + " (" + degrees + "°)"
}

// innerJoints are the joints within a set, as the sheet DOWN names them, and where
// their pins go.
var innerJoints = regexp.MustCompile(`Joints? above cabinets? ([0-9]+)(?: to ([0-9]+))?, from the lowest up, each as it goes slack: link pins out, to (hole \S+(?: \(\S+°\))?|their truck hole), locked`)

// TestHingesOnCards: a hinge that turns over is on the card of its lift, and on the
// way down the other way round; so is a lift at which the bar tilts far.
func TestHingesOnCards(t *testing.T) {
	turns := 0
	eachFlown(t, 39_000, func(t *testing.T, h *rules.Checked, f worked.StackFigures) {
		up, down := liftSheet(h), downSheet(h)
		for k := 1; k < len(h.Sets); k++ {
			before, now := h.Joined(k-1), h.Joined(k)
			pulls, pushes := 0, 0
			for j := range before.Joints {
				a, b := before.Joints[j].HingePull, now.Joints[j].HingePull
				first := true // it has not turned at a lift before
				for n := 1; n < k; n++ {
					if j < len(h.Joined(n-1).Joints) && h.Joined(n - 1).Joints[j].HingePull*h.Joined(n).Joints[j].HingePull < 0 {
						first = false
					}
				}
				switch {
				case !first || math.Abs(a) < rig.Alike || math.Abs(b) < rig.Alike:
				case a > 0 && b < 0:
					pushes++
				case a < 0 && b > 0:
					pulls++
				}
			}
			goes, back := strings.Join(up.Cards[k+1].Warnings, " "), strings.Join(down.Cards[len(h.Sets)-1-k].Warnings, " ")
			if pushes > 0 {
				assert.Contains(t, goes, "from pulled to pushed")
				assert.Contains(t, back, "from pushed to pulled")
				turns++
			}
			if pulls > 0 {
				assert.Contains(t, goes, "from pushed to pulled")
				assert.Contains(t, back, "from pulled to pushed")
			}
		}
	})
	require.Greater(t, turns, 10)
}

// TestTiltsOnCards: a lift at which the bar tilts far warns on its card, and again
// on the way down when only that part is left.
func TestTiltsOnCards(t *testing.T) {
	h := trials.OpenJob(t, trials.Edited(t, "practice: {", "practice: {lift_tilt: 2 deg, ")).Stacks[0]
	require.Contains(t, trials.Found(h.Cautions), "lift_tilt, lift 1")
	assert.Contains(t, strings.Join(liftSheet(h).Cards[1].Warnings, " "), "the bar tilts to")
	assert.Empty(t, liftSheet(h).Cards[2].Warnings)
	assert.Contains(t, strings.Join(downSheet(h).Cards[0].Warnings, " "), "the bar tilts to", "once dolly B is off")
	assert.Empty(t, downSheet(h).Cards[1].Warnings)
}
