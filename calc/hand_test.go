package calc

import (
	"fmt"
	"os"
	"regexp"
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"
)

// boldFigures reads the bold figures of the page that was worked by hand, in their
// order, and the worth of its last digit.
func boldFigures(t *testing.T) (figures, within []float64) {
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

// The stack that testdata/three-cabinets.md works out by hand. The largest
// difference is a part of half the last digit.
func workedByHand(t *testing.T) (int, float64) {
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
	want, within := boldFigures(t)
	require.Len(t, want, len(got))
	c := &tally{T: t, cases: len(want)}
	for i := range got {
		c.near(want[i], got[i], within[i]/2, 1, fmt.Sprintf("figure %d of the page", i+1))
	}
	return c.cases, c.worst
}
