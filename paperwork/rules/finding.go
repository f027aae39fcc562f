package rules

import (
	"fmt"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// A Finding is a hold or a caution: the rule that gives it, where it applies
// ("" for the finished stack, else such as "lift 2, joint 3") and a sentence
// with the sum written out.
type Finding struct {
	Rule  string    `json:"rule"`
	Where rig.Where `json:"where"`
	Says  string    `json:"says"`

	Title string  `json:"-"` // of the rule: begins its sentences on paper
	Of    string  `json:"-"` // which part, where a rule has several at one place
	By    float64 `json:"-"` // how far past its limit, among findings of one rule at one place
}

// Lead begins a sentence with its rule: 'Hoist: '.
func (f Finding) Lead() string {
	return say.Before(f.Title, ": ")
}

// WhereWords is where a finding applies, in words for paper.
func WhereWords(at rig.Where) string {
	if at == (rig.Where{}) {
		return "the finished stack"
	}
	lift, set, rest := "", "", at
	if at.Lift > 0 {
		lift = fmt.Sprintf("lift %d (dolly %s)", at.Lift, say.Dolly(at.Lift-1))
	}
	if at.Set > 0 {
		set = "dolly " + say.Dolly(at.Set-1)
	}
	rest.Lift, rest.Set = 0, 0
	return say.Listed(lift, rest.String(), set)
}

// Sentence is a finding as one sentence.
func (f Finding) Sentence() string {
	return f.Lead() + f.Says + " (" + WhereWords(f.Where) + ")"
}
