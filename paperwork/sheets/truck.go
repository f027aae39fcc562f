package sheets

import (
	"fmt"
	"strings"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// loadOut says which holes the pins of the joints that stay together go to for
// the truck, and which joint is released then.
func loadOut(h *rig.Hung, k int, s say.Span) string {
	var parts []string
	for _, run := range truckRuns(h, say.Span{From: firstKept(h, k, s), To: s.To}) {
		parts = append(parts, fmt.Sprintf("joints above %s: %s", run.Cabinets(), truckHoleWords(h, run.From)))
	}
	if firstKept(h, k, s) > s.From {
		parts = append(parts, fmt.Sprintf("then release the joint above cabinet %d", s.From))
	}
	return strings.Join(parts, "; ") + "."
}

// truckRuns cuts the joints above some cabinets into runs that travel in one hole.
func truckRuns(h *rig.Hung, s say.Span) []say.Span {
	return say.Runs(s, func(n int) bool { return truckHoleWords(h, n) == truckHoleWords(h, n-1) })
}

// firstKept is the first cabinet of a sheet whose joint above stays together
// on the dolly.
func firstKept(h *rig.Hung, k int, s say.Span) int {
	if s.From == setSpan(h, k).From {
		return s.From + 1
	}
	return s.From
}

// truckHoleWords says which hole the joint above cabinet n travels in. Its list is
// that of the cabinet, if it is for the joint above, else of the one above.
func truckHoleWords(h *rig.Hung, n int) string {
	if hole := rig.Transport(h, n); hole != nil {
		return "pins to hole " + say.Hole(hole.Label, hole.Splay)
	}
	return "NOT GIVEN: ask, and write it here __________"
}
