package calc

import (
	"os"
	"regexp"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// printed reads the bold figures of the page that was worked by hand, in their
// order, and the worth of its last digit.
func printed(t *testing.T) (figures, within []float64) {
	t.Helper()
	page, err := os.ReadFile("../testdata/three-cabinets.md")
	require.NoError(t, err)
	for _, bold := range regexp.MustCompile(`\*\*[^*]+\*\*`).FindAllString(string(page), -1) {
		for _, m := range regexp.MustCompile(`[0-9]+\.([0-9]+)`).FindAllStringSubmatch(bold, -1) {
			x, err := strconv.ParseFloat(m[0], 64)
			require.NoError(t, err)
			last := 1.0
			for range m[1] {
				last /= 10
			}
			figures, within = append(figures, x), append(within, last)
		}
	}
	return figures, within
}

// TestThreeCabinetsByHand holds calc to testdata/three-cabinets.md.
func TestThreeCabinetsByHand(t *testing.T) {
	s := Stack{Bar: Bar{Mass: 20, CentreOfGravity: Offset{0.2, -0.05}, LinkArm: 0.4}}
	for _, splay := range []float64{0, 2, 4} {
		s.Cabinets = append(s.Cabinets, Cabinet{Mass: 30, CentreOfGravity: Offset{0.2, 0.15}, Splay: splay * deg, HingePitch: 0.3, LinkArm: 0.4})
	}
	cg := s.CentreInBar()
	tilt, _ := Tilt(Offset{0.22, -0.1}, cg.At)
	front, rear, err := TwoPicks(cg.Mass, -cg.At.Behind, 0, -0.5)
	require.NoError(t, err)
	got := []float64{cg.At.Behind, cg.At.Below, tilt / deg, rear, front}
	joints := s.Joints(s.Poses(0))
	for k := 2; k >= 0; k-- {
		got = append(got, joints[k].Link, joints[k].HingePull, joints[k].HingeSide)
	}
	want, within := printed(t)
	require.Len(t, want, len(got))
	for i := range got {
		assert.InDelta(t, want[i], got[i], within[i]/2, "figure %d of the page", i+1)
	}
}
