package changes

import (
	"fmt"
	"slices"
	"strings"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
)

// revisions names both, with their fingerprints.
func (c List) revisions() string {
	return fmt.Sprintf("REV %s %s, now REV %s %s", c.old.Revision, c.Old, c.new.Revision, c.New)
}

// warnings are what has to be known before all else.
func (c List) warnings() (all []string) {
	if c.old.Revision == c.new.Revision && c.Old != c.New {
		all = append(all, "TWO DIFFERENT JOBS ARE CALLED REV "+c.new.Revision+": raise the revision, or sheets of both will be mixed up.")
	}
	if len(c.Held) > 0 {
		all = append(all, "DO NOT FLY "+strings.Join(c.Held, ", ")+": held in the new revision; no holes are listed.")
	}
	if len(c.WasHeld) > 0 {
		all = append(all, strings.Join(c.WasHeld, ", ")+" was held and is not any more: set all its pins from the new sheets.")
	}
	return all
}

// stackWords are a stack's changes besides its joints, a sentence each.
func (c List) stackWords(h *rig.Hung) (all []string) {
	for _, p := range c.Picks {
		if p.Stack == h.ID {
			all = append(all, fmt.Sprintf("pick holes: %s, now %s", rules.PickHoleWords(c.old.Stack(h.ID).Hung), rules.PickHoleWords(h)))
		}
	}
	was, now := 0, len(h.Cabinets)
	if old := c.old.Stack(h.ID); old != nil {
		was = len(old.Cabinets)
	}
	switch {
	case slices.Contains(c.Held, h.ID):
	case slices.Contains(c.Added, h.ID), slices.Contains(c.WasHeld, h.ID):
		all = append(all, fmt.Sprintf("all %s are set from the new sheets", say.Count(now, "joint")))
	case now > was:
		all = append(all, "new: "+say.Numbered("cabinet", numbers(was+1, now))+"; set their joints from the new dolly sheets")
	case now < was:
		all = append(all, "gone: "+say.Numbered("cabinet", numbers(now+1, was)))
	}
	return append(all, c.otherWords(h.ID)...)
}

// numbers are all from one to another.
func numbers(from, to int) (all []int) {
	for n := from; n <= to; n++ {
		all = append(all, n)
	}
	return all
}

// otherWords are the other changes of a stack, or of the job where stack is "".
func (c List) otherWords(stack string) (all []string) {
	for _, o := range c.Others {
		if o.Stack == stack {
			all = append(all, fmt.Sprintf("%s: %s, now %s", o.What, o.From, o.To))
		}
	}
	return all
}

// jobWords are changes of the whole job, and of stacks that one revision has alone.
func (c List) jobWords() []string {
	all := append(c.otherWords(""), listed(
		nameList{"stacks added", c.Added}, nameList{"stacks gone", c.Gone}, nameList{"points added", c.PointsAdded}, nameList{"points gone", c.PointsGone})...)
	if c.Old != c.New && len(all)+len(c.Joints)+len(c.Picks)+len(c.Points)+len(c.Others) == 0 {
		all = append(all, "The jobs differ in nothing that is listed here.")
	}
	return all
}

// A nameList is a list of names and what they are.
type nameList struct {
	of    string
	names []string
}

// listed writes those lists that have a name: 'stacks added: SL, SR'.
func listed(lists ...nameList) (all []string) {
	for _, l := range lists {
		if len(l.names) > 0 {
			all = append(all, l.of+": "+strings.Join(l.names, ", "))
		}
	}
	return all
}

// mostWords say what a point carries at the most, where that is more than finished
// in either revision: while it is being built, or with an unknown centre of gravity.
func mostWords(u say.Units, p PointChange) string {
	if p.FromMost <= p.From+loadDust && p.ToMost <= p.To+loadDust {
		return ""
	}
	return fmt.Sprintf("at the most, at a lift, design %s, now %s: %s", u.Load(p.FromMost), u.Load(p.ToMost), u.Difference(p.FromMost, p.ToMost))
}

// closing says how many joints and link pins are set, and how many joints stay: a crew is
// done when it has counted as many.
func (c List) closing() string {
	verb := "are"
	if c.Set == 1 {
		verb = "is"
	}
	return fmt.Sprintf("%s %s set anew (link pins: %d out, %d in), %d stay", say.Count(c.Set, "joint"), verb, c.Out, c.Pins, c.Stay)
}

// orders say which cabinets of a stack that both revisions have take the place of others:
// 'cabinets 11 and 12: Long-throw cabinet out, Wide-throw cabinet in'.
func (c List) orders(h *rig.Hung) (all []string) {
	was := c.old.Stack(h.ID)
	if was == nil {
		return nil
	}
	at := map[string][]int{}
	var swaps []string
	for k := range min(len(was.Cabinets), len(h.Cabinets)) {
		a, b := was.Cabinets[k].Cabinet, h.Cabinets[k].Cabinet
		if sameCabinet(a, b) {
			continue
		}
		swap := a.Name + " out, " + b.Name + " in"
		if a.Name == b.Name {
			swap = a.Name + " has other figures: is it another cabinet? Ask"
		}
		if at[swap] == nil {
			swaps = append(swaps, swap)
		}
		at[swap] = append(at[swap], k+1)
	}
	for _, swap := range swaps {
		all = append(all, say.Numbered("cabinet", at[swap])+": "+swap)
	}
	return all
}
