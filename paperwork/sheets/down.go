package sheets

import (
	"fmt"

	"hangpack/layouts"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
)

// downSheet is the stack from trim back onto its dollies: the lifts in reverse,
// and what is done at each joint. The order at a joint: common practice.
func downSheet(h *rules.Checked) layouts.Sequence {
	s := layouts.Sequence{
		Sheet: h.ID + " DOWN", Head: stackHead(h.Hung),
		Says: []string{"The lifts in reverse, the lowest first. Floor cleared again, nobody below, one voice to the hoists. " + cellWords(h.Hung) + " " + heightWords(h.Hung) + say.After(" ", betweenWords(h.Hung))},
		Stop: []string{
			"Reads outside 'may read', or a pin is tight? Stop: weight is on it. Never drive a pin out.",
			"Raise or lower until the hook reads what it should. A reading alone does not unload a joint: hinge and link have to move by hand, and pins to come out by hand. If not, find out why before anyone goes on.",
		},
	}
	for k := len(h.Sets) - 1; k >= 0; k-- {
		s.Cards = append(s.Cards, downCard(h, k))
	}
	return s
}

// downCard is the release of set k, counted from 0.
func downCard(h *rules.Checked, k int) layouts.Card {
	kg, _ := rig.SetMass(h.Hung, k)
	s := setSpan(h.Hung, k)
	return layouts.Card{Of: "release", Which: SetName(h.Hung, k), Says: []string{s.Cabinets(), h.Unit().Load(kg) + " in all"}, Joint: cardJoint(h.Hung, k),
		Steps: downSteps(h.Hung, k, s), Reads: downReads(h, k, s), Warnings: downWarnings(h, k), Notes: downNotes(h.Hung, k)}
}

// downWarnings are what comes up when set k, counted from 0, is off: hinges that
// turn back, and how what is left hangs.
func downWarnings(h *rules.Checked, k int) []string {
	all := turnWarnings(h.Hung, k, -1)
	if k == 0 {
		return all
	}
	return append(all, warningsOf(h, func(f rules.Finding) bool {
		return f.Where.Lift == h.Joined(k-1).Lift && (f.Rule == rules.LiftTilt || f.Rule == rules.LightPick)
	})...)
}

// downSteps are what to do to release set k, counted from 0.
func downSteps(h *rig.Hung, k int, s say.Span) (steps []layouts.Task) {
	add := func(strong bool, says string) { steps = append(steps, layouts.Task{Says: says, Strong: strong}) }
	if k == len(h.Lifts) {
		add(false, "Weight on the hoist (motor): read. "+secondaryOff(h))
	}
	if h.HasDollies() {
		add(true, fmt.Sprintf("Nobody below. Lower%s%s. Roll %s in, castors locked.", bothTogether(h), dollyHeight(h), SetName(h, k)))
	}
	add(false, fmt.Sprintf("Lower until cabinet %d stands on %s, then go on as its maker says.", s.To, standsOn(h, k)))
	for _, run := range truckRuns(h, say.Span{From: s.From + 1, To: s.To}) {
		add(false, fmt.Sprintf("%s above %s, from the lowest up, each as it goes slack: %s.", jointWord(run.To-run.From+1), run.Cabinets(), truckWords(h, run.From)))
	}
	add(true, fmt.Sprintf("Stop when %s carries %s and %s.", standsOn(h, k), s.Cabinets(), hooksRead(h)))
	add(true, releaseWords(h, k, s.From))
	add(false, freeWords(h, k))
	return steps
}

func hooksRead(h *rig.Hung) string {
	if len(h.Picks) == 2 {
		return "both hooks read what they should"
	}
	return "the hook reads what it should"
}

// secondaryOff says what comes off once the weight is on the hoists.
func secondaryOff(h *rig.Hung) string {
	if h.Secondary == nil {
		return "Then a secondary comes off, if there is one."
	}
	return "Then the secondary comes off: " + h.Secondary.What + "."
}

// dollyHeight says how high the lowest corner has to stay for a dolly to roll in
// below all that hangs, where its type is named.
func dollyHeight(h *rig.Hung) string {
	if h.Dolly == nil {
		return ""
	}
	return ": lowest corner " + aboveFloor(h, h.Dolly.DeckHeight+h.Job.Practice.Clearance)
}

func jointWord(n int) string {
	if n == 1 {
		return "Joint"
	}
	return "Joints"
}

// releaseWords are the order at the joint above cabinet n, of set k counted from 0.
func releaseWords(h *rig.Hung, k, n int) string {
	if k == 0 && h.Start == nil {
		return "Chain slack, hook off. The bar stays pinned to it until it is lifted off by hand or fork."
	}
	pins := "link pins out, back into the bar's own holes, locked"
	if n > 1 {
		pins = truckWords(h, n)
	}
	return fmt.Sprintf("Joint above cabinet %d: hinge and link slack, try both by hand. Then %s. Then hinge pins out, back into the cabinet.", n, pins)
}

// truckWords say where the link pins of the joint above cabinet n go for the truck.
func truckWords(h *rig.Hung, n int) string {
	if hole := rig.Transport(h, n); hole != nil {
		return "link pins out, to hole " + say.Hole(hole.Label, hole.Splay) + ", locked"
	}
	return "link pins out, to their truck hole, locked. It is NOT GIVEN: ask, write it here ______"
}

// freeWords say what happens once set k, counted from 0, is free.
func freeWords(h *rig.Hung, k int) string {
	switch {
	case k == 0 && h.Start == nil:
		return fmt.Sprintf("%s out.", say.Capital(SetName(h, k)))
	case k == 0:
		return fmt.Sprintf("Raise the bar a hand's breadth, %s out. Lower the bar, chains slack, hooks off.", SetName(h, k))
	}
	return fmt.Sprintf("Raise%s a hand's breadth: %s. %s out.", bothTogether(h), freedWords(h, k), say.Capital(SetName(h, k)))
}

// freedWords say how far the flown part swings when set k, counted from 0, is off it.
func freedWords(h *rig.Hung, k int) string {
	words := swingOf(h, k, -1)
	if words == "" {
		return "what still hangs keeps its aim"
	}
	return "what still hangs swings " + words + ", or further if the dolly held it elsewhere, hands off"
}

// downReads are what the hooks should read with set k hanging and with it on its
// dolly, and the pins that are counted in.
func downReads(h *rules.Checked, k int, s say.Span) []layouts.Instrument {
	reads := named("hanging: ", cellReads(h.Hung, h.Readings(k)))
	switch {
	case k > 0:
		reads = append(reads, named("on the dolly: ", cellReads(h.Hung, h.Readings(k-1)))...)
	case h.Start != nil:
		reads = append(reads, named("on the dolly: ", cellReads(h.Hung, h.StartReadings()))...)
	default:
		reads = append(reads, named("chain slack: ", slackReads(h.Hung))...)
	}
	hinges, links := 0, 0
	for _, c := range h.Cabinets[s.From-1 : s.To] {
		hinges, links = hinges+c.HingePins, links+c.LinkPins
	}
	return append(reads, layouts.Instrument{Of: "link pins in", Is: say.Count(links, "pin"), May: "counted, locked"}, layouts.Instrument{Of: "hinge pins in", Is: say.Count(hinges, "pin"), May: "counted, locked"})
}

// named puts a word before what some instruments are called.
func named(word string, reads []layouts.Instrument) []layouts.Instrument {
	for i := range reads {
		reads[i].Of = word + reads[i].Of
	}
	return reads
}

// downNotes say what hangs on below and how the rest looks.
func downNotes(h *rig.Hung, k int) []string {
	notes := []string{"Pins in: of this set's own joints, the one above its first cabinet included."}
	if k == 0 {
		return notes
	}
	s := h.Joined(k - 1)
	from, to := h.Between(func(v *rig.Hung) float64 { return v.Joined(k - 1).LastAim() })
	return append(notes, fmt.Sprintf("Once %s is off, %s hang: cabinet %d looks %s.", SetName(h, k), say.Count(s.Flown, "cabinet"), s.Flown, say.Between(from, to, say.Aim)))
}
