package changes

import (
	"reflect"

	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
)

// Why a joint is set anew.
const (
	otherHole  = "hole"
	otherAbove = "above"
	otherBelow = "below"
)

// compareJoints compares joints by the number of the cabinet below them.
func (c *List) compareJoints(was, h *rig.Hung) {
	for k := range max(len(was.Cabinets), len(h.Cabinets)) {
		old, new := k < len(was.Cabinets), k < len(h.Cabinets)
		other := old && new && !sameCabinet(was.Cabinets[k].Cabinet, h.Cabinets[k].Cabinet)
		if old && !new {
			c.Out += was.Cabinets[k].LinkPins
		}
		if old && (!new || other) {
			c.CabinetsGone = append(c.CabinetsGone, CabinetChange{h.ID, k + 1, was.Cabinets[k].Hole.Splay})
		}
		if new && (!old || other) {
			c.CabinetsAdded = append(c.CabinetsAdded, CabinetChange{h.ID, k + 1, h.Cabinets[k].Hole.Splay})
		}
		if old && new {
			c.compareJoint(was, h, k)
		}
	}
}

// compareJoint compares the joint above cabinet k, counted from 0, that both have.
func (c *List) compareJoint(was, h *rig.Hung, k int) {
	from, to := was.Cabinets[k], h.Cabinets[k]
	why := []string{}
	if from.Hole != to.Hole {
		why = append(why, otherHole)
	}
	if k == 0 && !sameBar(was.Stack, h.Stack) || k > 0 && !sameCabinet(was.Cabinets[k-1].Cabinet, h.Cabinets[k-1].Cabinet) {
		why = append(why, otherAbove)
	}
	if !sameCabinet(from.Cabinet, to.Cabinet) {
		why = append(why, otherBelow)
	}
	if len(why) == 0 {
		c.Stay++
		return
	}
	c.Move++
	c.Joints = append(c.Joints, JointChange{h.ID, k + 1, from.Hole.Splay, to.Hole.Splay, from.Hole.Label, to.Hole.Label, why, from.LinkPins, to.LinkPins})
	c.count(to)
	c.Out += from.LinkPins
}

// count counts a joint that is to be set.
func (c *List) count(at job.Placed) {
	c.Set++
	c.Pins += at.LinkPins
}

// countNew counts the joints of a stack that only the new revision has, of cabinets or of
// the whole stack: one that was held is set from the bar down.
func (c *List) countNew(was, h *rules.Checked) {
	if h.Held() {
		return
	}
	had := 0
	if was != nil && !was.Held() {
		had = len(was.Cabinets)
	}
	for _, at := range h.Cabinets[min(had, len(h.Cabinets)):] {
		c.count(at)
	}
}

// sameCabinet reports whether two types of cabinet are one to a hand and to a load: name,
// sizes, holes, pins, masses. Where figures come from, what the maker allows and the hole
// for the truck are told elsewhere.
func sameCabinet(a, b *job.Cabinet) bool {
	return reflect.DeepEqual(bodyOf(*a), bodyOf(*b))
}

func bodyOf(c job.Cabinet) job.Cabinet {
	c.Origin, c.Key, c.Transport, c.PinRatings, c.LinkPushes = job.Origin{}, "", nil, nil, false
	return c
}

// sameBar reports the same of the bars of two stacks, which print by their keys.
func sameBar(a, b *job.Stack) bool {
	return a.LinkArm == b.LinkArm && reflect.DeepEqual(barOf(*a.Bar), barOf(*b.Bar))
}

func barOf(b job.Bar) job.Bar {
	return job.Bar{Key: b.Key, Mass: b.Mass, CentreOfGravity: b.CentreOfGravity, PickHoles: b.PickHoles, Holes: b.Holes}
}
