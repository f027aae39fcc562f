package paperwork

import (
	"slices"
	"strings"

	"hangpack/calc"
	"hangpack/paperwork/job"
	"hangpack/paperwork/say"
)

// A Third is a place in the middle third of a cabinet's outline, where a centre
// of gravity that the job does not know is taken: from its middle to its rear
// and to its bottom, in halves of a third; 0 is the middle.
//
// That a centre of gravity lies in the middle third is a limit of hangpack's
// own: common practice is to weigh the cabinet or to ask its maker.
type Third struct {
	rear, bottom float64
	Name         string
}

// thirds are the corners of the middle third.
var thirds = []Third{{-1, -1, "front and high"}, {-1, 1, "front and low"}, {1, -1, "rear and high"}, {1, 1, "rear and low"}}

// centre returns the centre of gravity of a cabinet, with this place where it is
// not known.
func (t Third) centre(c *job.Cabinet) calc.Offset {
	at := offset(c.CentreOfGravity)
	if c.CentreUnknown {
		at.Behind += t.rear * c.Depth / 6
		at.Below += t.bottom * c.FrontHeight / 6
	}
	return at
}

// Unknown returns the types of the stack whose centre of gravity is not known.
func (h *Hung) Unknown() (types []*job.Cabinet) {
	for _, t := range h.Types() {
		if t.CentreUnknown {
			types = append(types, t)
		}
	}
	return types
}

// workCorners works the stack out anew with all unknown centres of gravity in
// each corner of their middle third at once.
func (h *Hung) workCorners() error {
	if len(h.Unknown()) == 0 {
		return nil
	}
	for _, t := range thirds {
		v := &Hung{Stack: h.Stack, Job: h.Job, Body: body(h.Stack, t), Holes: h.Holes, Third: t}
		v.Centre = v.Body.CentreInBar()
		if err := v.work(); err != nil {
			return err
		}
		h.Corners = append(h.Corners, v)
	}
	return nil
}

// Ways are the stack and the same stack with its unknown centres of gravity
// elsewhere.
func (h *Hung) Ways() []*Hung { return append([]*Hung{h}, h.Corners...) }

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

// Words say where unknown centres of gravity are taken.
func (t Third) Words() string {
	return say.After("centre of gravity ", t.Name)
}

// ifSo says where unknown centres of gravity have to lie for what is said.
func ifSo(t Third) string { return "if the centre of gravity that is not known lies " + t.Name }

// worse adds to findings those that come up only elsewhere, and puts in the place
// of one a worse one of its kind.
func worse(found, elsewhere []Finding, said string) []Finding {
	for _, f := range elsewhere {
		f.Says += " (" + said + ")"
		i := slices.IndexFunc(found, func(old Finding) bool { return old.Rule == f.Rule && old.Where == f.Where && old.of == f.of })
		switch {
		case i < 0:
			found = append(found, f)
		case f.by > found[i].by+Within:
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
