package rig

import (
	"math"
	"slices"

	"hangpack/calc"
	"hangpack/paperwork/job"
	"hangpack/paperwork/say"
)

// A Third says where the centres of gravity that the job does not know are taken: each
// type of cabinet in a corner of its own middle third, and in the middle of its outline
// where it says nothing.
//
// That a centre of gravity lies in the middle third is a limit of hangpack's
// own: common practice is to weigh the cabinet or to ask its maker.
type Third struct {
	Name string // 'front and high', of several types 'one front and high, two rear and low'; "" for the middle
	at   []corner
}

// A corner is where the centre of gravity of a type is taken: from the middle of its
// outline so many sixths of it to its rear and to its bottom.
type corner struct {
	of           *job.Cabinet
	rear, bottom float64
	name         string
}

// corners are those of the middle third of a type.
func corners(of *job.Cabinet) []corner {
	return []corner{{of, -1, -1, "front and high"}, {of, -1, 1, "front and low"}, {of, 1, -1, "rear and high"}, {of, 1, 1, "rear and low"}}
}

// thirdsOf are all combinations of the corners of some types.
func thirdsOf(types []*job.Cabinet) []Third {
	all := []Third{{}}
	for _, t := range types {
		var longer []Third
		for _, so := range all {
			for _, c := range corners(t) {
				longer = append(longer, Third{at: append(slices.Clone(so.at), c)})
			}
		}
		all = longer
	}
	for i := range all {
		all[i].Name = nameOf(all[i].at)
	}
	return all
}

// nameOf names each type where there are several.
func nameOf(at []corner) string {
	if len(at) == 1 {
		return at[0].name
	}
	var all []string
	for _, c := range at {
		all = append(all, c.of.Key+" "+c.name)
	}
	return say.Listed(all...)
}

// centre returns the centre of gravity of a cabinet, with this place where it is
// not known.
func (t Third) centre(c *job.Cabinet) calc.Offset {
	at := c.CentreOfGravity
	for _, k := range t.at {
		if k.of == c {
			at.Behind += k.rear * c.Depth / 6
			at.Below += k.bottom * c.FrontHeight / 6
		}
	}
	return at
}

// words say where unknown centres of gravity are taken, of several types only that they
// lie elsewhere, and "" for their middle.
func (t Third) words() string {
	if len(t.at) > 1 {
		return "centres of gravity elsewhere"
	}
	return say.After("centre of gravity ", t.Name)
}

// workCorners works the stack out anew with its unknown centres of gravity in every
// combination of the corners of their middle thirds: four of one type, 64 of three, which
// is the most that the reader lets pass; while each of them may be.
func workCorners(h *Hung, may func(way *Hung) bool) error {
	types := h.Unknown()
	if len(types) == 0 {
		return nil
	}
	for _, t := range thirdsOf(types) {
		v := &Hung{Stack: h.Stack, Job: h.Job, Body: calcStack(h.Stack, t), Holes: h.Holes, Third: t, ratings: h.ratings}
		v.Centre = v.Body.CentreInBar()
		if err := workStates(v); err != nil {
			return err
		}
		h.Corners = append(h.Corners, v)
		if !may(v) {
			return nil
		}
	}
	return nil
}

// Ways are the stack, then the same stack with its unknown centres of gravity in every
// combination of corners.
func (h *Hung) Ways() []*Hung { return append([]*Hung{h}, h.Corners...) }

// Between returns the least and the most of a figure wherever unknown centres of gravity
// lie: the same twice where all are known.
func (h *Hung) Between(figure func(*Hung) float64) (from, to float64) {
	from, to = math.Inf(1), math.Inf(-1)
	for _, v := range h.Ways() {
		from, to = math.Min(from, figure(v)), math.Max(to, figure(v))
	}
	return from, to
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
