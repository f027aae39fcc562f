// Package rules holds a worked stack against what gear, practice and heights allow:
// what stops it from flying, and what the crew or the venue must know. Each rule
// stands in a file of its own, and in the table of rules.go.
package rules

import "hangpack/paperwork/rig"

// A Checked stack is a worked one with what the rules found on it.
type Checked struct {
	*rig.Hung
	Twin     *Checked // nil where it has none
	Holds    []Finding
	Cautions []Finding
	Uses     Uses     // one of each kind of part that has a rating
	Measures Measures // one of each kind
}

// Held reports whether a stack must not be flown as described.
func (h *Checked) Held() bool { return len(h.Holds) > 0 }

// Counts returns how many cautions there are, and how many things are not checked.
func (h *Checked) Counts() (cautions, unchecked int) {
	for _, c := range h.Cautions {
		if c.Rule == NotChecked {
			unchecked++
		} else {
			cautions++
		}
	}
	return cautions, unchecked
}

// unrated counts the parts of a stack for which the job gives no rating.
func unrated(h *rig.Hung) (n int) {
	for _, given := range []bool{h.Bar.Rating > 0, h.Bar.PickRating > 0, h.Bar.PinRatings != nil} {
		if !given {
			n++
		}
	}
	for _, t := range h.Types() {
		if t.PinRatings == nil {
			n++
		}
	}
	return n
}
