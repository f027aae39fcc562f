package changes

import (
	"fmt"
	"slices"
	"strings"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// Report writes the changes for a person at a terminal, at most 100 columns; the
// count of joints last. It draws both packs to tell which sheets change, and returns
// an error where one does not fit on paper.
func (c List) Report() (string, error) {
	sheets, err := c.paperWords()
	if err != nil {
		return "", err
	}
	var b strings.Builder
	b.WriteString(c.revisions() + "\n")
	for _, s := range c.warnings() {
		say.Inset(&b, s)
	}
	for _, id := range c.changedStacks() {
		c.writeStack(&b, c.new.Stack(id).Hung)
	}
	c.writePoints(&b)
	b.WriteString("\n")
	for _, s := range slices.Concat(c.jobWords(), c.venueWords(), sheets, []string{c.closing()}) {
		b.WriteString(strings.Join(say.Folded(s, say.Columns), "\n") + "\n")
	}
	return b.String(), nil
}

// writeStack writes what changes of a stack that both revisions have: its joints in
// columns, then all else.
func (c List) writeStack(b *strings.Builder, h *rig.Hung) {
	fmt.Fprintf(b, "\n%s  %s\n", h.ID, h.Name)
	was := c.old.Stack(h.ID)
	for i, j := range c.jointsOf(h.ID) {
		if i == 0 {
			fmt.Fprintf(b, "  %5s  %-37s %5s  %5s  %s\n", "joint", "cabinet", "from", "to", "dolly")
		}
		k := j.Cabinet - 1
		fmt.Fprintf(b, "  %5d  %-37s %5s  %5s  %s\n", j.Cabinet, fmt.Sprintf("%d %s", j.Cabinet, h.Cabinets[k].Name), was.Cabinets[k].Hole.Label, h.Cabinets[k].Hole.Label, say.Dolly(h.Sets.Of(j.Cabinet)))
	}
	for _, s := range c.stackWords(h) {
		say.Inset(b, s)
	}
}

// writePoints writes what changes of points, in columns.
func (c List) writePoints(b *strings.Builder) {
	u := c.new.Unit()
	for i, p := range c.Points {
		if i == 0 {
			fmt.Fprintf(b, "\n%-12s %10s %10s  %10s %10s  %s\n", "point", "static was", "static now", "design was", "design now", "design")
		}
		moved := ""
		if p.Moved {
			moved = "; MOVED"
		}
		fmt.Fprintf(b, "%-12s %10s %10s  %10s %10s  %s%s\n", p.ID, u.Load(p.FromStatic), u.Load(p.ToStatic), u.Load(p.From), u.Load(p.To), u.Difference(p.From, p.To), moved)
		if most := mostWords(u, p); most != "" {
			say.Inset(b, p.ID+": "+most)
		}
	}
}
