package sheets

import (
	"slices"
	"strings"

	"hangpack/layouts"
	"hangpack/layouts/parts"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/worked"
)

// A general is a caution that holds for every lift of its kind. It prints if it applies
// to a stack of the job, and names its stacks if it does not apply to all.
type general struct {
	applies func(h *rig.Hung) bool   // to a stack; nil: to every one
	do      string                   // what to do, in few words
	says    string                   // more of it
	fill    func(h *rig.Hung) string // what stands for %s in both; nil: nothing
	from    []source
	picture parts.Picture
}

// A generalGroup is the general cautions of one part of the work.
type generalGroup struct {
	head     string
	cautions []general
}

// generalCautions are those of some general cautions that apply to the job.
func generalCautions(j *worked.Job, all []general) (items []layouts.Advice) {
	for _, g := range all {
		items = append(items, generalCaution(j, g)...)
	}
	return items
}

// generalCaution is one general caution as it prints: once for all stacks of
// which it says the same, and not at all if it applies to none.
func generalCaution(j *worked.Job, g general) (items []layouts.Advice) {
	var fills []string
	of := map[string][]string{}
	for _, h := range j.Stacks {
		fill, ok := g.filled(h.Hung)
		if !ok {
			continue
		}
		if of[fill] == nil {
			fills = append(fills, fill)
		}
		of[fill] = append(of[fill], h.ID)
	}
	for _, fill := range fills {
		items = append(items, g.printed(onlyOf(j, of[fill]), fill))
	}
	return items
}

// filled is what stands for %s where the caution applies to a stack.
func (g general) filled(h *rig.Hung) (fill string, ok bool) {
	if g.applies != nil && !g.applies(h) {
		return "", false
	}
	if g.fill == nil {
		return "", true
	}
	return g.fill(h), true
}

// onlyOf names stacks, if they are not all of the job: 'SL, SR: '.
func onlyOf(j *worked.Job, ids []string) string {
	if len(ids) == len(j.Stacks) {
		return ""
	}
	return strings.Join(ids, ", ") + ": "
}

// printed is the caution as it prints, with fill for %s, of only some stacks.
func (g general) printed(only, fill string) layouts.Advice {
	return layouts.Advice{
		Do:   only + strings.ReplaceAll(g.do, "%s", fill),
		Says: strings.ReplaceAll(g.says, "%s", fill),
		From: cited(g.from), Picture: g.picture,
	}
}

// What a general caution may apply to.
func onePicked(h *rig.Hung) bool { return len(h.Picks) == 1 }

func twoPicked(h *rig.Hung) bool { return len(h.Picks) == 2 }

func noDolly(h *rig.Hung) bool { return !h.HasDollies() }

func hasExtras(h *rig.Hung) bool { return len(h.Extras) > 0 }

func noExtras(h *rig.Hung) bool { return len(h.Extras) == 0 }

func secured(h *rig.Hung) bool { return h.Secondary != nil }

func unsecured(h *rig.Hung) bool { return h.Secondary == nil }

func classGiven(h *rig.Hung) bool { return classes(h) != "" }

func classNotGiven(h *rig.Hung) bool { return unclassed(h) != "" }

func holeForTruck(h *rig.Hung) bool { return h.HasDollies() && transported(h) }

func noHoleForTruck(h *rig.Hung) bool { return h.HasDollies() && !transported(h) }

// transported reports whether the hole for the truck is known of every type.
func transported(h *rig.Hung) bool {
	for _, t := range h.Types() {
		if t.Transport == nil {
			return false
		}
	}
	return true
}

// classes names the stack's types of hoist that have a class, each with it:
// 'one-tonne "may hold over people"'.
func classes(h *rig.Hung) string {
	var all []string
	for _, p := range h.Picks {
		words := p.Hoist.Key + ` "` + p.Hoist.Class + `"`
		if p.Hoist.Class != "" && !slices.Contains(all, words) {
			all = append(all, words)
		}
	}
	return strings.Join(all, ", ")
}

// unclassed names the stack's types of hoist that have no class.
func unclassed(h *rig.Hung) string {
	var all []string
	for _, p := range h.Picks {
		if p.Hoist.Class == "" && !slices.Contains(all, p.Hoist.Key) {
			all = append(all, p.Hoist.Key)
		}
	}
	return strings.Join(all, ", ")
}
