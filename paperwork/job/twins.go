package job

import "slices"

// ownOfTwin are the keys of a stack that a twin does not take from the other.
var ownOfTwin = map[string]bool{"id": true, "twin_of": true, "name": true, "note": true, "shape": true, "place": true}

// stacks reads all stacks, those that are twins of others last, and returns them
// in the order of the file.
func (b builder) stacks(items []*value, g gear) []Stack {
	stacks := make([]Stack, len(items))
	for i, v := range items {
		if v.field("twin_of") == nil {
			stacks[i] = b.stack(v, g)
		}
	}
	for i, v := range items {
		if v.field("twin_of") != nil {
			stacks[i] = b.twin(v, items, g)
		}
	}
	return stacks
}

// twin reads a stack that takes from another what it does not give. A complaint
// about something taken stands at its twin_of, unless it is one of the other stack
// itself.
func (b builder) twin(v *value, items []*value, g gear) Stack {
	other := b.twinOf(v, items)
	b.takeFromTwin(v, other)
	before := len(b.in.complaints)
	s := b.stack(v, g)
	found := slices.Clone(b.in.complaints[before:])
	b.in.complaints = b.in.complaints[:before]
	for _, c := range found {
		if itemAt(items, c) == v || other == nil {
			b.in.complaints = append(b.in.complaints, c)
		} else {
			b.complainOfTaken(v.field("twin_of"), c)
		}
	}
	return s
}

// complainOfTaken says at a twin_of what is wrong with something taken from the other
// stack, unless that is said of the other one already.
func (b builder) complainOfTaken(of *value, c Complaint) {
	same := func(old Complaint) bool { return old.Line == c.Line && old.Col == c.Col && old.Message == c.Message }
	if !slices.ContainsFunc(b.in.complaints, same) {
		b.in.complain(of.spot, of.key, "taken from %s, line %d: %s", of.text, c.Line, c.Message)
	}
}

// twinOf returns the stack that a stack says it is a twin of, or complains and
// returns nil.
func (b builder) twinOf(v *value, items []*value) *value {
	of := v.field("twin_of")
	if of.bad {
		return nil
	}
	other := called(items, of.text)
	switch {
	case other == nil:
		b.in.at(of, "no stack has the id %q; %s", clipped(of.text), whatThereIs(of.text, otherIDs(items, v)))
	case other == v:
		b.in.at(of, "a stack is no twin of itself; name the other one")
	case other.field("twin_of") == nil:
		return other
	default:
		b.in.at(of, "%s is itself a twin; %s", of.text, rootOf(items, other))
	}
	return nil
}

// rootOf says which stack a twin of a twin has to name.
func rootOf(items []*value, twin *value) string {
	for range items {
		next := called(items, twin.word("twin_of"))
		if next == nil {
			break
		}
		if twin = next; twin.field("twin_of") == nil {
			return "write twin_of: " + twin.word("id")
		}
	}
	return "leave twin_of out of the one that gives all"
}

// called returns the stack of an id, or nil.
func called(items []*value, id string) *value {
	for _, v := range items {
		if id != "" && v.word("id") == id {
			return v
		}
	}
	return nil
}

// otherIDs are the ids of all stacks but one.
func otherIDs(items []*value, but *value) (ids []string) {
	for _, v := range items {
		if id := v.word("id"); v != but && id != "" {
			ids = append(ids, id)
		}
	}
	return ids
}

// takeFromTwin gives a stack the keys of another that it does not give itself.
// Where the other is not known, what is missing is passed over.
func (b builder) takeFromTwin(v, other *value) {
	for _, name := range b.in.below["stacks[]"] {
		switch {
		case ownOfTwin[name] || v.has(name):
		case other != nil:
			if f := other.field(name); f != nil {
				v.fields[name] = f
			} else {
				delete(v.fields, name)
			}
		case v.fields[name] == nil && b.in.rows["stacks[]."+name].Need == Required:
			v.fields[name] = &value{key: join(v.key, name), generic: "stacks[]." + name, bad: true, spot: v.home}
		}
	}
}

// itemAt returns the item of a list that a complaint stands in.
func itemAt(items []*value, c Complaint) (at *value) {
	for _, v := range items {
		if v.home.line < c.Line || v.home.line == c.Line && v.home.col <= c.Col {
			at = v
		}
	}
	return at
}
