package report

import (
	"fmt"
	"strings"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/worked"
)

// Points writes the venue's table for a person at a terminal, at most 100
// columns wide: places and loads, heights and hoists, totals.
func Points(j *worked.Job) string {
	var b strings.Builder
	writePlaces(j, &b)
	writeHeights(j, &b)
	u := j.Unit()
	fmt.Fprintf(&b, "\n%-48s %10s %10s  %10s\n", "total of", "static", "", "design")
	for _, t := range worked.Sums(j) {
		fmt.Fprintf(&b, "%-48s %10s %10s  %10s %10s\n", t.Of+": "+t.Count, u.Load(t.Static), u.Also(t.Static), u.Load(t.Design), u.Also(t.Design))
	}
	p := j.Practice
	says := fmt.Sprintf("static: finished, with hoist, chain and rigging; design: static x %s; governing: the largest design load over the finished stack, its lifts and the tilts that its sheets let pass; "+
		"alone: the whole stack on this point, the other chain slack, x %s. Hold governing and alone against the limit. Heights above %s.",
		rules.FactorWords(p), rules.FactorWords(p), j.HeightsFrom)
	b.WriteString("\n" + strings.Join(say.Folded(says, say.Columns), "\n") + "\n" + strings.Join(say.Folded(verdictOf(j), say.Columns), "\n") + "\n")
	return b.String()
}

// writePlaces writes where each point is and what it carries.
func writePlaces(j *worked.Job, b *strings.Builder) {
	u := j.Unit()
	placeRow(b, "point", "across", "up/down", "static", "design", "governing", "alone")
	for i, h := range j.Stacks {
		for _, p := range j.Figures.Stacks[i].Points {
			alone := "-"
			if len(h.Picks) == 2 {
				alone = u.Load(p.AloneDesign)
			}
			placeRow(b, strings.TrimSpace(worked.HeldMark(h)+" "+p.ID), u.Across(p.StageLeft), u.UpDown(p.Downstage), u.Load(p.Static), u.Load(p.Design), u.Load(p.Governing.Design), alone)
			writeMore(p, u, b)
		}
	}
	for _, o := range j.Figures.Others {
		placeRow(b, o.ID, u.Across(o.StageLeft), u.UpDown(o.Downstage), u.Load(o.Static), u.Load(o.Design), u.Load(o.Design), "-")
	}
}

// placeRow writes one point's place and loads in columns, or run together where they do
// not fit.
func placeRow(b *strings.Builder, id, across, upDown, static, design, governing, alone string) {
	line := strings.TrimRight(fmt.Sprintf("%-10s %-23s %-22s %9s %9s %9s %9s", id, across, upDown, static, design, governing, alone), " ")
	if len(line) > say.Columns {
		line = strings.Join(strings.Fields(line), " ")
	}
	fmt.Fprintln(b, line)
}

// writeMore writes at which lift a point carries more than finished, and which governs.
func writeMore(p rig.Point, u say.Units, b *strings.Builder) {
	if m := p.Most; m.Where != "" {
		fmt.Fprintln(b, under(fmt.Sprintf("%-10s %46s %9s %9s", "", "MORE AT "+strings.ToUpper(m.Where)+":", u.Load(m.Static), u.Load(m.Design))))
	}
	if at := p.Governing.Where; at != "" {
		fmt.Fprintln(b, under(fmt.Sprintf("%-10s %66s %9s", "", "GOVERNED BY "+strings.ToUpper(at)+":", u.Load(p.Governing.Design))))
	}
}

// under is a line below a point's own, cut at its words where it is too long.
func under(line string) string {
	if len(line) <= say.Columns {
		return line
	}
	return "    " + strings.Join(say.Folded(strings.Join(strings.Fields(line), " "), say.Columns-4), "\n    ")
}

// writeHeights writes the heights of each point and the use of its hoist.
func writeHeights(j *worked.Job, b *strings.Builder) {
	u := j.Unit()
	fmt.Fprintf(b, "\n%-12s %16s %16s %16s %16s  %s\n", "point", "pick hole", "low hook", "high hook", "chain needed", "hoist used")
	for i, h := range j.Stacks {
		for _, p := range j.Figures.Stacks[i].Points {
			fmt.Fprintf(b, "%-12s %16s %16s %16s %16s  %s\n", p.ID, u.Length(p.PickHeight), u.Length(p.LowHook), u.Known(p.HighHook), u.Known(p.ChainNeeded), say.Percent(p.HoistUse))
		}
		for n, p := range j.Figures.Stacks[i].Points {
			say.Inset(b, p.ID+": hoist at most "+rules.HoistSum(h.Hung, n))
			if p.ChainNeeded != nil {
				say.Inset(b, p.ID+": chain for its hook down to "+rules.LowWords(h.Hung, h.LowestOfWays(n)))
			}
		}
	}
	for _, o := range j.Figures.Others {
		fmt.Fprintf(b, "%-12s %16s %16s\n", o.ID, "", u.Length(o.Height))
		say.Inset(b, o.ID+": "+o.What)
	}
}
