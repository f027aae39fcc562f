package told

import (
	"cmp"
	"slices"
	"strings"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// A group is places that have their joints alike: lifts, where 0 is the finished stack,
// or else sets.
type group struct {
	lifts, sets []int
	joints      []int // none for a place without one
}

// A style is how places are written for one kind of reader.
type style struct {
	finished string // among lifts
	whole    string // the finished stack by itself
	lifts    func(lifts []int) string
	sets     func(sets []int) string
}

var terminal = style{"finished", "",
	func(lifts []int) string { return say.Numbered("lift", lifts) },
	func(sets []int) string { return say.Numbered("set", sets) }}

var onPaper = style{"the finished stack", "the finished stack",
	func(lifts []int) string { return say.Numbered("lift", lifts) + " (" + say.Dollies(lifts) + ")" },
	say.Dollies}

// Places writes places of one end and one piece of gear for a terminal: 'lift 2, joint 3,
// rear', 'joints 2 to 17', 'finished and lifts 1 and 2, joint 1', 'finished: joints 1 to
// 4; lift 2: joint 1', and "" for the finished stack as a whole.
func Places(at ...rig.Where) string { return terminal.places(at) }

// WhereWords writes the same for paper: 'lift 1 (dolly A), joint 3', 'the finished stack'.
func WhereWords(at ...rig.Where) string { return onPaper.places(at) }

func (s style) places(at []rig.Where) string {
	groups, end, gear := groupsOf(at), string(at[0].End), at[0].Gear
	if len(groups) == 1 {
		return s.one(groups[0], end, gear)
	}
	var words []string
	for _, g := range groups {
		of := cmp.Or(s.liftsOrSets(g), s.finished)
		words = append(words, of+say.After(": ", jointsOf(g)))
	}
	return say.Listed(end, gear, strings.Join(words, "; "))
}

// one writes a group that stands by itself. Of the finished stack its name is left out
// where a joint, an end or a piece of gear tells the place.
func (s style) one(g group, end, gear string) string {
	switch {
	case len(g.lifts) == 0:
		return say.Listed(jointsOf(g), end, s.liftsOrSets(g), gear)
	case slices.Equal(g.lifts, []int{0}) && (len(g.joints) > 0 || end != "" || gear != ""):
		return say.Listed(jointsOf(g), end, gear)
	}
	return say.Listed(s.liftsOrSets(g), jointsOf(g), end, gear)
}

// jointsOf writes the joints of a group, and "" where it has none.
func jointsOf(g group) string {
	if len(g.joints) == 0 {
		return ""
	}
	return say.Numbered("joint", g.joints)
}

// liftsOrSets writes the lifts of a group, or else its sets.
func (s style) liftsOrSets(g group) string {
	switch {
	case len(g.lifts) == 0:
		return s.sets(g.sets)
	case g.lifts[0] > 0:
		return s.lifts(g.lifts)
	case len(g.lifts) == 1:
		return s.whole
	}
	return s.finished + " and " + s.lifts(g.lifts[1:])
}

// groupsOf puts places together that have their joints alike, in the order of lifts.
func groupsOf(at []rig.Where) (groups []group) {
	for _, row := range rowsOf(at) {
		i := slices.IndexFunc(groups, func(g group) bool {
			return slices.Equal(g.joints, row.joints) && len(g.lifts) > 0 == (len(row.lifts) > 0)
		})
		if i < 0 {
			groups = append(groups, row)
			continue
		}
		groups[i].lifts, groups[i].sets = append(groups[i].lifts, row.lifts...), append(groups[i].sets, row.sets...)
	}
	return groups
}

// rowsOf are the joints of each lift or set; a place without a joint has a row of its own.
func rowsOf(at []rig.Where) (rows []group) {
	type key struct {
		lift, set int
		joint     bool
	}
	seen := map[key]int{}
	for _, w := range sorted(at) {
		k := key{w.Lift, w.Set, w.Joint > 0}
		i, ok := seen[k]
		if !ok {
			i, seen[k] = len(rows), len(rows)
			rows = append(rows, groupOf(w))
		}
		if w.Joint > 0 && !slices.Contains(rows[i].joints, w.Joint) {
			rows[i].joints = append(rows[i].joints, w.Joint)
		}
	}
	return rows
}

// groupOf is the lift or the set of a place, without a joint.
func groupOf(w rig.Where) group {
	if w.Set > 0 {
		return group{sets: []int{w.Set}}
	}
	return group{lifts: []int{w.Lift}}
}

// sorted are places in the order of lifts, sets and joints.
func sorted(at []rig.Where) []rig.Where {
	return slices.SortedStableFunc(slices.Values(at), func(a, b rig.Where) int {
		return cmp.Or(cmp.Compare(a.Lift, b.Lift), cmp.Compare(a.Set, b.Set), cmp.Compare(a.Joint, b.Joint))
	})
}
