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

// Check holds every rule against a stack, wherever its unknown centres of gravity lie.
func Check(h *rig.Hung) *Checked {
	c := &Checked{Hung: h}
	c.run()
	takeWorst(c)
	return c
}

// run holds every rule against the states of a stack, then against all of it.
func (h *Checked) run() {
	for _, s := range h.States() {
		for _, r := range table {
			if r.states != nil {
				r.states(&check{h, r}, s)
			}
		}
	}
	for _, r := range table {
		if r.stack != nil {
			r.stack(&check{h, r})
		}
	}
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
