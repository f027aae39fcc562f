package paper

import (
	"strings"
)

// Wrap breaks s into lines no wider than w: at blanks, never between a figure
// and its unit, and inside a word only where the word alone is too wide.
func (c *Canvas) Wrap(f Face, w float64, s string) (lines []string) {
	of, most := f.advances(), f.unitsIn(w)
	blank := c.advance(of, ' ')
	line, used := "", 0
	for _, word := range wordsOf(s) {
		units := c.units(of, word)
		if line != "" && used+blank+units > most {
			lines, line, used = append(lines, line), "", 0
		}
		if line != "" {
			word, units = line+" "+word, used+blank+units
		}
		if units > most {
			for n := c.fitting(f, w, word); n < len(word); n = c.fitting(f, w, word) {
				lines, word = append(lines, word[:n]), word[n:]
			}
			units = c.units(of, word)
		}
		line, used = word, units
	}
	if line != "" {
		lines = append(lines, line)
	}
	return lines
}

// wordsOf cuts a text at blanks, and leaves a figure together with its unit, the label of a
// hole with its degrees.
func wordsOf(s string) (words []string) {
	for _, word := range strings.Fields(s) {
		n := len(words)
		if n > 0 && (goesOn(words[n-1], word) || degreesBeside(word)) {
			words[n-1] += " " + word
			continue
		}
		if n > 0 && isUnit(strings.TrimRight(word, ".,;:)")) && strings.ContainsAny(words[n-1][len(words[n-1])-1:], digits) {
			words[n-1] += " " + word
			continue
		}
		words = append(words, word)
	}
	return words
}

const digits = "0123456789"

// degreesBeside reports whether a word is the degrees of the hole before it: '(1.5°)'.
func degreesBeside(word string) bool {
	return word[0] == '(' && strings.HasSuffix(strings.TrimRight(word, ".,;:"), "°)")
}

// goesOn reports whether a word goes on with the length that the one before it
// begins: inches after feet, a fraction after whole inches.
func goesOn(before, word string) bool {
	if word[0] < '0' || word[0] > '9' {
		return false
	}
	wholeInches := strings.Contains(before, " ft ") || strings.Trim(before, digits) == ""
	return strings.HasSuffix(before, " ft") || strings.Contains(word, "/") && wholeInches
}

// isUnit reports whether a word is a unit that stays with its figure.
func isUnit(s string) bool {
	switch s {
	case "kg", "lb", "kN", "lbf", "m", "mm", "ft", "in", "%":
		return true
	}
	return false
}

// fitting returns how many bytes of s, whole characters and at least one, are
// no wider than w.
func (c *Canvas) fitting(f Face, w float64, s string) int {
	units, of, most := 0, f.advances(), f.unitsIn(w)
	for i, r := range s {
		if units += c.advance(of, r); units > most && i > 0 {
			return i
		}
	}
	return len(s)
}

// WrapAll wraps texts one after another.
func (c *Canvas) WrapAll(f Face, w float64, texts []string) (lines []string) {
	for _, s := range texts {
		lines = append(lines, c.Wrap(f, w, s)...)
	}
	return lines
}
