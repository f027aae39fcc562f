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

	Of string  `json:"-"` // which part, where a rule has several at one place
	By float64 `json:"-"` // how far past its limit, among findings of one rule at one place
}

// titles are the rules in words for paper.
var titles = map[string]string{
	"hoist":          "Hoist",
	"bar":            "Bar",
	"pick_hole":      "Pick hole",
	"hinge_pin":      "Hinge pin",
	"link_pin":       "Link pin",
	"link_pushed":    "Link pushed",
	"most":           "Too many cabinets",
	"bar_tilt":       "Bar tilt",
	"light_pick":     "Light pick",
	"tips_over":      "Tips over",
	"headroom":       "Headroom",
	"chain_reach":    "Chain too short",
	"below_floor":    "Below the floor",
	"dolly":          "Dolly",
	"aim_missed":     "Aim missed",
	"lift_tilt":      "Tilt at a lift",
	"hinge_turns":    "Hinge turns over",
	"one_hoist":      "One hoist alone",
	"one_hoist_gear": "One hoist alone",
	"backs_meet":     "Backs may meet",
	"mixed_arms":     "Link arms differ",
	"one_pick_turns": "One pick turns",
	"twin_differs":   "Twins differ",
}

// leadOf begins a sentence with its rule: 'Hoist: '.
func (f Finding) Lead() string {
	if words, ok := titles[f.Rule]; ok {
		return words + ": "
	}
	return ""
}

// OnPaper is where a finding applies, in words for paper.
func OnPaper(at rig.Where) string {
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
	return f.Lead() + f.Says + " (" + OnPaper(f.Where) + ")"
}
