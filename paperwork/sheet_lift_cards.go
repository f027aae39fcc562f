package paperwork

import (
	"fmt"
	"math"
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
	c := layouts.Card{Of: "after", Which: h.setName(k), View: h.viewOf(s), Says: []string{fmt.Sprintf("%d of %d fly", s.flown, len(h.Cabinets)), h.unit().load(s.centre.Mass)},
		Steps: h.liftSteps(k), Reads: append(h.cellReads(h.readings(k)), h.aimReads(k)...), Warnings: h.liftWarnings(k)}
	if k > 0 || h.start != nil {
		c.Joint = h.cardJoint(k)
	}
	c.Notes = append(h.liftNotes(k), h.downFromHere(k))
	return c
}

// liftSteps are what to do in lift k, counted from 0.
func (h *hung) liftSteps(k int) (steps []layouts.Do) {
	first, u := h.first(k)+1, h.unit()
	join := fmt.Sprintf("Joint above cabinet %d: hinge first, then link, hole %s.", first, h.Cabinets[first-1].Hole.Label)
	switch {
	case k > 0:
		steps = append(steps, layouts.Do{Says: fmt.Sprintf("Roll in %s. %s", h.setName(k), join)})
	case h.start != nil:
		steps = append(steps, layouts.Do{Says: fmt.Sprintf("Bring in %s, lower the bar onto it. %s", h.setName(k), join)})
	}
	if h.PinsSet == job.InTheAir && h.Sets[k] > 1 {
		steps = append(steps, layouts.Do{Says: fmt.Sprintf("Link pins of %s, as on its sheet.", cabinetsWords(span{first + 1, h.first(k) + h.Sets[k]}))})
	}
	float := h.setName(k)
	if !h.hasDollies() {
		float = "all of it"
	}
	steps = append(steps, layouts.Do{Says: fmt.Sprintf("Raise until %s just floats. Stop. Touch every pin, then read.", float), Strong: true})
	if k < len(h.lifts) {
		return append(steps, h.riseSteps(k)...)
	}
	trim := fmt.Sprintf("Nobody below. Raise%s to trim: lowest corner %s, highest pick hole %s. Read again.", h.together(), u.length(h.raise+h.finished.lowest()), u.length(h.raise+h.finished.highestPick()))
	return append(steps, layouts.Do{Says: trim, Strong: true})
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
		return []layouts.Do{{Says: fmt.Sprintf("Nobody below. Raise%s until the next set fits below; how high is not known: no dolly is named.", h.together())}}
	}
	from, to := h.over(func(v *hung) float64 { return v.rollIn(k) })
	return []layouts.Do{
		{Says: fmt.Sprintf("Roll it out, nobody below. Raise%s: lowest corner %s above the floor. Then roll in %s.", h.together(), u.length(h.level(k)), h.setName(k+1)), Strong: true},
		{Says: fmt.Sprintf("Highest pick hole then at %s.", u.between(from, to, u.length))},
	}
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
	return append(notes, fmt.Sprintf("To join %s: cabinet %d is %s. %s", h.setName(k+1), s.flown, h.offLevel(k), h.swingWords(k+1)))
}

// offLevel says how far the lowest cabinet is off level after lift k, counted
// from 0.
func (h *hung) offLevel(k int) string {
	from, to := h.over(func(v *hung) float64 { return v.joined(k).lastAim() })
	words := h.unit().between(from, to, aim)
	if words == aim(0) {
		return words
	}
	return words + ", so far off level"
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

// swingWords say how the flown part turns when set k, counted from 0, hangs on it.
func (h *hung) swingWords(k int) string {
	turn := h.swing(k)
	switch {
	case len(h.Picks) == 2:
		return "Joined and free it keeps that aim."
	case angle(turn) == angle(0):
		return "Joined and free it does not swing."
	}
	return fmt.Sprintf("Joined and free it swings %s.", turnWords(turn))
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
			all = append(all, fmt.Sprintf("Hinge turns over from %s to %s at joints %s: expect a knock, hands off.", pulled(from), pulled(-from), joints))
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
		runs = append(runs, strings.ReplaceAll(span{n, last - 1}.words(), "-", " to "))
		n = last
	}
	return strings.Join(runs, ", ")
}

// turnsAt reports whether joint n, counted from 1, turns over so.
func (h *hung) turnsAt(n int, so turn) bool {
	t, ok := h.turning(n - 1)
	return ok && t == so
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
		return "Down from here: lower until the cabinets stand, then sheet DOWN."
	}
	back := h.setName(k)
	if k < len(h.lifts) {
		back = fmt.Sprintf("%s away, %s", h.setName(k+1), back)
	}
	return fmt.Sprintf("Down from here: %s back in below, lower until it carries cabinets %s; then sheet DOWN.", back, span{h.first(k) + 1, h.first(k) + h.Sets[k]}.words())
}
