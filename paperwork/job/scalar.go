package job

import (
	"fmt"
	"math"
	"strings"
	"unicode/utf8"

	"gopkg.in/yaml.v3"
)

// wordMost is the most characters of a value that is not free text.
const wordMost = 60

const quotedStyles = yaml.DoubleQuotedStyle | yaml.SingleQuotedStyle | yaml.LiteralStyle | yaml.FoldedStyle

// readScalar reads one value as the kind that the table says.
func (r *reader) readScalar(v *value, n *yaml.Node) {
	row := r.rows[v.generic]
	v.quoted = n.Style&quotedStyles != 0
	r.scalar(v, row, n.Value)
	if !v.bad {
		r.given = append(r.given, v.key+"="+v.fingerprint(row))
	}
}

// fingerprint writes a value so that equal ones written otherwise are alike: of what
// lies half way between two of nine digits, as 1023 kg do in newtons, the last bit
// must not decide, which twelve digits leave out. A bare hole of a joint is a text,
// for it prints as it is written.
func (v *value) fingerprint(row *Key) string {
	if row.Kind.numeric() && !strings.HasSuffix(row.Path, "splay_holes[]") {
		return fmt.Sprintf("%.9g", float(fmt.Sprintf("%.12g", v.num)))
	}
	return v.text
}

// scalar reads s into v, or complains of it.
func (r *reader) scalar(v *value, row *Key, s string) {
	var wrong string
	v.text = s
	switch n := utf8.RuneCountInString(s); {
	case row.Kind == Text || row.Kind == URL:
		wrong = r.textWrong(s, int(row.Max))
	case n > wordMost:
		wrong = fmt.Sprintf("%d characters are too many; write at most %d (%s)", n, wordMost, row.Meaning)
	}
	switch {
	case wrong != "":
	case row.Kind.numeric():
		v.num, wrong = magnitude(row, s)
	default:
		wrong = wordingWrong(row, s)
	}
	if wrong != "" {
		r.at(v, "%s", wrong)
	}
}

// magnitude reads a number or a quantity and holds it against its range.
func magnitude(row *Key, s string) (x float64, wrong string) {
	if wrong := hardBlank(s); wrong != "" {
		return 0, wrong
	}
	switch row.Kind {
	case Number, Count, Degrees:
		x, wrong = numeral(row, s)
	case Aim:
		x, wrong = towards(s, aimWays)
	case Pan:
		x, wrong = towards(s, panWays)
	default:
		x, wrong = measure(row, s)
	}
	if wrong == "" {
		wrong = rangeWrong(row, x, s)
	}
	if wrong != "" {
		return 0, wrong
	}
	return x + 0, "" // + 0 takes the sign off a nought
}

// numeral reads a plain number.
func numeral(row *Key, s string) (float64, string) {
	switch {
	case !number.MatchString(s) && row.Kind == Degrees:
		return 0, notPlain(s, "write a splay as bare degrees, like 0.5")
	case !number.MatchString(s) && row.Kind == Count:
		return 0, notPlain(s, "write it like 2")
	case !number.MatchString(s):
		return 0, notPlain(s, "write it like 1.25")
	case row.Kind == Count && strings.Contains(s, "."):
		return 0, s + " is not a whole number; write one without a point"
	}
	return float(s), ""
}

// rangeWrong holds a value against the range of its key. The dust of turning
// units is not held against it.
func rangeWrong(row *Key, x float64, s string) string {
	dust := 1e-12 * math.Max(1, math.Abs(x))
	switch {
	case math.IsInf(x, 0), x > row.Max+dust, x < row.Min-dust, row.Above && x <= row.Min:
		name := last(strings.TrimSuffix(strings.TrimSuffix(row.Path, "[]"), ".*"))
		return fmt.Sprintf("%s is out of range; %s is %s", s, name, row.Range())
	}
	return ""
}

// Range says the range of a key in its likely units: '5 mm to 5 m'.
func (k *Key) Range() string {
	switch {
	case k.Kind == Aim:
		return "within " + k.say(k.Max) + " of level"
	case k.Kind == Pan:
		return "within " + k.say(k.Max) + " either way"
	case k.Above:
		return "above " + k.say(k.Min) + ", at most " + k.say(k.Max)
	}
	return k.say(k.Min) + " to " + k.say(k.Max)
}

// rounded writes a number plainly, without the dust of turning units.
func rounded(x float64) string { return degreesText(math.Round(x*1e6) / 1e6) }

// say writes an SI value of a key in the unit that suits its size.
func (k *Key) say(x float64) string {
	unit := k.Hint[0]
	switch {
	case k.Kind == Load:
		unit = "kN"
	case k.Kind == Aim, k.Kind == Pan:
		unit = "deg"
	case unit == "mm" && math.Abs(x) >= 1:
		unit = "m"
	}
	per := 1.0
	for _, u := range units {
		if u.name == unit {
			per = u.factor
		}
	}
	n := rounded(x / per)
	if x == 0 || unit == "" {
		return n
	}
	return n + " " + unit
}
