package job

import "hangpack/calc"

// Practice is what the shop checks by. Shares and tolerances are fractions of
// one: 5 % is 0.05.
type Practice struct {
	MassTolerance float64
	DynamicFactor float64
	HoistUse      float64
	GearUse       float64
	SideShare     float64
	LeastShare    float64
	AimTolerance  float64 // rad
	LiftTilt      float64 // rad
	Clearance     float64 // m
	LimitReserve  float64 // m
	ReadingFloor  float64 // kg
	OneMustHold   bool    // each of two hoists, and all below it, must hold the stack alone
	PinsSet       PinsSet // of stacks that do not say; "" when not given
}

// practice fills a Practice from the keys of its section, each of which knows
// its field.
func practice(section *value) (p Practice) {
	for _, row := range table {
		name := last(row.Path)
		switch field := row.fieldOf(&p).(type) {
		case *float64:
			*field = section.number(name)
		case *bool:
			*field = section.word(name) == "yes"
		case *PinsSet:
			*field = PinsSet(section.word(name))
		}
	}
	return p
}

// fieldOf returns the field that a key of practice fills, or nil if it has none.
func (k Key) fieldOf(p *Practice) any {
	if k.field == nil {
		return nil
	}
	return k.field(p)
}

// A PracticeValue is one key of practice and what a job gives for it, or its
// default.
type PracticeValue struct {
	Name  string  // of the key in its section: mass_tolerance
	Short string  // what people call it: tolerance on masses
	Kind  Kind    // Percent, Number, Angle, Length, Mass, Switch or Word
	Value float64 // in SI; of a Switch 1 for yes and 0 for no
	Word  string  // of a Word; "" when not given
}

// Values lists the whole practice in the order of the table of keys.
func (p Practice) Values() (all []PracticeValue) {
	for _, row := range table {
		v := PracticeValue{Name: last(row.Path), Short: row.Short, Kind: row.Kind}
		switch field := row.fieldOf(&p).(type) {
		case *float64:
			v.Value = *field
		case *bool:
			if *field {
				v.Value = 1
			}
		case *PinsSet:
			v.Word = string(*field)
		default:
			continue
		}
		all = append(all, v)
	}
	return all
}

// Design returns a static load with the tolerance of masses and the dynamic factor,
// in the unit that it is given in.
func (p Practice) Design(static float64) float64 {
	return calc.Design(static, p.MassTolerance, p.DynamicFactor)
}

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
