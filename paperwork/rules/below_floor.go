package rules

import "hangpack/paperwork/rig"

// belowFloor: a corner is below the floor at trim.
var belowFloor = Rule{ID: "below_floor", Title: "Below the floor", Severity: Hold, stack: checkFloor}

// checkFloor: a corner below the floor, at trim.
func checkFloor(h *check) {
	low := h.Raise + h.Finished.Lowest()
	h.measured("lowest corner", low-h.Floor, func() (rig.Where, string, string) {
		return rig.Where{}, h.Unit().Length(low), "not below the floor at " + h.Unit().Length(h.Floor)
	})
	if low < h.Floor-rig.Within {
		write := h.Unit().Apart(low, h.Floor)
		h.hold(rig.Where{}, "the lowest corner at %s is below the floor at %s", write(low), write(h.Floor)).By = h.Floor - low
	}
}
