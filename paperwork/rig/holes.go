package rig

import (
	"encoding/json"
	"math"

	"hangpack/calc"
	"hangpack/paperwork/job"
)

// An Option is a pick hole that a stack with one pick could hang from.
type Option struct {
	Aim  float64 // of cabinet 1, rad, positive down
	Tips bool    // the centre of gravity does not lie below the hole
}

// A Label is a pick hole's label. In JSON it keeps the type it has in the job:
// 19 or "C4".
type Label struct {
	Text   string
	Number bool
}

// MarshalJSON writes the label as a number or as a string.
func (l Label) MarshalJSON() ([]byte, error) {
	if l.Number {
		return []byte(l.Text), nil
	}
	return json.Marshal(l.Text)
}

// chooseHoles settles the pick holes. With one pick every hole is worked out; auto
// takes the one whose aim is closest to the wanted one, the earlier of two
// alike, and passes over holes that tip over unless all do.
func chooseHoles(h *Hung) {
	for _, p := range h.Picks {
		h.Holes = append(h.Holes, p.Hole)
	}
	if len(h.Picks) > 1 {
		return
	}
	for _, hole := range h.Bar.PickHoles {
		tilt, lever := calc.Tilt(hole.At, h.Centre.At)
		h.Options = append(h.Options, Option{tilt + h.Body.Cabinets[0].Splay, lever <= Within})
	}
	if h.Holes[0] == job.Auto {
		h.Holes[0] = closest(h.Options, h.Aim)
	}
}

// closest returns the index of the option whose aim is next to the wanted one: see
// chooseHoles.
func closest(options []Option, wanted float64) int {
	best := 0
	for i, o := range options {
		off, least := math.Abs(o.Aim-wanted), math.Abs(options[best].Aim-wanted)
		if tips := options[best].Tips; o.Tips != tips {
			if tips {
				best = i
			}
			continue
		}
		if off < least-Within {
			best = i
		}
	}
	return best
}

// Hole returns the place of pick i, front first, in the bar's axes.
func (h *Hung) Hole(i int) calc.Offset { return h.Bar.PickHoles[h.Holes[i]].At }

// Label returns the label of a pick hole of the bar, counted from 0.
func (h *Hung) Label(hole int) Label {
	p := h.Bar.PickHoles[hole]
	return Label{p.Label, p.Number}
}
