package bad

import "testing"

func TestArea(t *testing.T) {
	if Area(2, 3, 1) < 0 || Area(2, 3, 7) != 0 {
		t.Error("no area is below nought")
	}
}
