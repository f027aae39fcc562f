package paperwork

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"hangpack/layouts"
	"hangpack/paperwork/job"
)

// viewOf is a state as it hangs.
func (h *hung) viewOf(s state) *layouts.Elevation {
	e := h.sideOf(s, 0)
	return &e
}

// setName names set k, counted from 0, as what rolls in and out.
func (h *hung) setName(k int) string {
	if h.hasDollies() {
		return "dolly " + letter(k)
	}
	if len(h.Cabinets) == 1 {
		return "the cabinet"
	}
	return "the cabinets"
}

// cardJoint is the joint above the first cabinet of set k, counted from 0.
func (h *hung) cardJoint(k int) *layouts.CardJoint {
	n := h.first(k)
	above := fmt.Sprint(n)
	if n == 0 {
		above = "bar"
	}
	return &layouts.CardJoint{Above: above, Below: fmt.Sprint(n + 1), Hole: hole(h.Cabinets[n].Hole)}
}

// liftCard is lift k, counted from 0.
func (h *hung) liftCard(k int) layouts.Card {
	s := h.joined(k)
	c := layouts.Card{Of: "after", Which: h.setName(k), View: h.viewOf(s), Says: []string{fmt.Sprintf("%d of %s", s.flown, count(len(h.Cabinets), "cabinet")), h.unit().load(s.centre.Mass) + " with bar"},
		Steps: h.liftSteps(k), Reads: append(h.cellReads(h.readings(k)), h.aimReads(k)...), Warnings: h.liftWarnings(k)}
	if k > 0 || h.start != nil {
		c.Joint = h.cardJoint(k)
	}
	c.Notes = append(h.liftNotes(k), h.downFromHere(k))
	return c
}

// liftSteps are what to do in lift k, counted from 0.
func (h *hung) liftSteps(k int) (steps []layouts.Do) {
	add := func(strong bool, says string) { steps = append(steps, layouts.Do{Says: says, Strong: strong}) }
	first, u := h.first(k)+1, h.unit()
	join := fmt.Sprintf("Joint above cabinet %d: hinge first, then link, hole %s.", first, h.Cabinets[first-1].Hole.Label)
	if k > 0 || h.start != nil {
		add(false, fmt.Sprintf("Roll in %s, castors locked, and lower onto it. %s", h.setName(k), join))
	}
	if words := h.pinsWords(k); words != "" {
		add(false, words)
	}
	if tied := h.tiedTo(first, first+h.Sets[k]-1); tied != "" {
		add(false, "Tied on now: "+tied+".")
	}
	add(true, fmt.Sprintf("Raise until all is just clear of %s. Stop. Touch every pin of this set, then read.", h.standsOn(k)))
	if k < len(h.lifts) {
		return append(steps, h.riseSteps(k)...)
	}
	add(true, fmt.Sprintf("Nobody below. Raise%s to trim: lowest corner %s, highest pick hole %s. Read again.", h.together(), u.length(h.raise+h.finished.lowest()), u.length(h.raise+h.finished.highestPick())))
	if h.Secondary != nil {
		add(false, "Secondary on: "+h.Secondary.What+".")
	}
	return steps
}

// standsOn is what a set stands on before it flies.
func (h *hung) standsOn(k int) string {
	if h.hasDollies() {
		return h.setName(k)
	}
	return "the floor"
}

// pinsWords say when the link pins within set k, counted from 0, go in, where that is
// at the lift or is not known.
func (h *hung) pinsWords(k int) string {
	switch {
	case h.Sets[k] == 1 || h.PinsSet == job.OnDolly:
		return ""
	case h.PinsSet == job.InTheAir:
		return fmt.Sprintf("Link pins of the joints above %s, as on the sheet of %s.", cabinetsWords(span{h.first(k) + 2, h.first(k) + h.Sets[k]}), h.setName(k))
	}
	return "When link pins go in is not known: ask."
}

// tiedMost is how many things that are tied on are named on a card.
const tiedMost = 3

// tiedTo names what is tied to cabinets from to, 0 for the bar: 'cable loom, laser'.
func (h *hung) tiedTo(from, to int) string {
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

func (h *hung) together() string {
	if len(h.Picks) == 2 {
		return " both hoists together"
	}
	return ""
}

// riseSteps make room for the next dolly after lift k, counted from 0.
func (h *hung) riseSteps(k int) []layouts.Do {
	u := h.unit()
	if h.Dolly == nil {
		return []layouts.Do{{Says: fmt.Sprintf("Nobody below. Raise%s until the next set fits below; how high is not known: no type of dolly is named.", h.together())}}
	}
	from, to := h.over(func(v *hung) float64 { return v.rollIn(k) })
	return []layouts.Do{
		{Says: fmt.Sprintf("Roll it out, nobody below. Raise%s: lowest corner %s. Then %s.", h.together(), h.aboveFloor(h.level(k)), h.setName(k+1)), Strong: true},
		{Says: fmt.Sprintf("Highest pick hole then at %s.", u.between(from, to, u.length))},
	}
}

// aboveFloor writes a height above what the dollies roll on, and where that is not
// what heights are measured from, also the height.
func (h *hung) aboveFloor(m float64) string {
	if h.Floor == 0 {
		return h.unit().length(m) + " above the floor"
	}
	return fmt.Sprintf("%s above what dollies roll on (height %s)", h.unit().length(m), h.unit().length(h.Floor+m))
}

// liftNotes say what the readings assume, and how the next joint comes together.
func (h *hung) liftNotes(k int) (notes []string) {
	s, u := h.joined(k), h.unit()
	from, to := h.over(func(v *hung) float64 { return v.joined(k).tilt })
	bar := "Bar " + u.between(from, to, aim) + ", as it settles."
	if len(h.Picks) == 2 {
		bar = fmt.Sprintf("Readings assume the bar %s. %s", aim(s.tilt), h.movedWords(s))
	}
	notes = append(notes, bar)
	if k == len(h.lifts) {
		return notes
	}
	return append(notes, fmt.Sprintf("To join %s: cabinet %d hangs %s; bring the two together as their maker says. %s", h.setName(k+1), s.flown, h.offLevel(k), h.swingWords(k+1)))
}

// offLevel says how far the lowest cabinet is off level after lift k, counted
// from 0.
func (h *hung) offLevel(k int) string {
	from, to := h.over(func(v *hung) float64 { return v.joined(k).lastAim() })
	words := h.unit().between(from, to, aim)
	if words == aim(0) {
		return words
	}
	return words + ", that much off level"
}

// movedWords say what a degree of tilt does to two readings.
func (h *hung) movedWords(s state) string {
	kg := h.moved(s)
	from, to := "front", "rear"
	if kg < 0 {
		from, to = to, from
	}
	return fmt.Sprintf("Each degree more front down moves %s from %s to %s.", h.unit().reading(math.Abs(kg)), from, to)
}

// swingWords say how the flown part turns when set k, counted from 0, hangs on it,
// from hanging free before to hanging free after.
func (h *hung) swingWords(k int) string {
	words := h.swingOf(k, 1)
	if words == "" {
		return "Joined and free it keeps that aim."
	}
	return "Joined and free it hangs " + words + " of that, and may swing further on the way: hands off."
}

// swingOf writes how far the flown part turns when set k, counted from 0, is joined,
// or with way -1 when it is released, and "" where it does not.
func (h *hung) swingOf(k int, way float64) string {
	from, to := h.over(func(v *hung) float64 { return way * v.swing(k) })
	if len(h.Picks) == 2 || angle(from) == angle(0) && angle(to) == angle(0) {
		return ""
	}
	return h.unit().between(from, to, turnWords)
}

// turnWords write a turn: '2.7° front down'.
func turnWords(rad float64) string {
	if rad > 0 {
		return angle(rad) + " front down"
	}
	return angle(rad) + " front up"
}

// liftWarnings are the cautions that come up at lift k, counted from 0.
func (h *hung) liftWarnings(k int) (all []string) {
	at := h.joined(k).where
	for _, f := range h.cautions {
		lift := strings.HasPrefix(f.Where+",", at+",") && at != ""
		last := at == "" && f.Rule == "link_pushed" && !strings.HasPrefix(f.Where, "lift")
		if lift || last {
			all = append(all, h.ruleWords(f)+f.Says+h.jointOf(f))
		}
	}
	return append(all, h.turnWarnings(k, 1)...)
}

// turnWarnings warn of the hinges that turn over at lift k, counted from 0; way is 1
// going up, and -1 coming down.
func (h *hung) turnWarnings(k int, way float64) (all []string) {
	for _, from := range []float64{1, -1} {
		if joints := h.turnsFrom(k, from*way); joints != "" {
			all = append(all, fmt.Sprintf("Hinge turns over from %s to %s at %s: expect a knock, hands off.", pulled(from), pulled(-from), jointsWord(joints)))
		}
	}
	return all
}

// turnsFrom lists the joints whose hinges turn over at lift k, counted from 0, from
// a sign of their pull: '3, 5 to 7'.
func (h *hung) turnsFrom(k int, from float64) string {
	var runs []string
	for n := 1; n <= h.joined(k).flown; n++ {
		last := n
		for last <= h.joined(k).flown && h.turnsAt(last, turn{k, from}) {
			last++
		}
		if last == n {
			continue
		}
		runs = append(runs, jointRun(n, last-1))
		n = last
	}
	return strings.Join(runs, ", ")
}

// jointsWord names the joints of a list.
func jointsWord(list string) string {
	if strings.ContainsAny(list, ", ") {
		return "joints " + list
	}
	return "joint " + list
}

// jointRun writes a run of joints: '3', '3, 4', '3 to 5'.
func jointRun(from, to int) string {
	switch to - from {
	case 0:
		return fmt.Sprint(from)
	case 1:
		return fmt.Sprintf("%d, %d", from, to)
	}
	return fmt.Sprintf("%d to %d", from, to)
}

// turnsAt reports whether joint n, counted from 1, turns over so.
func (h *hung) turnsAt(n int, so turn) bool {
	return slices.ContainsFunc(h.ways(), func(v *hung) bool {
		t, ok := v.turning(n - 1)
		return ok && t == so
	})
}

// jointOf is the joint or the end that a finding names, in parentheses.
func (h *hung) jointOf(f Finding) string {
	parts := strings.Split(f.Where, ", ")
	if last := parts[len(parts)-1]; !strings.HasPrefix(last, "lift") && last != "" {
		return " (" + last + ")"
	}
	return ""
}

// downFromHere says in a line how to get down from lift k, counted from 0.
func (h *hung) downFromHere(k int) string {
	if !h.hasDollies() {
		return "Down from here: lower until all of it stands on the floor, then sheet DOWN."
	}
	back := h.setName(k)
	if k < len(h.lifts) {
		back = fmt.Sprintf("%s away, %s", h.setName(k+1), back)
	}
	return fmt.Sprintf("Down from here: %s back in below, lower until it carries cabinets %s; then sheet DOWN.", back, span{h.first(k) + 1, h.first(k) + h.Sets[k]}.words())
}
