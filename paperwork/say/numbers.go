package say

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
)

// Turned write a turn: '2.7° front down'.
func Turned(rad float64) string {
	if rad > 0 {
		return Angle(rad) + " front down"
	}
	return Angle(rad) + " front up"
}

const NotGiven = "not given"

// Given writes a text of the job, or that it is not given.
func Given(s string) string {
	if s == "" {
		return NotGiven
	}
	return s
}

// FromTo writes what a figure may lie between, the unit once: '227 to 267 kg'.
func FromTo(a, b string) string {
	if i := strings.LastIndexByte(a, ' '); strings.Count(a, " ") == 1 && strings.HasSuffix(b, a[i:]) {
		a = a[:i]
	}
	return a + " to " + b
}

// Aims writes what an aim may lie between.
func Aims(from, to float64) string {
	a, b := Aim(from), Aim(to)
	if s := FromTo(a, b); s != a+" to "+b {
		return s
	}
	return "between " + a + " and " + b
}

// feet writes a length in feet and inches to the nearest 1/parts of an inch.
func feet(m float64, parts int) string {
	n := int(math.Round(math.Abs(m) / inchM * float64(parts)))
	sign := ""
	if m < 0 && n > 0 {
		sign = "-"
	}
	ft, rest := n/(12*parts), n%(12*parts)
	inches := inches(rest/parts, rest%parts, parts)
	if ft == 0 {
		return sign + inches + " in"
	}
	return fmt.Sprintf("%s%d ft %s in", sign, ft, inches)
}

func inches(in, num, den int) string {
	if num == 0 {
		return strconv.Itoa(in)
	}
	for num%2 == 0 {
		num, den = num/2, den/2
	}
	if in == 0 {
		return fmt.Sprintf("%d/%d", num, den)
	}
	return fmt.Sprintf("%d %d/%d", in, num, den)
}

// Count writes a number of things: '1 cabinet', '8 cabinets'.
func Count(n int, one string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %ss", n, one)
}

// After writes s after a mark that parts it from what stands before, and nothing
// where s is nothing.
func After(mark, s string) string {
	if s == "" {
		return ""
	}
	return mark + s
}

// Capital writes a sentence's first letter large.
func Capital(s string) string { return strings.ToUpper(s[:1]) + s[1:] }

// Ordinal writes a number in order: '1st', '22nd', '13th'.
func Ordinal(n int) string {
	suffix := "th"
	if n%100 < 11 || n%100 > 13 {
		switch n % 10 {
		case 1:
			suffix = "st"
		case 2:
			suffix = "nd"
		case 3:
			suffix = "rd"
		}
	}
	return strconv.Itoa(n) + suffix
}

// SameFigure reports whether a hole's label is the figure of its splay.
func SameFigure(label string, deg float64) bool {
	x, err := strconv.ParseFloat(label, 64)
	return err == nil && x == deg
}

// Before writes s with a mark after it that parts it from what follows, and "" if s is
// empty.
func Before(s, mark string) string {
	if s == "" {
		return ""
	}
	return s + mark
}

// Listed joins those words that are not empty: 'lift 2, joint 3'.
func Listed(words ...string) string {
	words = slices.DeleteFunc(words, func(w string) bool { return w == "" })
	return strings.Join(words, ", ")
}
