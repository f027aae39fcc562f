package rules

import (
	"hangpack/paperwork/rig"
)

// LinkPushed is the ID of its rule, for sheets that treat its findings apart.
const LinkPushed = "link_pushed"

// linkPushed: a link in compression: a hold where a maker of its joint does not allow
// that, else a caution of the state in which it is pushed most.
var linkPushed = Rule{ID: LinkPushed, Title: "Link pushed", Severity: Either, Grave: Lurches, states: checkLinks, stack: cautionLinks}

func checkLinks(c *check, s *rig.State) {
	for k, j := range s.Joints {
		if !c.MayPush(k) && c.Measures.closer("rear link", j.Link) {
			c.measured("rear link", j.Link, func() (rig.Where, string, string) {
				return rig.Where{Lift: s.Lift, Joint: k + 1}, c.Unit().Newtons(j.Link) + ", below 0 is push", "may only be pulled"
			})
		}
		if j.Link < -rig.Alike && !c.MayPush(k) {
			c.hold(rig.Where{Lift: s.Lift, Joint: k + 1}, "the link is pushed with %s; it may only be pulled", c.Unit().Force(j.Link)).By = -j.Link
		}
	}
}

func cautionLinks(c *check) {
	states := c.States()
	for k := range c.Cabinets {
		worst, at := -rig.Alike, rig.Where{}
		for _, s := range states {
			if k < len(s.Joints) && s.Joints[k].Link < worst && c.MayPush(k) {
				worst, at = s.Joints[k].Link, rig.Where{Lift: s.Lift, Joint: k + 1}
			}
		}
		if at.Joint > 0 {
			c.caution(at, "the link is pushed with %s; its maker allows that", c.Unit().Force(worst)).By = -worst
		}
	}
}
