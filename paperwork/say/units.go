// Package say turns numbers and units into text: each quantity has one formatter,
// which decides its digits, its rounding and its unit.
package say

import (
	"math"
	"strconv"
	"strings"

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

// dust is taken off a figure before it is rounded up, so that 300 kg worked
// out as 300.0000000001 kg does not print as 301 kg. It is in the unit that is
// printed.
const dust = 1e-6

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

// Limit writes a rating or capacity, given in newtons, as a mass, rounded down
// to a tenth.
func (u Units) Limit(n float64) string {
	if u.Imperial {
		return tenths(n/poundForce) + " lb"
	}
	return tenths(n/calc.G) + " kg"
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

// Length writes a height or a length to 1 cm or to half an inch.
func (u Units) Length(m float64) string {
	if u.Imperial {
		return feet(m, 2)
	}
	return plain(Fixed(m, 2)) + " m"
}

// Fine writes a length on the bar: to 1 mm or to a sixteenth of an inch.
func (u Units) Fine(m float64) string {
	if u.Imperial {
		return feet(m, 16)
	}
	return whole(math.Round(m*1000)) + " mm"
}

// Tape writes a distance along the floor: to 1 mm or to a sixteenth of an inch.
func (u Units) Tape(m float64) string {
	if u.Imperial {
		return feet(m, 16)
	}
	return plain(Fixed(m, 3)) + " m"
}

// TapeRounding is how far a tape check of two points may be off because their
// offsets are rounded, to the next 5 mm or quarter inch: two offsets, each of
// two points, are rounded by up to half of 1 cm or of 1/2 in, which makes √2
// times the whole.
func (u Units) TapeRounding() string {
	if u.Imperial {
		return "3/4 in"
	}
	return "15 mm"
}

// Apart returns the writer of lengths that has the fewest digits and tells two
// of them apart, so that a sentence never says that 14.00 m is more than 14.00 m.
func (u Units) Apart(a, b float64) func(float64) string {
	for _, write := range []func(float64) string{u.Length, u.Fine} {
		if write(a) != write(b) {
			return write
		}
	}
	return func(m float64) string { return Trimmed(m) + " m" }
}

// Percent writes a use, given as a fraction of one, rounded up.
func Percent(use float64) string { return whole(math.Ceil(use*100-dust)) + " %" }

// Share writes a fraction of one that the job gives, as it stands there.
func Share(x float64) string { return Trimmed(x*100) + " %" }

// Aim writes which way a cabinet looks: '2.5° down', '0.4° up' or 'level'.
func Aim(rad float64) string {
	deg := Degrees(rad)
	switch s := Fixed(math.Abs(deg), 1); {
	case s == "0.0":
		return "level"
	case deg > 0:
		return s + "° down"
	default:
		return s + "° up"
	}
}

// AimPast writes an aim that is past a limit, both in rad, with as many digits
// as it takes to see that.
func AimPast(rad, limit float64) string {
	deg := math.Abs(Degrees(rad))
	switch {
	case Fixed(deg, 1) != Fixed(Degrees(limit), 1):
		return Aim(rad)
	case rad > 0:
		return Trimmed(deg) + "° down"
	}
	return Trimmed(deg) + "° up"
}

// Angle writes the size of an angle, as a difference of two aims is.
func Angle(rad float64) string { return Fixed(math.Abs(Degrees(rad)), 1) + "°" }

// Splay writes an angle in degrees with no more digits than it needs.
func Splay(deg float64) string { return Trimmed(deg) }

// Across writes a plan position left or right of the datum.
func (u Units) Across(m float64) string {
	return u.offset(m, "stage left", "stage right", u.Length(0)+" across")
}

// UpDown writes a plan position up or down stage of the datum.
func (u Units) UpDown(m float64) string {
	return u.offset(m, "downstage", "upstage", u.Length(0)+" up or down")
}

func (u Units) offset(m float64, positive, negative, none string) string {
	size := u.Length(math.Abs(m))
	switch {
	case size == u.Length(0):
		return none
	case m > 0:
		return positive + " " + size
	default:
		return negative + " " + size
	}
}

func up(x float64) float64 { return math.Ceil(x - dust) }

func whole(x float64) string { return plain(strconv.FormatFloat(x, 'f', 0, 64)) }

func Fixed(x float64, decimals int) string { return strconv.FormatFloat(x, 'f', decimals, 64) }

// Trimmed writes x to at most six decimals, without needless noughts.
func Trimmed(x float64) string {
	s := strings.TrimRight(strconv.FormatFloat(x, 'f', 6, 64), "0")
	return plain(strings.TrimSuffix(s, "."))
}

// round rounds to a number of decimals.
func round(x float64, decimals int) float64 {
	k := math.Pow10(decimals)
	return math.Round(x*k) / k
}

// tenths rounds down to a tenth.
func tenths(x float64) string { return Trimmed(math.Floor(x*10+dust) / 10) }

// plain takes the sign off a nought.
func plain(s string) string {
	if strings.HasPrefix(s, "-") && strings.Trim(s, "-0.") == "" {
		return s[1:]
	}
	return s
}

func Degrees(rad float64) float64 { return rad * 180 / math.Pi }

func Radians(deg float64) float64 { return deg * math.Pi / 180 }

// Pace writes the speed of a hoist, given in metres a second, a minute.
func (u Units) Pace(mPerS float64) string {
	if u.Imperial {
		return Trimmed(round(mPerS*60/(12*inchM), 2)) + " ft/min"
	}
	return Trimmed(round(mPerS*60, 2)) + " m/min"
}

// Known writes a length, or that it is not given.
func (u Units) Known(m *float64) string {
	if m == nil {
		return NotGiven
	}
	return u.Length(*m)
}

// Difference writes by how much a load grew or fell.
func (u Units) Difference(from, to float64) string {
	switch d := to - from; {
	case u.Load(max(d, -d)) == u.Load(0):
		return "no change"
	case d > 0:
		return u.Load(d) + " more"
	default:
		return u.Load(-d) + " less"
	}
}

// Between writes a figure, or what it lies between where that is not known.
func Between(from, to float64, write func(float64) string) string {
	a, b := write(from), write(to)
	if a == b {
		return a
	}
	return "between " + strings.Replace(FromTo(a, b), " to ", " and ", 1)
}
