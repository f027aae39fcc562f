package job

import (
	"cmp"
	"maps"
	"slices"
	"strings"
)

// A builder makes a Job of the values that a reader has read, and complains of what
// does not fit together.
type builder struct{ in *reader }

// gear is what a job describes, by name.
type gear struct {
	cabinets map[string]*Cabinet
	bars     map[string]*Bar
	dollies  map[string]*Dolly
	hoists   map[string]*Hoist

	tolerance float64 // practice.aim_tolerance, rad
	pinsSet   PinsSet // practice.pins_set
}

// build turns what was read into a job, and checks one thing against another.
func (b builder) build(root *value) *Job {
	j := &Job{
		Title: root.word("job.title"), Venue: root.word("job.venue"),
		Date: root.word("job.date"), Revision: root.word("job.revision"),
		PreparedBy: root.word("job.prepared_by"), Contact: root.word("job.contact"),
		Note: root.word("job.note"), Datum: root.word("job.datum"), HeightsFrom: root.word("job.heights_from"),
		URL: root.word("job.url"), Spares: root.number("job.spares"),
		Letter: root.word("paper.size") == "Letter", Imperial: root.word("paper.units") == "imperial",
		Practice:    practice(root.field("practice")),
		Fingerprint: b.in.fingerprint(), GearFiles: b.in.paths,
	}
	b.uniqueIDs(root)
	g := b.gear(root)
	j.Stacks = b.stacks(root.list("stacks"), g)
	for _, v := range root.list("other_points") {
		j.OtherPoints = append(j.OtherPoints, b.otherPoint(v))
	}
	return j
}

// uniqueIDs complains of an id of a stack or of another point that stands for
// the second time in the file, whichever of the two lists comes first.
func (b builder) uniqueIDs(root *value) {
	all := slices.Concat(root.list("stacks"), root.list("other_points"))
	slices.SortStableFunc(all, func(a, b *value) int {
		return cmp.Or(cmp.Compare(a.line, b.line), cmp.Compare(a.col, b.col))
	})
	seen := map[string]int{}
	for _, v := range all {
		b.unique(seen, v.field("id"))
	}
}

// gear reads what the stacks are made of.
func (b builder) gear(root *value) gear {
	all := b.in.allGear(root)
	b.uniqueNames(all.field("cabinets"))
	cabinets := each(all, "cabinets", b.cabinet)
	bar := func(key string, v *value) *Bar { return b.bar(key, v, cabinets) }
	return gear{
		cabinets: cabinets,
		bars:     each(all, "bars", bar),
		dollies:  each(all, "dollies", newDolly),
		hoists:   each(all, "hoists", newHoist),

		tolerance: root.number("practice.aim_tolerance"),
		pinsSet:   PinsSet(root.word("practice.pins_set")),
	}
}

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

// uniqueNames complains of a type of cabinet that prints under the name of another one:
// nobody could tell the two apart on paper.
func (b builder) uniqueNames(cabinets *value) {
	if cabinets == nil {
		return
	}
	seen := map[string]*value{}
	for _, key := range cabinets.names {
		name := printedName(key, cabinets.fields[key])
		prints := strings.Join(strings.Fields(name.text), " ") // as lines are broken
		if first := seen[prints]; !name.bad && first != nil {
			b.in.at(name, "a type of cabinet prints as %q already, %s; give this one another name", clipped(prints), first.from(name.spot))
		}
		if !name.bad {
			seen[prints] = name
		}
	}
}

// printedName is what a type of cabinet prints as: its name, or its key where it has none.
func printedName(key string, v *value) *value {
	if own := v.field("name"); own != nil {
		return own
	}
	return &value{key: v.key, spot: v.home, text: key}
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

// whatThereIs says of a name that refers to nothing which one may be meant, or which
// there are.
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
