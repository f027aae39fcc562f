package paperwork

import (
	"fmt"
	"slices"

	"hangpack/calc"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// A Finding is a hold or a caution: the rule that gives it, where it applies
// ("" for the finished stack, else such as "lift 2, joint 3") and a sentence
// with the sum written out.
type Finding struct {
	Rule  string    `json:"rule"`
	Where rig.Where `json:"where"`
	Says  string    `json:"says"`

	of string  // which part, where a rule has several at one place
	by float64 // how far past its limit, among findings of one rule at one place
}

// A wording writes where a check is closest to its limit, what it comes to there, and
// what it may come to. It is asked for words only where they are wanted.
type wording func() (at rig.Where, worked, most string)

// so adds under which condition it comes out so.
func (w wording) so(condition string) wording {
	return func() (rig.Where, string, string) {
		at, worked, most := w()
		return at, worked + " (" + condition + ")", most
	}
}

// A checked stack is a worked one with what the rules found on it.
type checked struct {
	*rig.Hung
	twin     *checked // nil where it has none
	holds    []Finding
	cautions []Finding
	uses     []use     // one of each kind of part that has a rating
	measures []measure // one of each kind
}

// checkAll applies every rule to a stack, wherever its unknown centres of gravity lie.
func checkAll(h *rig.Hung) *checked {
	c := &checked{Hung: h}
	c.check()
	c.takeWorst()
	return c
}

// A use is how much of its rating a kind of part is used, as a fraction of one,
// where it is used most: the finished stack or a lift.
type use struct {
	part string
	of   float64
	says wording
}

// rated holds a load against its limit, both in newtons with all factors in
// them, and keeps the most used part of its kind.
func (h *checked) rated(rule, part string, load, limit float64, says wording) {
	if u := (use{part, load / limit, says}); h.more(u.part, u.of) {
		h.keepUse(u)
	}
	if load > limit+rig.Alike {
		at, worked, most := says()
		h.hold(rule, at, "%s is more than %s", worked, most).by = load / limit
	}
}

// keepUse keeps a use in the place of the one of its part.
func (h *checked) keepUse(u use) {
	if i := h.useOfPart(u.part); i >= 0 {
		h.uses[i] = u
		return
	}
	h.uses = append(h.uses, u)
}

func (h *checked) useOfPart(part string) int {
	return slices.IndexFunc(h.uses, func(u use) bool { return u.part == part })
}

// more reports whether a use is more than what is kept of its part.
func (h *checked) more(part string, of float64) bool {
	i := h.useOfPart(part)
	return i < 0 || of > h.uses[i].of+rig.Within
}

// hold adds a hold. What it returns is for of and by, until the next one is added.
func (h *checked) hold(rule string, at rig.Where, format string, args ...any) *Finding {
	h.holds = append(h.holds, Finding{Rule: rule, Where: at, Says: fmt.Sprintf(format, args...)})
	return &h.holds[len(h.holds)-1]
}

// caution adds a caution as hold does a hold.
func (h *checked) caution(rule string, at rig.Where, format string, args ...any) *Finding {
	h.cautions = append(h.cautions, Finding{Rule: rule, Where: at, Says: fmt.Sprintf(format, args...)})
	return &h.cautions[len(h.cautions)-1]
}

// check applies every rule to the finished stack and to every lift.
func (h *checked) check() {
	for _, s := range h.States() {
		h.checkHoists(s)
		h.checkBar(s)
		h.checkPickHoles(s)
		h.checkPins(s)
		h.checkLinks(s)
		h.checkMost(s)
		h.checkTilt(s)
		h.checkPicks(s)
		h.checkBalance(s)
	}
	h.checkHeadroom()
	h.checkChain()
	h.checkFloor()
	h.checkDollies()
	h.cautionAll()
}

// checkHoists: (pick load + rigging below)·(1+tolerance) > capacity · hoist_use.
func (h *checked) checkHoists(s *rig.State) {
	for i, p := range h.Picks {
		kg := h.Hook(s, i)
		h.rated("hoist", "hoist", h.Job.Practice.OnHook(kg), h.HoistMost(i), func() (rig.Where, string, string) {
			return rig.Where{Lift: s.Lift, End: h.End(i)}, plusTolerance(h.Hung, kg), hoistLimit(h.Hung, p.Hoist)
		})
	}
}

// plusTolerance writes a load and what it may be: '612 kg + 5 % = 643 kg'.
func plusTolerance(h *rig.Hung, kg float64) string {
	tolerance := h.Job.Practice.MassTolerance
	return fmt.Sprintf("%s + %s = %s", h.Unit().Addend(kg), say.Share(tolerance), h.Unit().Load(kg*(1+tolerance)))
}

// hoistLimit writes what a hoist may hold: '500 kg (one-tonne at 50 %)'.
func hoistLimit(h *rig.Hung, m *job.Hoist) string {
	limit := h.Unit().Limit(m.Capacity * h.Job.Practice.HoistUse)
	if h.Job.Practice.HoistUse == 1 {
		return fmt.Sprintf("%s (%s)", limit, m.Key)
	}
	return fmt.Sprintf("%s (%s at %s)", limit, m.Key, say.Share(h.Job.Practice.HoistUse))
}

// checkBar: mass·(1+tolerance)·dynamic > rating · gear_use.
func (h *checked) checkBar(s *rig.State) {
	if h.Bar.Rating == 0 {
		return
	}
	kg := s.Centre.Mass
	h.rated("bar", "bar", h.Job.Practice.Design(kg)*calc.G, h.Bar.Rating*h.Job.Practice.GearUse, func() (rig.Where, string, string) {
		return rig.Where{Lift: s.Lift}, designSum(h.Hung, kg), gearLimit(h.Hung, h.Bar.Rating) + " (" + h.Bar.Key + ")"
	})
}

// checkPickHoles: pick load·(1+tolerance)·dynamic > pick_rating · gear_use.
func (h *checked) checkPickHoles(s *rig.State) {
	if h.Bar.PickRating == 0 {
		return
	}
	for i, kg := range s.Loads {
		h.rated("pick_hole", "pick hole", h.Job.Practice.Design(kg)*calc.G, h.Bar.PickRating*h.Job.Practice.GearUse, func() (rig.Where, string, string) {
			return rig.Where{Lift: s.Lift, End: h.End(i)}, designSum(h.Hung, kg), gearLimit(h.Hung, h.Bar.PickRating) + " (one pick hole of " + h.Bar.Key + ")"
		})
	}
}

// designSum writes a static load and its design load as a sum.
func designSum(h *rig.Hung, kg float64) string {
	return fmt.Sprintf("%s x %s = %s", h.Unit().Addend(kg), factorsOf(h), h.Unit().Load(h.Job.Practice.Design(kg)))
}

func factorsOf(h *rig.Hung) string { return factors(h.Job.Practice) }

// factors writes the factors of a design load: '1.05 x 1.25'.
func factors(p job.Practice) string {
	return say.Trimmed(1+p.MassTolerance) + " x " + say.Trimmed(p.DynamicFactor)
}

// gearLimit writes a rating given in newtons and, where it is not used whole,
// how much of it is: '600 kg' or '600 kg x 80 % = 480 kg'.
func gearLimit(h *rig.Hung, rating float64) string {
	use := h.Job.Practice.GearUse
	if use == 1 {
		return h.Unit().Limit(rating)
	}
	return fmt.Sprintf("%s x %s = %s", h.Unit().Limit(rating), say.Share(use), h.Unit().Limit(rating*use))
}

// mostUsed returns the part that is used most, of those that have a limit.
// Every stack has a hoist, so there is always one.
func (h *checked) mostUsed() use {
	most := h.uses[0]
	for _, u := range h.uses {
		if u.of > most.of+rig.Within {
			most = u
		}
	}
	return most
}

// held reports whether a stack must not be flown as described.
func (h *checked) held() bool { return len(h.holds) > 0 }
