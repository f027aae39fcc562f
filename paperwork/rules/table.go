package rules

import (
	"cmp"
	"slices"

	"hangpack/paperwork/rig"
)

// table is every rule, in the order of their findings: those of the finished stack
// rule by rule, of each lift, then of the stack as a whole.
var table = []Rule{
	aimMissed, hoist, bar, pickHole, hingePin, linkPin, linkPushed, most, barTilt, slack, lightPick, tipsOver,
	headroom, chainReach, belowFloor, dolly, liftTilt, hingeTurns, oneHoist, oneHoistGear, backsMeet,
	mixedArms, onePickTurns, notChecked, twinDiffers, pointsMeet, stacksOverlap,
}

// All returns every rule, in the order of their findings: a slice of the caller's own.
func All() []Rule { return slices.Clone(table) }

// Rank is the place of a rule among all, counted from 0, the gravest first; those that
// are as grave as each other stand as in the table.
func Rank(id string) int { return ranks[id] }

var ranks = ranksOf(All())

func ranksOf(all []Rule) map[string]int {
	slices.SortStableFunc(all, func(a, b Rule) int { return cmp.Compare(a.Grave, b.Grave) })
	ranks := map[string]int{}
	for i, r := range all {
		ranks[r.ID] = i
	}
	return ranks
}

// Check holds every rule against a stack, wherever its unknown centres of gravity lie,
// but for what stacks are held against each other by: see CompareStacks.
func Check(h *rig.Hung) *Checked {
	c := &Checked{Hung: h}
	run(c)
	takeWorst(c)
	settle(c)
	return c
}

// settle gives the cautions of a stack the words that they keep, now that it is known
// whether it is held.
func settle(h *Checked) {
	for i := range h.Cautions {
		f := &h.Cautions[i]
		if h.Held() && f.ifHeld != "" {
			f.Says = f.ifHeld
		}
		f.ifHeld = ""
	}
}

// run holds every rule against the states of a stack, then against all of it.
func run(h *Checked) {
	checks := make([]check, len(table))
	for i := range table {
		checks[i] = check{h, &table[i]}
	}
	for _, s := range h.States() {
		for i, r := range table {
			if r.states != nil {
				r.states(&checks[i], s)
			}
		}
	}
	for i, r := range table {
		if r.stack != nil {
			r.stack(&checks[i])
		}
	}
}

// takeWorst checks the corners of unknown centres of gravity as well, and keeps the
// worst of each finding, use and measure.
func takeWorst(h *Checked) {
	for _, corner := range h.Corners {
		v := &Checked{Hung: corner}
		run(v)
		said := ifSo(corner.Third)
		h.Holds = worse(h.Holds, v.Holds, said, sameHold)
		h.Cautions = worse(h.Cautions, v.Cautions, said, sameCaution)
		takeUses(&h.Uses, v.Uses, said)
		takeUses(&h.Alone, v.Alone, said)
		takeMeasures(h, v.Measures, said)
	}
}

// FirstHold returns the first hold of one way that a stack may hang, if it is held.
func FirstHold(way *rig.Hung) (f Finding, held bool) {
	c := &Checked{Hung: way}
	run(c)
	if !c.Held() {
		return Finding{}, false
	}
	f = c.Holds[0]
	if way.Third.Name != "" {
		f = f.so(ifSo(way.Third))
	}
	return f, true
}

// worse adds to findings those that come up only with a centre of gravity elsewhere, and
// of two that are the same keeps the worse. It writes over found.
func worse(found, elsewhere []Finding, said string, same func(a, b Finding) bool) []Finding {
	for _, f := range elsewhere {
		f = f.so(said)
		i := slices.IndexFunc(found, func(old Finding) bool { return same(old, f) })
		switch {
		case i < 0:
			found = append(found, f)
		case f.By > found[i].By+rig.Within:
			found[i] = f
		}
	}
	return found
}

// sameHold reports whether two findings are of one rule, place and part.
func sameHold(a, b Finding) bool { return a.Rule == b.Rule && a.Where == b.Where && a.Of == b.Of }

// sameCaution is that of cautions: of a rule that tells of its worst lift alone, whichever
// lift that is.
func sameCaution(a, b Finding) bool {
	if rule(a.Rule).worstLift {
		b.Where.Lift = a.Where.Lift
	}
	return sameHold(a, b)
}

// rule returns the rule of an ID.
func rule(id string) *Rule {
	return &table[slices.IndexFunc(table, func(r Rule) bool { return r.ID == id })]
}

// takeUses keeps the uses of a corner that are more than those of the stack.
func takeUses(kept *MostUsed, uses []Use, said string) {
	for _, u := range uses {
		kept.take(Use{u.Part, u.Share, u.Says.so(said)})
	}
}

// takeMeasures keeps the measures of a corner that are closer than those of the stack.
func takeMeasures(h *Checked, measures []Measure, said string) {
	for _, m := range measures {
		h.Measures.take(Measure{m.What, m.Spare, m.Says.so(said)})
	}
}
