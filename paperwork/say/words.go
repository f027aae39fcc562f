package say

import (
	"slices"
	"strings"
)

// NotGiven stands for what the job does not say.
const NotGiven = "not given"

// Given writes a text of the job, or that it is not given where it is "".
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

// After writes s with a mark before it that parts it from what it follows, and "" if
// s is empty.
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

// Capital writes a sentence's first letter large: one of a to z; not of "".
func Capital(s string) string { return strings.ToUpper(s[:1]) + s[1:] }

// Pulled says whether a force along a joint pulls or pushes, by its sign, positive in
// tension: 'pulled'.
func Pulled(sign float64) string {
	if sign > 0 {
		return "pulled"
	}
	return "pushed"
}
