package paperwork

import (
	"slices"
	"strings"

	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
)

// takeWorst checks the corners as well, and keeps the worst of each finding, use
// and measure.
func (h *checked) takeWorst() {
	for _, corner := range h.Corners {
		v := &checked{Hung: corner}
		v.check()
		said := ifSo(corner.Third)
		h.holds = worse(h.holds, v.holds, said)
		h.cautions = worse(h.cautions, v.cautions, said)
		h.takeUses(v.uses, said)
		h.takeMeasures(v.measures, said)
	}
}

// ifSo says where unknown centres of gravity have to lie for what is said.
func ifSo(t rig.Third) string { return "if the centre of gravity that is not known lies " + t.Name }

// worse adds to findings those that come up only elsewhere, and puts in the place
// of one a worse one of its kind.
func worse(found, elsewhere []Finding, said string) []Finding {
	for _, f := range elsewhere {
		f.Says += " (" + said + ")"
		i := slices.IndexFunc(found, func(old Finding) bool { return old.Rule == f.Rule && old.Where == f.Where && old.of == f.of })
		switch {
		case i < 0:
			found = append(found, f)
		case f.by > found[i].by+rig.Within:
			found[i] = f
		}
	}
	return found
}

func (h *checked) takeUses(uses []use, said string) {
	for _, u := range uses {
		if h.more(u.part, u.of) {
			h.keepUse(use{u.part, u.of, u.says.so(said)})
		}
	}
}

func (h *checked) takeMeasures(measures []measure, said string) {
	for _, m := range measures {
		if h.closer(m.of, m.spare) {
			h.keepMeasure(measure{m.of, m.spare, m.says.so(said)})
		}
	}
}

// unknownWords say of which types the centre of gravity is not known.
func (h *checked) unknownWords(types []*job.Cabinet) string {
	var keys []string
	for _, t := range types {
		keys = append(keys, t.Key)
	}
	return "Centre of gravity not known: " + strings.Join(keys, ", ") + "; 'between' is over the middle third of the outline"
}
