package changes

import (
	"fmt"
	"slices"
	"strings"

	"hangpack/paperwork/say"
)

// Report writes the changes for a person at a terminal, at most 100 columns: stack by
// stack, then the whole job; the count of joints last. It cuts both packs to tell which
// sheets say something else, and returns an error where one does not fit on paper.
func (c List) Report() (string, error) {
	blocks, err := c.blocks()
	if err != nil {
		return "", err
	}
	var b strings.Builder
	b.WriteString(c.revisions() + "\n")
	for _, s := range slices.Concat(c.warnings(), c.venueWords()) {
		say.Inset(&b, s)
	}
	for _, one := range blocks {
		one.write(&b, c.new.Unit())
	}
	b.WriteString("\n")
	for _, s := range []string{keepWords, c.closing()} {
		b.WriteString(strings.Join(say.Folded(s, say.Columns), "\n") + "\n")
	}
	return b.String(), nil
}

// keepWords say how a sheet that stays is told from one that goes.
const keepWords = "A sheet that is kept stays true, whatever REV stands on it: go by its name and its mark."

// write writes a block: its joints in columns, then all else.
func (b block) write(to *strings.Builder, u say.Units) {
	to.WriteString("\n" + strings.TrimSpace(b.id+"  "+b.name) + "\n")
	for _, s := range b.orders {
		say.Inset(to, s)
	}
	for i, j := range b.joints {
		if i == 0 {
			fmt.Fprintf(to, "  %5s  %-35s %-13s %-13s %-5s  %s\n", "joint", "cabinet", "from", "to", "dolly", "another")
		}
		from, to2 := j.holes()
		fmt.Fprintf(to, "  %5d  %-35s %-13s %-13s %-5s  %s\n", j.Cabinet, fmt.Sprintf("%d %s", j.Cabinet, b.hung.Cabinets[j.Cabinet-1].Name),
			say.Hole(from.Label, from.Splay), say.Hole(to2.Label, to2.Splay), say.Dolly(b.hung.Sets.Of(j.Cabinet)), strings.Join(j.Why, ", "))
	}
	for _, s := range b.says {
		say.Inset(to, s)
	}
	for _, p := range b.points {
		say.Inset(to, pointWords(u, p))
	}
	for _, s := range b.sheetWords() {
		say.Inset(to, s[0]+": "+s[1])
	}
}
