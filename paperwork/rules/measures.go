package rules

import (
	"slices"

	"hangpack/paperwork/rig"
)

// A Measure is a height, an angle or a number of things held against what it
// may be, where that is closest: the finished stack or a lift.
type Measure struct {
	Of    string
	Spare float64 // how far inside its limit, in its own SI unit
	Says  Wording
}

// measured keeps the closest of a kind of measure.
func (h *Checked) measured(of string, spare float64, says Wording) {
	if h.closer(of, spare) {
		h.keepMeasure(Measure{of, spare, says})
	}
}

// keepMeasure keeps a measure in the place of the one of its kind.
func (h *Checked) keepMeasure(m Measure) {
	if i := h.measureOf(m.Of); i >= 0 {
		h.Measures[i] = m
		return
	}
	h.Measures = append(h.Measures, m)
}

func (h *Checked) measureOf(of string) int {
	return slices.IndexFunc(h.Measures, func(m Measure) bool { return m.Of == of })
}

// closer reports whether a measure is closer to its limit than what is kept of its
// kind.
func (h *Checked) closer(of string, spare float64) bool {
	i := h.measureOf(of)
	return i < 0 || spare < h.Measures[i].Spare-rig.Within
}
