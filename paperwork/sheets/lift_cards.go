package sheets

import (
	"fmt"
	"strings"

	"hangpack/layouts"
	"hangpack/layouts/drawings"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
)

// viewOf is a state as it hangs.
func viewOf(h *rules.Checked, s *rig.State) *drawings.Elevation {
	e := sideOf(h, s, 0)
	return &e
}

// SetName names set k, counted from 0, as what rolls in and out.
func SetName(h *rules.Checked, k int) string {
	if h.HasDollies() {
		return "dolly " + say.Dolly(k)
	}
	if len(h.Cabinets) == 1 {
		return "the cabinet"
	}
	return "the cabinets"
}

// cardJoint is the joint above the first cabinet of set k, counted from 0.
func cardJoint(h *rules.Checked, k int) *layouts.CardJoint {
	n := h.Sets.First(k)
	above := fmt.Sprint(n)
	if n == 0 {
		above = "bar"
	}
	return &layouts.CardJoint{Above: above, Below: fmt.Sprint(n + 1), Hole: HoleOf(h.Cabinets[n].Hole)}
}

// liftCard is lift k, counted from 0.
func liftCard(h *rules.Checked, k int) layouts.Card {
	s := h.Joined(k)
	c := layouts.Card{Of: "after", Which: SetName(h, k), View: viewOf(h, s), Says: []string{fmt.Sprintf("%d of %s", s.Flown, say.Count(len(h.Cabinets), "cabinet")), h.Unit().Load(s.Centre.Mass) + " with bar"},
		Steps: liftSteps(h, k), Reads: append(cellReads(h, h.Readings(k)), aimReads(h, k)...), Warnings: liftWarnings(h, k)}
	if k > 0 || h.Start != nil {
		c.Joint = cardJoint(h, k)
	}
	c.Notes = append(liftNotes(h, k), downFromHere(h, k))
	return c
}

// liftSteps are what to do in lift k, counted from 0.
func liftSteps(h *rules.Checked, k int) (steps []layouts.Task) {
	add := func(strong bool, says string) { steps = append(steps, layouts.Task{Says: says, Strong: strong}) }
	first, u := h.Sets.First(k)+1, h.Unit()
	join := fmt.Sprintf("Joint above cabinet %d: hinge first, then link, hole %s.", first, h.Cabinets[first-1].Hole.Label)
	if k > 0 || h.Start != nil {
		add(false, fmt.Sprintf("Roll in %s, castors locked, and lower onto it. %s", SetName(h, k), join))
	}
	if words := pinsWords(h, k); words != "" {
		add(false, words)
	}
	if tied := tiedTo(h, first, first+h.Sets[k]-1); tied != "" {
		add(false, "Tied on now: "+tied+".")
	}
	add(true, fmt.Sprintf("Raise until all is just clear of %s. Stop. Touch every pin of this set, then read.", standsOn(h, k)))
	if k < len(h.Lifts) {
		return append(steps, riseSteps(h, k)...)
	}
	add(true, fmt.Sprintf("Nobody below. Raise%s to trim: lowest corner %s, highest pick hole %s. Read again.", bothTogether(h), u.Length(h.Raise+h.Finished.Lowest()), u.Length(h.Raise+h.Finished.HighestPick())))
	if h.Secondary != nil {
		add(false, "Secondary on: "+h.Secondary.What+".")
	}
	return steps
}

// standsOn is what a set stands on before it flies.
func standsOn(h *rules.Checked, k int) string {
	if h.HasDollies() {
		return SetName(h, k)
	}
	return "the floor"
}

// pinsWords say when the link pins within set k, counted from 0, go in, where that is
// at the lift or is not known.
func pinsWords(h *rules.Checked, k int) string {
	switch {
	case h.Sets[k] == 1 || h.PinsSet == job.OnDolly:
		return ""
	case h.PinsSet == job.InTheAir:
		return fmt.Sprintf("Link pins of the joints above %s, as on the sheet of %s.", say.Span{From: h.Sets.First(k) + 2, To: h.Sets.First(k) + h.Sets[k]}.Cabinets(), SetName(h, k))
	}
	return "When link pins go in is not known: ask."
}

// tiedMost is how many things that are tied on are named on a card.
const tiedMost = 3

// tiedTo names what is tied to cabinets from to, 0 for the bar: 'cable loom, laser'.
func tiedTo(h *rules.Checked, from, to int) string {
	var names []string
	for _, e := range h.Extras {
		if e.Cabinet >= from && e.Cabinet <= to {
			names = append(names, e.Name)
		}
	}
	if n := len(names); n > tiedMost {
		names = append(names[:tiedMost], fmt.Sprintf("and %d more", n-tiedMost))
	}
	return strings.Join(names, ", ")
}

func bothTogether(h *rules.Checked) string {
	if len(h.Picks) == 2 {
		return " both hoists together"
	}
	return ""
}

// riseSteps make room for the next dolly after lift k, counted from 0.
func riseSteps(h *rules.Checked, k int) []layouts.Task {
	u := h.Unit()
	if h.Dolly == nil {
		return []layouts.Task{{Says: fmt.Sprintf("Nobody below. Raise%s until the next set fits below; how high is not known: no type of dolly is named.", bothTogether(h))}}
	}
	from, to := h.Over(func(v *rig.Hung) float64 { return v.RollIn(k) })
	return []layouts.Task{
		{Says: fmt.Sprintf("Roll it out, nobody below. Raise%s: lowest corner %s. Then %s.", bothTogether(h), aboveFloor(h, h.Level(k)), SetName(h, k+1)), Strong: true},
		{Says: fmt.Sprintf("Highest pick hole then at %s.", u.Between(from, to, u.Length))},
	}
}

// aboveFloor writes a height above what the dollies roll on, and where that is not
// what heights are measured from, also the height.
func aboveFloor(h *rules.Checked, m float64) string {
	if h.Floor == 0 {
		return h.Unit().Length(m) + " above the floor"
	}
	return fmt.Sprintf("%s above what dollies roll on (height %s)", h.Unit().Length(m), h.Unit().Length(h.Floor+m))
}

// downFromHere says in a line how to get down from lift k, counted from 0.
func downFromHere(h *rules.Checked, k int) string {
	if !h.HasDollies() {
		return "Down from here: lower until all of it stands on the floor, then sheet DOWN."
	}
	back := SetName(h, k)
	if k < len(h.Lifts) {
		back = fmt.Sprintf("%s away, %s", SetName(h, k+1), back)
	}
	return fmt.Sprintf("Down from here: %s back in below, lower until it carries cabinets %s; then sheet DOWN.", back, say.Span{From: h.Sets.First(k) + 1, To: h.Sets.First(k) + h.Sets[k]}.Dashed())
}
