package job

import "cmp"

// stack reads one stack. Where something it needs was complained of, what
// hangs on it is passed over.
func (b builder) stack(v *value, g gear) Stack {
	s := Stack{
		ID: v.word("id"), Name: v.word("name"), Note: v.word("note"), TwinOf: v.word("twin_of"), Shape: Shape(v.word("shape")),
		Pan:     v.number("place.pan"),
		Bar:     named(b, v.field("bar"), g.bars, "gear.bars"),
		Dolly:   named(b, v.field("dolly"), g.dollies, "gear.dollies"),
		PinsSet: cmp.Or(PinsSet(v.word("pins_set")), g.pinsSet),
		Aim:     v.number("aim"),
		Floor:   v.number("floor"),
	}
	if !v.has("name") {
		s.Name = s.ID
	}
	s.StageLeft, s.Downstage = b.place(v.field("place"))
	s.Cabinets = b.cabinets(v.field("cabinets"), s.Bar, g)
	s.LinkArm = linkArm(s)
	s.Sets = b.sets(v.field("sets"), s)
	s.Trim = b.trim(v.field("trim"))
	s.Picks, s.LoadCell = b.picks(v, s, g), LoadCell(v.word("hang.load_cell"))
	s.Extras = b.extras(v.list("extras"), len(s.Cabinets))
	s.Secondary = secondary(v.field("secondary"))
	return s
}

func secondary(v *value) *Secondary {
	if v == nil {
		return nil
	}
	return &Secondary{What: v.word("what"), Rating: v.number("rating")}
}

// otherPoint reads what else hangs from the roof.
func (b builder) otherPoint(v *value) OtherPoint {
	p := OtherPoint{ID: v.word("id"), What: v.word("what"), Height: v.number("height"), Mass: v.number("mass")}
	p.StageLeft, p.Downstage = b.place(v.field("place"))
	return p
}

// place reads a place in plan: exactly one way of each pair.
func (b builder) place(v *value) (stageLeft, downstage float64) {
	left, right := b.in.oneOf(v, "stage_left", "stage_right")
	down, up := b.in.oneOf(v, "downstage", "upstage")
	return turned(left, right == 1), turned(down, up == 1)
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

func (b builder) trim(v *value) Trim {
	h, of := b.in.oneOf(v, "lowest", "highest_pick")
	return Trim{h, of == 1}
}

// sets reads how the cabinets are shared among dollies: as the job says, else
// as many as a dolly takes, from the top, else all on one.
func (b builder) sets(v *value, s Stack) []int {
	left := len(s.Cabinets)
	if v != nil {
		return b.givenSets(v, left)
	}
	var sets []int
	for s.Dolly != nil && s.Dolly.Takes > 0 && left > s.Dolly.Takes {
		sets, left = append(sets, s.Dolly.Takes), left-s.Dolly.Takes
	}
	return append(sets, left)
}

// givenSets reads sets as listed. cabinets is 0 where their number is not
// known.
func (b builder) givenSets(v *value, cabinets int) (sets []int) {
	sum := 0
	for _, item := range v.items {
		sets = append(sets, int(item.num))
		sum += int(item.num)
	}
	if v.sound() && cabinets > 0 && sum != cabinets {
		b.in.at(v, "sets add up to %d and the stack has %d cabinets; write sets that add up to %d", sum, cabinets, cabinets)
	}
	return sets
}

// extras reads what else hangs. cabinets is 0 where their number is not known.
func (b builder) extras(items []*value, cabinets int) (extras []Extra) {
	for _, item := range items {
		e := Extra{Name: item.word("name"), Mass: item.number("mass"), Cabinet: item.count("on_cabinet"), At: b.in.offset(item)}
		if on := item.field("on_cabinet"); on.sound() && cabinets > 0 && e.Cabinet > cabinets {
			b.in.at(on, "the stack has no cabinet %d; write 1 to %d", e.Cabinet, cabinets)
		}
		extras = append(extras, e)
	}
	return extras
}
