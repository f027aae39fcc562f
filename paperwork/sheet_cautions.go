package paperwork

import (
	"fmt"
	"strconv"
	"strings"

	"hangpack/layouts"
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
	"backs_meet":     "Backs may meet",
	"mixed_arms":     "Link arms differ",
	"one_pick_turns": "One pick turns",
}

// ruleWords begins a sentence with its rule: 'Hoist: '.
func (h *hung) ruleWords(f Finding) string {
	if words, ok := rules[f.Rule]; ok {
		return words + ": "
	}
	return ""
}

// whereWords is where a finding applies, in words for paper.
func (h *hung) whereWords(f Finding) string {
	if f.Where == "" {
		return "the finished stack"
	}
	parts := strings.Split(f.Where, ", ")
	for i, p := range parts {
		if k, ok := strings.CutPrefix(p, "lift "); ok {
			n, _ := strconv.Atoi(k)
			parts[i] = fmt.Sprintf("lift %s (dolly %s)", k, letter(n-1))
		}
	}
	return strings.Join(parts, ", ")
}

// findingWords is a finding as one sentence.
func (h *hung) findingWords(f Finding) string {
	return h.ruleWords(f) + f.Says + " (" + h.whereWords(f) + ")"
}

// beforeUse is what to look at before use. Sources: OSHA 29 CFR 1926.251(a)(1)
// and (a)(6), rigging and slings inspected before use on each shift; the rest
// is common practice.
var beforeUse = []string{
	"Bar and cabinet ironwork: no crack, no bend, no hole worn oval, marks readable.",
	"Every pin: the maker's own for this cabinet, straight, right through both sides, locked; it cannot be pulled back by hand.",
	"Hoist, hook and chain: in date, latch closes, chain not twisted, limit switches tried with no load.",
	"Shackles and slings: marked, rated, no cut, no wear, loaded through the bow, pin locked.",
	"Cables: tied where the job says, none carries another's weight, none can catch.",
	"The floor below: cleared and kept clear while anything moves; everybody knows the stop word, and anyone may call it.",
}

var precedence = []string{
	"Makers' instructions, local rules and the venue's competent person come first, in that each may forbid what this pack shows.",
	"The pack is planning data and approves nothing. Its figures are no better than the masses and places in the job; nobody has weighed anything for it.",
}

// cautionSheet is this job's own cautions, then what to look at before use.
func (j *Job) cautionSheet() layouts.Cautions {
	s := layouts.Cautions{Before: beforeUse, Rules: precedence}
	for _, h := range j.stacks {
		c := layouts.StackCautions{ID: h.ID, Name: h.Name, Shape: string(h.Shape)}
		c.Items = append(h.gathered("HELD. ", h.holds), h.gathered("", h.cautions)...)
		if len(c.Items) == 0 {
			c.Items = []layouts.Caution{{Where: "the finished stack", Says: "No caution found by this calculation."}}
		}
		s.Stacks = append(s.Stacks, c)
	}
	return s
}

// gathered writes findings for paper. What is said alike of several places,
// one after another, is said once, with all of them.
func (h *hung) gathered(first string, findings []Finding) (items []layouts.Caution) {
	for i := 0; i < len(findings); {
		f, n := findings[i], i+1
		for n < len(findings) && findings[n].Rule == f.Rule && findings[n].Says == f.Says {
			n++
		}
		at := h.whereWords(f)
		if last := findings[n-1]; n-i == 2 {
			at += ", " + h.whereWords(last)
		} else if n-i > 2 {
			at = "joints " + h.joints(findings[i:n])
		}
		items = append(items, layouts.Caution{Where: at, Says: first + h.ruleWords(f) + f.Says})
		i = n
	}
	return items
}

// joints writes the places of findings, the word joint left out.
func (h *hung) joints(findings []Finding) string {
	var all []string
	for _, f := range findings {
		all = append(all, strings.TrimPrefix(h.whereWords(f), "joint "))
	}
	return strings.Join(all, ", ")
}
