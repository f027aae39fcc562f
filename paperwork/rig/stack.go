// Package rig works out how a stack hangs: finished, after each lift and from each
// of two hoists alone; what its hooks, joints and points carry then, how high they
// are, and what a load cell may read.
package rig

import (
	"hangpack/calc"
	"hangpack/paperwork/job"
	"hangpack/paperwork/say"
)

// At its limit a figure passes: a load or a force within the part Within of its limit,
// all else within Within SI units. A force's sign has Alike newtons of play. These are
// limits of hangpack's own and not of any code of practice.
const (
	Alike  = 1.0
	Within = 1e-9
)

// Over reports whether a load or a force is more than its limit, both in one unit.
func Over(load, limit float64) bool { return load > limit*(1+Within) }

// A Hung stack is a stack of a job with all that has been worked out of how it hangs.
type Hung struct {
	*job.Stack
	Job      *job.Job
	Body     calc.Stack
	Centre   calc.Weight // all of it, in the bar's axes
	Options  []Option    // one pick: every hole of the bar; else nil
	Holes    []int       // the pick holes in use, front first
	Start    *State      // two picks: the bar alone, level; nil where it does not hang so
	Finished *State      // all of it, at trim
	Lifts    []*State    // after each set but the last
	Third    Third       // where unknown centres of gravity are taken
	Corners  []*Hung     // the same stack with those in the corners of their middle third
	Raise    float64     // height of the bar's hinge at trim, above heights_from
	Points   []Point     // of the roof, front first
	ratings  []*job.PinRatings
}

// Hang works out one stack of a job. It keeps both and changes neither. An error is of
// two picks that cannot share the stack, which job.Read refuses: a fault of hangpack.
func Hang(j *job.Job, s *job.Stack) (*Hung, error) {
	h := bodyOf(j, s)
	chooseHoles(h)
	return h, work(h, func(*Hung) bool { return true })
}

// From works out the same stack with one pick, hung from another hole of the bar,
// counted from 0: with unknown centres of gravity in their middle, then in one combination
// of corners after the other. It goes on while each way that it hangs may be, and else
// returns what it has so far, for there may be many.
func (h *Hung) From(hole int, may func(way *Hung) bool) (*Hung, error) {
	v := bodyOf(h.Job, h.Stack)
	v.Options, v.Holes = h.Options, []int{hole}
	return v, work(v, may)
}

// bodyOf is a stack of a job that hangs from nothing yet.
func bodyOf(j *job.Job, s *job.Stack) *Hung {
	h := &Hung{Stack: s, Job: j, Body: calcStack(s, Third{}), ratings: ratingsOf(s)}
	h.Centre = h.Body.CentreInBar()
	return h
}

// work works out how a stack hangs from its holes, while each way that it hangs may be.
func work(h *Hung, may func(way *Hung) bool) error {
	if err := workStates(h); err != nil {
		return err
	}
	if !may(h) {
		return nil
	}
	if err := workCorners(h, may); err != nil {
		return err
	}
	h.Points = pointsOf(h)
	return nil
}

// Unit is the units of the paper.
func (h *Hung) Unit() say.Units { return say.Units{Imperial: h.Job.Imperial} }

// Types returns the types of cabinet in the stack, from the top, each once.
func (h *Hung) Types() (types []*job.Cabinet) {
	seen := map[*job.Cabinet]bool{}
	for _, c := range h.Cabinets {
		if !seen[c.Cabinet] {
			seen[c.Cabinet] = true
			types = append(types, c.Cabinet)
		}
	}
	return types
}
