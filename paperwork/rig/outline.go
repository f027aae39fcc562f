package rig

import (
	"fmt"
	"math"

	"hangpack/calc"
)

// A Covered is what one body of a finished stack covers in plan.
type Covered struct {
	calc.Plot
	Body string // 'cabinet 3', 'the bar'
}

// Outline is what a stack covers in plan as it hangs finished: a rectangle for each
// cabinet, from its rearmost to its foremost corner and as wide as it is, and one for the
// bar: over its hinge and all of its pick holes, as wide as cabinet 1, since the job gives
// a bar no width. Centres of gravity that are not known are taken as the job has them.
func (h *Hung) Outline() (all []Covered) {
	rear, front := 0.0, 0.0
	for _, hole := range h.Bar.PickHoles {
		x := hole.At.Turned(h.Finished.Tilt).X
		rear, front = math.Min(rear, x), math.Max(front, x)
	}
	all = append(all, Covered{plot(h, rear, front, h.Cabinets[0].Width), "the bar"})
	for k, c := range h.Finished.Corners {
		rear, front := min(c[0].X, c[1].X, c[2].X, c[3].X), max(c[0].X, c[1].X, c[2].X, c[3].X)
		all = append(all, Covered{plot(h, rear, front, h.Cabinets[k].Width), fmt.Sprintf("cabinet %d", k+1)})
	}
	return all
}

// Whole is one rectangle around an outline.
func Whole(outline []Covered) calc.Plot {
	whole := outline[0].Plot
	for _, c := range outline[1:] {
		whole.Rear, whole.Front, whole.Half = math.Min(whole.Rear, c.Rear), math.Max(whole.Front, c.Front), math.Max(whole.Half, c.Half)
	}
	return whole
}

// plot is what lies from rear to front of the bar's hinge, in m ahead of it.
func plot(h *Hung, rear, front, width float64) calc.Plot {
	return calc.Plot{Left: h.StageLeft, Down: h.Downstage, Pan: h.Pan, Rear: rear, Front: front, Half: width / 2}
}

// Heights are those of the lowest corner and of the highest of corners, hinge and picks
// of the finished stack, in m above heights_from.
func (h *Hung) Heights() (low, high float64) {
	high = math.Max(h.Finished.HighestPick(), 0)
	for _, c := range h.Finished.Corners {
		high = max(high, c[0].Z, c[1].Z, c[2].Z, c[3].Z)
	}
	return h.Raise + h.Finished.Lowest(), h.Raise + high
}
