package rules

import (
	"fmt"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// LinkPushed is the ID of its rule, for sheets that treat its findings apart.
const LinkPushed = "link_pushed"

// linkPushed: a link in compression at any tilt of a state's reach: a hold where a maker
// of its joint does not allow that, else a caution of the state in which it is pushed most.
var linkPushed = Rule{ID: LinkPushed, Title: "Link pushed", Severity: Either, worstLift: true, Grave: Lurches, states: checkLinks, stack: cautionLinks}

func checkLinks(c *check, s *rig.State) {
	for k := range s.Joints {
		if c.MayPush(k) {
			continue
		}
		push, at := mostPushed(c, s, k)
		if c.Measures.closer("rear link", -push) {
			c.measured("rear link", -push, func() (rig.Where, string, string) {
				return rig.Where{Lift: s.Lift, Joint: k + 1}, linkSum(c.Hung, at, k), "may only be pulled"
			})
		}
		if push > rig.Alike {
			c.hold(rig.Where{Lift: s.Lift, Joint: k + 1}, "the link is pushed with %s; it may only be pulled", pushWords(c.Hung, at, k)).By = push
		}
	}
}

func cautionLinks(c *check) {
	states := c.States()
	for k := range c.Cabinets {
		if !c.MayPush(k) {
			continue
		}
		if push, lift, at := mostPushedOf(c, states, k); at != nil {
			c.caution(rig.Where{Lift: lift, Joint: k + 1}, "the link is pushed with %s; its maker allows that", pushWords(c.Hung, at, k)).By = push
		}
	}
}

// mostPushedOf is mostPushed in whichever of some states that is most, and the lift of
// that one; at is nil where the link is pushed in none.
func mostPushedOf(c *check, states []*rig.State, k int) (push float64, lift int, at *rig.Tilted) {
	push = rig.Alike
	for _, s := range states {
		if k >= s.Flown {
			continue
		}
		if here, tilted := mostPushed(c, s, k); here > push+rig.Within {
			push, lift, at = here, s.Lift, tilted
		}
	}
	return push, lift, at
}

// mostPushed returns the most that the link of joint k, counted from 0, is pushed with in
// a state, in newtons and below 0 where it is pulled, and the tilt of its reach where
// that is.
func mostPushed(c *check, s *rig.State, k int) (push float64, at *rig.Tilted) {
	return worstTilt(s, func(at *rig.Tilted) float64 { return -c.LinkLeast(at, k) })
}

// pushWords write what a link is pushed with: '312 N', and as a sum where not all of it is
// what the masses of the job make of it: '0.042 kN + 2 % of 0.667 kN = 0.06 kN', or of a
// link that they pull '5 % of 3.4 kN - 0.1 kN = 0.07 kN'.
func pushWords(h *rig.Hung, at *rig.Tilted, k int) string {
	u, is := h.Unit(), at.Joints[k].Link
	push, off := u.Force(h.LinkLeast(at, k)), say.Share(h.Job.Practice.MassTolerance)+" of "+u.Newtons(at.Spread[k])
	switch {
	case h.Job.Practice.MassTolerance == 0:
		return push + TiltWords(at)
	case is < 0:
		return u.Newtons(-is) + " + " + off + " = " + push + TiltWords(at)
	}
	return off + " - " + u.Newtons(is) + " = " + push + TiltWords(at)
}

// linkSum writes the least force in a link: '0.284 kN - 5 % of 3.4 kN = 0.114 kN', below 0
// where it is pushed.
func linkSum(h *rig.Hung, at *rig.Tilted, k int) string {
	u := h.Unit()
	return fmt.Sprintf("%s - %s of %s = %s%s, below 0 is push", u.Newtons(at.Joints[k].Link), say.Share(h.Job.Practice.MassTolerance), u.Newtons(at.Spread[k]), u.Newtons(h.LinkLeast(at, k)), TiltWords(at))
}
