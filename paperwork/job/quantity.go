package job

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
)

// Units that a job may use, and the factors to SI, exact by definition.
// Source: NIST Special Publication 811 (2008), appendix B.8 and B.9;
// testdata/published/units.csv has them from GNU units 2.22.
const (
	gravity = 9.80665
	pound   = 0.45359237
	foot    = 0.3048
	inch    = 0.0254
	degree  = math.Pi / 180
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
	{"N", Force, 1}, {"kN", Force, 1000}, {"lbf", Force, pound * gravity},
	{"kg/m", MassPerLength, 1}, {"lb/ft", MassPerLength, pound / foot},
	{"deg", Angle, degree},
	{"%", Percent, 0.01},
	{"kg/m3", Density, 1},
	{"m/s", Speed, 1}, {"km/h", Speed, 1 / 3.6}, {"mph", Speed, 0.44704},
	{"m/min", Speed, 1.0 / 60}, {"ft/min", Speed, foot / 60},
	{"s", Time, 1}, {"min", Time, 60},
}

// plainDecimal is the only way to write a number in a job. YAML itself also
// takes 010 for eight, 1_000 for a thousand, .inf and .nan.
const plainDecimal = `(?:0|[1-9][0-9]*)(?:\.[0-9]+)?`

var (
	number = regexp.MustCompile(`^-?` + plainDecimal + `$`)

	// written is a number of any fashion, then what stands behind it.
	written = regexp.MustCompile(`^([+-]?(?:0[xXoObB][0-9A-Fa-f_]+|\.(?i:nan|inf)|[0-9.][0-9_.,]*(?:[eE][+-]?[0-9]+)?)) *(.*)$`)
)

// dashes look like a minus: hyphens, en and em dash, and the minus sign.
const dashes = "\u2010\u2011\u2012\u2013\u2014\u2212"

// measure reads a quantity and returns it in SI units, or what is wrong.
func measure(row *Key, s string) (float64, string) {
	if m, wrong, ok := inFeet(s); ok && row.Kind == Length {
		return m, wrong
	} else if ok {
		return 0, otherKind(s, Length, row)
	}
	p := written.FindStringSubmatch(s)
	switch {
	case strings.ContainsAny(s, dashes):
		return 0, fmt.Sprintf("%q has a long dash where a minus is wanted; type -", s)
	case p == nil:
		return 0, fmt.Sprintf("%q is not %s; write a plain number and its unit, like 12.5 %s", s, row.Kind, row.Hint[0])
	case !number.MatchString(p[1]):
		return 0, notPlain(p[1], strings.TrimSpace("write it like 12.5 "+row.Hint[0]))
	case p[2] == "":
		return 0, bareWrong(row, s)
	}
	per, wrong := factor(row, s, p[1], p[2])
	return float(p[1]) * per, wrong
}

func float(s string) float64 {
	x, _ := strconv.ParseFloat(s, 64) // out of range is infinite, and refused as that
	return x
}

// thousands is a number whose comma may be of thousands or a decimal one.
var thousands = regexp.MustCompile(`^-?[1-9][0-9]{0,2},[0-9]{3}$`)

// notPlain says that a number is not written as a plain decimal.
func notPlain(s, right string) string {
	if thousands.MatchString(s) {
		return fmt.Sprintf("%q has a comma; write %s if it is thousands, %s if it is a decimal", s, strings.ReplaceAll(s, ",", ""), strings.Replace(s, ",", ".", 1))
	}
	if strings.Contains(s, ",") {
		return fmt.Sprintf("%q has a comma; write a decimal with a point, like 12.5", s)
	}
	return fmt.Sprintf("%q is not a plain number; %s", s, right)
}

// bareWrong says what a number without a unit lacks: only nought needs none.
func bareWrong(row *Key, s string) string {
	switch {
	case float(s) == 0:
		return ""
	case row.Kind == Percent && math.Abs(float(s)) <= 1:
		return fmt.Sprintf("%s has no %%; write %s %% or %s %%", s, rounded(float(s)*100), s)
	case row.Kind == Percent:
		return fmt.Sprintf("%s has no %%; write %s %%", s, s)
	case row.Hint[1] == "":
		return fmt.Sprintf("%s has no unit; write %s %s", s, s, row.Hint[0])
	}
	return fmt.Sprintf("%s has no unit; write %s %s or %s %s", s, s, row.Hint[0], s, row.Hint[1])
}

// factor returns what a unit is in SI. A load may be given as a mass or as a
// force.
func factor(row *Key, s, x, name string) (float64, string) {
	if row.fits(Mass) && (strings.EqualFold(name, "ton") || strings.EqualFold(name, "tons")) {
		return 0, fmt.Sprintf("a ton is 1000 kg or 2000 lb; write %s t or %s lb", x, rounded(float(x)*2000))
	}
	for _, u := range units {
		switch {
		case u.name != name:
		case !row.fits(u.kind):
			return 0, otherKind(s, u.kind, row)
		case row.Kind == Load && u.kind == Mass:
			return u.factor * gravity, ""
		default:
			return u.factor, ""
		}
	}
	return 0, unitWrong(row, s, x, name)
}

// unitWrong says what is wrong with what stands behind a number x, which is no
// unit of its key.
func unitWrong(row *Key, s, x, name string) string {
	meant := unitMeant(row, name)
	switch {
	case row.Kind == Length && strings.ContainsAny(name, `'"′″’”`):
		return "marks for feet and inches are not read; write them like 14 ft 6 7/16 in"
	case strings.TrimSpace(name) != name, strings.Contains(s, "\t"):
		return fmt.Sprintf("%q has a tab or a blank where none belongs; write %s %s", s, x, strings.TrimSpace(name))
	case strings.ContainsAny(name, "0123456789/½¼¾⅛⅜⅝⅞") && row.Kind == Length:
		return fmt.Sprintf("%q is not one length; write it like 12.5 %s, 14 ft 6 in or 11 7/16 in", s, row.Hint[0])
	case strings.ContainsAny(name, "0123456789/") && !strings.ContainsAny(name, "m"):
		return fmt.Sprintf("%q is not one number with one unit; write it like 12.5 %s", s, row.Hint[0])
	case meant != "":
		return fmt.Sprintf("%q is no unit known here; did you mean %q?", name, meant)
	}
	return fmt.Sprintf("%q is no unit known here; %s is in %s", name, row.Kind, row.unitsKnown())
}

// spelt are units as people write them out, each a word that means one unit.
var spelt = map[string]string{
	"kgs": "kg", "kilo": "kg", "kilos": "kg", "kilogram": "kg", "kilograms": "kg", "tonne": "t", "tonnes": "t", "lbs": "lb", "pound": "lb", "pounds": "lb",
	"millimetre": "mm", "millimetres": "mm", "metre": "m", "metres": "m", "meter": "m", "meters": "m", "foot": "ft", "feet": "ft", "inch": "in", "inches": "in",
	"newton": "N", "newtons": "N", "°": "deg", "degree": "deg", "degrees": "deg", "degs": "deg", "percent": "%", "pct": "%",
}

// unitMeant returns the unit of a key that a word was meant to be: the same in
// other capitals, or written out; "" where it is neither.
func unitMeant(row *Key, name string) string {
	for _, u := range units {
		if row.fits(u.kind) && (strings.EqualFold(u.name, name) || u.name == spelt[strings.ToLower(name)]) {
			return u.name
		}
	}
	return ""
}

// fits reports whether a key takes units of a kind.
func (k *Key) fits(u Kind) bool {
	return u == k.Kind || k.Kind == Load && (u == Mass || u == Force)
}

func otherKind(s string, is Kind, row *Key) string {
	return fmt.Sprintf("%s is %s where %s is wanted; write it in %s", s, is, row.Kind, row.units())
}

// units names the likely units of a key: 'kg or lb'.
func (k *Key) units() string {
	if k.Hint[1] == "" {
		return k.Hint[0]
	}
	return k.Hint[0] + " or " + k.Hint[1]
}

// unitsKnown names all units that a key takes.
func (k *Key) unitsKnown() string {
	var names []string
	for _, u := range units {
		if k.fits(u.kind) {
			names = append(names, u.name)
		}
	}
	return orList(names)
}
