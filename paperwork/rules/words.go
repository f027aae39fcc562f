package rules

import (
	"fmt"
	"strings"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// Verdict says what the calculation found of a stack.
func (h *Checked) Verdict() string {
	if h.Held() {
		return "DO NOT FLY: " + say.Count(len(h.Holds), "hold")
	}
	cautions, unchecked := h.Counts()
	return fmt.Sprintf("no hold found by this calculation; %s; %d not checked", say.Count(cautions, "caution"), unchecked)
}

// ShortVerdict is the verdict without what there is none of.
func (h *Checked) ShortVerdict() string {
	return strings.NewReplacer("; 0 cautions", "", "; 0 not checked", "").Replace(h.Verdict())
}

// PickHoleWords names the pick holes in use.
func PickHoleWords(h *rig.Hung) string {
	if len(h.Holes) == 1 {
		return "pick hole " + h.Label(h.Holes[0]).Text
	}
	return fmt.Sprintf("pick holes %s front, %s rear", h.Label(h.Holes[0]).Text, h.Label(h.Holes[1]).Text)
}

// MostUsedWords names the most used part: 'link pin, joint 1, 29 %', and says
// how many parts have no rating to be used of.
func (h *Checked) MostUsedWords() string {
	m := h.Uses.Most()
	at, _, _ := m.Says()
	words := say.Listed(m.Part, at.String(), say.Percent(m.Of))
	switch n := unrated(h.Hung); n {
	case 0:
		return words
	case 1:
		return words + " (of those rated; 1 part has no rating)"
	default:
		return fmt.Sprintf("%s (of those rated; %d parts have no rating)", words, n)
	}
}

// TrimWords says what the height of the trim is of.
func TrimWords(h *rig.Hung) string {
	if h.Trim.OfPick {
		return "highest pick hole"
	}
	return "lowest corner"
}

// SecondaryWords is what the job names as such, with its rating.
func SecondaryWords(h *rig.Hung) string {
	return h.Secondary.What + ", rated " + h.Unit().Limit(h.Secondary.Rating)
}
