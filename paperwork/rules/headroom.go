package rules

import (
	"fmt"

	"hangpack/paperwork/rig"
)

// headroom: low hook + headroom + limit_reserve > high hook, at trim and at the roll-in
// after each lift. It needs the height of the steel, and at the roll-ins a dolly.
var headroom = Rule{ID: "headroom", Title: "Headroom", Severity: Hold, stack: checkHeadroom}

// checkHeadroom: at trim, and at the roll-in after each lift, low hook +
// headroom + limit_reserve > high hook. It needs the height of the steel, and
// at the roll-ins a dolly.
func checkHeadroom(h *check) {
	for i := range h.Picks {
		headroomAt(h, i, rig.Where{End: h.End(i)}, h.PickHeight(i))
	}
	if h.Dolly == nil {
		return
	}
	for k, s := range h.Lifts {
		for i := range h.Picks {
			below := s.HighestPick() - s.Picks[i].Z
			headroomAt(h, i, rig.Where{Lift: s.Lift, End: h.End(i)}, h.RollIn(k)-below)
		}
	}
}

func headroomAt(h *check, i int, at rig.Where, pick float64) {
	p, hook := h.Picks[i], h.HighHook(i)
	if hook == nil {
		return
	}
	reserve := h.Job.Practice.LimitReserve
	low, high := pick+p.Below.Length, *hook
	need := low + p.Hoist.Headroom + reserve
	says := func(write func(float64) string) string {
		return fmt.Sprintf("low hook %s + headroom %s + reserve %s = %s", write(low), write(p.Hoist.Headroom), write(reserve), write(need))
	}
	h.measured("headroom", high-need, func() (rig.Where, string, string) {
		return at, says(h.Unit().Length), "not above the high hook at " + h.Unit().Length(high)
	})
	if need > high+rig.Within {
		write := h.Unit().Apart(need, high)
		h.hold(at, "%s is more than the high hook at %s", says(write), write(high)).By = need - high
	}
}
