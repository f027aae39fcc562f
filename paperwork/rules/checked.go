// Package rules holds a worked stack against what gear, practice and heights allow:
// what stops it from flying, and what the crew or the venue must know. Each rule
// stands in a file of its own.
package rules

import (
	"fmt"
	"slices"

	"hangpack/paperwork/rig"
)

// cautionAll gathers what the crew or the venue must know and what does not
// stop the work. What would repeat on every lift is given once, for the worst.
func cautionAll(h *Checked) {
	cautionAim(h)
	cautionLinks(h)
	cautionLightPick(h)
	cautionLiftTilt(h)
	cautionHinges(h)
	cautionOneHoist(h)
	cautionBacks(h)
	cautionArms(h)
	cautionTurning(h)
	cautionUnchecked(h)
}

// A Wording writes where a check is closest to its limit, what it comes to there, and
// what it may come to. It is asked for words only where they are wanted.
type Wording func() (at rig.Where, worked, most string)

// so adds under which condition it comes out so.
func (w Wording) so(condition string) Wording {
	return func() (rig.Where, string, string) {
		at, worked, most := w()
		return at, worked + " (" + condition + ")", most
	}
}

// A Checked stack is a worked one with what the rules found on it.
type Checked struct {
	*rig.Hung
	Twin     *Checked // nil where it has none
	Holds    []Finding
	Cautions []Finding
	Uses     []Use     // one of each kind of part that has a rating
	Measures []Measure // one of each kind
}

// Check applies every rule to a stack, wherever its unknown centres of gravity lie.
func Check(h *rig.Hung) *Checked {
	c := &Checked{Hung: h}
	checkAt(c)
	takeWorst(c)
	return c
}

// A Use is how much of its rating a kind of part is used, as a fraction of one,
// where it is used most: the finished stack or a lift.
type Use struct {
	Part string
	Of   float64
	Says Wording
}

// rated holds a load against its limit, both in newtons with all factors in
// them, and keeps the most used part of its kind.
func (h *Checked) rated(rule, part string, load, limit float64, says Wording) {
	if u := (Use{part, load / limit, says}); h.more(u.Part, u.Of) {
		h.keepUse(u)
	}
	if load > limit+rig.Alike {
		at, worked, most := says()
		h.hold(rule, at, "%s is more than %s", worked, most).By = load / limit
	}
}

// keepUse keeps a use in the place of the one of its part.
func (h *Checked) keepUse(u Use) {
	if i := h.useOfPart(u.Part); i >= 0 {
		h.Uses[i] = u
		return
	}
	h.Uses = append(h.Uses, u)
}

func (h *Checked) useOfPart(part string) int {
	return slices.IndexFunc(h.Uses, func(u Use) bool { return u.Part == part })
}

// more reports whether a use is more than what is kept of its part.
func (h *Checked) more(part string, of float64) bool {
	i := h.useOfPart(part)
	return i < 0 || of > h.Uses[i].Of+rig.Within
}

// hold adds a hold. What it returns is for of and by, until the next one is added.
func (h *Checked) hold(rule string, at rig.Where, format string, args ...any) *Finding {
	h.Holds = append(h.Holds, Finding{Rule: rule, Where: at, Says: fmt.Sprintf(format, args...)})
	return &h.Holds[len(h.Holds)-1]
}

// caution adds a caution as hold does a hold.
func (h *Checked) caution(rule string, at rig.Where, format string, args ...any) *Finding {
	h.Cautions = append(h.Cautions, Finding{Rule: rule, Where: at, Says: fmt.Sprintf(format, args...)})
	return &h.Cautions[len(h.Cautions)-1]
}

// checkAt applies every rule to the finished stack and to every lift.
func checkAt(h *Checked) {
	for _, s := range h.States() {
		checkHoists(h, s)
		checkBar(h, s)
		checkPickHoles(h, s)
		checkPins(h, s)
		checkLinks(h, s)
		checkMost(h, s)
		checkTilt(h, s)
		checkPicks(h, s)
		checkBalance(h, s)
	}
	checkHeadroom(h)
	checkChain(h)
	checkFloor(h)
	checkDollies(h)
	cautionAll(h)
}

// MostUsed returns the part that is used most, of those that have a limit.
// Every stack has a hoist, so there is always one.
func (h *Checked) MostUsed() Use {
	most := h.Uses[0]
	for _, u := range h.Uses {
		if u.Of > most.Of+rig.Within {
			most = u
		}
	}
	return most
}

// Held reports whether a stack must not be flown as described.
func (h *Checked) Held() bool { return len(h.Holds) > 0 }
