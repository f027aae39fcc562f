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
		Practice:    practice(root.field("practice")),
		Fingerprint: r.fingerprint(),
	}
	g := r.gear(root)
	seen := map[string]int{}
	for _, v := range root.list("stacks") {
		r.unique(seen, v.field("id"))
		j.Stacks = append(j.Stacks, r.stack(v, g))
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

func practice(p *value) Practice {
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
	cabinets := each(root.field("gear.cabinets"), r.cabinet)
	bar := func(key string, v *value) *Bar { return r.bar(key, v, cabinets) }
	return gear{
		cabinets: cabinets,
		bars:     each(root.field("gear.bars"), bar),
		dollies:  each(root.field("gear.dollies"), newDolly),
		hoists:   each(root.field("gear.hoists"), newHoist),
	}
}

// each reads the gear of one kind, by name.
func each[T any](all *value, read func(key string, v *value) *T) map[string]*T {
	found := map[string]*T{}
	if all == nil {
		return found
	}
	for _, name := range all.names {
		found[name] = read(name, all.fields[name])
	}
	return found
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
	r.at(v, "%s", nothingCalled(v.text, slices.Sorted(maps.Keys(among)), section))
	return nil
}

func nothingCalled(name string, names []string, section string) string {
	wrong := "nothing under " + section + " is called \"" + clipped(name) + "\"; "
	switch meant := near(name, names); {
	case meant != "":
		return wrong + "did you mean \"" + meant + "\"?"
	case len(names) == 0:
		return wrong + "describe it there"
	case len(names) > knownMost:
		return wrong + "name one of those described there"
	}
	return wrong + "there is " + strings.Join(names, ", ")
}
