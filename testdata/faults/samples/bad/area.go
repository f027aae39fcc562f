// Package bad is a sample whose test runs every line and sees little.
package bad

// Area returns the area of a plate of a by b with a hole of h, nought if none is
// left.
func Area(a, b, h float64) float64 {
	left := a*b - h
	if left > 0 {
		return left
	}
	return 0
}
