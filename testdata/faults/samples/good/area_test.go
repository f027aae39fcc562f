package good

import "testing"

func TestArea(t *testing.T) {
	for _, tt := range [][4]float64{{2, 3, 1, 5}, {5, 7, 2.5, 32.5}, {2, 3, 6, 0}, {2, 3, 7, 0}, {1, 1, 0.5, 0.5}} {
		if got := Area(tt[0], tt[1], tt[2]); got != tt[3] {
			t.Errorf("%v: %v", tt, got)
		}
	}
}
