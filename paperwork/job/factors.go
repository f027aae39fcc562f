package job

import "hangpack/calc"

// Design returns a static load with the tolerance of masses and the dynamic factor,
// in the unit that it is given in.
func (p Practice) Design(static float64) float64 {
	return calc.Design(static, p.MassTolerance, p.DynamicFactor)
}

// OnHook returns a load on a hook with the tolerance of masses, in newtons; the load
// is in kg and without it.
func (p Practice) OnHook(kg float64) float64 { return kg * (1 + p.MassTolerance) * calc.G }

// PinLoad returns the design load of one pin, in newtons, of a joint that carries
// force newtons on one pin or on two.
func (p Practice) PinLoad(force float64, pins int) float64 {
	return p.Design(calc.PinForce(force, pins, p.SideShare))
}

// PinUsed returns how much of what practice allows of its rating one pin is used, as a
// share of one. Force and rating are in newtons.
func (p Practice) PinUsed(force float64, pins int, rating float64) float64 {
	return p.PinLoad(force, pins) / (rating * p.GearUse)
}
