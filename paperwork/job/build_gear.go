package job

import "strconv"

func (r *reader) cabinet(key string, v *value) *Cabinet {
	c := &Cabinet{
		Key: key, Name: v.word("name"), Mass: v.number("mass"),
		Width: v.number("width"), Depth: v.number("depth"),
		FrontHeight: v.number("front_height"), BackHeight: v.number("back_height"),
		HingeBehindFront: v.number("hinge_behind_front"), HingeBelowTop: v.number("hinge_below_top"),
		HingePitch: v.number("hinge_pitch"), LinkArm: v.number("link_arm"),
		Holes:              r.holes(v.field("splay_holes")),
		HolesForJointAbove: v.word("splay_holes_for") == "joint_above",
		HingePins:          v.count("pins.hinge"), LinkPins: v.count("pins.link"),
		PinRatings: pinRatings(v.field("pin_ratings")),
		LinkPushes: v.word("link_pushes") == "yes",
	}
	if !v.has("name") {
		c.Name = key
	}
	if !v.has("hinge_pitch") {
		c.HingePitch = c.FrontHeight
	}
	c.CentreOfGravity = r.cabinetCentre(v.field("centre_of_gravity"), c)
	c.Transport = r.transport(v, c.Holes)
	return c
}

// cabinetCentre reads a centre of gravity, which may also be measured from the
// front face and the top.
func (r *reader) cabinetCentre(v *value, c *Cabinet) Offset {
	behind, from := r.oneOf(v, "behind_hinge", "ahead_of_hinge", "behind_front")
	if from == 2 {
		behind -= c.HingeBehindFront
	}
	below, under := r.oneOf(v, "below_hinge", "above_hinge", "below_top")
	if under == 2 {
		below -= c.HingeBelowTop
	}
	return Offset{turned(behind, from == 1), turned(below, under == 1)}
}

func pinRatings(v *value) *PinRatings {
	if v == nil {
		return nil
	}
	return &PinRatings{Hinge: v.number("hinge"), Link: v.number("link")}
}

// holes reads a list of splays, bare as stamped or with labels of their own.
func (r *reader) holes(v *value) (holes []Hole) {
	if v == nil {
		return nil
	}
	labels, splays := map[string]int{}, map[float64]int{}
	for _, item := range v.items {
		label, splay := item, item
		if item.fields != nil {
			label, splay = item.field("label"), item.field("splay")
		} else if !item.bad && !labelFits(item.text) {
			r.at(item, "%s is too long to print as a label; write {label: …, splay: %s}", item.text, item.text)
		}
		if label.bad || splay.bad {
			continue
		}
		if line, twice := splays[splay.num]; twice {
			r.at(splay, "a splay of %s stands here again; it is already on line %d", degreesText(splay.num), line)
			continue
		}
		splays[splay.num] = splay.line
		r.unique(labels, label)
		holes = append(holes, Hole{label.text, splay.num})
	}
	return holes
}

func labelFits(s string) bool { return labels.MatchString(s) }

// transport finds the hole for the truck: by its label, else by its degrees.
func (r *reader) transport(cabinet *value, holes []Hole) *Hole {
	v := cabinet.field("transport")
	if v == nil || v.bad || len(holes) == 0 {
		return nil
	}
	for i := range holes {
		if holes[i].Label == v.text {
			return &holes[i]
		}
	}
	if number.MatchString(v.text) {
		deg, _ := strconv.ParseFloat(v.text, 64)
		for i := range holes {
			if holes[i].Splay == deg {
				return &holes[i]
			}
		}
	}
	if !cabinet.field("splay_holes").bad {
		r.at(v, "no hole of splay_holes is %q; there is %s", v.text, holeList(holes))
	}
	return nil
}

func (r *reader) bar(key string, v *value, cabinets map[string]*Cabinet) *Bar {
	b := &Bar{
		Key: key, Mass: v.number("mass"),
		CentreOfGravity: r.offset(v.field("centre_of_gravity")),
		PickHoles:       r.pickHoles(v.field("pick_holes")),
		LinkArm:         v.number("link_arm"),
		Holes:           []Hole{{"0", 0}},
		Rating:          v.number("rating"), PickRating: v.number("pick_rating"),
		Most:       r.most(v.field("most"), cabinets),
		PinRatings: pinRatings(v.field("pin_ratings")),
	}
	if v.has("splay_holes") {
		b.Holes = r.holes(v.field("splay_holes"))
	}
	if v.has("tilt_limit") {
		b.TiltLimit = &TiltLimit{Down: v.number("tilt_limit.down"), Up: v.number("tilt_limit.up")}
	}
	return b
}

// most reads the maker's count limits, in the order of the job.
func (r *reader) most(v *value, cabinets map[string]*Cabinet) []Most {
	if v == nil {
		return nil
	}
	limits := []Most{}
	for _, name := range v.names {
		if cabinets[name] == nil {
			r.at(v.fields[name], "nothing under gear.cabinets is called %q; name a type of cabinet", name)
		}
		limits = append(limits, Most{name, int(v.fields[name].num)})
	}
	return limits
}

// pickHoles reads a bar's row of pick holes: counted from the front, or one by
// one.
func (r *reader) pickHoles(v *value) (holes []PickHole) {
	if v == nil {
		return nil
	}
	if v.fields != nil {
		first := r.offset(v)
		for i := range v.count("count") {
			at := Offset{first.Behind + float64(i)*v.number("spacing"), first.Below}
			holes = append(holes, PickHole{strconv.Itoa(i + 1), true, at})
		}
		return holes
	}
	seen := map[string]int{}
	for _, item := range v.items {
		if item.fields == nil {
			continue
		}
		label := item.field("label")
		r.unique(seen, label)
		holes = append(holes, PickHole{label.text, !label.quoted && number.MatchString(label.text), r.offset(item)})
	}
	return holes
}
