package rules

import (
	"fmt"
	"strings"

	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// NoHold is the best that is ever said of a stack.
const NoHold = "no hold found by this calculation"

// MostUsedWords names the most used part: 'link pin, joint 1, 29 %', of two hoists with
// one of them alone too, and says how many parts have no rating to be used of.
func (h *Checked) MostUsedWords() string {
	m := h.Uses.MostOfAll()
	at, _, _ := m.Says()
	words := say.Listed(m.Part, at.String(), say.Percent(m.Share)) + say.After("; ", aloneMost(h))
	switch n := unrated(h.Hung); n {
	case 0:
		return words
	case 1:
		return words + " (of those rated; 1 part has no rating)"
	default:
		return fmt.Sprintf("%s (of those rated; %d parts have no rating)", words, n)
	}
}

// aloneMost is how much the part that is used most with one of two hoists alone is used:
// 'alone 122 %', and "" where there is one hoist.
func aloneMost(h *Checked) string {
	if len(h.Alone) == 0 {
		return ""
	}
	return "alone " + say.Percent(h.Alone.MostOfAll().Share)
}

// unrated counts the parts of a stack for which the job gives no rating.
func unrated(h *rig.Hung) (n int) {
	for _, given := range []bool{h.Bar.Rating > 0, h.Bar.PickRating > 0, h.Bar.PinRatings != nil} {
		if !given {
			n++
		}
	}
	for _, t := range h.Types() {
		if t.PinRatings == nil {
			n++
		}
	}
	return n
}

// PickHoleWords names the pick holes in use: 'pick holes 4 front, 19 rear'.
func PickHoleWords(h *rig.Hung) string {
	if len(h.Holes) == 1 {
		return "pick hole " + h.Label(h.Holes[0]).Text
	}
	return fmt.Sprintf("pick holes %s front, %s rear", h.Label(h.Holes[0]).Text, h.Label(h.Holes[1]).Text)
}

// TrimWords says what the height at which it stays is of: 'lowest corner'.
func TrimWords(h *rig.Hung) string {
	if h.Trim.OfPick {
		return "highest pick hole"
	}
	return "lowest corner"
}

// SecondaryWords is the secondary that the job names, with its rating. There is one.
func SecondaryWords(h *rig.Hung) string {
	return h.Secondary.What + ", rated " + h.Unit().Limit(h.Secondary.Rating)
}

// UnknownCentreWords say of which types, at least one, the centre of gravity is not known.
func UnknownCentreWords(types []*job.Cabinet) string {
	var keys []string
	for _, t := range types {
		keys = append(keys, t.Key)
	}
	return "Centre of gravity not known: " + strings.Join(keys, ", ") + "; 'between' is over the middle third of the outline"
}
