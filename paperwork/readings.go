package paperwork

import (
	"math"

	"hangpack/paperwork/say"
)

// A reading is what hangs from one hoist's hook in kg, its rigging below
// included, and the least and the most that it may be before the crew stops.
// It lies from one to the other where a centre of gravity is not known, is with
// that in the middle.
type reading struct{ is, from, to, low, high float64 }

// joined returns the stack after lift k, counted from 0: the last one is the
// finished stack.
func (h *hung) joined(k int) *state {
	if k == len(h.lifts) {
		return h.finished
	}
	return h.lifts[k]
}

// readings are what the hooks hold after lift k, counted from 0, front first:
// the least and the most over masses within their tolerance, with two picks over
// tilts within the aim's, over all places of unknown centres of gravity, and at
// least the floor of readings to either side.
func (h *hung) readings(k int) (all []reading) {
	for i := range h.Picks {
		all = append(all, h.readingOf(i, func(v *hung) *state { return v.joined(k) }))
	}
	return all
}

// readingOf is what hook i holds in a state.
func (h *hung) readingOf(i int, of func(*hung) *state) reading {
	r := reading{is: h.hook(of(h), i), low: math.Inf(1), high: math.Inf(-1)}
	r.from, r.to = h.over(func(v *hung) float64 { return v.hook(of(v), i) })
	for _, v := range h.ways() {
		low, high := v.window(of(v), i)
		r.low, r.high = math.Min(r.low, low), math.Max(r.high, high)
	}
	floor := h.job.Practice.ReadingFloor
	r.low, r.high = math.Min(r.low, r.is-floor), math.Max(r.high, r.is+floor)
	return r
}

// window returns the least and the most that hook i may hold in a state.
func (h *hung) window(s *state, i int) (low, high float64) {
	least, most := h.tipped(s, i)
	less, more := 1-h.job.Practice.MassTolerance, 1+h.job.Practice.MassTolerance
	return math.Min(least*less, least*more), math.Max(most*less, most*more) // a hook may be pushed
}

// tipped returns the least and the most that hook i holds in a state as it hangs
// and, with two picks, tipped by the aim's tolerance either way: between them it goes
// one way only. The reader refuses hooks for which no tilt within it can be worked
// out.
func (h *hung) tipped(s *state, i int) (least, most float64) {
	least = h.hook(s, i)
	most = least
	if len(h.Picks) == 1 {
		return least, most
	}
	for _, off := range [...]float64{-1, 1} {
		if kg, err := h.tippedBy(s, off*h.job.Practice.AimTolerance, i); err == nil {
			least, most = math.Min(least, kg), math.Max(most, kg)
		}
	}
	return least, most
}

// tippedBy returns what hook i of two holds in a state with the bar tipped by an
// angle, front down.
func (h *hung) tippedBy(s *state, off float64, i int) (kg float64, err error) {
	front, rear, err := h.shared(s.inBar, s.tilt+off)
	return [2]float64{front, rear}[i] + h.Picks[i].Below.Mass, err
}

// moved returns by how much the rear hook of two holds more in a state when the
// bar is tipped by a degree, front down, in kg; what it gains the front one loses.
func (h *hung) moved(s *state) float64 {
	kg, err := h.tippedBy(s, say.Radians(1), 1)
	if err != nil {
		return 0
	}
	return kg - h.hook(s, 1)
}

// setSum is the sum of the splays of set k, counted from 0, in degrees: of every
// joint from the one above its first cabinet.
func (h *hung) setSum(k int) (deg float64) {
	for _, c := range h.inSet(k) {
		deg += c.Hole.Splay
	}
	return deg
}

// workStart works out the bar alone: with two picks it hangs level before the
// first dolly is joined, if both hooks pull then and it does not roll over.
func (h *hung) workStart() error {
	if len(h.Picks) == 1 {
		return nil
	}
	s, err := h.heldAt(0, 0, 0)
	if err != nil || s.lever <= within || s.loads[0] < 0 || s.loads[1] < 0 {
		return nil // holes that lie one above the other level the bar with nothing to hold it by
	}
	h.start = s
	return nil
}

// workAlone hangs the whole stack from each of two picks alone, at the tilt that
// it would swing to.
func (h *hung) workAlone() {
	if len(h.Picks) == 1 {
		return
	}
	for i := range h.Picks {
		h.swung = append(h.swung, h.settled(0, len(h.Cabinets), i))
	}
}

// swing is how far the lowest cabinet turns, in radians and positive front down,
// when set k, counted from 0, is joined below it and hangs free.
func (h *hung) swing(k int) float64 { return h.joined(k).tilt - h.joined(k-1).tilt }

// level returns how high the lowest corner stands above the floor for the next
// dolly to roll in, after lift k counted from 0.
func (h *hung) level(k int) float64 { return h.rollIn(k) - h.lifts[k].drop() - h.Floor }

// lastAim returns the aim of the lowest cabinet in a state.
func (s *state) lastAim() float64 { return s.poses[len(s.poses)-1].Aim }
