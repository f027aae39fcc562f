package paperwork

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
	poundKg    = 0.45359237
	inchM      = 0.0254
	poundForce = poundKg * calc.G
)

// dust is taken off a figure before it is rounded up, so that 300 kg worked
// out as 300.0000000001 kg does not print as 301 kg. It is in the unit that is
// printed.
const dust = 1e-6

// units turns quantities into the words of the paper. Each quantity has one
// formatter, which decides its digits, its rounding and its unit.
type units struct{ imperial bool }

// load writes a mass that something carries, rounded up to whole kg or lb.
func (u units) load(kg float64) string {
	if u.imperial {
		return whole(up(kg/poundKg)) + " lb"
	}
	return whole(up(kg)) + " kg"
}

// also writes the same load small beside it: as a force in kN, or beside pounds
// in kg; rounded up like it.
func (u units) also(kg float64) string {
	if u.imperial {
		return units{}.load(kg)
	}
	if s := u.force(kg * calc.G); kg < 0 && s != u.force(0) {
		return "-" + s
	}
	return u.force(kg * calc.G)
}

// both writes a load and the same in the other unit: '738 kg (7.23 kN)'.
func (u units) both(kg float64) string { return u.load(kg) + " (" + u.also(kg) + ")" }

// venue writes a load as the venue's table prints it, with kg beside pounds.
func (u units) venue(kg float64) string {
	if u.imperial {
		return u.load(kg) + ", " + u.also(kg)
	}
	return u.load(kg)
}

// reading writes what a load cell shows, to the nearest kg or lb.
func (u units) reading(kg float64) string {
	if u.imperial {
		return whole(math.Round(kg/poundKg)) + " lb"
	}
	return whole(math.Round(kg)) + " kg"
}

// limit writes a rating or capacity, given in newtons, as a mass, rounded down
// to a tenth.
func (u units) limit(n float64) string {
	if u.imperial {
		return tenths(n/poundForce) + " lb"
	}
	return tenths(n/calc.G) + " kg"
}

// force writes the size of a force given in newtons, rounded up to 0.01 kN or
// to whole lbf.
func (u units) force(n float64) string {
	n = math.Abs(n)
	if u.imperial {
		return whole(up(n/poundForce)) + " lbf"
	}
	return plain(strconv.FormatFloat(math.Ceil(n/10-dust)/100, 'f', 2, 64)) + " kN"
}

// forceLimit writes the rating of a pin, given in newtons, rounded down.
func (u units) forceLimit(n float64) string {
	if u.imperial {
		return tenths(n/poundForce) + " lbf"
	}
	return strconv.FormatFloat(math.Floor(n/10+dust)/100, 'f', 2, 64) + " kN"
}

// length writes a height or a length to 1 cm or to half an inch.
func (u units) length(m float64) string {
	if u.imperial {
		return feet(m, 2)
	}
	return plain(fixed(m, 2)) + " m"
}

// fine writes a length on the bar: to 1 mm or to a sixteenth of an inch.
func (u units) fine(m float64) string {
	if u.imperial {
		return feet(m, 16)
	}
	return whole(math.Round(m*1000)) + " mm"
}

// tape writes a distance along the floor: to 1 mm or to a sixteenth of an inch.
func (u units) tape(m float64) string {
	if u.imperial {
		return feet(m, 16)
	}
	return plain(fixed(m, 3)) + " m"
}

// tapeRounding is how far a tape check of two points may be off because their
// offsets are rounded, to the next 5 mm or quarter inch: two offsets, each of
// two points, are rounded by up to half of 1 cm or of 1/2 in, which makes √2
// times the whole.
func (u units) tapeRounding() string {
	if u.imperial {
		return "3/4 in"
	}
	return "15 mm"
}

// apart returns the writer of lengths that has the fewest digits and tells two
// of them apart, so that a sentence never says that 14.00 m is more than 14.00 m.
func (u units) apart(a, b float64) func(float64) string {
	for _, write := range []func(float64) string{u.length, u.fine} {
		if write(a) != write(b) {
			return write
		}
	}
	return func(m float64) string { return trimmed(m) + " m" }
}

// percent writes a use, given as a fraction of one, rounded up.
func percent(use float64) string { return whole(math.Ceil(use*100-dust)) + " %" }

// share writes a fraction of one that the job gives, as it stands there.
func share(x float64) string { return trimmed(x*100) + " %" }

// aim writes which way a cabinet looks: '2.5° down', '0.4° up' or 'level'.
func aim(rad float64) string {
	deg := degrees(rad)
	switch s := fixed(math.Abs(deg), 1); {
	case s == "0.0":
		return "level"
	case deg > 0:
		return s + "° down"
	default:
		return s + "° up"
	}
}

// aimPast writes an aim that is past a limit, both in rad, with as many digits
// as it takes to see that.
func aimPast(rad, limit float64) string {
	deg := math.Abs(degrees(rad))
	switch {
	case fixed(deg, 1) != fixed(degrees(limit), 1):
		return aim(rad)
	case rad > 0:
		return trimmed(deg) + "° down"
	}
	return trimmed(deg) + "° up"
}

// angle writes the size of an angle, as a difference of two aims is.
func angle(rad float64) string { return fixed(math.Abs(degrees(rad)), 1) + "°" }

// splay writes an angle in degrees with no more digits than it needs.
func splay(deg float64) string { return trimmed(deg) }

// across writes a plan position left or right of the datum.
func (u units) across(m float64) string {
	return u.offset(m, "stage left", "stage right", u.length(0)+" across")
}

// upDown writes a plan position up or down stage of the datum.
func (u units) upDown(m float64) string {
	return u.offset(m, "downstage", "upstage", u.length(0)+" up or down")
}

func (u units) offset(m float64, positive, negative, none string) string {
	size := u.length(math.Abs(m))
	switch {
	case size == u.length(0):
		return none
	case m > 0:
		return positive + " " + size
	default:
		return negative + " " + size
	}
}

func up(x float64) float64 { return math.Ceil(x - dust) }

func whole(x float64) string { return plain(strconv.FormatFloat(x, 'f', 0, 64)) }

func fixed(x float64, decimals int) string { return strconv.FormatFloat(x, 'f', decimals, 64) }

// trimmed writes x to at most six decimals, without needless noughts.
func trimmed(x float64) string {
	s := strings.TrimRight(strconv.FormatFloat(x, 'f', 6, 64), "0")
	return plain(strings.TrimSuffix(s, "."))
}

// round rounds to a number of decimals.
func round(x float64, decimals int) float64 {
	k := math.Pow10(decimals)
	return math.Round(x*k) / k
}

// tenths rounds down to a tenth.
func tenths(x float64) string { return trimmed(math.Floor(x*10+dust) / 10) }

// plain takes the sign off a nought.
func plain(s string) string {
	if strings.HasPrefix(s, "-") && strings.Trim(s, "-0.") == "" {
		return s[1:]
	}
	return s
}

func degrees(rad float64) float64 { return rad * 180 / math.Pi }

func radians(deg float64) float64 { return deg * math.Pi / 180 }

// pace writes the speed of a hoist, given in metres a second, a minute.
func (u units) pace(mPerS float64) string {
	if u.imperial {
		return trimmed(round(mPerS*60/(12*inchM), 2)) + " ft/min"
	}
	return trimmed(round(mPerS*60, 2)) + " m/min"
}
