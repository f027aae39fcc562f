package job

import (
	"fmt"
	"regexp"
)

// tape is a length as read off an imperial tape: feet with inches, or inches
// with a fraction. The groups are the sign, feet, inches, and their fraction;
// or a fraction alone.
var tape = regexp.MustCompile(`^(-?)(?:([0-9.]+) *ft *)?(?:([0-9.]+)(?: +([0-9]+)/([0-9]+))?|([0-9]+)/([0-9]+)) *in$`)

// inFeet reads a length of feet with inches or of inches with a fraction, in
// metres; a leading minus goes for the whole. ok is false where s is neither.
func inFeet(s string) (m float64, wrong string, ok bool) {
	p := tape.FindStringSubmatch(s)
	if p == nil {
		return 0, "", false
	}
	ft, in, num, den := p[2], p[3], p[4]+p[6], p[5]+p[7]
	if ft == "" && num == "" {
		return 0, "", false // plain inches
	}
	inches := float(in) + fraction(num, den)
	if wrong := tapeWrong(s, ft, in, num, den, inches); wrong != "" {
		return 0, wrong, true
	}
	m = float(ft)*foot + inches*inch
	if p[1] == "-" {
		m = -m
	}
	return m, "", true
}

func tapeWrong(s, ft, in, num, den string, inches float64) string {
	for _, part := range []string{ft, in, num, den} {
		if part != "" && !number.MatchString(part) {
			return notPlain(part, "write it like 14 ft 6 7/16 in")
		}
	}
	switch {
	case ft != "" && !isWhole(ft):
		return fmt.Sprintf("%q has a part of a foot before its inches; write whole feet, like 14 ft 6 in", s)
	case num != "" && (!isWhole("0"+in) || float(num) >= float(den)):
		return fmt.Sprintf("%q has no proper fraction of an inch; write it like 11 7/16 in", s)
	case ft != "" && inches >= 12:
		return fmt.Sprintf("%q has 12 inches or more after its feet; write inches below 12", s)
	}
	return ""
}

var wholeNumber = regexp.MustCompile(`^[0-9]+$`)

func isWhole(s string) bool { return wholeNumber.MatchString(s) }

func fraction(num, den string) float64 {
	if den == "" {
		return 0
	}
	return float(num) / float(den)
}
