package say

import (
	"math"

	"hangpack/calc"
)

// Aim writes which way a cabinet looks, in rad and positive down: '2.5° down',
// '0.4° up' or 'level'.
func Aim(rad float64) string {
	deg := calc.Degrees(rad)
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
	deg := math.Abs(calc.Degrees(rad))
	switch {
	case Fixed(deg, 1) != Fixed(calc.Degrees(limit), 1):
		return Aim(rad)
	case rad > 0:
		return Trimmed(deg) + "° down"
	}
	return Trimmed(deg) + "° up"
}

// Aims writes what an aim may lie between, both ends in rad and positive down:
// '1.5° to 3.5° down', or 'between 0.5° up and 1.5° down' where they look different ways.
// Ends are rounded inwards, so that what is printed lets nothing else pass.
func Aims(from, to float64) string {
	first, last := math.Ceil(calc.Degrees(from)*10-dust)/10, math.Floor(calc.Degrees(to)*10+dust)/10
	if first <= last {
		from, to = calc.Radians(first), calc.Radians(last)
	}
	a, b := Aim(from), Aim(to)
	if s := FromTo(a, b); s != a+" to "+b {
		return s
	}
	return "between " + a + " and " + b
}

// Turned writes a turn, in rad and positive front down: '2.7° front down'.
func Turned(rad float64) string {
	if rad > 0 {
		return Angle(rad) + " front down"
	}
	return Angle(rad) + " front up"
}

// Angle writes the size of an angle in rad, as a difference of two aims is: '2.5°'.
func Angle(rad float64) string { return Fixed(math.Abs(calc.Degrees(rad)), 1) + "°" }

// FineAngle writes an angle of a sum, given in rad, to a thousandth of a degree and
// with its sign: positive down.
func FineAngle(rad float64) string { return plain(Fixed(calc.Degrees(rad), 3)) + "°" }

// Splay writes a splay, given in degrees, with no more digits than it needs and
// without its unit.
func Splay(deg float64) string { return Trimmed(deg) }

// Hole writes the hole of a joint in running words: its label as stamped and, where that
// is not the figure of its splay, the splay beside it: 'C (1.5°)'.
func Hole(label string, deg float64) string {
	if SameFigure(label, deg) {
		return label
	}
	return label + " (" + Splay(deg) + "°)"
}
