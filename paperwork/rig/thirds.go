package rig

import (
	"math"

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
	Name         string // 'front and high'; "" for the middle
}

// thirds are the corners of the middle third.
var thirds = []Third{{-1, -1, "front and high"}, {-1, 1, "front and low"}, {1, -1, "rear and high"}, {1, 1, "rear and low"}}

// centre returns the centre of gravity of a cabinet, with this place where it is
// not known.
func (t Third) centre(c *job.Cabinet) calc.Offset {
	at := c.CentreOfGravity
	if c.CentreUnknown {
		at.Behind += t.rear * c.Depth / 6
		at.Below += t.bottom * c.FrontHeight / 6
	}
	return at
}

// words say where unknown centres of gravity are taken, and "" for their middle.
func (t Third) words() string {
	return say.After("centre of gravity ", t.Name)
}

// workCorners works the stack out anew with all unknown centres of gravity in
// each corner of their middle third at once.
func workCorners(h *Hung) error {
	if len(h.Unknown()) == 0 {
		return nil
	}
	for _, t := range thirds {
		v := &Hung{Stack: h.Stack, Job: h.Job, Body: calcStack(h.Stack, t), Holes: h.Holes, Third: t}
		v.Centre = v.Body.CentreInBar()
		if err := workStates(v); err != nil {
			return err
		}
		h.Corners = append(h.Corners, v)
	}
	return nil
}

// Ways are the stack, then the same stack with its unknown centres of gravity in each
// corner of their middle third.
func (h *Hung) Ways() []*Hung { return append([]*Hung{h}, h.Corners...) }

// Over returns the least and the most of a figure wherever unknown centres of gravity
// lie: the same twice where all are known.
func (h *Hung) Over(figure func(*Hung) float64) (from, to float64) {
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
