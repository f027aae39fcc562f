package job

import "math"

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
	Degrees // a splay, bare as stamped
	Name    // of gear, or of one of its holes
	Aim     // says down or up, or level
	Pan     // says stage_left or stage_right
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
	Kind     Kind      //
	Hint     [2]string // likely units, metric and imperial
	Min, Max float64   // SI, both allowed; of a text, characters; of a list, items
	Above    bool      // must be more than Min
	Need     Need
	Default  string
	Choices  []string // of a Word
	Meaning  string
}

// Keys returns the table of keys, in the order of a job file. A later change
// of a range or a default is a change of this table alone.
func Keys() []Key { return table }

// Limits that many keys share.
const (
	titleMost = 72
	textMost  = 120
	nameMost  = 32
	far       = 5.0 // m, offsets and lengths of gear
	tiny      = 0.005
	maxForce  = 1e6 // N
	degree    = math.Pi / 180
)

var (
	mm = [2]string{"mm", "in"}
	mt = [2]string{"m", "ft"}
	kg = [2]string{"kg", "lb"}
	kn = [2]string{"kN", "kg"}
	pc = [2]string{"%", ""}
	dg = [2]string{"deg", ""}
	km = [2]string{"kg/m", "lb/ft"}
)

func section(path string, need Need, meaning string) Key {
	return Key{Path: path, Kind: Section, Need: need, Meaning: meaning}
}

func words(path string, most float64, need Need, def, meaning string) Key {
	return Key{Path: path, Kind: Text, Min: 1, Max: most, Need: need, Default: def, Meaning: meaning}
}

// size is a length of gear, of 5 mm to 5 m.
func size(path string, need Need, def, meaning string) Key {
	return Key{Path: path, Kind: Length, Hint: mm, Min: tiny, Max: far, Need: need, Default: def, Meaning: meaning}
}

// place is an offset within 5 m of the hinge, either way.
func place(path string, need Need, def, meaning string) Key {
	return Key{Path: path, Kind: Length, Hint: mm, Min: -far, Max: far, Need: need, Default: def, Meaning: meaning}
}

func height(path string, need Need, def, meaning string) Key {
	return Key{Path: path, Kind: Length, Hint: mt, Min: -20, Max: 200, Need: need, Default: def, Meaning: meaning}
}

func plan(path, meaning string) Key {
	return Key{Path: path, Kind: Length, Hint: mt, Min: -500, Max: 500, Need: Optional, Meaning: meaning}
}

func mass(path string, least, most float64, need Need, def, meaning string) Key {
	return Key{Path: path, Kind: Mass, Hint: kg, Min: least, Max: most, Need: need, Default: def, Meaning: meaning}
}

func percentage(path string, least, most float64, above bool, def, meaning string) Key {
	return Key{Path: path, Kind: Percent, Hint: pc, Min: least, Max: most, Above: above, Need: Defaulted, Default: def, Meaning: meaning}
}

func load(path string, hint [2]string, need Need, meaning string) Key {
	return Key{Path: path, Kind: Load, Hint: hint, Min: 0, Above: true, Max: maxForce, Need: need, Meaning: meaning}
}

func angle(path string, most float64, need Need, def, meaning string) Key {
	return Key{Path: path, Kind: Angle, Hint: dg, Min: 0, Max: most * degree, Need: need, Default: def, Meaning: meaning}
}

func tally(path string, least, most float64, need Need, def, meaning string) Key {
	return Key{Path: path, Kind: Count, Min: least, Max: most, Need: need, Default: def, Meaning: meaning}
}

func ref(path string, need Need, def, meaning string) Key {
	return Key{Path: path, Kind: Name, Need: need, Default: def, Meaning: meaning}
}

func choice(path string, need Need, def, meaning string, choices ...string) Key {
	return Key{Path: path, Kind: Word, Need: need, Default: def, Choices: choices, Meaning: meaning}
}

func items(path string, least, most float64, need Need, def, meaning string) Key {
	return Key{Path: path, Kind: List, Min: least, Max: most, Need: need, Default: def, Meaning: meaning}
}
