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
	room := room(h, of)
	for i := range h.Picks {
		r, least := window(h, of, i)
		if !held {
			below := h.Picks[i].Below.Mass
			r.Low = math.Max(r.Low, below+least/2)
			r.High = math.Min(r.High, math.Min(mostOnHook(h, i), below+(r.Is-below)*room))
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
		sum.Low, sum.High = math.Max(sum.Low, below+kg*(1-t)/2), math.Min(sum.High, below+kg*room(h, of))
	}
	return sum
}

// window is what hook i holds in the state that of takes of a stack, before it is cut,
// and the least of its pick's load in it.
func window(h *Hung, of func(*Hung) *State, i int) (r Reading, least float64) {
	t, floor, below := h.Job.Practice.MassTolerance, h.Job.Practice.ReadingFloor, h.Picks[i].Below.Mass
	r = Reading{Is: h.Hook(of(h), i), Low: math.Inf(1), High: math.Inf(-1)}
	r.From, r.To = h.Over(func(v *Hung) float64 { return v.Hook(of(v), i) })
	least = math.Inf(1)
	for _, v := range h.Ways() {
		for _, at := range of(v).Reach {
			kg := at.Loads[i].Is + below // less than 0 where the hook would have to push
			r.Low = math.Min(r.Low, math.Min(kg*(1-t), kg*(1+t)))
			r.High = math.Max(r.High, math.Max(kg*(1-t), kg*(1+t)))
			least = math.Min(least, at.Loads[i].Is*(1-t))
		}
	}
	r.Low, r.High = math.Min(r.Low, r.Is-floor), math.Max(r.High, r.Is+floor)
	return r, least
}

// mostOnHook is the most that hook i may hold at rest, in kg: what practice allows of
// its hoist, and of its pick hole with the dynamic factor.
func mostOnHook(h *Hung, i int) float64 {
	p, most := h.Job.Practice, h.HoistMost(i)/calc.G
	if r := h.Bar.PickRating; r > 0 {
		most = math.Min(most, h.Picks[i].Below.Mass+r*p.GearUse/p.DynamicFactor/calc.G)
	}
	return most
}

// room is how many times as heavy all of a state may be before its bar or a pin carries
// more than it may, at rest and with the dynamic factor: the least over its reach and over
// all places of unknown centres of gravity, infinite where nothing is rated. Where each
// hoist has to hold the stack alone it leaves that too.
func room(h *Hung, of func(*Hung) *State) float64 {
	p, room := h.Job.Practice, math.Inf(1)
	if r := h.Bar.Rating; r > 0 {
		room = r * p.GearUse / (of(h).InBar.Mass * calc.G * p.DynamicFactor)
	}
	for _, v := range h.Ways() {
		for _, at := range of(v).Reach {
			room = math.Min(room, pinsRoom(v, at.Joints))
		}
		if p.OneMustHold {
			room = math.Min(room, aloneRoom(v, of(v)))
		}
	}
	return room
}

// aloneRoom is the room of a state where each of two hoists has to hold it alone, with
// its pick hole and all pins.
func aloneRoom(h *Hung, s *State) float64 {
	p, room := h.Job.Practice, math.Inf(1)
	for i, swung := range s.Alone {
		room = math.Min(room, math.Min(pinsRoom(h, swung.Joints), h.HoistMost(i)/calc.G/(s.InBar.Mass+h.Picks[i].Below.Mass)))
		if r := h.Bar.PickRating; r > 0 {
			room = math.Min(room, r*p.GearUse/(s.InBar.Mass*calc.G*p.DynamicFactor))
		}
	}
	return room
}

// pinsRoom is the room that the pins of some joints leave, from the top.
func pinsRoom(h *Hung, joints []calc.Joint) float64 {
	room := math.Inf(1)
	for k, j := range joints {
		room = math.Min(room, pinRoom(h, k, j))
	}
	return room
}

// pinRoom is how many times as much joint k, counted from 0, may carry before a pin of
// it carries more than it may, as in room.
func pinRoom(h *Hung, k int, j calc.Joint) float64 {
	p, c, r := h.Job.Practice, &h.Cabinets[k], h.Ratings(k)
	if r == nil {
		return math.Inf(1)
	}
	hinge := r.Hinge / calc.PinForce(j.Hinge(), c.HingePins, p.SideShare)
	link := r.Link / calc.PinForce(j.Link, c.LinkPins, p.SideShare) // infinite for a link that carries nothing
	return math.Min(hinge, link) * p.GearUse / p.DynamicFactor
}

// tippedBy returns what hook i of two holds in a state with the bar tipped by an
// angle, front down.
func tippedBy(h *Hung, s *State, off float64, i int) (kg float64, err error) {
	front, rear, err := shared(h, s.InBar, s.Tilt+off)
	return [2]float64{front, rear}[i] + h.Picks[i].Below.Mass, err
}

// Moved returns by how much the rear hook of two holds more in a state when the
// bar is tipped by a degree, front down, in kg; what it gains the front one loses.
func (h *Hung) Moved(s *State) float64 {
	kg, err := tippedBy(h, s, calc.Radians(1), 1)
	if err != nil {
		return 0
	}
	return kg - h.Hook(s, 1)
}
