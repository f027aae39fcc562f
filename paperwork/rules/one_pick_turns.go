package rules

import "hangpack/paperwork/rig"

// onePickTurns: with one pick, always: nothing keeps the stack from turning.
var onePickTurns = Rule{ID: "one_pick_turns", Title: "One pick turns", Severity: Caution, Grave: Lurches, stack: checkTurning}

func checkTurning(c *check) {
	if len(c.Picks) == 1 {
		c.caution(rig.Where{}, "nothing in this paper keeps it from turning")
	}
}
