package job

import (
	"slices"
	"strings"
)

// Kind is what a key of the job holds.
type Kind int

// The kinds. A value of a kind with a dimension carries its unit.
const (
	Section Kind = iota // keys of its own
	Names               // gear by name
	List
	Text
	Date
	Revision
	ID
	URL
	Word    // one of Choices
	Switch  // yes or no
	Number  // plain, without a unit
	Count   // whole
	Label   // of a hole
	Degrees // a splay, bare as stamped; in degrees, as its range is
	Name    // of gear, or of one of its holes
	Aim     // says down or up, or level; positive down
	Pan     // says stage_left or stage_right; positive to stage left
	Length
	Mass
	Force
	Load // a mass or a force, kept in newtons
	MassPerLength
	Angle
	Percent
	Density
	Speed
	Time
)

// single reports whether a value of the kind is one value, not a section, a
// list or names.
func (k Kind) single() bool { return k > List }

// numeric reports whether a value of the kind is a number or a quantity.
func (k Kind) numeric() bool { return k == Number || k == Count || k == Degrees || k >= Aim }

// String returns what a complaint calls a quantity of the kind.
func (k Kind) String() string {
	switch k {
	case Length:
		return "a length"
	case Mass:
		return "a mass"
	case Force:
		return "a force"
	case Load:
		return "a mass or a force"
	case MassPerLength:
		return "a mass per length"
	case Angle:
		return "an angle"
	case Percent:
		return "a percentage"
	case Density:
		return "a density"
	case Speed:
		return "a speed"
	case Time:
		return "a time"
	}
	return "a value"
}

// Need says whether a job must give a key.
type Need int

// The needs. Required keys must stand wherever the section they belong to
// does; Defaulted ones take Default, written as in a job; Derived ones take
// what Default says in words.
const (
	Required Need = iota
	Optional
	Defaulted
	Derived
)

// A Key is one row of the table of keys: all that a job may say.
type Key struct {
	Path     string    // * stands for a name, [] for an item of a list
	Kind     Kind      // what the key holds
	Hint     [2]string // likely units, metric and imperial; "" where there is none
	Min, Max float64   // in SI, both allowed; of a text or name, characters; of a list, items
	Above    bool      // Min itself is not allowed
	Nought   bool      // of a section: 0 may stand for it, where there is nothing
	Need     Need      // whether a job must give it
	Default  string    // what is taken when it is not given; see Need
	Choices  []string  // of a Word; of a section, words that may stand for it
	Meaning  string    // one line in plain words

	// Of a key of practice:
	Short string              // what people call it, before its value
	field func(*Practice) any // the field that it fills: *float64, *bool or *PinsSet
}

// Keys returns the table of keys, in the order of a job file. It is what the
// reader itself goes by.
func Keys() []Key { return slices.Clone(table) }

// Limits that many keys share.
const (
	titleMost = 72
	textMost  = 120
	noteMost  = 240
	nameMost  = 32
	far       = 5.0 // m, offsets and lengths of gear
	tiny      = 0.005
	maxForce  = 1e6 // N
)

// The likely units of the kinds of quantity.
var (
	smallLengths = [2]string{"mm", "in"}
	largeLengths = [2]string{"m", "ft"}
	masses       = [2]string{"kg", "lb"}
	forces       = [2]string{"kN", "kg"}
	percents     = [2]string{"%", ""}
	angles       = [2]string{"deg", ""}
	chains       = [2]string{"kg/m", "lb/ft"}
	speeds       = [2]string{"m/min", "ft/min"}
)

// section is a key that has keys of its own.
func section(path string, need Need, meaning string) Key {
	return Key{Path: path, Kind: Section, Need: need, Meaning: meaning}
}

// noughtOr is a section that 0 may stand for.
func noughtOr(path string, need Need, meaning string) Key {
	return Key{Path: path, Kind: Section, Nought: true, Need: need, Meaning: meaning + "; or 0"}
}

// sectionOr is a section that one word may stand for.
func sectionOr(path string, need Need, word, meaning string) Key {
	return Key{Path: path, Kind: Section, Choices: []string{word}, Need: need, Meaning: meaning}
}

// words is a text of at most so many characters.
func words(path string, most float64, need Need, def, meaning string) Key {
	return Key{Path: path, Kind: Text, Min: 1, Max: most, Need: need, Default: def, Meaning: meaning}
}

// size is a length of gear, of 5 mm to 5 m.
func size(path string, need Need, def, meaning string) Key {
	return Key{Path: path, Kind: Length, Hint: smallLengths, Min: tiny, Max: far, Need: need, Default: def, Meaning: meaning}
}

// place is an offset within 5 m of the hinge, either way.
func place(path string, need Need, def, meaning string) Key {
	return Key{Path: path, Kind: Length, Hint: smallLengths, Min: -far, Max: far, Need: need, Default: def, Meaning: meaning}
}

// height is a height above job.heights_from, -20 m to 200 m.
func height(path string, need Need, def, meaning string) Key {
	return Key{Path: path, Kind: Length, Hint: largeLengths, Min: -20, Max: 200, Need: need, Default: def, Meaning: meaning}
}

// plan is a place in plan, within 500 m of the datum.
func plan(path, meaning string) Key {
	return Key{Path: path, Kind: Length, Hint: largeLengths, Min: -500, Max: 500, Need: Optional, Meaning: meaning}
}

// mass is a mass in kilograms.
func mass(path string, least, most float64, need Need, def, meaning string) Key {
	return Key{Path: path, Kind: Mass, Hint: masses, Min: least, Max: most, Need: need, Default: def, Meaning: meaning}
}

// percentage is a share as a fraction of one, with a default.
func percentage(path string, least, most float64, above bool, def, meaning string) Key {
	return Key{Path: path, Kind: Percent, Hint: percents, Min: least, Max: most, Above: above, Need: Defaulted, Default: def, Meaning: meaning}
}

// load is a rating or capacity, above 0 up to 1000 kN.
func load(path string, hint [2]string, need Need, meaning string) Key {
	return Key{Path: path, Kind: Load, Hint: hint, Min: 0, Above: true, Max: maxForce, Need: need, Meaning: meaning}
}

// angle is an angle from 0 up to so many degrees.
func angle(path string, most float64, need Need, def, meaning string) Key {
	return Key{Path: path, Kind: Angle, Hint: angles, Min: 0, Max: most * degree, Need: need, Default: def, Meaning: meaning}
}

// tally is a whole number.
func tally(path string, least, most float64, need Need, def, meaning string) Key {
	return Key{Path: path, Kind: Count, Min: least, Max: most, Need: need, Default: def, Meaning: meaning}
}

// ref is a name of gear or of one of its holes.
func ref(path string, need Need, def, meaning string) Key {
	return Key{Path: path, Kind: Name, Need: need, Default: def, Meaning: meaning}
}

// choice is one word of some.
func choice(path string, need Need, def, meaning string, choices ...string) Key {
	return Key{Path: path, Kind: Word, Need: need, Default: def, Choices: choices, Meaning: meaning}
}

// items is a list of so many items.
func items(path string, least, most float64, need Need, def, meaning string) Key {
	return Key{Path: path, Kind: List, Min: least, Max: most, Need: need, Default: def, Meaning: meaning}
}

func arm(path string, need Need, def, meaning string) Key {
	return Key{Path: path, Kind: Length, Hint: smallLengths, Min: 0.02, Max: 3, Need: need, Default: def, Meaning: meaning}
}

// fills is a key of practice, with what people call it and the field it fills.
func fills(short string, field func(*Practice) any, k Key) Key {
	k.Short, k.field = short, field
	return k
}

// last returns the last part of a path.
func last(key string) string { return key[strings.LastIndexByte(key, '.')+1:] }

// join adds a name to a path.
func join(path, name string) string {
	if path == "" {
		return name
	}
	return path + "." + name
}
