package job

import (
	"fmt"
	"sort"
	"strings"
)

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

// number and word return what a key holds, nought and "" where it is not given.
func (v *value) number(path string) float64 {
	if f := v.field(path); f != nil {
		return f.num
	}
	return 0
}

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

// gear is what a job describes, by name.
type gear struct {
	cabinets map[string]*Cabinet
	bars     map[string]*Bar
	dollies  map[string]*Dolly
	hoists   map[string]*Hoist
}

// build turns what was read into a job, and checks one thing against another.
func (r *reader) build(root *value) *Job {
	j := &Job{
		Title: root.word("job.title"), Venue: root.word("job.venue"),
		Date: root.word("job.date"), Revision: root.word("job.revision"),
		PreparedBy: root.word("job.prepared_by"), Contact: root.word("job.contact"),
		Datum: root.word("job.datum"), HeightsFrom: root.word("job.heights_from"),
		URL:    root.word("job.url"),
		Letter: root.word("paper.size") == "Letter", Imperial: root.word("paper.units") == "imperial",
		Practice:    practice(root),
		Fingerprint: r.fingerprint(),
	}
	g := r.gear(root)
	if stacks := root.field("stacks"); stacks != nil {
		seen := map[string]int{}
		for _, v := range stacks.items {
			r.unique(seen, v.field("id"))
			j.Stacks = append(j.Stacks, r.stack(v, g))
		}
	}
	return j
}

// unique complains of a text that stands for the second time.
func (r *reader) unique(seen map[string]int, v *value) {
	if v == nil || v.bad {
		return
	}
	if line, twice := seen[v.text]; twice {
		r.at(v, "%q stands here again; it is already on line %d", v.text, line)
		return
	}
	seen[v.text] = v.line
}

func practice(root *value) Practice {
	p := root.field("practice")
	return Practice{
		MassTolerance: p.number("mass_tolerance"),
		DynamicFactor: p.number("dynamic_factor"),
		HoistUse:      p.number("hoist_use"),
		GearUse:       p.number("gear_use"),
		SideShare:     p.number("side_share"),
		LeastShare:    p.number("least_share"),
		AimTolerance:  p.number("aim_tolerance"),
		LiftTilt:      p.number("lift_tilt"),
		Clearance:     p.number("clearance"),
		LimitReserve:  p.number("limit_reserve"),
		ReadingFloor:  p.number("reading_floor"),
	}
}

// gear reads what the stacks are made of.
func (r *reader) gear(root *value) gear {
	g := gear{map[string]*Cabinet{}, map[string]*Bar{}, map[string]*Dolly{}, map[string]*Hoist{}}
	each := func(path string, read func(key string, v *value)) {
		if all := root.field(path); all != nil {
			for _, name := range all.names {
				read(name, all.fields[name])
			}
		}
	}
	each("gear.cabinets", func(key string, v *value) { g.cabinets[key] = r.cabinet(key, v) })
	each("gear.bars", func(key string, v *value) { g.bars[key] = r.bar(key, v, g.cabinets) })
	each("gear.dollies", func(key string, v *value) {
		g.dollies[key] = &Dolly{Key: key, Takes: v.count("takes"), Mass: v.number("mass"), DeckHeight: v.number("deck_height")}
	})
	each("gear.hoists", func(key string, v *value) { g.hoists[key] = newHoist(key, v) })
	return g
}

func newHoist(key string, v *value) *Hoist {
	return &Hoist{
		Key: key, Capacity: v.number("capacity"), Mass: v.number("mass"),
		ChainMass: v.number("chain_mass"), ChainLength: v.number("chain_length"),
		Falls: v.count("falls"), Headroom: v.number("headroom"),
	}
}

// named looks up what a value names among the gear of one kind, and complains
// of a name that refers to nothing.
func named[T any](r *reader, v *value, among map[string]*T, section string) *T {
	if v == nil || v.bad {
		return nil
	}
	if found := among[v.text]; found != nil {
		return found
	}
	var names []string
	for name := range among {
		names = append(names, name)
	}
	sort.Strings(names)
	switch meant := near(v.text, names); {
	case meant != "":
		r.at(v, "nothing under %s is called %q; did you mean %q?", section, v.text, meant)
	case len(names) == 0:
		r.at(v, "nothing under %s is called %q; describe it there", section, v.text)
	default:
		r.at(v, "nothing under %s is called %q; there is %s", section, v.text, strings.Join(names, ", "))
	}
	return nil
}

// oneOf returns the value of the one of some keys that is given, and which of
// them it is; it complains if none or more than one is.
func (r *reader) oneOf(v *value, names ...string) (float64, int) {
	which, given := 0, []string{}
	for i, name := range names {
		if v.has(name) {
			which, given = i, append(given, name)
		}
	}
	switch len(given) {
	case 1:
		return v.number(names[which]), which
	case 0:
		if v != nil && v.fields != nil {
			r.complain(v.home, v.key, "%s is missing; write one of %s", names[0], strings.Join(names, ", "))
		}
	default:
		second := v.field(given[1])
		r.at(second, "%s and %s are both given; write one of them", given[0], given[1])
	}
	return 0, 0
}

// offset reads a place in the axes of a part: exactly one way of each pair.
func (r *reader) offset(v *value) Offset {
	behind, ahead := r.oneOf(v, "behind_hinge", "ahead_of_hinge")
	below, above := r.oneOf(v, "below_hinge", "above_hinge")
	return Offset{turned(behind, ahead == 1), turned(below, above == 1)}
}

func turned(x float64, otherWay bool) float64 {
	if otherWay && x != 0 {
		return -x
	}
	return x
}

// degreesText writes a splay as it is typed.
func degreesText(x float64) string { return fmt.Sprintf("%g", x) }
