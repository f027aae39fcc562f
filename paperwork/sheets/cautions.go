package sheets

import (
	"fmt"
	"slices"
	"strings"

	"hangpack/layouts"
	"hangpack/layouts/parts"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/worked"
)

// cautionSheet is this job's own cautions, who answers for what, what holds for
// every such lift, and what to look at before use.
func cautionSheet(j *worked.Job) layouts.Cautions {
	s := layouts.Cautions{
		Hoist:  "read aloud before the lift; hoist here means chain hoist (motor)",
		Stacks: ownCautions(j),
		Roles:  roles,
		Anyone: anyone,
		Checks: checkList(),
		Rules:  precedence, Sources: sourceKey,
	}
	for _, g := range generals {
		if items := generalCautions(j, g.cautions); len(items) > 0 {
			s.General = append(s.General, layouts.CautionGroup{Head: g.head, Items: items})
		}
	}
	return s
}

// ownCautions are the cautions found in this job, of held stacks first.
func ownCautions(j *worked.Job) (stacks []layouts.StackCautions) {
	for _, held := range []bool{true, false} {
		for _, h := range j.Stacks {
			if held == h.Held() {
				stacks = amongStacks(h, stacks)
			}
		}
	}
	return stacks
}

// amongStacks adds a stack's own cautions to those of others: to a stack that has the
// very same, as twins do, or as one more.
func amongStacks(h *rules.Checked, stacks []layouts.StackCautions) []layouts.StackCautions {
	items := append(gatheredCautions("HELD. ", h.Holds), gatheredCautions("", h.Cautions)...)
	if len(items) == 0 {
		items = []parts.Remark{{Where: "the finished stack", Says: "No caution found by this calculation."}}
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

// gatheredCautions writes findings for paper. What is said alike of several places,
// one after another, is said once, with all of them.
func gatheredCautions(first string, findings []rules.Finding) (items []parts.Remark) {
	for i := 0; i < len(findings); {
		f, n := findings[i], i+1
		for n < len(findings) && findings[n].Rule == f.Rule && findings[n].Says == f.Says {
			n++
		}
		at := rules.WhereWords(f.Where)
		if last := findings[n-1]; n-i == 2 {
			at += ", " + rules.WhereWords(last.Where)
		} else if n-i > 2 {
			at = "joints " + jointList(findings[i:n])
		}
		items = append(items, parts.Remark{Where: at, Says: first + f.Lead() + f.Says})
		i = n
	}
	return items
}

// jointList writes the places of findings, the word joint left out.
func jointList(findings []rules.Finding) string {
	var all []string
	for _, f := range findings {
		if f.Where == (rig.Where{Joint: f.Where.Joint}) {
			all = append(all, fmt.Sprint(f.Where.Joint))
		} else {
			all = append(all, rules.WhereWords(f.Where))
		}
	}
	return strings.Join(all, ", ")
}
