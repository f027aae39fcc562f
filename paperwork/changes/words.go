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
		all = append(all, "TWO DIFFERENT JOBS ARE CALLED REV "+c.new.Revision+": give the new one another revision, or sheets of both will be mixed up.")
	}
	if len(c.Held) > 0 {
		all = append(all, "DO NOT FLY "+strings.Join(c.Held, ", ")+": held in the new revision; no holes are listed.")
	}
	if len(c.WasHeld) > 0 {
		all = append(all, strings.Join(c.WasHeld, ", ")+" was held and is not any more: set all its pins from the new sheets.")
	}
	return all
}

// changedStacks are the stacks that both revisions have and that have changes of
// their own, in the order of the new one.
func (c List) changedStacks() (ids []string) {
	for _, h := range c.new.Stacks {
		own := func(id string) bool { return id == h.ID }
		if slices.ContainsFunc(c.Joints, func(j JointChange) bool { return own(j.Stack) }) ||
			slices.ContainsFunc(c.Picks, func(p PickChange) bool { return own(p.Stack) }) ||
			slices.ContainsFunc(c.Others, func(o OtherChange) bool { return own(o.Stack) }) {
			ids = append(ids, h.ID)
		}
	}
	return ids
}

// jointsOf are the joints of a stack that move.
func (c List) jointsOf(stack string) (joints []JointChange) {
	for _, j := range c.Joints {
		if j.Stack == stack {
			joints = append(joints, j)
		}
	}
	return joints
}

// stackWords are a stack's changes besides its joints, a sentence each.
func (c List) stackWords(h *rig.Hung) (all []string) {
	for _, p := range c.Picks {
		if p.Stack == h.ID {
			all = append(all, fmt.Sprintf("pick holes: %s, now %s", rules.PickHoleWords(c.old.Stack(h.ID).Hung), rules.PickHoleWords(h)))
		}
	}
	if new := numbersOf(c.CabinetsAdded, h.ID); new != "" {
		all = append(all, "new or of another type: cabinets "+new+"; set their joints from the new dolly sheets")
	}
	if gone := numbersOf(c.CabinetsGone, h.ID); gone != "" {
		all = append(all, "gone or of another type: cabinets "+gone)
	}
	return append(all, c.otherWords(h.ID)...)
}

// numbersOf lists the cabinets of a stack among some that changed: '3, 5 to 7'.
func numbersOf(changes []CabinetChange, stack string) string {
	most, changed := 0, map[int]bool{}
	for _, c := range changes {
		if c.Stack == stack {
			most, changed[c.Cabinet] = max(most, c.Cabinet), true
		}
	}
	return say.Those(most, func(n int) bool { return changed[n] })
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
	all := append(c.otherWords(""), listed("",
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
func listed(end string, lists ...nameList) (all []string) {
	for _, l := range lists {
		if len(l.names) > 0 {
			all = append(all, l.of+": "+strings.Join(l.names, ", ")+end)
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

// closing says how many joints and link pins move, and how many joints stay: a crew is
// done when it has counted as many.
func (c List) closing() string {
	verb := "move"
	if c.Move == 1 {
		verb = "moves"
	}
	return fmt.Sprintf("%s %s (%s), %d stay", say.Count(c.Move, "joint"), verb, say.Count(c.pins(), "pin"), c.Stay)
}

// pins counts the link pins of the joints that move.
func (c List) pins() (n int) {
	for _, j := range c.Joints {
		n += c.new.Stack(j.Stack).Cabinets[j.Cabinet-1].LinkPins
	}
	return n
}
