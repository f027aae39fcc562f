package say

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestSpans(t *testing.T) {
	for s, want := range map[Span][3]string{
		{3, 3}: {"3", "3", "cabinet 3"},
		{3, 4}: {"3, 4", "3-4", "cabinets 3 to 4"},
		{3, 5}: {"3 to 5", "3-5", "cabinets 3 to 5"},
	} {
		assert.Equal(t, want, [3]string{s.String(), s.Dashed(), s.Cabinets()})
	}
}

// TestRuns: the letters of a word, cut where they change.
func TestRuns(t *testing.T) {
	const word = "-aabbba" // counted from 1
	assert.Equal(t, []Span{{1, 2}, {3, 5}, {6, 6}}, Runs(Span{1, 6}, func(n int) bool { return word[n] == word[n-1] }))
	assert.Equal(t, []Span{{2, 2}, {3, 4}}, Runs(Span{2, 4}, func(n int) bool { return word[n] == word[n-1] }), "the first is like none before it")
	assert.Empty(t, Runs(Span{1, 0}, func(int) bool { return true }))
}

// TestThose: of every choice among five, the list names those that were chosen.
func TestThose(t *testing.T) {
	for chosen := range 1 << 5 {
		so := func(n int) bool { return n > 0 && chosen>>(n-1)&1 == 1 }
		var want, got []int
		for n := 1; n <= 5; n++ {
			if so(n) {
				want = append(want, n)
			}
		}
		list := Those(5, so)
		for _, part := range strings.Split(list, ", ") {
			var from, to int
			switch n, _ := fmt.Sscanf(part, "%d to %d", &from, &to); n {
			case 1:
				to = from
			case 0:
				continue
			}
			for ; from <= to; from++ {
				got = append(got, from)
			}
		}
		assert.Equal(t, want, got, list)
	}
	assert.Equal(t, "1, 2, 4", Those(5, func(n int) bool { return n == 1 || n == 2 || n == 4 }))
	assert.Equal(t, "1 to 3, 5", Those(5, func(n int) bool { return n > 0 && n != 4 }))
}

func TestNamesOfJointsAndDollies(t *testing.T) {
	assert.Equal(t, []string{"joint 3", "joints 3, 4", "joints 3 to 5"}, []string{Joints("3"), Joints("3, 4"), Joints("3 to 5")})
	assert.Equal(t, []string{"A", "Z", "AA", "AN"}, []string{Dolly(0), Dolly(25), Dolly(26), Dolly(39)}, "a stack has at most 40 cabinets")
}
