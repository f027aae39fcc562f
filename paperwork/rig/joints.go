package rig

import (
	"math"

	"hangpack/paperwork/job"
)

// A Turn is a hinge whose pull changes sign at a lift, counted from 0: From is
// its sign before.
type Turn struct {
	Lift int
	From float64
}

// HingeTurn looks, lift by lift, whether the pull of the hinge of joint k, counted
// from 0, changes its sign, and where it does so first.
func (h *Hung) HingeTurn(k int) (Turn, bool) {
	sign := 0.0
	for n := range h.Sets {
		s := h.Joined(n)
		if k >= len(s.Joints) || math.Abs(s.Joints[k].HingePull) < Alike {
			continue
		}
		now := math.Copysign(1, s.Joints[k].HingePull)
		if sign*now < 0 {
			return Turn{n, sign}, true
		}
		sign = now
	}
	return Turn{}, false
}

// Ratings returns what the pins of joint k, counted from 0, are rated: the
// lower of its two bodies' ratings, the other's where one gives none, nil
// where neither does.
func (h *Hung) Ratings(k int) *job.PinRatings { return h.ratings[k] }

// ratingsOf are those of all joints of a stack.
func ratingsOf(s *job.Stack) (all []*job.PinRatings) {
	above := s.Bar.PinRatings
	for _, c := range s.Cabinets {
		all = append(all, lower(above, c.PinRatings))
		above = c.PinRatings
	}
	return all
}

// lower is the lower of two ratings, kind by kind; either may be nil.
func lower(above, below *job.PinRatings) *job.PinRatings {
	switch {
	case above == nil || above == below:
		return below
	case below == nil:
		return above
	}
	return &job.PinRatings{Hinge: math.Min(above.Hinge, below.Hinge), Link: math.Min(above.Link, below.Link)}
}

// MayPush reports whether the makers let the link of joint k, counted from 0,
// take compression: every cabinet of the joint must say so.
func (h *Hung) MayPush(k int) bool {
	return h.Cabinets[k].LinkPushes && (k == 0 || h.Cabinets[k-1].LinkPushes)
}

// Transport is the hole for the truck of the joint above cabinet n, from 2 on, nil
// where it is not given.
func Transport(h *Hung, n int) *job.Hole {
	if own := h.Cabinets[n-1].Cabinet; own.HolesForJointAbove {
		return own.Transport
	}
	return h.Cabinets[n-2].Transport
}
