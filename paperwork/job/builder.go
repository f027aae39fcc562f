package job

import (
	"maps"
	"slices"
	"strings"
)

// gear is what a job describes, by name.
type gear struct {
	cabinets map[string]*Cabinet
	bars     map[string]*Bar
	dollies  map[string]*Dolly
	hoists   map[string]*Hoist

	tolerance float64 // practice.aim_tolerance, rad
}

// A builder makes a Job of the values that a reader has read, and complains of what
// does not fit together.
type builder struct{ in *reader }

// unique complains of a text that stands for the second time.
func (b builder) unique(seen map[string]int, v *value) {
	if v == nil || v.bad {
		return
	}
	if line, twice := seen[v.text]; twice {
		b.in.at(v, "%q stands here again; it is already on line %d", v.text, line)
		return
	}
	seen[v.text] = v.line
}

// each reads the gear of one kind, by name. It is nil where another complaint
// accounts for what is missing, so that nothing is looked up in it.
func each[T any](gear *value, kind string, read func(key string, v *value) *T) map[string]*T {
	all := gear.field(kind)
	switch {
	case all == nil && (gear.fields == nil || gear.excused[kind] || gear.excused[unlike]):
		return nil
	case all == nil:
		return map[string]*T{}
	case all.fields == nil:
		return nil
	}
	found := map[string]*T{}
	for _, name := range all.names {
		found[name] = read(name, all.fields[name])
	}
	return found
}

// named looks up what a value names among the gear of one kind, and complains
// of a name that refers to nothing. See each for gear that is nil.
func named[T any](b builder, v *value, among map[string]*T, section string) *T {
	if v == nil || v.bad || among == nil || b.in.gearLost {
		return nil
	}
	if found := among[v.text]; found != nil {
		return found
	}
	right := oneOfThose
	if len(among) <= hintsMost && len(b.in.complaints) <= hintsMost {
		right = whatThereIs(v.text, slices.Sorted(maps.Keys(among)))
	}
	b.in.at(v, "nothing under %s is called \"%s\"; %s", section, clipped(v.text), right)
	return nil
}

// hintsMost is among how many names, and after how many complaints, near misses
// are still looked for.
const hintsMost = 500

const oneOfThose = "name one of those described there"

func whatThereIs(name string, names []string) string {
	switch meant := Near(name, names); {
	case meant != "":
		return "did you mean \"" + meant + "\"?"
	case len(names) == 0:
		return "describe it there"
	case len(names) > knownMost:
		return oneOfThose
	}
	return "there is " + strings.Join(names, ", ")
}
