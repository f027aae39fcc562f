package sheets

import (
	"fmt"
	"math"

	"hangpack/layouts"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
)

// liftCard is lift k, counted from 0.
func liftCard(h *rules.Checked, k int) layouts.Card {
	s := h.Joined(k)
	c := layouts.Card{Of: "after", Which: SetName(h.Hung, k), View: viewOf(h.Hung, s), Says: []string{fmt.Sprintf("%d of %s", s.Flown, say.Count(len(h.Cabinets), "cabinet")), h.Unit().Load(s.Centre.Mass) + " with bar"},
		Steps: liftSteps(h.Hung, k), Reads: liftReads(h, k), Warnings: liftWarnings(h, k)}
	if k > 0 || h.Start != nil {
		c.Joint = cardJoint(h.Hung, k)
	}
	c.Notes = append(liftNotes(h.Hung, k), downFromHere(h.Hung, k))
	return c
}

// liftReads are what to read in lift k, counted from 0: of two load cells their sum
// first.
func liftReads(h *rules.Checked, k int) (reads []layouts.Instrument) {
	if len(h.Picks) == 2 {
		reads = append(reads, sumRead(h, k))
	}
	return append(append(reads, cellReads(h.Hung, h.Readings(k))...), aimReads(h.Hung, k)...)
}

// liftSteps are what to do in lift k, counted from 0.
func liftSteps(h *rig.Hung, k int) (steps []layouts.Task) {
	add := func(strong bool, says string) { steps = append(steps, layouts.Task{Says: says, Strong: strong}) }
	set, u := setSpan(h, k), h.Unit()
	join := fmt.Sprintf("Joint above cabinet %d: hinge first, then link, hole %s.", set.From, showHole(h, set.From))
	if k > 0 || h.Start != nil {
		add(false, fmt.Sprintf("Roll in %s, castors locked, and lower onto it. %s", SetName(h, k), join))
	}
	if words := pinsWords(h, k); words != "" {
		add(false, words)
	}
	if tied := tiedTo(h, set.From, set.To); tied != "" {
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

// pinsWords say when the link pins within set k, counted from 0, go in, where that is
// at the lift or is not known.
func pinsWords(h *rig.Hung, k int) string {
	switch {
	case h.Sets[k] == 1 || h.PinsSet == job.OnDolly:
		return ""
	case h.PinsSet == "":
		return "When link pins go in is not known: ask."
	}
	inner := setSpan(h, k)
	inner.From++
	if h.PinsSet == job.AtTheHoist {
		return fmt.Sprintf("Links of the joints above %s, from the top joint down, one at a time: from their truck holes to their show holes, as on the sheet of %s and as their maker says.", inner.Cabinets(), SetName(h, k))
	}
	return fmt.Sprintf("Link pins of the joints above %s, as on the sheet of %s.", inner.Cabinets(), SetName(h, k))
}

// riseSteps make room for the next dolly after lift k, counted from 0.
func riseSteps(h *rig.Hung, k int) []layouts.Task {
	u := h.Unit()
	if h.Dolly == nil {
		return []layouts.Task{{Says: fmt.Sprintf("Nobody below. Raise%s until the next set fits below; how high is not known: no type of dolly is named.", bothTogether(h))}}
	}
	from, to := h.Between(func(v *rig.Hung) float64 { return v.RollIn(k) })
	return []layouts.Task{
		{Says: fmt.Sprintf("Roll it out, nobody below. Raise%s: lowest corner %s. Then %s.", bothTogether(h), aboveFloor(h, h.Level(k)), SetName(h, k+1)), Strong: true},
		{Says: fmt.Sprintf("Highest pick hole then at %s.", say.Between(from, to, u.Length))},
	}
}

// downFromHere says in a line how to get down from lift k, counted from 0.
func downFromHere(h *rig.Hung, k int) string {
	if !h.HasDollies() {
		return "Down from here: lower until all of it stands on the floor, then sheet DOWN."
	}
	back := SetName(h, k)
	if k < len(h.Lifts) {
		back = fmt.Sprintf("%s away, %s", SetName(h, k+1), back)
	}
	return fmt.Sprintf("Down from here: %s back in below, lower until it carries cabinets %s; then sheet DOWN.", back, setSpan(h, k).Dashed())
}

// liftNotes say what the readings assume, and how the next joint comes together.
func liftNotes(h *rig.Hung, k int) (notes []string) {
	s := h.Joined(k)
	from, to := h.Between(func(v *rig.Hung) float64 { return v.Joined(k).Tilt })
	bar := "Bar " + say.Between(from, to, say.Aim) + ", as it settles."
	if len(h.Picks) == 2 {
		bar = fmt.Sprintf("Readings assume the bar %s. %s %s", say.Aim(s.Tilt), movedWords(h, s), slackWords(h, s))
	}
	notes = append(notes, bar)
	if k == len(h.Lifts) {
		return notes
	}
	return append(notes, fmt.Sprintf("To join %s: cabinet %d hangs %s; bring the two together as their maker says. %s", SetName(h, k+1), s.Flown, offLevel(h, k), swingWords(h, k+1)))
}

// movedWords say what a degree of tilt does to two readings.
func movedWords(h *rig.Hung, s *rig.State) string {
	kg := h.Moved(s)
	from, to := "front", "rear"
	if kg < 0 {
		from, to = to, from
	}
	return fmt.Sprintf("Each degree more front down moves %s from %s to %s.", h.Unit().Reading(math.Abs(kg)), from, to)
}

// offLevel says how far the lowest cabinet is off level after lift k, counted
// from 0.
func offLevel(h *rig.Hung, k int) string {
	from, to := h.Between(func(v *rig.Hung) float64 { return v.Joined(k).LastAim() })
	words := say.Between(from, to, say.Aim)
	if words == say.Aim(0) {
		return words
	}
	return words + ", that much off level"
}

// swingWords say how the flown part turns when set k, counted from 0, hangs on it,
// from hanging free before to hanging free after.
func swingWords(h *rig.Hung, k int) string {
	words := swingOf(h, k, 1)
	if words == "" {
		return "Joined and free it keeps that aim."
	}
	return "Joined and free it hangs " + words + " of that, and may swing further on the way: hands off."
}

// startCard is the first moment: two picks hang the bar alone and level; with one
// it would hang on end, and is pinned to the first dolly before the hook pulls.
func startCard(h *rig.Hung) layouts.Card {
	c := layouts.Card{Of: "first", Which: "the bar"}
	if h.Start == nil {
		return pinnedStart(h, c)
	}
	up, down := h.AimOff(h.Start)
	c.Reads = append(cellReads(h, h.StartReadings()), layouts.Instrument{Of: "bar", Is: say.Aim(0), May: say.Aims(up, down)})
	c.View = viewOf(h, h.Start)
	c.Says = []string{"alone, level", h.Unit().Load(h.Start.Centre.Mass)}
	c.Steps = append(tieSteps(h), layouts.Task{Says: hookOn(h)}, layouts.Task{Says: "Raise the bar level, clear of the floor. Stop and read.", Strong: true})
	c.Notes = []string{"Down from here: lower the bar to the floor, chains slack, hooks off."}
	return c
}

// pinnedStart is the first moment of a bar that is not lifted alone.
func pinnedStart(h *rig.Hung, c layouts.Card) layouts.Card {
	c.Says, c.Joint = []string{"on " + SetName(h, 0)}, cardJoint(h, 0)
	c.Steps = append(tieSteps(h), layouts.Task{Says: fmt.Sprintf("Bar onto %s: hinge above cabinet 1 first, then its link in hole %s.", SetName(h, 0), showHole(h, 1))},
		layouts.Task{Says: hookOn(h)}, layouts.Task{Says: "Raise the hook until the chain is just tight, no more. Stop and read.", Strong: true})
	if len(h.Picks) == 2 {
		c.Steps[len(c.Steps)-1].Says = "Raise both hooks until both chains are just tight, no more. Stop and read."
		c.Warnings = []string{"Do not lift the bar alone: from these pick holes it does not hang level by itself, or a hook would hold more than it may."}
	}
	c.Reads = slackReads(h)
	c.Notes = []string{fmt.Sprintf("Down from here: chain slack, hook off; the bar stays pinned to %s.", SetName(h, 0))}
	return c
}

// tieSteps say what is tied to the bar before its first reading, which counts it.
func tieSteps(h *rig.Hung) []layouts.Task {
	if tied := tiedTo(h, 0, 0); tied != "" {
		return []layouts.Task{{Says: "Tied to the bar first, and in all readings: " + tied + "."}}
	}
	return nil
}

func hookOn(h *rig.Hung) string {
	if len(h.Picks) == 1 {
		return fmt.Sprintf("Hook on at pick hole %s; shackle closed and locked.", h.Label(h.Holes[0]).Text)
	}
	return fmt.Sprintf("Hooks on: front at pick hole %s, rear at %s; shackles closed and locked.", h.Label(h.Holes[0]).Text, h.Label(h.Holes[1]).Text)
}
