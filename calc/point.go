package calc

import "math"

// Hoist is a chain hoist with its chain.
type Hoist struct {
	Mass        float64 // kg, without chain
	ChainMass   float64 // kg/m
	ChainLength float64 // m, all of it
	Falls       int
	Headroom    float64 // m, hook to hook, run right up
}

// Static returns the mass, in kg, that a point carries at rest: what the pick
// carries, the rigging below the hoist, the hoist with the whole of its chain,
// and the rigging above it.
//
// Free body: everything between the roof and the bar, in one plumb line.
func Static(pick, below float64, h Hoist, above float64) float64 {
	return pick + below + h.Mass + h.ChainMass*h.ChainLength + above
}

// Alone returns the mass, in kg, that a point carries when the other hoist of
// its stack is slack, with the mass tolerance, a fraction of one, in all of it.
// stack is the mass of all that hangs from the hooks, in kg.
//
// Free body: as for Static, with the whole stack below the one hook.
//
// Source: DGUV Vorschrift 54, section 26(3): no hoist overloaded at the least
// favourable sharing.
func Alone(stack, below float64, h Hoist, above, tolerance float64) float64 {
	return Static(stack, below, h, above) * (1 + tolerance)
}

// Governing returns the largest design load of a point, in kg: most is the most that
// its pick carries, masses at their worse sides already in it, the rest takes the mass
// tolerance, a fraction of one; the dynamic factor is on all of it.
//
//	(most + (below + hoist + chain + above) (1 + tolerance)) dynamic
//
// Free body: as for Static.
//
// Source: common practice.
func Governing(most, below float64, h Hoist, above, tolerance, dynamic float64) float64 {
	return (most + Static(0, below, h, above)*(1+tolerance)) * dynamic
}

// Design returns a static load (in any unit) with the mass tolerance, a
// fraction of one, and the dynamic factor in it.
func Design(static, tolerance, dynamic float64) float64 {
	return static * (1 + tolerance) * dynamic
}

// LowestHook returns how low a hoist's hook comes, in metres, when its high
// hook is at high and reserve metres of its chain are never used.
func LowestHook(high float64, h Hoist, reserve float64) float64 {
	return high - h.Headroom - (h.ChainLength-reserve)/float64(h.Falls)
}

// ChainNeeded returns how much chain, in metres, a hoist needs so that its hook
// comes down from a high hook to the lowest place it has to come to, both
// heights in metres, with reserve metres of the chain never used. It is the
// ChainLength with which LowestHook returns lowest; and the reserve alone where
// the hoist run right up already hangs as low as that.
func ChainNeeded(high, lowest float64, h Hoist, reserve float64) float64 {
	return math.Max(high-h.Headroom-lowest, 0)*float64(h.Falls) + reserve
}

// Tape returns how far two places are from each other along the floor, in
// metres, where one lies left and down metres from the other in plan.
//
// Source: Pythagoras.
func Tape(left, down float64) float64 { return math.Hypot(left, down) }

// Plan returns the plan position of what lies at x in a stack whose bar hinge
// is at the given place and whose forward direction is turned by pan radians
// from straight downstage towards stage left. All in metres.
func Plan(stageLeft, downstage, pan, x float64) (left, down float64) {
	sin, cos := math.Sincos(pan)
	return stageLeft + x*sin, downstage + x*cos
}
