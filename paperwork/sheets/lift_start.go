package sheets

import (
	"fmt"

	"hangpack/layouts"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
)

// startCard is the first moment: two picks hang the bar alone and level; with one
// it would hang on end, and is pinned to the first dolly before the hook pulls.
func startCard(h *rules.Checked) layouts.Card {
	c := layouts.Card{Of: "first", Which: "the bar"}
	if h.Start == nil {
		return pinnedStart(h, c)
	}
	off := h.Job.Practice.AimTolerance
	c.Reads = append(cellReads(h, h.StartReadings()), layouts.Instrument{Of: "bar", Is: say.Aim(0), May: say.Aims(-off, off)})
	c.View = viewOf(h, h.Start)
	c.Says = []string{"alone, level", h.Unit().Load(h.Start.Centre.Mass)}
	c.Steps = append(tieSteps(h), layouts.Task{Says: hookOn(h)}, layouts.Task{Says: "Raise the bar level, clear of the floor. Stop and read.", Strong: true})
	c.Notes = []string{"Down from here: lower the bar to the floor, chains slack, hooks off."}
	return c
}

// pinnedStart is the first moment of a bar that is not lifted alone.
func pinnedStart(h *rules.Checked, c layouts.Card) layouts.Card {
	c.Says, c.Joint = []string{"on " + SetName(h, 0)}, cardJoint(h, 0)
	c.Steps = append(tieSteps(h), layouts.Task{Says: fmt.Sprintf("Bar onto %s: hinge above cabinet 1 first, then its link in hole %s.", SetName(h, 0), h.Cabinets[0].Hole.Label)},
		layouts.Task{Says: hookOn(h)}, layouts.Task{Says: "Raise the hook until the chain is just tight, no more. Stop and read.", Strong: true})
	if len(h.Picks) == 2 {
		c.Steps[len(c.Steps)-1].Says = "Raise both hooks until both chains are just tight, no more. Stop and read."
		c.Warnings = []string{"Do not lift the bar alone: from these pick holes it does not hang level by itself."}
	}
	c.Reads = slackReads(h)
	c.Notes = []string{fmt.Sprintf("Down from here: chain slack, hook off; the bar stays pinned to %s.", SetName(h, 0))}
	return c
}

// tieSteps say what is tied to the bar before its first reading, which counts it.
func tieSteps(h *rules.Checked) []layouts.Task {
	if tied := tiedTo(h, 0, 0); tied != "" {
		return []layouts.Task{{Says: "Tied to the bar first, and in all readings: " + tied + "."}}
	}
	return nil
}

// slackReads are of chains that carry their rigging and nothing below it.
func slackReads(h *rules.Checked) (reads []layouts.Instrument) {
	u := h.Unit()
	for i, p := range h.Picks {
		kg := p.Below.Mass + ownOfHoist(h, i)
		reads = append(reads, layouts.Instrument{Of: label("load cell", h.End(i)), Is: u.Reading(kg), May: "at most " + u.Reading(kg+h.Job.Practice.ReadingFloor)})
	}
	return reads
}

func hookOn(h *rules.Checked) string {
	if len(h.Picks) == 1 {
		return fmt.Sprintf("Hook on at pick hole %s; shackle closed and locked.", h.Label(h.Holes[0]).Text)
	}
	return fmt.Sprintf("Hooks on: front at pick hole %s, rear at %s; shackles closed and locked.", h.Label(h.Holes[0]).Text, h.Label(h.Holes[1]).Text)
}
