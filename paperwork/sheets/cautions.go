package sheets

import (
	"slices"

	"hangpack/layouts"
	"hangpack/layouts/parts"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/told"
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

// gatheredCautions writes findings for paper, those that repeat at once.
func gatheredCautions(first string, findings []rules.Finding) (items []parts.Remark) {
	for _, l := range told.Gathered(findings) {
		items = append(items, parts.Remark{Where: told.WhereWords(l.At...), Says: first + l.OnPaper()})
	}
	return items
}
