package sheets

import (
	"fmt"
	"math"
	"strings"

	"hangpack/layouts"
	"hangpack/layouts/drawings"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
)

// viewOf is a state as it hangs.
func viewOf(h *rig.Hung, s *rig.State) *drawings.Elevation {
	e := sideOf(h, s, 0)
	return &e
}

// cardJoint is the joint above the first cabinet of set k, counted from 0.
func cardJoint(h *rig.Hung, k int) *layouts.CardJoint {
	n := setSpan(h, k).From
	return &layouts.CardJoint{Above: Above(n), Below: fmt.Sprint(n), Hole: JointHole(h.Cabinets[n-1].Hole)}
}

// standsOn is what a set stands on before it flies.
func standsOn(h *rig.Hung, k int) string {
	if h.HasDollies() {
		return SetName(h, k)
	}
	return "the floor"
}

// tiedMost is how many things that are tied on are named on a card.
const tiedMost = 3

// tiedTo names what is tied to cabinets from to, 0 for the bar: 'cable loom, laser'.
func tiedTo(h *rig.Hung, from, to int) string {
	var names []string
	for _, e := range h.Extras {
		if e.Cabinet >= from && e.Cabinet <= to {
			names = append(names, e.Name)
		}
	}
	if n := len(names); n > tiedMost {
		names = append(names[:tiedMost], fmt.Sprintf("and %d more", n-tiedMost))
	}
	return strings.Join(names, ", ")
}

// bothTogether goes behind the word for what hoists do: ' both hoists together', and ""
// where there is one.
func bothTogether(h *rig.Hung) string {
	if len(h.Picks) == 2 {
		return " both hoists together"
	}
	return ""
}

// aboveFloor writes a height above what the dollies roll on, and where that is not
// what heights are measured from, also the height.
func aboveFloor(h *rig.Hung, m float64) string {
	if h.Floor == 0 {
		return h.Unit().Length(m) + " above the floor"
	}
	return fmt.Sprintf("%s above what dollies roll on (height %s)", h.Unit().Length(m), h.Unit().Length(h.Floor+m))
}

// heightWords say what heights are above, and where the floor is that dollies roll on.
func heightWords(h *rig.Hung) string {
	if h.Floor == 0 {
		return fmt.Sprintf("Heights above %s, which is the floor that dollies roll on.", h.Job.HeightsFrom)
	}
	way := "above"
	if h.Floor < 0 {
		way = "below"
	}
	return fmt.Sprintf("Heights above %s; dollies roll %s %s it.", h.Job.HeightsFrom, h.Unit().Length(math.Abs(h.Floor)), way)
}

// betweenWords say why figures lie between two, and are "" where every centre of gravity
// is known.
func betweenWords(h *rig.Hung) string {
	if types := h.Unknown(); len(types) > 0 {
		return rules.UnknownCentreWords(types) + "."
	}
	return ""
}

// swingOf writes how far the flown part turns when set k, counted from 0, is joined,
// or with way -1 when it is released, and "" where it does not.
func swingOf(h *rig.Hung, k int, way float64) string {
	from, to := h.Between(func(v *rig.Hung) float64 { return way * v.Swing(k) })
	if len(h.Picks) == 2 || say.Angle(from) == say.Angle(0) && say.Angle(to) == say.Angle(0) {
		return ""
	}
	return say.Between(from, to, say.Turned)
}
