package paperwork

import (
	"fmt"
	"strings"

	"hangpack/paperwork/job"
)

// loadOut says which holes the pins of the joints that stay together go to for
// the truck, and which joint is released then.
func (h *hung) loadOut(k int, s span) string {
	var parts []string
	for _, run := range h.truckRuns(span{h.firstKept(k, s), s.to}) {
		parts = append(parts, fmt.Sprintf("joints above %s: %s", cabinetsWords(run), h.truckHole(run.from)))
	}
	if h.firstKept(k, s) > s.from {
		parts = append(parts, fmt.Sprintf("then release the joint above cabinet %d", s.from))
	}
	return strings.Join(parts, "; ") + "."
}

// truckRuns cuts the joints above some cabinets into runs that travel in one hole.
func (h *hung) truckRuns(s span) (runs []span) {
	for n := s.from; n <= s.to; n++ {
		if last := len(runs) - 1; last >= 0 && h.truckHole(n) == h.truckHole(n-1) {
			runs[last].to = n
		} else {
			runs = append(runs, span{n, n})
		}
	}
	return runs
}

// firstKept is the first cabinet of a sheet whose joint above stays together
// on the dolly.
func (h *hung) firstKept(k int, s span) int {
	if s.from == h.Sets.First(k)+1 {
		return s.from + 1
	}
	return s.from
}

// truckHole says which hole the joint above cabinet n travels in. Its list is
// that of the cabinet, if it is for the joint above, else of the one above.
func (h *hung) truckHole(n int) string {
	if hole := h.transport(n); hole != nil {
		return "pins to hole " + hole.Label
	}
	return "NOT GIVEN: ask, and write it here __________"
}

// transport is the hole for the truck of the joint above cabinet n, from 2 on, nil
// where it is not given.
func (h *hung) transport(n int) *job.Hole {
	if own := h.Cabinets[n-1].Cabinet; own.HolesForJointAbove {
		return own.Transport
	}
	return h.Cabinets[n-2].Transport
}
