package say

import (
	"strings"

	"hangpack/calc"
)

// The formatters of sums that a reader redoes by hand: to the nearest, with a
// digit more than the sheets that people act on. Metric sums are in mm, kg and
// kN, imperial ones in in, lb and lbf.

// BareMass writes a mass that is added to others, to a tenth and without its unit.
func (u Units) BareMass(kg float64) string {
	if u.Imperial {
		return plain(Fixed(kg/PoundKg, 1))
	}
	return plain(Fixed(kg, 1))
}

// MassUnit is the unit of masses.
func (u Units) MassUnit() string {
	if u.Imperial {
		return "lb"
	}
	return "kg"
}

// FineMass writes a mass to a tenth of its unit: '37.5 kg'.
func (u Units) FineMass(kg float64) string { return u.BareMass(kg) + " " + u.MassUnit() }

// Addend writes a mass that a sum begins with: to a tenth, without a needless
// nought.
func (u Units) Addend(kg float64) string {
	return strings.TrimSuffix(u.BareMass(kg), ".0") + " " + u.MassUnit()
}

// BareGearLength writes a length of gear, to 0.1 mm or 0.01 in, without its unit.
func (u Units) BareGearLength(m float64) string {
	if u.Imperial {
		return plain(Fixed(m/inchM, 2))
	}
	return plain(Fixed(m*1000, 1))
}

// SmallUnit is the unit of lengths of gear.
func (u Units) SmallUnit() string {
	if u.Imperial {
		return "in"
	}
	return "mm"
}

// GearLength writes a length of gear, given in m, with its unit.
func (u Units) GearLength(m float64) string { return u.BareGearLength(m) + " " + u.SmallUnit() }

// Place writes a place in a part's axes, in words: '120 mm behind, 15 mm above'.
func (u Units) Place(o calc.Offset) string {
	words := []string{u.GearLength(o.Behind) + " behind", u.GearLength(o.Below) + " below"}
	if o.Behind < 0 {
		words[0] = u.GearLength(-o.Behind) + " ahead"
	}
	if o.Below < 0 {
		words[1] = u.GearLength(-o.Below) + " above"
	}
	return strings.Join(words, ", ")
}

// BareMoment writes a mass times a length, given in kg m, without its unit.
func (u Units) BareMoment(kgm float64) string {
	if u.Imperial {
		return plain(Fixed(kgm/PoundKg/inchM, 1))
	}
	return plain(Fixed(kgm, 3))
}

// MomentUnit is the unit of mass times length.
func (u Units) MomentUnit() string {
	if u.Imperial {
		return "lb·in"
	}
	return "kg·m"
}

// PerMoment is how many small lengths there are in that of a moment.
func (u Units) PerMoment() string {
	if u.Imperial {
		return "1"
	}
	return "1000"
}

// Newtons writes a force given in newtons, with its sign.
func (u Units) Newtons(n float64) string {
	if u.Imperial {
		return plain(Fixed(n/poundForce, 1)) + " lbf"
	}
	return plain(Fixed(n/1000, 4)) + " kN"
}

// ChainLength writes a length of chain, given in m, to 1 cm or 0.01 ft.
func (u Units) ChainLength(m float64) string {
	if u.Imperial {
		return plain(Fixed(m/(12*inchM), 2)) + " ft"
	}
	return plain(Fixed(m, 2)) + " m"
}

// PerLength writes what a chain weighs, given in kg for each metre.
func (u Units) PerLength(kgPerM float64) string {
	if u.Imperial {
		return Trimmed(round(kgPerM/PoundKg*12*inchM, 4)) + " lb/ft"
	}
	return Trimmed(kgPerM) + " kg/m"
}
