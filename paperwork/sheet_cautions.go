package paperwork

import (
	"fmt"
	"slices"
	"strings"

	"hangpack/layouts"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// rules are the rules in words for paper.
var rules = map[string]string{
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

// ruleWords begins a sentence with its rule: 'Hoist: '.
func (h *checked) ruleWords(f Finding) string {
	if words, ok := rules[f.Rule]; ok {
		return words + ": "
	}
	return ""
}

// whereWords is where a finding applies, in words for paper.
func (h *checked) whereWords(at rig.Where) string {
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

// findingWords is a finding as one sentence.
func (h *checked) findingWords(f Finding) string {
	return h.ruleWords(f) + f.Says + " (" + h.whereWords(f.Where) + ")"
}

// cautionSheet is this job's own cautions, who answers for what, what holds for
// every such lift, and what to look at before use.
func (j *Job) cautionSheet() layouts.Cautions {
	s := layouts.Cautions{
		Hoist:  "read aloud before the lift; hoist here means chain hoist (motor)",
		Stacks: j.ownCautions(),
		Roles:  roles,
		Anyone: anyone,
		Checks: checkList(),
		Rules:  precedence, Sources: sourceKey,
	}
	for _, g := range generals {
		if items := j.generalCautions(g.cautions); len(items) > 0 {
			s.General = append(s.General, layouts.CautionGroup{Head: g.head, Items: items})
		}
	}
	return s
}

// ownCautions are the cautions found in this job, of held stacks first.
func (j *Job) ownCautions() (stacks []layouts.StackCautions) {
	for _, held := range []bool{true, false} {
		for _, h := range j.stacks {
			if held == h.held() {
				stacks = h.among(stacks)
			}
		}
	}
	return stacks
}

// among adds a stack's own cautions to those of others: to a stack that has the
// very same, as twins do, or as one more.
func (h *checked) among(stacks []layouts.StackCautions) []layouts.StackCautions {
	items := append(h.gathered("HELD. ", h.holds), h.gathered("", h.cautions)...)
	if len(items) == 0 {
		items = []layouts.Caution{{Where: "the finished stack", Says: "No caution found by this calculation."}}
	}
	mark := layouts.StackMark{ID: h.ID, Name: h.Name, Shape: string(h.Shape)}
	for i, s := range stacks {
		if slices.Equal(s.Items, items) {
			stacks[i].Of = append(s.Of, mark)
			return stacks
		}
	}
	return append(stacks, layouts.StackCautions{Of: []layouts.StackMark{mark}, Items: items})
}

// gathered writes findings for paper. What is said alike of several places,
// one after another, is said once, with all of them.
func (h *checked) gathered(first string, findings []Finding) (items []layouts.Caution) {
	for i := 0; i < len(findings); {
		f, n := findings[i], i+1
		for n < len(findings) && findings[n].Rule == f.Rule && findings[n].Says == f.Says {
			n++
		}
		at := h.whereWords(f.Where)
		if last := findings[n-1]; n-i == 2 {
			at += ", " + h.whereWords(last.Where)
		} else if n-i > 2 {
			at = "joints " + h.joints(findings[i:n])
		}
		items = append(items, layouts.Caution{Where: at, Says: first + h.ruleWords(f) + f.Says})
		i = n
	}
	return items
}

// joints writes the places of findings, the word joint left out.
func (h *checked) joints(findings []Finding) string {
	var all []string
	for _, f := range findings {
		if f.Where == (rig.Where{Joint: f.Where.Joint}) {
			all = append(all, fmt.Sprint(f.Where.Joint))
		} else {
			all = append(all, h.whereWords(f.Where))
		}
	}
	return strings.Join(all, ", ")
}
