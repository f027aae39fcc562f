package rules

import (
	"slices"
	"strings"

	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
)

// takeWorst checks the corners as well, and keeps the worst of each finding, use
// and measure.
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

// ifSo says where unknown centres of gravity have to lie for what is said.
func ifSo(t rig.Third) string { return "if the centre of gravity that is not known lies " + t.Name }

// worse adds to findings those that come up only elsewhere, and puts in the place
// of one a worse one of its kind.
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

func takeUses(h *Checked, uses []Use, said string) {
	for _, u := range uses {
		h.Uses.take(Use{u.Part, u.Of, u.Says.so(said)})
	}
}

func takeMeasures(h *Checked, measures []Measure, said string) {
	for _, m := range measures {
		h.Measures.take(Measure{m.Of, m.Spare, m.Says.so(said)})
	}
}

// UnknownCentreWords say of which types the centre of gravity is not known.
func UnknownCentreWords(types []*job.Cabinet) string {
	var keys []string
	for _, t := range types {
		keys = append(keys, t.Key)
	}
	return "Centre of gravity not known: " + strings.Join(keys, ", ") + "; 'between' is over the middle third of the outline"
}

// Check holds every rule against a stack, wherever its unknown centres of gravity lie.
func Check(h *rig.Hung) *Checked {
	c := &Checked{Hung: h}
	c.run()
	takeWorst(c)
	return c
}
