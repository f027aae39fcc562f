package job

import (
	"cmp"
	"slices"
)

// build turns what was read into a job, and checks one thing against another.
func (b builder) build(root *value) *Job {
	j := &Job{
		Title: root.word("job.title"), Venue: root.word("job.venue"),
		Date: root.word("job.date"), Revision: root.word("job.revision"),
		PreparedBy: root.word("job.prepared_by"), Contact: root.word("job.contact"),
		Datum: root.word("job.datum"), HeightsFrom: root.word("job.heights_from"),
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
	cabinets := each(all, "cabinets", b.cabinet)
	bar := func(key string, v *value) *Bar { return b.bar(key, v, cabinets) }
	return gear{
		cabinets: cabinets,
		bars:     each(all, "bars", bar),
		dollies:  each(all, "dollies", newDolly),
		hoists:   each(all, "hoists", newHoist),

		tolerance: root.number("practice.aim_tolerance"),
	}
}
