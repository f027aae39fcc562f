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
	Uses     MostUsed // of parts that have a rating
	Alone    MostUsed // the same with one of two hoists alone
	Measures Closest

	PassedOver []PassedOver // nearer pick holes, the nearest first
	OtherHole  bool         // of a held stack: whether it would not be held at another pick hole of the bar
}

// A PassedOver is a pick hole that is nearer to the wanted aim than the one in use, and
// at which the stack would be held.
type PassedOver struct {
	Hole int     // of the bar, counted from 0
	Aim  float64 // of cabinet 1 there, rad, positive down
	Why  Finding // the first hold there
}

// Held reports whether a stack must not be flown as described.
func (h *Checked) Held() bool { return len(h.Holds) > 0 }

// Readings are what the hooks hold after lift k, counted from 0, front first: cut to
// where a check would hold, unless the stack is held.
func (h *Checked) Readings(k int) []rig.Reading { return h.Hung.Readings(k, h.Held()) }

// SumReading is what all hooks hold together after lift k, as Readings are.
func (h *Checked) SumReading(k int) rig.Reading { return h.Hung.SumReading(k, h.Held()) }

// A Finding is a hold or a caution: the ID of the rule that gives it, where it applies
// and a sentence with the sum written out.
type Finding struct {
	Rule  string    `json:"rule"`
	Where rig.Where `json:"where"`
	Says  string    `json:"says"`

	Title string  `json:"-"` // of the rule: begins its sentences on paper
	Of    string  `json:"-"` // which part, or which way, where a rule has several at one place
	By    float64 `json:"-"` // how bad it is, to be held only against findings of the same rule and part; 0 where it has no more and less

	ifHeld string // of a caution that tells a hole or an aim: what it says where the stack is held; else ""
}

// so adds to a finding the condition under which it comes up.
func (f Finding) so(condition string) Finding {
	condition = " (" + condition + ")"
	f.Says, f.ifHeld = f.Says+condition, say.Before(f.ifHeld, condition)
	return f
}

// Lead begins a sentence with its rule: 'Hoist: ', and "" where it needs none.
func (f Finding) Lead() string {
	return say.Before(f.Title, ": ")
}
