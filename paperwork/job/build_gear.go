package job

import (
	"cmp"
	"slices"

	"hangpack/calc"
)

func (b builder) cabinet(key string, v *value) *Cabinet {
	c := &Cabinet{
		Origin: origin(v),
		Key:    key, Name: v.word("name"), Mass: v.number("mass"),
		Width: v.number("width"), Depth: v.number("depth"),
		FrontHeight: v.number("front_height"), BackHeight: v.number("back_height"),
		HingeBehindFront: v.number("hinge_behind_front"), HingeBelowTop: v.number("hinge_below_top"),
		HingePitch: v.number("hinge_pitch"), LinkArm: v.number("link_arm"),
		Holes:              b.holes(v.field("splay_holes")),
		HolesForJointAbove: v.word("splay_holes_for") == "joint_above",
		HingePins:          v.count("pins.hinge"), LinkPins: v.count("pins.link"),
		PinRatings: pinRatings(v.field("pin_ratings")),
		LinkPushes: v.word("link_pushes") == "yes",
	}
	if key == OfAnyType {
		b.in.complain(v.home, v.key, "no type of cabinet is called \"any\"; under most that is all types together: call this one something else")
	}
	if !v.has("name") {
		c.Name = key
	}
	if !v.has("hinge_pitch") {
		c.HingePitch = c.FrontHeight
	}
	if c.CentreUnknown = v.word("centre_of_gravity") == NotKnown; c.CentreUnknown {
		c.CentreOfGravity = calc.Offset{Behind: c.Depth/2 - c.HingeBehindFront, Below: c.FrontHeight/2 - c.HingeBelowTop}
	} else {
		c.CentreOfGravity = b.cabinetCentre(v.field("centre_of_gravity"), c)
	}
	c.Transport = b.transport(v, c.Holes)
	return c
}

// cabinetCentre reads a centre of gravity, which may also be measured from the
// front face and the top.
func (b builder) cabinetCentre(v *value, c *Cabinet) calc.Offset {
	behind, from := b.in.oneOf(v, "behind_hinge", "ahead_of_hinge", "behind_front")
	if from == 2 {
		behind -= c.HingeBehindFront
		b.within(v.field("behind_front"), behind, "the centre of gravity")
	}
	below, under := b.in.oneOf(v, "below_hinge", "above_hinge", "below_top")
	if under == 2 {
		below -= c.HingeBelowTop
		b.within(v.field("below_top"), below, "the centre of gravity")
	}
	return calc.Offset{Behind: turned(behind, from == 1), Below: turned(below, under == 1)}
}

// within complains at v of a place that came out further than 5 m from the
// hinge.
func (b builder) within(v *value, x float64, what string) {
	if !v.bad && (x > far+1e-9 || x < -far-1e-9) {
		b.in.at(v, "%s comes out %.3f m from the hinge; it is within %g m", what, max(x, -x), far)
	}
}

func pinRatings(v *value) *PinRatings {
	if v == nil {
		return nil
	}
	return &PinRatings{Hinge: v.number("hinge"), Link: v.number("link")}
}

func (b builder) bar(key string, v *value, cabinets map[string]*Cabinet) *Bar {
	bar := &Bar{
		Origin: origin(v),
		Key:    key, Mass: v.number("mass"),
		CentreOfGravity: b.in.offset(v.field("centre_of_gravity")),
		PickHoles:       b.pickHoles(v.field("pick_holes")),
		LinkArm:         v.number("link_arm"),
		Holes:           b.holes(v.field("splay_holes")),
		Rating:          v.number("rating"), PickRating: v.number("pick_rating"),
		Most:       b.most(v.field("most"), cabinets),
		PinRatings: pinRatings(v.field("pin_ratings")),
	}
	if v.has("tilt_limit") {
		bar.TiltLimit = &TiltLimit{Down: v.number("tilt_limit.down"), Up: v.number("tilt_limit.up")}
	}
	return bar
}

// most reads the maker's count limits, in an order of their own: that of the keys of a
// job says nothing.
func (b builder) most(v *value, cabinets map[string]*Cabinet) (limits []Most) {
	if v == nil {
		return nil
	}
	if len(v.names) == 0 && !v.bad {
		b.in.at(v, "most names no type of cabinet; name one or leave the key out")
	}
	for _, name := range v.names {
		limit := v.fields[name]
		if name != OfAnyType {
			named(b, &value{key: limit.key, spot: limit.home, text: name}, cabinets, "gear.cabinets")
		}
		limits = append(limits, Most{name, int(limit.num)})
	}
	slices.SortFunc(limits, byCabinet)
	return limits
}

// byCabinet orders limits by the keys of their types; that of all types comes last.
func byCabinet(a, b Most) int {
	switch {
	case a.Cabinet == OfAnyType:
		return 1
	case b.Cabinet == OfAnyType:
		return -1
	}
	return cmp.Compare(a.Cabinet, b.Cabinet)
}

func origin(v *value) Origin { return Origin{Source(v.word("source")), v.word("as_of")} }

func newDolly(key string, v *value) *Dolly {
	return &Dolly{Origin: origin(v), Key: key, Takes: v.count("takes"), Mass: v.number("mass"), DeckHeight: v.number("deck_height"), Plumb: v.word("stands") == "plumb"}
}

func newHoist(key string, v *value) *Hoist {
	return &Hoist{
		Origin: origin(v), Key: key, Capacity: v.number("capacity"), Mass: v.number("mass"),
		ChainMass: v.number("chain_mass"), ChainLength: v.number("chain_length"),
		Falls: v.count("falls"), Headroom: v.number("headroom"), Speed: v.number("speed"), Class: v.word("class"),
	}
}
