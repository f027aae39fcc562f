package paperwork

import (
	"fmt"
	"strings"

	"hangpack/layouts"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// viewOf is a state as it hangs.
func (h *checked) viewOf(s *rig.State) *layouts.Elevation {
	e := h.sideOf(s, 0)
	return &e
}

// setName names set k, counted from 0, as what rolls in and out.
func (h *checked) setName(k int) string {
	if h.HasDollies() {
		return "dolly " + say.Dolly(k)
	}
	if len(h.Cabinets) == 1 {
		return "the cabinet"
	}
	return "the cabinets"
}

// cardJoint is the joint above the first cabinet of set k, counted from 0.
func (h *checked) cardJoint(k int) *layouts.CardJoint {
	n := h.Sets.First(k)
	above := fmt.Sprint(n)
	if n == 0 {
		above = "bar"
	}
	return &layouts.CardJoint{Above: above, Below: fmt.Sprint(n + 1), Hole: hole(h.Cabinets[n].Hole)}
}

// liftCard is lift k, counted from 0.
func (h *checked) liftCard(k int) layouts.Card {
	s := h.Joined(k)
	c := layouts.Card{Of: "after", Which: h.setName(k), View: h.viewOf(s), Says: []string{fmt.Sprintf("%d of %s", s.Flown, say.Count(len(h.Cabinets), "cabinet")), h.Unit().Load(s.Centre.Mass) + " with bar"},
		Steps: h.liftSteps(k), Reads: append(h.cellReads(h.Readings(k)), h.aimReads(k)...), Warnings: h.liftWarnings(k)}
	if k > 0 || h.Start != nil {
		c.Joint = h.cardJoint(k)
	}
	c.Notes = append(h.liftNotes(k), h.downFromHere(k))
	return c
}

// liftSteps are what to do in lift k, counted from 0.
func (h *checked) liftSteps(k int) (steps []layouts.Do) {
	add := func(strong bool, says string) { steps = append(steps, layouts.Do{Says: says, Strong: strong}) }
	first, u := h.Sets.First(k)+1, h.Unit()
	join := fmt.Sprintf("Joint above cabinet %d: hinge first, then link, hole %s.", first, h.Cabinets[first-1].Hole.Label)
	if k > 0 || h.Start != nil {
		add(false, fmt.Sprintf("Roll in %s, castors locked, and lower onto it. %s", h.setName(k), join))
	}
	if words := h.pinsWords(k); words != "" {
		add(false, words)
	}
	if tied := h.tiedTo(first, first+h.Sets[k]-1); tied != "" {
		add(false, "Tied on now: "+tied+".")
	}
	add(true, fmt.Sprintf("Raise until all is just clear of %s. Stop. Touch every pin of this set, then read.", h.standsOn(k)))
	if k < len(h.Lifts) {
		return append(steps, h.riseSteps(k)...)
	}
	add(true, fmt.Sprintf("Nobody below. Raise%s to trim: lowest corner %s, highest pick hole %s. Read again.", h.together(), u.Length(h.Raise+h.Finished.Lowest()), u.Length(h.Raise+h.Finished.HighestPick())))
	if h.Secondary != nil {
		add(false, "Secondary on: "+h.Secondary.What+".")
	}
	return steps
}

// standsOn is what a set stands on before it flies.
func (h *checked) standsOn(k int) string {
	if h.HasDollies() {
		return h.setName(k)
	}
	return "the floor"
}

// pinsWords say when the link pins within set k, counted from 0, go in, where that is
// at the lift or is not known.
func (h *checked) pinsWords(k int) string {
	switch {
	case h.Sets[k] == 1 || h.PinsSet == job.OnDolly:
		return ""
	case h.PinsSet == job.InTheAir:
		return fmt.Sprintf("Link pins of the joints above %s, as on the sheet of %s.", say.Span{From: h.Sets.First(k) + 2, To: h.Sets.First(k) + h.Sets[k]}.Cabinets(), h.setName(k))
	}
	return "When link pins go in is not known: ask."
}

// tiedMost is how many things that are tied on are named on a card.
const tiedMost = 3

// tiedTo names what is tied to cabinets from to, 0 for the bar: 'cable loom, laser'.
func (h *checked) tiedTo(from, to int) string {
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

func (h *checked) together() string {
	if len(h.Picks) == 2 {
		return " both hoists together"
	}
	return ""
}

// riseSteps make room for the next dolly after lift k, counted from 0.
func (h *checked) riseSteps(k int) []layouts.Do {
	u := h.Unit()
	if h.Dolly == nil {
		return []layouts.Do{{Says: fmt.Sprintf("Nobody below. Raise%s until the next set fits below; how high is not known: no type of dolly is named.", h.together())}}
	}
	from, to := h.Over(func(v *rig.Hung) float64 { return v.RollIn(k) })
	return []layouts.Do{
		{Says: fmt.Sprintf("Roll it out, nobody below. Raise%s: lowest corner %s. Then %s.", h.together(), h.aboveFloor(h.Level(k)), h.setName(k+1)), Strong: true},
		{Says: fmt.Sprintf("Highest pick hole then at %s.", u.Between(from, to, u.Length))},
	}
}

// aboveFloor writes a height above what the dollies roll on, and where that is not
// what heights are measured from, also the height.
func (h *checked) aboveFloor(m float64) string {
	if h.Floor == 0 {
		return h.Unit().Length(m) + " above the floor"
	}
	return fmt.Sprintf("%s above what dollies roll on (height %s)", h.Unit().Length(m), h.Unit().Length(h.Floor+m))
}

// downFromHere says in a line how to get down from lift k, counted from 0.
func (h *checked) downFromHere(k int) string {
	if !h.HasDollies() {
		return "Down from here: lower until all of it stands on the floor, then sheet DOWN."
	}
	back := h.setName(k)
	if k < len(h.Lifts) {
		back = fmt.Sprintf("%s away, %s", h.setName(k+1), back)
	}
	return fmt.Sprintf("Down from here: %s back in below, lower until it carries cabinets %s; then sheet DOWN.", back, say.Span{From: h.Sets.First(k) + 1, To: h.Sets.First(k) + h.Sets[k]}.Dashed())
}
