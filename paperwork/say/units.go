// Package say turns numbers and units into text: each quantity has one formatter,
// which decides its digits, its rounding and its unit.
package say

import (
	"math"
	"strconv"

	"hangpack/calc"
)

// Factors of the imperial units on paper. Source: NIST Special Publication
// 811 (2008), appendix B.8 (from memory): the pound, the foot and the
// pound-force are exact by definition.
const (
	PoundKg    = 0.45359237
	inchM      = 0.0254
	poundForce = PoundKg * calc.G
)

// Units turns quantities into the words of the paper. Each quantity has one
// formatter, which decides its digits, its rounding and its unit.
type Units struct{ Imperial bool }

// Load writes a mass that something carries, rounded up to whole kg or lb.
func (u Units) Load(kg float64) string {
	if u.Imperial {
		return whole(up(kg/PoundKg)) + " lb"
	}
	return whole(up(kg)) + " kg"
}

// Also writes the same load small beside it: as a force in kN, or beside pounds
// in kg; rounded up like it.
func (u Units) Also(kg float64) string {
	if u.Imperial {
		return Units{}.Load(kg)
	}
	if s := u.Force(kg * calc.G); kg < 0 && s != u.Force(0) {
		return "-" + s
	}
	return u.Force(kg * calc.G)
}

// Both writes a load and the same in the other unit: '738 kg (7.23 kN)'.
func (u Units) Both(kg float64) string { return u.Load(kg) + " (" + u.Also(kg) + ")" }

// Venue writes a load as the venue's table prints it, with kg beside pounds.
func (u Units) Venue(kg float64) string {
	if u.Imperial {
		return u.Load(kg) + ", " + u.Also(kg)
	}
	return u.Load(kg)
}

// Reading writes what a load cell shows, to the nearest kg or lb.
func (u Units) Reading(kg float64) string {
	if u.Imperial {
		return whole(math.Round(kg/PoundKg)) + " lb"
	}
	return whole(math.Round(kg)) + " kg"
}

// ReadingIn writes what a load cell shows as Reading does, but to the other side where
// rounding would take it out of its window.
func (u Units) ReadingIn(kg, low, high float64) string {
	unit := 1.0
	if u.Imperial {
		unit = PoundKg
	}
	switch n := math.Round(kg / unit); {
	case n > math.Floor(high/unit+dust):
		kg = math.Floor(kg/unit) * unit
	case n < up(low/unit):
		kg = math.Ceil(kg/unit) * unit
	}
	return u.Reading(kg)
}

// Window writes what a load cell may show: '171 to 215 kg'. Ends are rounded inwards, so
// that what is printed lets nothing else pass.
func (u Units) Window(low, high float64) string {
	unit, name := 1.0, " kg"
	if u.Imperial {
		unit, name = PoundKg, " lb"
	}
	for decimals := range 3 { // of a window that has no whole number in it so many more
		per := math.Pow10(decimals) / unit
		if first, last := up(low*per), math.Floor(high*per+dust); first <= last {
			digits := math.Pow10(decimals)
			return FromTo(plain(Fixed(first/digits, decimals))+name, plain(Fixed(last/digits, decimals))+name)
		}
	}
	return FromTo(u.Reading(low), u.Reading(high))
}

// Limit writes a rating or capacity, given in newtons, as a mass, rounded down
// to a tenth.
func (u Units) Limit(n float64) string {
	if u.Imperial {
		return tenths(n/poundForce) + " lb"
	}
	return tenths(n/calc.G) + " kg"
}

// Difference writes by how much a load grew or fell, both in kg, of the two as Load writes
// them: '12 kg more'.
func (u Units) Difference(from, to float64) string {
	unit, name := 1.0, " kg"
	if u.Imperial {
		unit, name = PoundKg, " lb"
	}
	switch d := up(to/unit) - up(from/unit); {
	case d == 0:
		return "no change"
	case d > 0:
		return whole(d) + name + " more"
	default:
		return whole(-d) + name + " less"
	}
}

// ExactMass writes a mass with all its digits, so that two that differ read
// differently.
func (u Units) ExactMass(kg float64) string {
	if u.Imperial {
		return Trimmed(kg/PoundKg) + " lb"
	}
	return Trimmed(kg) + " kg"
}

// Force writes the size of a force given in newtons, rounded up to 0.01 kN or
// to whole lbf.
func (u Units) Force(n float64) string {
	n = math.Abs(n)
	if u.Imperial {
		return whole(up(n/poundForce)) + " lbf"
	}
	return plain(strconv.FormatFloat(math.Ceil(n/10-dust)/100, 'f', 2, 64)) + " kN"
}

// ForceLimit writes the rating of a pin, given in newtons, rounded down.
func (u Units) ForceLimit(n float64) string {
	if u.Imperial {
		return tenths(n/poundForce) + " lbf"
	}
	return strconv.FormatFloat(math.Floor(n/10+dust)/100, 'f', 2, 64) + " kN"
}

// Kilonewtons is a load as a force, in kN, unrounded.
func Kilonewtons(kg float64) float64 { return kg * calc.G / 1000 }

// Pace writes the speed of a hoist, given in metres a second, a minute.
func (u Units) Pace(mPerS float64) string {
	if u.Imperial {
		return Trimmed(round(mPerS*60/(12*inchM), 2)) + " ft/min"
	}
	return Trimmed(round(mPerS*60, 2)) + " m/min"
}
