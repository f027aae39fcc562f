package say

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// Fixed writes x to a number of decimals, the nearest.
func Fixed(x float64, decimals int) string { return strconv.FormatFloat(x, 'f', decimals, 64) }

// Trimmed writes x to at most six decimals, without needless noughts.
func Trimmed(x float64) string {
	s := strings.TrimRight(strconv.FormatFloat(x, 'f', 6, 64), "0")
	return plain(strings.TrimSuffix(s, "."))
}

// Percent writes a use, given as a fraction of one, rounded up.
func Percent(use float64) string { return whole(math.Ceil(use*100-dust)) + " %" }

// Share writes a fraction of one that the job gives, as it stands there.
func Share(x float64) string { return Trimmed(x*100) + " %" }

// Count writes a number of things: '1 cabinet', '8 cabinets'.
func Count(n int, one string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %ss", n, one)
}

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

// SameFigure reports whether a hole's label is the figure of its splay, as people write
// figures: 1E1 is none.
func SameFigure(label string, deg float64) bool {
	if strings.Trim(label, "0123456789.") != "" {
		return false
	}
	x, err := strconv.ParseFloat(label, 64)
	return err == nil && x == deg
}

// FromTo writes what a figure may lie between, the unit once: '227 to 267 kg'.
func FromTo(a, b string) string {
	if i := strings.LastIndexByte(a, ' '); strings.Count(a, " ") == 1 && strings.HasSuffix(b, a[i:]) {
		a = a[:i]
	}
	return a + " to " + b
}

// Between writes a figure with write, or what it lies between where its ends read
// differently: 'between 12 and 15 kg'.
func Between(from, to float64, write func(float64) string) string {
	a, b := write(from), write(to)
	if a == b {
		return a
	}
	return "between " + strings.Replace(FromTo(a, b), " to ", " and ", 1)
}

// dust is taken off a figure before it is rounded up, so that 300 kg worked
// out as 300.0000000001 kg does not print as 301 kg. It is in the unit that is
// printed.
const dust = 1e-6

// up rounds up to a whole number.
func up(x float64) float64 { return math.Ceil(x - dust) }

// whole writes the whole number nearest to x.
func whole(x float64) string { return plain(strconv.FormatFloat(x, 'f', 0, 64)) }

// tenths writes x rounded down to a tenth.
func tenths(x float64) string { return Trimmed(math.Floor(x*10+dust) / 10) }

// round rounds to a number of decimals.
func round(x float64, decimals int) float64 {
	k := math.Pow10(decimals)
	return math.Round(x*k) / k
}

// plain takes the sign off a nought: '-0.0' is '0.0'.
func plain(s string) string {
	if strings.HasPrefix(s, "-") && strings.Trim(s, "-0.") == "" {
		return s[1:]
	}
	return s
}
