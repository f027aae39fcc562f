package say

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestFolded: lines break at blanks; a word that is longer than a line breaks
// wherever the line ends.
func TestFolded(t *testing.T) {
	for _, tt := range []struct{ says, lines string }{
		{"a bb ccc", "a bb|ccc"},
		{"abcde fg", "abcde|fg"},
		{"abcd", "abcd"},
		{"a abcdefgh b", "a|abcde|fgh b"},
		{"äöüßé ab", "äöüßé|ab"},
		{"  a   b ", "a b"},
		{"", ""},
	} {
		assert.Equal(t, tt.lines, strings.Join(Folded(tt.says, 5), "|"), tt.says)
	}
}

// TestFoldedLosesNothing: whatever the width, no line is wider, and the letters are
// those of the sentence.
func TestFoldedLosesNothing(t *testing.T) {
	const says = "Kein Ähnliches: one-hundred-and-twenty-three W 4.5 kN, and ends"
	for n := 1; n < 70; n++ {
		lines := Folded(says, n)
		for _, line := range lines {
			assert.LessOrEqual(t, len([]rune(line)), n)
			assert.Equal(t, strings.TrimSpace(line), line)
		}
		assert.Equal(t, strings.ReplaceAll(says, " ", ""), strings.ReplaceAll(strings.Join(lines, ""), " ", ""))
	}
}

// TestSpaced: gaps of five blanks where 100 columns hold them, else of three, else a
// line each.
func TestSpaced(t *testing.T) {
	word := func(n int) string { return strings.Repeat("é", n) }
	assert.Equal(t, word(45)+"     "+word(50), Spaced(word(45), word(50)))
	assert.Equal(t, word(46)+"   "+word(50), Spaced(word(46), word(50)))
	assert.Equal(t, word(47)+"   "+word(50), Spaced(word(47), word(50)))
	assert.Equal(t, word(48)+"\n    "+word(50), Spaced(word(48), word(50)))
}

// TestInset: two blanks before the first line and four before the others, and no line
// wider than a report.
func TestInset(t *testing.T) {
	var b strings.Builder
	Inset(&b, strings.Repeat("x", 96)+" yy")
	assert.Equal(t, "  "+strings.Repeat("x", 96)+"\n    yy\n", b.String())
}
