package rules

import (
	"fmt"
	"slices"

	"hangpack/paperwork/rig"
)

// Check holds every rule against a stack, wherever its unknown centres of gravity lie,
// but for what twins are compared by: see CompareTwins.
func Check(h *rig.Hung) *Checked {
	c := &Checked{Hung: h}
	c.run()
	takeWorst(c)
	return c
}

// run holds every rule against the states of a stack, then against all of it.
func (h *Checked) run() {
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

// A check is one rule being held against one stack.
type check struct {
	*Checked
	rule *Rule
}

// hold adds a hold of the rule. The caller may set Of and By of what it returns before
// the next finding is added.
func (c *check) hold(at rig.Where, format string, args ...any) *Finding {
	return c.add(&c.Holds, at, fmt.Sprintf(format, args...))
}

// caution adds a caution of the rule, as hold does a hold.
func (c *check) caution(at rig.Where, format string, args ...any) *Finding {
	return c.add(&c.Cautions, at, fmt.Sprintf(format, args...))
}

// add adds a finding of the rule to holds or to cautions.
func (c *check) add(to *[]Finding, at rig.Where, says string) *Finding {
	*to = append(*to, Finding{Rule: c.rule.ID, Title: c.rule.Title, Where: at, Says: says})
	return &(*to)[len(*to)-1]
}

// rated holds a load against its limit, both in newtons with all factors in them: it
// keeps the most used part of its kind, and adds a hold where the load is more.
func (c *check) rated(part string, load, limit float64, says Wording) {
	c.Uses.take(Use{part, load / limit, says})
	if load > limit+rig.Alike {
		at, worked, most := says()
		c.hold(at, "%s is more than %s", worked, most).By = load / limit
	}
}

// measured keeps the measure of its kind that is closest to its limit; spare is how far
// inside it is, in SI units.
func (c *check) measured(of string, spare float64, says Wording) {
	c.Measures.take(Measure{of, spare, says})
}

// takeWorst checks the corners of unknown centres of gravity as well, and keeps the
// worst of each finding, use and measure.
func takeWorst(h *Checked) {
	for _, corner := range h.Corners {
		v := &Checked{Hung: corner}
		v.run()
		said := ifSo(corner.Third)
		h.Holds = worse(h.Holds, v.Holds, said)
		h.Cautions = worse(h.Cautions, v.Cautions, said)
		takeUses(h, v.Uses, said)
		takeMeasures(h, v.Measures, said)
	}
}

// worse adds to findings those that come up only with a centre of gravity elsewhere, and
// of two of a kind keeps the worse. It writes over found.
func worse(found, elsewhere []Finding, said string) []Finding {
	for _, f := range elsewhere {
		f.Says += " (" + said + ")"
		i := slices.IndexFunc(found, func(old Finding) bool { return old.Rule == f.Rule && old.Where == f.Where && old.Of == f.Of })
		switch {
		case i < 0:
			found = append(found, f)
		case f.By > found[i].By+rig.Within:
			found[i] = f
		}
	}
	return found
}

// takeUses keeps the uses of a corner that are more than those of the stack.
func takeUses(h *Checked, uses []Use, said string) {
	for _, u := range uses {
		h.Uses.take(Use{u.Part, u.Of, u.Says.so(said)})
	}
}

// takeMeasures keeps the measures of a corner that are closer than those of the stack.
func takeMeasures(h *Checked, measures []Measure, said string) {
	for _, m := range measures {
		h.Measures.take(Measure{m.Of, m.Spare, m.Says.so(said)})
	}
}

// ifSo says where unknown centres of gravity have to lie for what is said.
func ifSo(t rig.Third) string { return "if the centre of gravity that is not known lies " + t.Name }
