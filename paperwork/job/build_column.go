package job

import "slices"

// cabinetsMost is the most cabinets of a stack.
const cabinetsMost = 40

// cabinets reads the column from the top. It is nil if its length or any hole
// in it is not known, which then was complained of.
func (b builder) cabinets(v *value, bar *Bar, g gear) (column []Placed) {
	if v == nil {
		return nil
	}
	whole := v.sound()
	var unknown []*Cabinet // types whose centre of gravity is not known
	for _, item := range v.items {
		c := named(b, item.field("type"), g.cabinets, "gear.cabinets")
		unknown = b.unknown(item.field("type"), c, unknown)
		whole = b.counted(item) && whole
		for _, splay := range item.list("splay") {
			p := Placed{Cabinet: c}
			whole = b.pinned(&p, splay, column, bar) && whole
			column = append(column, p)
		}
		if len(item.list("splay")) == 0 {
			column = append(column, Placed{}) // unknown, so that what hangs below it is not judged
		}
	}
	if len(column) > cabinetsMost && !v.bad {
		b.in.at(v, "%d cabinets stand in one stack; write at most %d", len(column), cabinetsMost)
	}
	if !whole {
		return nil
	}
	return column
}

// unknownMost is the most types of a stack whose centre of gravity is not known: every
// combination of where these lie is worked out. It is a limit of hangpack's own.
const unknownMost = 3

// unknown adds a type to those before it in the stack whose centre of gravity is not
// known, and complains of the first one past that many.
func (b builder) unknown(v *value, c *Cabinet, before []*Cabinet) []*Cabinet {
	if c == nil || !c.CentreUnknown || slices.Contains(before, c) {
		return before
	}
	if len(before) == unknownMost {
		b.in.at(v, "the centre of gravity of more than %d types of this stack is not known; weigh %s, or ask its maker", unknownMost, c.Key)
	}
	return append(before, c)
}

// counted holds a count against its splays, and reports whether they agree.
func (b builder) counted(item *value) bool {
	n, splay := item.field("count"), item.field("splay")
	if n == nil || n.bad || splay == nil || splay.bad {
		return false
	}
	if int(n.num) == len(splay.items) {
		return true
	}
	b.in.at(n, "count is %d and splay lists %d; write one splay for each cabinet", int(n.num), len(splay.items))
	return false
}

// pinned finds the hole of a joint for its splay, and reports whether it did.
// above is the column so far; of a cabinet of an unknown type it has nil.
func (b builder) pinned(p *Placed, splay *value, above []Placed, bar *Bar) bool {
	owner, known := b.jointHoles(p, splay, above, bar)
	if !known || splay.bad || len(p.Joint) == 0 {
		return false
	}
	h := withSplay(p.Joint, splay.num)
	if h == nil {
		b.in.at(splay, "%s has no hole for %s here; %s", owner, splay.text, nearestHoles(p.Joint, splay.num))
		return false
	}
	p.Hole = *h
	return true
}

// jointHoles finds the list of holes of a joint and whose it is: the cabinet's
// own if that is meant for the joint above it, else that of the body above.
func (b builder) jointHoles(p *Placed, splay *value, above []Placed, bar *Bar) (owner string, known bool) {
	switch {
	case p.Cabinet == nil:
		return "", false
	case p.HolesForJointAbove:
		p.Joint = p.Holes
		return p.Key, true
	case len(above) == 0 && bar == nil:
		return "", false
	case len(above) == 0:
		p.Joint = bar.Holes
		return bar.Key, true
	}
	upper := above[len(above)-1].Cabinet
	switch {
	case upper == nil:
		return "", false
	case upper.HolesForJointAbove:
		b.in.at(splay, "no holes are meant for this joint: %s below has them for joint_below and %s above for joint_above; change splay_holes_for of one",
			p.Key, upper.Key)
		return "", false
	}
	p.Joint = upper.Holes
	return upper.Key, true
}
