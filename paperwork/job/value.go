package job

import (
	"slices"
	"strings"

	"hangpack/calc"
)

// A value is what was read at one place of a job: a scalar in SI units or as
// its text, or the values below it. Where a key is not given and has a
// default, the default is read in its stead.
type value struct {
	key     string // path in the job
	name    string // the last part of it
	generic string // path in the table
	spot
	given   bool
	bad     bool // a complaint was made of it; checks pass over it
	num     float64
	text    string
	quoted  bool
	items   []*value
	fields  map[string]*value
	names   []string        // of fields given, in the order of the file
	excused map[string]bool // fields whose absence another complaint accounts for
	home    spot            // of its key, or of the first line of a list item
}

// field returns the value of a key, or of a key of a key, or nil if it is not
// given and has no default.
func (v *value) field(path string) *value {
	for _, name := range strings.Split(path, ".") {
		if v == nil {
			return nil
		}
		v = v.fields[name]
	}
	return v
}

// list returns the items of a list that a key holds.
func (v *value) list(path string) []*value {
	if f := v.field(path); f != nil {
		return f.items
	}
	return nil
}

// number returns what a key holds, in SI, and nought where it is not given.
func (v *value) number(path string) float64 {
	if f := v.field(path); f != nil {
		return f.num
	}
	return 0
}

// word returns the text that a key holds, and "" where it is not given.
func (v *value) word(path string) string {
	if f := v.field(path); f != nil {
		return f.text
	}
	return ""
}

func (v *value) count(path string) int { return int(v.number(path)) }

// has reports whether the job gives a key.
func (v *value) has(path string) bool {
	f := v.field(path)
	return f != nil && f.given
}

// sound reports whether a value was read and nothing in it was complained of.
func (v *value) sound() bool {
	if v == nil || v.bad || slices.ContainsFunc(v.items, func(i *value) bool { return !i.sound() }) {
		return false
	}
	for _, f := range v.fields {
		if !f.sound() {
			return false
		}
	}
	return true
}

// oneOf returns the value of the one of some keys that is given, and which of
// them it is; it complains if none or more than one is, and v is bad then.
func (r *reader) oneOf(v *value, names ...string) (x float64, which int) {
	if v == nil || v.fields == nil {
		return 0, 0
	}
	var given []string
	for _, name := range v.names {
		if slices.Contains(names, name) {
			given = append(given, name)
		}
	}
	if len(given) == 1 {
		return v.number(given[0]), slices.Index(names, given[0])
	}
	v.bad = true
	switch {
	case len(given) > 1:
		r.at(v.fields[given[1]], "%s and %s are both given; write one of them", given[0], given[1])
	case !slices.ContainsFunc(names, func(name string) bool { return v.excused[name] }):
		r.complain(v.home, v.key, "%s is missing; write one of them", orList(names))
	}
	return 0, 0
}

// offset reads a place in the axes of a part: exactly one way of each pair.
func (r *reader) offset(v *value) calc.Offset {
	behind, ahead := r.oneOf(v, "behind_hinge", "ahead_of_hinge")
	below, above := r.oneOf(v, "below_hinge", "above_hinge")
	return calc.Offset{Behind: turned(behind, ahead == 1), Below: turned(below, above == 1)}
}

// turned returns x, or what it is the other way.
func turned(x float64, otherWay bool) float64 {
	if otherWay {
		return 0 - x // not -x, which would give nought a sign
	}
	return x
}
