package paperwork

import (
	"math"
	"strings"

	"hangpack/calc"
	"hangpack/paperwork/job"
)

// The formatters of sums that a reader redoes by hand: to the nearest, with a
// digit more than the sheets that people act on. Metric sums are in mm, kg and
// kN, imperial ones in in, lb and lbf.

// part writes a mass that is added to others, to a tenth and without its unit.
func (u units) part(kg float64) string {
	if u.imperial {
		return plain(fixed(kg/poundKg, 1))
	}
	return plain(fixed(kg, 1))
}

// mass is the unit of masses.
func (u units) mass() string {
	if u.imperial {
		return "lb"
	}
	return "kg"
}

// tenth writes a mass to a tenth of its unit.
func (u units) tenth(kg float64) string { return u.part(kg) + " " + u.mass() }

// addend writes a mass that a sum begins with: to a tenth, without a needless
// nought.
func (u units) addend(kg float64) string {
	return strings.TrimSuffix(u.part(kg), ".0") + " " + u.mass()
}

// bare writes a length of gear, to 0.1 mm or 0.01 in, without its unit.
func (u units) bare(m float64) string {
	if u.imperial {
		return plain(fixed(m/inchM, 2))
	}
	return plain(fixed(m*1000, 1))
}

// small is the unit of lengths of gear.
func (u units) small() string {
	if u.imperial {
		return "in"
	}
	return "mm"
}

// dot writes a length of gear with its unit.
func (u units) dot(m float64) string { return u.bare(m) + " " + u.small() }

// turning writes a mass times a length, given in kg m, without its unit.
func (u units) turning(kgm float64) string {
	if u.imperial {
		return plain(fixed(kgm/poundKg/inchM, 1))
	}
	return plain(fixed(kgm, 3))
}

// moment is the unit of mass times length.
func (u units) moment() string {
	if u.imperial {
		return "lb·in"
	}
	return "kg·m"
}

// perMoment is how many small lengths there are in that of a moment.
func (u units) perMoment() string {
	if u.imperial {
		return "1"
	}
	return "1000"
}

// newtons writes a force given in newtons, with its sign.
func (u units) newtons(n float64) string {
	if u.imperial {
		return plain(fixed(n/poundForce, 1)) + " lbf"
	}
	return plain(fixed(n/1000, 4)) + " kN"
}

// turn writes an angle given in rad, positive down.
func (u units) turn(rad float64) string { return plain(fixed(degrees(rad), 3)) + "°" }

// span writes a length of chain.
func (u units) span(m float64) string {
	if u.imperial {
		return plain(fixed(m/(12*inchM), 2)) + " ft"
	}
	return plain(fixed(m, 2)) + " m"
}

// perLength writes what a chain weighs.
func (u units) perLength(kgPerM float64) string {
	if u.imperial {
		return trimmed(round(kgPerM/poundKg*12*inchM, 4)) + " lb/ft"
	}
	return trimmed(kgPerM) + " kg/m"
}

// places writes a place in a part's axes, in words.
func (u units) places(o job.Offset) string {
	words := []string{u.dot(o.Behind) + " behind", u.dot(o.Below) + " below"}
	if o.Behind < 0 {
		words[0] = u.dot(-o.Behind) + " ahead"
	}
	if o.Below < 0 {
		words[1] = u.dot(-o.Below) + " above"
	}
	return strings.Join(words, ", ")
}

// kilonewtons is a load as a force, in kN, unrounded.
func kilonewtons(kg float64) float64 { return kg * calc.G / 1000 }

// exactly writes a length so that two that differ read differently: with all its
// digits, in metres also on imperial paper where sixteenths of an inch do not do.
func (u units) exactly(m float64) string {
	if sixteenths := m / inchM * 16; u.imperial && math.Abs(sixteenths-math.Round(sixteenths)) < 1e-4 {
		return feet(m, 16)
	}
	return trimmed(m) + " m"
}

// weighed writes a mass with all its digits.
func (u units) weighed(kg float64) string {
	if u.imperial {
		return trimmed(kg/poundKg) + " lb"
	}
	return trimmed(kg) + " kg"
}
