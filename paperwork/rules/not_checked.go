package rules

import (
	"fmt"

	"hangpack/paperwork/rig"
)

// NotChecked is the rule's name to who treats its findings apart.
const NotChecked = "not_checked"

// notChecked: a limit that the gear of the stack does not give, or steel whose height is not
// given.
var notChecked = Rule{ID: NotChecked, Title: "", Severity: Caution, stack: checkUnchecked}

// checkUnchecked names every limit that the gear of this stack does not
// give, and steel whose height is not given.
func checkUnchecked(h *check) {
	b := h.Bar
	unchecked := func(given bool, gear, what string) {
		if !given {
			h.caution(rig.Where{Gear: gear}, "NOT CHECKED: %s not given", what)
		}
	}
	unchecked(b.Rating > 0, b.Key, "rating of the bar")
	unchecked(b.PickRating > 0, b.Key, "pick_rating of the bar")
	unchecked(b.PinRatings != nil, b.Key, "pin_ratings of the bar")
	unchecked(b.Most != nil, b.Key, "most, the number of cabinets below the bar,")
	for _, t := range h.Types() {
		unchecked(b.Most == nil || limited(h.Hung, t), b.Key, "most of "+t.Key+" below the bar")
	}
	unchecked(b.TiltLimit != nil, b.Key, "tilt_limit of the bar")
	for _, t := range h.Types() {
		unchecked(t.PinRatings != nil, t.Key, "pin_ratings of the cabinet")
	}
	for i, p := range h.Picks {
		if i == 0 {
			unchecked(p.Steel != nil, "", fmt.Sprintf("height of the steel of %s", h.ID))
		}
	}
}

// Unchecked writes what is not checked of a stack: of its gear under the gear's
// key, so that stacks that share it say the same.
func (h *Checked) Unchecked() (lines []string) {
	for _, c := range h.Cautions {
		switch {
		case c.Rule != NotChecked:
		case c.Where == rig.Where{}:
			lines = append(lines, h.ID+": "+c.Says)
		default:
			lines = append(lines, c.Where.String()+": "+c.Says)
		}
	}
	return lines
}
