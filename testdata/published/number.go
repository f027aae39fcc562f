package published

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// Number reads a number as a page writes it: sums of products and quotients,
// without brackets, of decimals, pi, and the sine, cosine and tangent of
// degrees, such as 16*pi*125 or 68+5/60+27/3600 or 40*cos60.
func Number(s string) (sum float64, err error) {
	for _, term := range strings.Split(s, "+") {
		x, err := product(term)
		if err != nil {
			return 0, fmt.Errorf("%q is not a number: %w", s, err)
		}
		sum += x
	}
	return sum, nil
}

func product(term string) (float64, error) {
	x := 1.0
	for i, top := range strings.Split(term, "*") {
		for j, part := range strings.Split(top, "/") {
			y, err := factor(strings.TrimSpace(part))
			switch {
			case err != nil:
				return 0, err
			case j > 0:
				x /= y
			case i == 0:
				x = y
			default:
				x *= y
			}
		}
	}
	return x, nil
}

func factor(s string) (float64, error) {
	if s == "pi" {
		return math.Pi, nil
	}
	for name, of := range map[string]func(float64) float64{"sin": math.Sin, "cos": math.Cos, "tan": math.Tan} {
		if degrees, ok := strings.CutPrefix(s, name); ok {
			x, err := strconv.ParseFloat(degrees, 64)
			return of(x * math.Pi / 180), err
		}
	}
	return strconv.ParseFloat(s, 64)
}
