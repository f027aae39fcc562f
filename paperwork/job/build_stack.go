package job

import (
	"fmt"
	"strings"
)

// stack reads one stack. Where something it needs was complained of, what
// hangs on it is passed over.
func (r *reader) stack(v *value, g gear) Stack {
	s := Stack{
		ID: v.word("id"), Name: v.word("name"), Shape: Shape(v.word("shape")),
		Pan:     v.number("place.pan"),
		Bar:     named(r, v.field("bar"), g.bars, "gear.bars"),
		Dolly:   named(r, v.field("dolly"), g.dollies, "gear.dollies"),
		PinsSet: PinsSet(v.word("pins_set")),
		Aim:     v.number("aim"),
		Floor:   v.number("floor"),
	}
	if !v.has("name") {
		s.Name = s.ID
	}
	r.place(v.field("place"), &s)
	s.Cabinets = r.cabinets(v.field("cabinets"), s.Bar, g)
	s.LinkArm = linkArm(s)
	s.Sets = r.sets(v.field("sets"), s)
	s.Trim = r.trim(v.field("trim"))
	s.Picks = r.picks(v, s, g)
	s.Extras = r.extras(v.field("extras"), len(s.Cabinets))
	return s
}

func (r *reader) place(v *value, s *Stack) {
	left, right := r.oneOf(v, "stage_left", "stage_right")
	down, up := r.oneOf(v, "downstage", "upstage")
	s.StageLeft, s.Downstage = turned(left, right == 1), turned(down, up == 1)
}

// linkArm is the bar's own, or the first cabinet's.
func linkArm(s Stack) float64 {
	switch {
	case s.Bar == nil || len(s.Cabinets) == 0:
		return 0
	case s.Bar.LinkArm > 0:
		return s.Bar.LinkArm
	}
	return s.Cabinets[0].LinkArm
}

func (r *reader) trim(v *value) Trim {
	h, of := r.oneOf(v, "lowest", "highest_pick")
	return Trim{h, of == 1}
}

// cabinets reads the column from the top. It is nil if anything in it was
// complained of that leaves a cabinet or a hole unknown.
func (r *reader) cabinets(v *value, bar *Bar, g gear) (column []Placed) {
	if v == nil {
		return nil
	}
	whole := true
	for _, item := range v.items {
		c := named(r, item.field("type"), g.cabinets, "gear.cabinets")
		splays := item.field("splay")
		if c == nil || splays == nil || splays.bad {
			whole = false
			continue
		}
		if n := item.field("count"); !n.bad && int(n.num) != len(splays.items) {
			r.at(n, "count is %d and splay has %d; write one splay for each cabinet", int(n.num), len(splays.items))
		}
		for _, splay := range splays.items {
			p := Placed{Cabinet: c}
			if whole = r.pinned(&p, splay, column, bar) && whole; p.Joint == nil {
				whole = false
			}
			column = append(column, p)
		}
	}
	if len(column) > 40 && !v.bad {
		r.at(v, "%d cabinets in one stack are too many; at most 40", len(column))
	}
	if !whole {
		return nil
	}
	return column
}

// pinned finds the hole of a joint for its splay, and reports whether it did.
func (r *reader) pinned(p *Placed, splay *value, above []Placed, bar *Bar) bool {
	var owner string
	switch {
	case p.HolesForJointAbove:
		p.Joint, owner = p.Holes, p.Key
	case len(above) > 0:
		upper := above[len(above)-1]
		if upper.HolesForJointAbove {
			r.at(splay, "no list of holes is meant for this joint: %s below says joint_below, %s above says joint_above; mend splay_holes_for",
				p.Key, upper.Key)
			return false
		}
		p.Joint, owner = upper.Holes, upper.Key
	case bar != nil:
		p.Joint, owner = bar.Holes, bar.Key
	}
	if splay.bad || len(p.Joint) == 0 {
		return false
	}
	for _, h := range p.Joint {
		if h.Splay == splay.num {
			p.Hole = h
			return true
		}
	}
	r.at(splay, "no hole of %s sets %s; %s", owner, splay.text, nearestHoles(p.Joint, splay.num))
	return false
}

// nearestHoles names the holes either side of a splay.
func nearestHoles(holes []Hole, deg float64) string {
	var below, above *Hole
	for i, h := range holes {
		if h.Splay < deg && (below == nil || h.Splay > below.Splay) {
			below = &holes[i]
		}
		if h.Splay > deg && (above == nil || h.Splay < above.Splay) {
			above = &holes[i]
		}
	}
	switch {
	case below == nil:
		return "the nearest is " + degreesText(above.Splay)
	case above == nil:
		return "the nearest is " + degreesText(below.Splay)
	}
	return fmt.Sprintf("the nearest are %s and %s", degreesText(below.Splay), degreesText(above.Splay))
}

func holeList(holes []Hole) string {
	var all []string
	for _, h := range holes {
		all = append(all, h.Label)
	}
	return strings.Join(all, ", ")
}

// sets reads how the cabinets are shared among dollies: as the job says, else
// as many as a dolly takes, from the top, else all on one.
func (r *reader) sets(v *value, s Stack) (sets []int) {
	left := len(s.Cabinets)
	if v != nil {
		sum, whole := 0, !v.bad
		for _, item := range v.items {
			sets = append(sets, int(item.num))
			sum += int(item.num)
			whole = whole && !item.bad
		}
		if whole && left > 0 && sum != left {
			r.at(v, "sets add up to %d and the stack has %d cabinets; make them agree", sum, left)
		}
		return sets
	}
	for s.Dolly != nil && s.Dolly.Takes > 0 && left > s.Dolly.Takes {
		sets, left = append(sets, s.Dolly.Takes), left-s.Dolly.Takes
	}
	return append(sets, left)
}

func (r *reader) extras(v *value, cabinets int) (extras []Extra) {
	if v == nil {
		return nil
	}
	for _, item := range v.items {
		e := Extra{Name: item.word("name"), Mass: item.number("mass"), Cabinet: item.count("on_cabinet"), At: r.offset(item)}
		if on := item.field("on_cabinet"); on != nil && !on.bad && cabinets > 0 && e.Cabinet > cabinets {
			r.at(on, "the stack has no cabinet %d; it has 1 to %d", e.Cabinet, cabinets)
		}
		extras = append(extras, e)
	}
	return extras
}
