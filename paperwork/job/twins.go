package job

import "slices"

// ownOfTwin are the keys of a stack that a twin does not take from the other.
var ownOfTwin = map[string]bool{"id": true, "twin_of": true, "name": true, "shape": true, "place": true}

// stacks reads all stacks, those that are twins of others last, and returns them
// in the order of the file.
func (r *reader) stacks(items []*value, g gear) []Stack {
	stacks := make([]Stack, len(items))
	for i, v := range items {
		if v.field("twin_of") == nil {
			stacks[i] = r.stack(v, g)
		}
	}
	for i, v := range items {
		if v.field("twin_of") != nil {
			stacks[i] = r.twin(v, items, g)
		}
	}
	return stacks
}

// twin reads a stack that takes from another what it does not give. A complaint
// about something taken stands at its twin_of, unless it is one of the other stack
// itself.
func (r *reader) twin(v *value, items []*value, g gear) Stack {
	other := r.twinOf(v, items)
	r.takeFromTwin(v, other)
	before := len(r.complaints)
	s := r.stack(v, g)
	found := slices.Clone(r.complaints[before:])
	r.complaints = r.complaints[:before]
	for _, c := range found {
		if own := itemAt(items, c); own == v || other == nil {
			r.complaints = append(r.complaints, c)
		} else if !slices.ContainsFunc(r.complaints, func(old Complaint) bool { return old.Line == c.Line && old.Col == c.Col && old.Message == c.Message }) {
			of := v.field("twin_of")
			r.complain(of.spot, of.key, "taken from %s, line %d: %s", of.text, c.Line, c.Message)
		}
	}
	return s
}

// twinOf returns the stack that a stack says it is a twin of, or complains and
// returns nil.
func (r *reader) twinOf(v *value, items []*value) *value {
	of := v.field("twin_of")
	if of.bad {
		return nil
	}
	var ids []string
	for _, other := range items {
		id := other.word("id")
		switch {
		case id != of.text:
			ids = append(ids, id)
		case other == v:
			r.at(of, "a stack is no twin of itself; name the other one")
			return nil
		case other.word("twin_of") == v.word("id"):
			r.at(of, "%s and %s name each other; leave twin_of out of one that gives all", v.word("id"), of.text)
			return nil
		case other.field("twin_of") != nil:
			r.at(of, "%s is itself a twin; write twin_of: %s", of.text, clipped(other.word("twin_of")))
			return nil
		default:
			return other
		}
	}
	ids = slices.DeleteFunc(ids, func(id string) bool { return id == v.word("id") })
	r.at(of, "no stack has the id %q; %s", clipped(of.text), whatThereIs(of.text, ids))
	return nil
}

// takeFromTwin gives a stack the keys of another that it does not give itself.
// Where the other is not known, what is missing is passed over.
func (r *reader) takeFromTwin(v, other *value) {
	for _, name := range r.below["stacks[]"] {
		switch {
		case ownOfTwin[name] || v.has(name):
		case other != nil:
			if f := other.field(name); f != nil {
				v.fields[name] = f
			} else {
				delete(v.fields, name)
			}
		case v.fields[name] == nil && r.rows["stacks[]."+name].Need == Required:
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
