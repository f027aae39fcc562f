package rules

import (
	"slices"

	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
)

// NotChecked is the ID of its rule, whose cautions are counted and listed apart.
const NotChecked = "not_checked"

// notChecked: a limit that the gear of the stack does not give, steel whose height is not
// given, or a stack without a dolly. It names in words what is not checked. Its sentences
// begin by themselves.
var notChecked = Rule{ID: NotChecked, Title: "", Severity: Caution, Grave: Unknown, stack: checkUnchecked}

func checkUnchecked(c *check) {
	uncheckedBar(c)
	for _, t := range c.Types() {
		unchecked(c, t.PinRatings != nil, t.Key, "the hinge and link pins of "+t.Key, noRating)
	}
	unchecked(c, c.Picks[0].Steel != nil, "", "headroom and chain", "the height of the steel is not given")
	unchecked(c, c.Dolly != nil, "", "chain and headroom down to the dollies", "no dolly given")
}

const noRating = "no rating given"

// unchecked cautions of what is not checked, and why, where what that takes is not given.
func unchecked(c *check, given bool, gear, what, why string) {
	if !given {
		c.caution(rig.Where{Gear: gear}, "NOT CHECKED: %s: %s", what, why)
	}
}

// uncheckedBar cautions of what the bar's maker does not say.
func uncheckedBar(c *check) {
	b, types := c.Bar, c.Types()
	not := func(given bool, what, why string) { unchecked(c, given, b.Key, what, why) }
	not(b.Rating > 0, "the bar with all that hangs on it", noRating)
	not(b.PickRating > 0, "the bar's pick holes", noRating)
	not(b.PinRatings != nil, "the hinge and link pins of the bar", noRating)
	not(b.Most != nil, "how many cabinets the bar takes", "no number given")
	for _, t := range types {
		not(b.Most == nil || limited(b, t.Key), "how many of "+t.Key+" the bar takes", "no number given")
	}
	not(b.Most == nil || len(types) == 1 || limited(b, job.OfAnyType), "how many cabinets of all types together the bar takes", "no number given")
	not(b.TiltLimit != nil, "how far the bar may tilt", "no limit given")
}

// limited reports whether the bar's maker limits how many of a type, or of any, it takes.
func limited(b *job.Bar, key string) bool {
	return slices.ContainsFunc(b.Most, func(m job.Most) bool { return m.Cabinet == key })
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
