// Package good is a sample whose test sees every fault.
package good

// Area returns the area of a plate of a by b with a hole of h, nought if none is
// left.
func Area(a, b, h float64) float64 {
	left := a*b - h
	if left > 0 {
		return left
	}
	return 0
}
