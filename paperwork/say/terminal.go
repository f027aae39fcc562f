package say

import (
	"fmt"
	"strings"
)

// Columns is how wide a report may be.
const Columns = 100

// Spaced joins parts with wide gaps, or where that is too wide with a line each.
func Spaced(parts ...string) string {
	for _, gap := range []string{"     ", "   "} {
		if s := strings.Join(parts, gap); len([]rune(s)) <= Columns {
			return s
		}
	}
	return strings.Join(parts, "\n    ")
}

// Folded breaks a sentence into lines of at most n characters: at blanks, and
// inside a word only where the word alone is longer.
func Folded(s string, n int) (lines []string) {
	line := ""
	for _, word := range strings.Fields(s) {
		for r := []rune(word); len(r) > n; r = []rune(word) {
			if line != "" {
				lines, line = append(lines, line), ""
			}
			lines, word = append(lines, string(r[:n])), string(r[n:])
		}
		if line != "" && len([]rune(line))+1+len([]rune(word)) > n {
			lines, line = append(lines, line), ""
		}
		line = strings.TrimSpace(line + " " + word)
	}
	return append(lines, line)
}

// Inset writes a sentence set in below a row.
func Inset(b *strings.Builder, says string) {
	fmt.Fprintln(b, "  "+strings.Join(Folded(says, Columns-4), "\n    "))
}
