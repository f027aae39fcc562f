package sheets

import (
	"hangpack/layouts"
	"hangpack/layouts/parts"
	"hangpack/paperwork/rules"
)

// doNotFlySheet is the one sheet of a held stack.
func doNotFlySheet(h *rules.Checked) layouts.DoNotFly {
	d := layouts.DoNotFly{Target: pinTarget(h.Hung), Head: stackHead(h.Hung), Code: codeOf(h), Says: heldText(h.Hung)}
	for _, f := range h.Holds {
		d.Reasons = append(d.Reasons, parts.Remark{Where: rules.WhereWords(f.Where), Says: f.Lead() + f.Says})
	}
	return d
}
