package say

import (
	"slices"
	"strings"
)

const NotGiven = "not given"

// Given writes a text of the job, or that it is not given.
func Given(s string) string {
	if s == "" {
		return NotGiven
	}
	return s
}

// Before writes s with a mark after it that parts it from what follows, and "" if s is
// empty.
func Before(s, mark string) string {
	if s == "" {
		return ""
	}
	return s + mark
}

// After writes s after a mark that parts it from what stands before, and nothing
// where s is nothing.
func After(mark, s string) string {
	if s == "" {
		return ""
	}
	return mark + s
}

// Listed joins those words that are not empty: 'lift 2, joint 3'.
func Listed(words ...string) string {
	words = slices.DeleteFunc(words, func(w string) bool { return w == "" })
	return strings.Join(words, ", ")
}

// Capital writes a sentence's first letter large.
func Capital(s string) string { return strings.ToUpper(s[:1]) + s[1:] }

// Pulled says whether a force along a joint pulls or pushes, by its sign.
func Pulled(sign float64) string {
	if sign > 0 {
		return "pulled"
	}
	return "pushed"
}
