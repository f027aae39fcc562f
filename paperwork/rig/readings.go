package rig

import (
	"math"

	"hangpack/calc"
)

// A Reading is what hangs from one hoist's hook in kg, its rigging below
// included, and the least and the most that it may be before the crew stops.
// Where a centre of gravity is not known it lies between From and To, and Is has that
// centre in the middle of its outline.
type Reading struct{ Is, From, To, Low, High float64 }

// Readings are what the hooks hold after lift k, counted from 0, front first: the least
// and the most over its reach and over all places of unknown centres of gravity, with all
// masses within their tolerance together; then at least the floor of readings to either
// side; then, of a stack that is not held, cut to where a check would hold it.
func (h *Hung) Readings(k int, held bool) (all []Reading) {
	return readings(h, func(v *Hung) *State { return v.Joined(k) }, held)
}

// StartReadings are those of the bar alone, as Readings are of a stack that is not held;
// there is a Start.
func (h *Hung) StartReadings() (all []Reading) {
	return readings(h, func(v *Hung) *State { return v.Start }, false)
}

// readings are those of the state that of takes of a stack.
func readings(h *Hung, of func(*Hung) *State, held bool) (all []Reading) {
	times := mayGrow(h, of)
	for i := range h.Picks {
		r, least := window(h, of, i)
		if !held {
			below := h.Picks[i].Below.Mass
			r.Low = max(r.Low, below+least/2)
			r.High = min(r.High, hookMayHold(h, i), below+(r.Is-below)*times)
		}
		all = append(all, r)
	}
	return all
}

// SumReading is what all hooks hold together after lift k, counted from 0, as Readings
// are. Tilts do not change it.
func (h *Hung) SumReading(k int, held bool) (sum Reading) {
	of := func(v *Hung) *State { return v.Joined(k) }
	below := 0.0
	for i := range h.Picks {
		below += h.Picks[i].Below.Mass
	}
	kg, t, floor := of(h).InBar.Mass, h.Job.Practice.MassTolerance, h.Job.Practice.ReadingFloor
	sum = Reading{Is: kg + below, From: kg + below, To: kg + below}
	sum.Low, sum.High = math.Min(sum.Is*(1-t), sum.Is-floor), math.Max(sum.Is*(1+t), sum.Is+floor)
	if !held {
		sum.Low, sum.High = math.Max(sum.Low, below+kg*(1-t)/2), math.Min(sum.High, below+kg*mayGrow(h, of))
	}
	return sum
}

// window is what hook i holds in the state that of takes of a stack, before it is cut,
// and the least of its pick's load in it.
func window(h *Hung, of func(*Hung) *State, i int) (r Reading, least float64) {
	t, floor, below := h.Job.Practice.MassTolerance, h.Job.Practice.ReadingFloor, h.Picks[i].Below.Mass
	r = Reading{Is: h.Hook(of(h), i), Low: math.Inf(1), High: math.Inf(-1)}
	r.From, r.To = h.Between(func(v *Hung) float64 { return v.Hook(of(v), i) })
	least = math.Inf(1)
	for _, v := range h.Ways() {
		for _, at := range of(v).Reach {
			kg := at.Loads[i].Is + below // less than 0 where the hook would have to push
			r.Low = min(r.Low, kg*(1-t), kg*(1+t))
			r.High = max(r.High, kg*(1-t), kg*(1+t))
			least = math.Min(least, at.Loads[i].Is*(1-t))
		}
	}
	r.Low, r.High = math.Min(r.Low, r.Is-floor), math.Max(r.High, r.Is+floor)
	return r, least
}

// hookMayHold is how much hook i may hold at rest, in kg: what practice allows of
// its hoist, and of its pick hole with the dynamic factor.
func hookMayHold(h *Hung, i int) float64 {
	return math.Min(h.HoistMost(i)/calc.G, h.Picks[i].Below.Mass+holeMayCarry(h))
}

// pickMayCarry is the most that pick i may carry, in kg, with all masses at their most:
// what practice allows of its hoist, less the rigging below, and of its pick hole.
func pickMayCarry(h *Hung, i int) float64 {
	below := h.Picks[i].Below.Mass * (1 + h.Job.Practice.MassTolerance)
	return math.Min(h.HoistMost(i)/calc.G-below, holeMayCarry(h))
}

// holeMayCarry is what practice allows of a pick hole with the dynamic factor, in kg;
// infinite where no rating is given.
func holeMayCarry(h *Hung) float64 {
	if h.Bar.PickRating == 0 {
		return math.Inf(1)
	}
	return h.Bar.PickRating * h.Job.Practice.GearUse / h.Job.Practice.DynamicFactor / calc.G
}

// mayGrow is how many times as heavy all of a state may be before its bar or a pin
// carries more than it may, at rest and with the dynamic factor: the least over its reach
// and over all places of unknown centres of gravity, infinite where nothing is rated.
// Where each hoist has to hold the stack alone it may grow no further than they let it.
func mayGrow(h *Hung, of func(*Hung) *State) float64 {
	times := gearMayGrow(h, h.Bar.Rating, of(h).InBar.Mass)
	for _, v := range h.Ways() {
		s := of(v)
		for _, at := range s.Reach {
			times = min(times, pinsMayGrow(v, at.Joints))
		}
		if h.Job.Practice.OneMustHold {
			times = min(times, aloneMayGrow(v, s))
		}
	}
	return times
}

// aloneMayGrow is how many times as heavy a state may be before it is too much for
// either of two hoists alone, its pick hole or a pin.
func aloneMayGrow(h *Hung, s *State) float64 {
	times := math.Inf(1)
	for i, swung := range s.Alone {
		hoist := h.HoistMost(i) / calc.G / (s.InBar.Mass + h.Picks[i].Below.Mass)
		times = min(times, hoist, gearMayGrow(h, h.Bar.PickRating, s.InBar.Mass), pinsMayGrow(h, swung.Joints))
	}
	return times
}

// gearMayGrow is how many times a mass in kg a part may carry that has a rating in
// newtons; infinite where that is 0, for it is not given.
func gearMayGrow(h *Hung, rating, kg float64) float64 {
	if rating == 0 {
		return math.Inf(1)
	}
	return rating * h.Job.Practice.GearUse / (kg * calc.G * h.Job.Practice.DynamicFactor)
}

// pinsMayGrow is how many times as much some joints, from the top, may carry before one
// of their pins carries more than it may.
func pinsMayGrow(h *Hung, joints []calc.Joint) float64 {
	times := math.Inf(1)
	for k, j := range joints {
		times = min(times, pinMayGrow(h, k, j))
	}
	return times
}

// pinMayGrow is the same of joint k, counted from 0.
func pinMayGrow(h *Hung, k int, j calc.Joint) float64 {
	p, c, r := h.Job.Practice, &h.Cabinets[k], h.Ratings(k)
	if r == nil {
		return math.Inf(1)
	}
	hinge := r.Hinge / calc.PinForce(j.Hinge(), c.HingePins, p.SideShare)
	link := r.Link / calc.PinForce(j.Link, c.LinkPins, p.SideShare) // infinite for a link that carries nothing
	return min(hinge, link) * p.GearUse / p.DynamicFactor
}

// Moved returns by how much the rear hook of two holds more in a state when the
// bar is tipped by a degree, front down, in kg; what it gains the front one loses.
func (h *Hung) Moved(s *State) float64 {
	_, rear, err := shared(h, s.InBar, s.Tilt+calc.Radians(1))
	if err != nil {
		return 0
	}
	return rear - s.Loads[1]
}
