package job

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
)

// Units that a job may use, and the exact factors to SI. Source: NIST Special
// Publication 811 (2008), appendix B.8 (from memory; testdata/units.csv has
// them from GNU units 2.22): pound, foot, pound-force and standard gravity are
// exact by definition.
const (
	g     = 9.80665
	pound = 0.45359237
	foot  = 0.3048
	inch  = foot / 12
)

// A unit is a word after a number: what it measures and its factor to SI.
type unit struct {
	name   string
	kind   Kind
	factor float64
}

var units = []unit{
	{"mm", Length, 0.001}, {"cm", Length, 0.01}, {"m", Length, 1}, {"in", Length, inch}, {"ft", Length, foot},
	{"kg", Mass, 1}, {"t", Mass, 1000}, {"lb", Mass, pound},
	{"N", Force, 1}, {"kN", Force, 1000}, {"lbf", Force, pound * g},
	{"kg/m", MassPerLength, 1}, {"lb/ft", MassPerLength, pound / foot},
	{"deg", Angle, math.Pi / 180},
	{"%", Percent, 0.01},
	{"kg/m3", Density, 1},
	{"m/s", Speed, 1}, {"km/h", Speed, 1 / 3.6}, {"mph", Speed, 0.44704},
	{"s", Time, 1}, {"min", Time, 60},
}

// plainDecimal is the only way to write a number in a job. YAML itself also
// takes 010 for eight, 1_000 for a thousand, .inf and .nan.
const plainDecimal = `(?:0|[1-9][0-9]*)(?:\.[0-9]+)?`

var (
	number   = regexp.MustCompile(`^-?` + plainDecimal + `$`)
	quantity = regexp.MustCompile(`^(-?` + plainDecimal + `) *([A-Za-z%][A-Za-z0-9/%]*)$`)
	feet     = regexp.MustCompile(`^(-?)(?:(0|[1-9][0-9]*) *ft +)?(?:(0|[1-9][0-9]*)(?: +([1-9][0-9]*)/([1-9][0-9]*))?|([1-9][0-9]*)/([1-9][0-9]*)) *in$`)
	feetDec  = regexp.MustCompile(`^(-?)(0|[1-9][0-9]*) *ft +(` + plainDecimal + `) *in$`)
)

// measure reads a quantity of a kind and returns it in SI units, or what is
// wrong with it.
func measure(kind Kind, s string, hint [2]string) (float64, string) {
	if kind == Length {
		if m, ok := inFeet(s); ok {
			return m, ""
		}
	}
	if number.MatchString(s) {
		return bare(s, hint)
	}
	parts := quantity.FindStringSubmatch(s)
	if parts == nil {
		return 0, fmt.Sprintf("%q is not a quantity; write a plain number and its unit, like 12.5 %s", s, hint[0])
	}
	x, _ := strconv.ParseFloat(parts[1], 64)
	factor, wrong := factor(kind, parts[1], parts[2], hint)
	return x * factor, wrong
}

// bare takes a number without a unit: only nought needs none.
func bare(s string, hint [2]string) (float64, string) {
	if x, _ := strconv.ParseFloat(s, 64); x == 0 {
		return 0, ""
	}
	if hint[1] == "" {
		return 0, fmt.Sprintf("%s has no unit; write %s %s", s, s, hint[0])
	}
	return 0, fmt.Sprintf("%s has no unit; write %s %s or %s %s", s, s, hint[0], s, hint[1])
}

// factor returns what a unit of a kind is in SI. A load may be given as a mass
// or as a force.
func factor(kind Kind, x, name string, hint [2]string) (float64, string) {
	if strings.EqualFold(name, "ton") || strings.EqualFold(name, "tons") {
		return 0, fmt.Sprintf("a ton is two things; write %s t for 1000 kg each, or pounds (lb) for tons of 2000 lb", x)
	}
	for _, u := range units {
		switch {
		case u.name != name:
		case u.kind == kind:
			return u.factor, ""
		case kind == Load && u.kind == Mass:
			return u.factor * g, ""
		case kind == Load && u.kind == Force:
			return u.factor, ""
		default:
			return 0, fmt.Sprintf("%s %s is %s where %s is wanted; units here are %s", x, name, u.kind, kind, unitsOf(kind))
		}
	}
	return 0, fmt.Sprintf("%q is no unit known here; units are %s", name, unitsOf(kind))
}

func unitsOf(kind Kind) string {
	var names []string
	for _, u := range units {
		if u.kind == kind || kind == Load && (u.kind == Mass || u.kind == Force) {
			names = append(names, u.name)
		}
	}
	return strings.Join(names, ", ")
}

// inFeet reads feet with inches and fractions of an inch as one length.
func inFeet(s string) (float64, bool) {
	if p := feetDec.FindStringSubmatch(s); p != nil {
		return signed(p[1], whole(p[2]), whole(p[3]))
	}
	p := feet.FindStringSubmatch(s)
	if p == nil {
		return 0, false
	}
	in := whole(p[3]) + fraction(p[4], p[5]) + fraction(p[6], p[7])
	if p[2] == "" && p[4] == "" && p[6] == "" {
		return 0, false // plain inches
	}
	if p[2] == "" {
		return signed(p[1], 0, in)
	}
	return signed(p[1], whole(p[2]), in)
}

func signed(sign string, ft, in float64) (float64, bool) {
	if ft > 0 && in >= 12 {
		return 0, false
	}
	m := ft*foot + in*inch
	if sign == "-" {
		m = -m
	}
	return m, true
}

func whole(s string) float64 {
	x, _ := strconv.ParseFloat(s, 64)
	return x
}

func fraction(num, den string) float64 {
	if den == "" {
		return 0
	}
	return whole(num) / whole(den)
}

var (
	aims = regexp.MustCompile(`^(-?` + plainDecimal + `) *deg +(down|up)$`)
	pans = regexp.MustCompile(`^(-?` + plainDecimal + `) *deg +(stage_left|stage_right)$`)
)

// towards reads an angle that says which way it goes: positive for the first
// of the two ways.
func towards(re *regexp.Regexp, s, first string) (float64, bool) {
	if s == "0" {
		return 0, true
	}
	p := re.FindStringSubmatch(s)
	if p == nil {
		return 0, false
	}
	x := whole(p[1]) * math.Pi / 180
	if p[2] != first {
		x = -x
	}
	return x, true
}

// aimed reads an angle of aim: positive down.
func aimed(s string) (float64, string) {
	if s == "level" {
		return 0, ""
	}
	x, ok := towards(aims, s, "down")
	if !ok {
		return 0, fmt.Sprintf("%q is no aim; write it like 1.5 deg down, 2 deg up or level", s)
	}
	return x, ""
}

// panned reads the pan of a stack: positive towards stage left.
func panned(s string) (float64, string) {
	x, ok := towards(pans, s, "stage_left")
	if !ok {
		return 0, fmt.Sprintf("%q is no pan; write it like 6 deg stage_left or 6 deg stage_right", s)
	}
	return x, ""
}
