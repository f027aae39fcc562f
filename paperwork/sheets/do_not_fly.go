package sheets

import (
	"hangpack/layouts"
	"hangpack/layouts/parts"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/told"
)

// doNotFlySheet is the one sheet of a held stack.
func doNotFlySheet(h *rules.Checked) layouts.DoNotFly {
	d := layouts.DoNotFly{Head: stackHead(h.Hung), Code: codeOf(h)}
	for _, l := range told.Gathered(h.Holds) {
		d.Reasons = append(d.Reasons, parts.Remark{Where: told.WhereWords(l.At...), Says: l.OnPaper()})
	}
	return d
}
