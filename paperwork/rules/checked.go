package rules

import (
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// A Checked stack is a worked one with what the rules found on it.
type Checked struct {
	*rig.Hung
	Twin     *Checked // nil where it has none, and until CompareStacks
	Holds    []Finding
	Cautions []Finding
	Uses     Uses     // one of each kind of part that has a rating
	Measures Measures // one of each kind
}

// Held reports whether a stack must not be flown as described.
func (h *Checked) Held() bool { return len(h.Holds) > 0 }

// A Finding is a hold or a caution: the ID of the rule that gives it, where it applies
// and a sentence with the sum written out.
type Finding struct {
	Rule  string    `json:"rule"`
	Where rig.Where `json:"where"`
	Says  string    `json:"says"`

	Title string  `json:"-"` // of the rule: begins its sentences on paper
	Of    string  `json:"-"` // which part, or which way, where a rule has several at one place
	By    float64 `json:"-"` // how bad it is, to be held only against findings of the same rule and part; 0 where it has no more and less
}

// Lead begins a sentence with its rule: 'Hoist: ', and "" where it needs none.
func (f Finding) Lead() string {
	return say.Before(f.Title, ": ")
}
