package paperwork

import (
	"slices"
	"strings"

	"hangpack/calc"
	"hangpack/paperwork/job"
	"hangpack/paperwork/say"
)

// A third is a place in the middle third of a cabinet's outline, where a centre
// of gravity that the job does not know is taken: from its middle to its rear
// and to its bottom, in halves of a third; 0 is the middle.
//
// That a centre of gravity lies in the middle third is a limit of hangpack's
// own: common practice is to weigh the cabinet or to ask its maker.
type third struct {
	rear, bottom float64
	name         string
}

// thirds are the corners of the middle third.
var thirds = []third{{-1, -1, "front and high"}, {-1, 1, "front and low"}, {1, -1, "rear and high"}, {1, 1, "rear and low"}}

// centre returns the centre of gravity of a cabinet, with this place where it is
// not known.
func (t third) centre(c *job.Cabinet) calc.Offset {
	at := offset(c.CentreOfGravity)
	if c.CentreUnknown {
		at.Behind += t.rear * c.Depth / 6
		at.Below += t.bottom * c.FrontHeight / 6
	}
	return at
}

// unknown returns the types of the stack whose centre of gravity is not known.
func (h *hung) unknown() (types []*job.Cabinet) {
	for _, t := range h.types() {
		if t.CentreUnknown {
			types = append(types, t)
		}
	}
	return types
}

// workCorners works the stack out anew with all unknown centres of gravity in
// each corner of their middle third at once.
func (h *hung) workCorners() error {
	if len(h.unknown()) == 0 {
		return nil
	}
	for _, t := range thirds {
		v := &hung{Stack: h.Stack, job: h.job, body: body(h.Stack, t), holes: h.holes, third: t}
		v.centre = v.body.CentreInBar()
		if err := v.work(); err != nil {
			return err
		}
		h.corners = append(h.corners, v)
	}
	return nil
}

// ways are the stack and the same stack with its unknown centres of gravity
// elsewhere.
func (h *hung) ways() []*hung { return append([]*hung{h}, h.corners...) }

// takeWorst checks the corners as well, and keeps the worst of each finding, use
// and measure.
func (h *hung) takeWorst() {
	for _, v := range h.corners {
		v.check()
		said := v.third.ifSo()
		h.holds = worse(h.holds, v.holds, said)
		h.cautions = worse(h.cautions, v.cautions, said)
		h.takeUses(v.uses, said)
		h.takeMeasures(v.measures, said)
	}
}

// words say where unknown centres of gravity are taken.
func (t third) words() string {
	return say.After("centre of gravity ", t.name)
}

// ifSo says where unknown centres of gravity have to lie for what is said.
func (t third) ifSo() string { return "if the centre of gravity that is not known lies " + t.name }

// worse adds to findings those that come up only elsewhere, and puts in the place
// of one a worse one of its kind.
func worse(found, elsewhere []Finding, said string) []Finding {
	for _, f := range elsewhere {
		f.Says += " (" + said + ")"
		i := slices.IndexFunc(found, func(old Finding) bool { return old.Rule == f.Rule && old.Where == f.Where && old.of == f.of })
		switch {
		case i < 0:
			found = append(found, f)
		case f.by > found[i].by+within:
			found[i] = f
		}
	}
	return found
}

func (h *hung) takeUses(uses []use, said string) {
	for _, u := range uses {
		if h.more(u.part, u.of) {
			h.keepUse(use{u.part, u.of, u.says.so(said)})
		}
	}
}

func (h *hung) takeMeasures(measures []measure, said string) {
	for _, m := range measures {
		if h.closer(m.of, m.spare) {
			h.keepMeasure(measure{m.of, m.spare, m.says.so(said)})
		}
	}
}

// unknownWords say of which types the centre of gravity is not known.
func (h *hung) unknownWords(types []*job.Cabinet) string {
	var keys []string
	for _, t := range types {
		keys = append(keys, t.Key)
	}
	return "Centre of gravity not known: " + strings.Join(keys, ", ") + "; 'between' is over the middle third of the outline"
}
