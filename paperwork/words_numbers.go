package paperwork

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

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

// count writes a number of things: '1 cabinet', '8 cabinets'.
func count(n int, one string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %ss", n, one)
}

// after writes s after a mark that parts it from what stands before, and nothing
// where s is nothing.
func after(mark, s string) string {
	if s == "" {
		return ""
	}
	return mark + s
}

// capital writes a sentence's first letter large.
func capital(s string) string { return strings.ToUpper(s[:1]) + s[1:] }

// ordinal writes a number in order: '1st', '22nd', '13th'.
func ordinal(n int) string {
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

// sameFigure reports whether a hole's label is the figure of its splay.
func sameFigure(label string, deg float64) bool {
	x, err := strconv.ParseFloat(label, 64)
	return err == nil && x == deg
}
