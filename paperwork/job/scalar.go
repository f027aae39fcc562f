package job

import (
	"fmt"
	"math"
	"net/url"
	"regexp"
	"strconv"
	"strings"
	"time"
	"unicode/utf8"

	"gopkg.in/yaml.v3"
)

// readScalar reads one value as the kind that the table says.
func (r *reader) readScalar(v *value, n *yaml.Node) {
	v.text = n.Value
	v.quoted = n.Style&(yaml.DoubleQuotedStyle|yaml.SingleQuotedStyle|yaml.LiteralStyle|yaml.FoldedStyle) != 0
	r.scalar(v, r.rows[v.generic], n.Value)
	if v.bad {
		return
	}
	r.given = append(r.given, v.key+"="+v.fingerprint(r.rows[v.generic].Kind))
}

// fingerprint writes a value so that equal ones written otherwise are alike.
func (v *value) fingerprint(k Kind) string {
	if k >= Aim || k == Number || k == Count || k == Degrees {
		return fmt.Sprintf("%.9g", v.num)
	}
	return v.text
}

// scalar reads s into v, or complains of it.
func (r *reader) scalar(v *value, row *Key, s string) {
	v.text = s
	var wrong string
	switch row.Kind {
	case Text, Name:
		wrong = r.textWrong(s, most(row))
	case Date:
		wrong = dateWrong(s)
	case Revision:
		wrong = patternWrong(s, revisions, "a revision", "1 to 6 of A-Z a-z 0-9 . -")
	case ID:
		wrong = patternWrong(s, ids, "an id", "1 to 6 of A-Z 0-9 and -")
	case Label:
		wrong = patternWrong(s, labels, "a label of a hole", "1 to 4 of A-Z 0-9 . - /")
	case URL:
		if wrong = r.textWrong(s, most(row)); wrong == "" {
			wrong = urlWrong(s)
		}
	case Word:
		wrong = wordWrong(s, row.Choices)
	case Switch:
		wrong = wordWrong(s, []string{"yes", "no"})
	default:
		v.num, wrong = magnitude(row, s)
	}
	if wrong != "" {
		r.at(v, "%s", wrong)
	}
}

// magnitude reads a number or a quantity and holds it against its range.
func magnitude(row *Key, s string) (x float64, wrong string) {
	switch row.Kind {
	case Number, Count, Degrees:
		x, wrong = numeral(row.Kind, s)
	case Aim:
		x, wrong = aimed(s)
	case Pan:
		x, wrong = panned(s)
	default:
		x, wrong = measure(row.Kind, s, row.Hint)
	}
	if wrong != "" {
		return 0, wrong
	}
	return x, rangeWrong(row, x, s)
}

// numeral reads a plain number.
func numeral(kind Kind, s string) (float64, string) {
	switch {
	case !number.MatchString(s) && strings.Contains(s, ","):
		return 0, fmt.Sprintf("%q is not a plain number; write it with a point, like 12.5", s)
	case !number.MatchString(s) && kind == Degrees:
		return 0, fmt.Sprintf("%q is not a plain number; write a splay as bare degrees, like 0.5", s)
	case !number.MatchString(s):
		return 0, fmt.Sprintf("%q is not a plain number; write it like 2 or 12.5", s)
	case kind == Count && strings.Contains(s, "."):
		return 0, fmt.Sprintf("%s is not whole; write a whole number", s)
	}
	x, _ := strconv.ParseFloat(s, 64)
	return x, ""
}

// rangeWrong holds a value against the range of its key, in whose likely units
// it then says the range.
func rangeWrong(row *Key, x float64, s string) string {
	dust := 1e-9 * math.Max(1, math.Abs(x))
	over := x > row.Max+dust || math.IsInf(x, 0)
	if x >= row.Min-dust && !over && !(row.Above && x <= row.Min+1e-12) {
		return ""
	}
	return fmt.Sprintf("%s is out of range; %s is %s", s, last(row.Path), rangeWords(row))
}

// rangeWords says the range of a key: '5 mm to 5000 mm'.
func rangeWords(row *Key) string {
	unit, per := row.Hint[0], 1.0
	for _, u := range units {
		if u.name == unit {
			per = u.factor
		}
	}
	if row.Kind == Aim || row.Kind == Pan {
		unit, per = "deg", degree
	}
	say := func(x float64) string {
		return strings.TrimSpace(strconv.FormatFloat(math.Round(x/per*1e6)/1e6, 'f', -1, 64) + " " + unit)
	}
	if row.Above {
		return "above " + say(row.Min) + ", at most " + say(row.Max)
	}
	return say(row.Min) + " to " + say(row.Max)
}

func most(row *Key) int {
	if row.Max == 0 {
		return textMost
	}
	return int(row.Max)
}

// textWrong holds a text against its length and the characters of the paper.
func (r *reader) textWrong(s string, most int) string {
	if strings.TrimSpace(s) == "" {
		return "the text is empty; write some or leave the key out"
	}
	if n := utf8.RuneCountInString(s); n > most {
		return fmt.Sprintf("%d characters are too many; at most %d fit the paper", n, most)
	}
	for _, c := range s {
		if c < ' ' || c == 0x7F || c >= 0x80 && c < 0xA0 {
			return fmt.Sprintf("the text has a control character (%U); write it as one line", c)
		}
		if !r.prints(c) {
			return fmt.Sprintf("the paper's font has no %q (%U); Latin, Greek and Cyrillic print", c, c)
		}
	}
	return ""
}

var (
	revisions = regexp.MustCompile(`^[A-Za-z0-9.-]{1,6}$`)
	ids       = regexp.MustCompile(`^[A-Z0-9-]{1,6}$`)
	labels    = regexp.MustCompile(`^[A-Z0-9./-]{1,4}$`)
)

func patternWrong(s string, re *regexp.Regexp, what, wanted string) string {
	if re.MatchString(s) {
		return ""
	}
	return fmt.Sprintf("%q cannot be %s; write %s", s, what, wanted)
}

func dateWrong(s string) string {
	if _, err := time.Parse("2006-01-02", s); err != nil {
		return fmt.Sprintf("%q is no day of the calendar; write it like 2027-06-12", s)
	}
	return ""
}

func wordWrong(s string, choices []string) string {
	for _, c := range choices {
		if s == c {
			return ""
		}
	}
	if meant := near(s, choices); meant != "" {
		return fmt.Sprintf("%q is not known here; did you mean %q?", s, meant)
	}
	return fmt.Sprintf("%q is not known here; write %s", s, strings.Join(choices, " or "))
}

// urlWrong checks an address, its placeholders taken as text.
func urlWrong(s string) string {
	for _, c := range s {
		if c <= ' ' || c > '~' {
			return fmt.Sprintf("an address has no %q; percent-encode it", c)
		}
	}
	u, err := url.Parse(strings.NewReplacer("{page}", "1", "{stack}", "A").Replace(s))
	if err != nil || u.Scheme != "http" && u.Scheme != "https" || u.Host == "" {
		return fmt.Sprintf("%q is no address; write one that starts with https:// or http://", s)
	}
	return ""
}
