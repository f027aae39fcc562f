package changes

import (
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/told"
)

// compareFindings keeps the holds of a stack and those that are no longer there, and
// which cautions were gained and lost. Cautions of a revision that is not held may tell
// holes, so they are not told of a stack that the other one holds.
func (c *List) compareFindings(was, h *rules.Checked) {
	c.Holds = append(c.Holds, found(h.ID, h.Holds)...)
	c.HoldsGone = append(c.HoldsGone, found(h.ID, without(was.Holds, h.Holds))...)
	if was.Held() != h.Held() {
		return
	}
	c.CautionsAdded = append(c.CautionsAdded, found(h.ID, without(h.Cautions, was.Cautions))...)
	c.CautionsGone = append(c.CautionsGone, found(h.ID, without(was.Cautions, h.Cautions))...)
}

// findingsOf keeps those of a stack that only the new revision has.
func (c *List) findingsOf(h *rules.Checked) {
	c.Holds = append(c.Holds, found(h.ID, h.Holds)...)
	c.CautionsAdded = append(c.CautionsAdded, found(h.ID, h.Cautions)...)
}

// A foundKind is what a finding is of. One whose figures alone are others is the same.
type foundKind struct {
	rule, of string
	end      rig.End
	gear     string
}

func foundKindOf(f rules.Finding) foundKind {
	return foundKind{f.Rule, f.Of, f.Where.End, f.Where.Gear}
}

// without are findings of kinds that are not among others.
func without(findings, others []rules.Finding) (all []rules.Finding) {
	had := map[foundKind]bool{}
	for _, f := range others {
		had[foundKindOf(f)] = true
	}
	for _, f := range findings {
		if !had[foundKindOf(f)] {
			all = append(all, f)
		}
	}
	return all
}

func found(stack string, findings []rules.Finding) (all []FoundChange) {
	for _, f := range findings {
		all = append(all, FoundChange{stack, f})
	}
	return all
}

// foundWords are the findings of a stack as lines, each behind what became of it.
func foundWords(stack, lead string, all []FoundChange) (lines []string) {
	var own []rules.Finding
	for _, f := range all {
		if f.Stack == stack {
			own = append(own, f.Finding)
		}
	}
	for _, l := range told.Gathered(own) {
		lines = append(lines, lead+": "+l.OnPaper()+" ("+told.WhereWords(l.At...)+")")
	}
	return lines
}

// findingWords are all that is said of the findings of a stack.
func (c List) findingWords(stack string) (lines []string) {
	lines = append(lines, foundWords(stack, "HELD", c.Holds)...)
	lines = append(lines, foundWords(stack, "no longer held", c.HoldsGone)...)
	lines = append(lines, foundWords(stack, "new caution", c.CautionsAdded)...)
	return append(lines, foundWords(stack, "caution gone", c.CautionsGone)...)
}
