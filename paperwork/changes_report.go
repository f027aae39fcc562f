package paperwork

import (
	"fmt"
	"slices"
	"strings"

	"hangpack/paperwork/job"
)

// practiceWords write what a shop checks by.
func practiceWords(p job.Practice) string {
	held := "no"
	if p.OneMustHold {
		held = "yes"
	}
	return fmt.Sprintf("tolerance %s, dynamic factor %s, hoists %s, gear %s, side share %s, least share %s, aim %s°, lift tilt %s°, clearance %s m, reserve %s m, readings %s kg, one must hold %s",
		share(p.MassTolerance), trimmed(p.DynamicFactor), share(p.HoistUse), share(p.GearUse), share(p.SideShare), share(p.LeastShare),
		trimmed(degrees(p.AimTolerance)), trimmed(degrees(p.LiftTilt)), trimmed(p.Clearance), trimmed(p.LimitReserve), trimmed(p.ReadingFloor), held)
}

// Report writes the changes for a person at a terminal, at most 100 columns; the
// count of joints last. It draws both packs to tell which sheets change, and returns
// an error where one does not fit on paper.
func (c Changes) Report() (string, error) {
	var b strings.Builder
	paper, err := c.paperWords()
	fmt.Fprintf(&b, "REV %s %s, now REV %s %s\n", c.old.job.Revision, c.Old, c.new.job.Revision, c.New)
	for _, s := range c.warnings() {
		writeUnder(&b, s)
	}
	for _, id := range c.changedStacks() {
		c.reportStack(&b, c.new.stack(id))
	}
	c.reportPoints(&b)
	b.WriteString("\n")
	for _, s := range append(append(append(c.jobWords(), c.venueWords()...), paper...), c.closing()) {
		b.WriteString(strings.Join(folded(s, columns), "\n") + "\n")
	}
	return b.String(), err
}

// warnings are what has to be known before all else.
func (c Changes) warnings() (all []string) {
	if c.old.job.Revision == c.new.job.Revision && c.Old != c.New {
		all = append(all, "TWO DIFFERENT JOBS ARE CALLED REV "+c.new.job.Revision+": give the new one another revision, or sheets of both will be mixed up.")
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
func (c Changes) changedStacks() (ids []string) {
	for _, h := range c.new.stacks {
		own := func(id string) bool { return id == h.ID }
		if slices.ContainsFunc(c.Joints, func(j JointChange) bool { return own(j.Stack) }) ||
			slices.ContainsFunc(c.Picks, func(p PickChange) bool { return own(p.Stack) }) ||
			slices.ContainsFunc(c.Others, func(o OtherChange) bool { return own(o.Stack) }) {
			ids = append(ids, h.ID)
		}
	}
	return ids
}

func (c Changes) reportStack(b *strings.Builder, h *hung) {
	fmt.Fprintf(b, "\n%s  %s\n", h.ID, h.Name)
	was := c.old.stack(h.ID)
	heads := false
	for _, j := range c.Joints {
		if j.Stack != h.ID {
			continue
		}
		if !heads {
			fmt.Fprintf(b, "  %5s  %-37s %5s  %5s  %s\n", "joint", "cabinet", "from", "to", "dolly")
			heads = true
		}
		k := j.Cabinet - 1
		fmt.Fprintf(b, "  %5d  %-37s %5s  %5s  %s\n", j.Cabinet, fmt.Sprintf("%d %s", j.Cabinet, h.Cabinets[k].Name), was.Cabinets[k].Hole.Label, h.Cabinets[k].Hole.Label, letter(h.setOf(j.Cabinet)-1))
	}
	for _, s := range c.stackWords(h) {
		writeUnder(b, s)
	}
}

// stackWords are a stack's changes besides its joints, a sentence each.
func (c Changes) stackWords(h *hung) (all []string) {
	for _, p := range c.Picks {
		if p.Stack == h.ID {
			all = append(all, fmt.Sprintf("pick holes: %s, now %s", c.old.stack(h.ID).holeWords(), h.holeWords()))
		}
	}
	if n := slices.IndexFunc(c.CabinetsAdded, func(a CabinetChange) bool { return a.Stack == h.ID }); n >= 0 {
		all = append(all, fmt.Sprintf("new from cabinet %d on: set them from the new dolly sheets", c.CabinetsAdded[n].Cabinet))
	}
	if n := slices.IndexFunc(c.CabinetsGone, func(a CabinetChange) bool { return a.Stack == h.ID }); n >= 0 {
		all = append(all, fmt.Sprintf("gone from cabinet %d on", c.CabinetsGone[n].Cabinet))
	}
	for _, o := range c.Others {
		if o.Stack == h.ID {
			all = append(all, fmt.Sprintf("%s: %s, now %s", o.What, o.From, o.To))
		}
	}
	return all
}

// differenceOf writes by how much a load grew or fell.
func (u units) differenceOf(from, to float64) string {
	switch d := to - from; {
	case u.load(max(d, -d)) == u.load(0):
		return "no change"
	case d > 0:
		return u.load(d) + " more"
	default:
		return u.load(-d) + " less"
	}
}

// mostWords say what a point carries at the most, where that is more than finished
// in either revision: while it is being built, or with an unknown centre of gravity.
func (u units) mostWords(p PointChange) string {
	if p.FromMost <= p.From+loadDust && p.ToMost <= p.To+loadDust {
		return ""
	}
	return fmt.Sprintf("at the most, at a lift, design %s, now %s: %s", u.load(p.FromMost), u.load(p.ToMost), u.differenceOf(p.FromMost, p.ToMost))
}

func (c Changes) reportPoints(b *strings.Builder) {
	u := c.new.unit()
	for i, p := range c.Points {
		if i == 0 {
			fmt.Fprintf(b, "\n%-12s %10s %10s  %10s %10s  %s\n", "point", "static was", "static now", "design was", "design now", "design")
		}
		moved := ""
		if p.Moved {
			moved = "; MOVED"
		}
		fmt.Fprintf(b, "%-12s %10s %10s  %10s %10s  %s%s\n", p.ID, u.load(p.FromStatic), u.load(p.ToStatic), u.load(p.From), u.load(p.To), u.differenceOf(p.From, p.To), moved)
		if most := u.mostWords(p); most != "" {
			writeUnder(b, p.ID+": "+most)
		}
	}
}

// jobWords are changes of the whole job, and of stacks that one revision has alone.
func (c Changes) jobWords() (all []string) {
	for _, o := range c.Others {
		if o.Stack == "" {
			all = append(all, fmt.Sprintf("%s: %s, now %s", o.What, o.From, o.To))
		}
	}
	for _, l := range []struct {
		what string
		ids  []string
	}{{"stacks added", c.Added}, {"stacks gone", c.Gone}, {"points added", c.PointsAdded}, {"points gone", c.PointsGone}} {
		if len(l.ids) > 0 {
			all = append(all, l.what+": "+strings.Join(l.ids, ", "))
		}
	}
	if c.Old != c.New && len(all)+len(c.Joints)+len(c.Picks)+len(c.Points)+len(c.Others) == 0 {
		all = append(all, "The jobs differ in nothing that is listed here.")
	}
	return all
}

// pins counts the link pins of the joints that move.
func (c Changes) pins() (n int) {
	for _, j := range c.Joints {
		n += c.new.stack(j.Stack).Cabinets[j.Cabinet-1].LinkPins
	}
	return n
}

// closing is the count by which a crew knows that it is done.
func (c Changes) closing() string {
	verb := "move"
	if c.Move == 1 {
		verb = "moves"
	}
	return fmt.Sprintf("%s %s (%s), %d stay", count(c.Move, "joint"), verb, count(c.pins(), "pin"), c.Stay)
}
