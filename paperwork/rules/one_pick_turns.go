package rules

import "hangpack/paperwork/rig"

func cautionTurning(h *Checked) {
	if len(h.Picks) == 1 {
		h.caution("one_pick_turns", rig.Where{}, "nothing in this paper keeps it from turning")
	}
}
