package rules

// run holds every rule against the states of a stack, then against all of it.
func (h *Checked) run() {
	for _, s := range h.States() {
		for i := range table {
			if r := &table[i]; r.states != nil {
				r.states(&check{h, r}, s)
			}
		}
	}
	for i := range table {
		if r := &table[i]; r.stack != nil {
			r.stack(&check{h, r})
		}
	}
}

// table is every rule, in the order of their findings: those of the finished stack
// rule by rule, of each lift, then of the stack as a whole.
var table = []Rule{
	aimMissed, hoist, bar, pickHole, hingePin, linkPin, linkPushed, most, barTilt, lightPick, tipsOver,
	headroom, chainReach, belowFloor, dolly, liftTilt, hingeTurns, oneHoist, oneHoistGear, backsMeet,
	mixedArms, onePickTurns, notChecked, twinDiffers,
}

// All returns every rule, in the order of their findings.
func All() []Rule { return table }
