package rules

import (
	"slices"

	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
)

// NotChecked is the ID of its rule, whose cautions are counted and listed apart.
const NotChecked = "not_checked"

// notChecked: a limit that the gear of the stack does not give, or steel whose height is
// not given. Its sentences begin by themselves.
var notChecked = Rule{ID: NotChecked, Title: "", Severity: Caution, Grave: Unknown, stack: checkUnchecked}

func checkUnchecked(c *check) {
	b := c.Bar
	unchecked := func(given bool, gear, what string) {
		if !given {
			c.caution(rig.Where{Gear: gear}, "NOT CHECKED: %s not given", what)
		}
	}
	unchecked(b.Rating > 0, b.Key, "rating of the bar")
	unchecked(b.PickRating > 0, b.Key, "pick_rating of the bar")
	unchecked(b.PinRatings != nil, b.Key, "pin_ratings of the bar")
	unchecked(b.Most != nil, b.Key, "most, the number of cabinets below the bar,")
	for _, t := range c.Types() {
		unchecked(b.Most == nil || limited(c.Hung, t), b.Key, "most of "+t.Key+" below the bar")
	}
	unchecked(b.TiltLimit != nil, b.Key, "tilt_limit of the bar")
	for _, t := range c.Types() {
		unchecked(t.PinRatings != nil, t.Key, "pin_ratings of the cabinet")
	}
	unchecked(c.Picks[0].Steel != nil, "", "height of the steel of "+c.ID)
}

// limited reports whether the bar's maker limits how many of a type it takes.
func limited(h *rig.Hung, t *job.Cabinet) bool {
	return slices.ContainsFunc(h.Bar.Most, func(m job.Most) bool { return m.Cabinet == t.Key })
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
