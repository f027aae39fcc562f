package report

import (
	"encoding/csv"
	"fmt"
	"io"
	"strconv"
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
	says := fmt.Sprintf("static: finished, with hoist, chain and rigging; design: static x %s; alone: the whole stack on this point, the other hoist slack, x %s. Heights above %s.",
		rules.FactorWords(p), say.Trimmed(1+p.MassTolerance), j.HeightsFrom)
	b.WriteString("\n" + strings.Join(say.Folded(says, say.Columns), "\n") + "\n" + strings.Join(say.Folded(verdictOf(j), say.Columns), "\n") + "\n")
	return b.String()
}

// writePlaces writes where each point is and what it carries.
func writePlaces(j *worked.Job, b *strings.Builder) {
	u := j.Unit()
	row := func(id, across, upDown, static, design, alone string) {
		line := strings.TrimRight(fmt.Sprintf("%-12s %-26s %-25s %9s %9s %9s", id, across, upDown, static, design, alone), " ")
		if len(line) > say.Columns {
			line = strings.Join(strings.Fields(line), " ")
		}
		fmt.Fprintln(b, line)
	}
	row("point", "across", "up/down", "static", "design", "alone")
	for i, h := range j.Stacks {
		for _, p := range j.Figures.Stacks[i].Points {
			alone := "-"
			if len(h.Picks) == 2 {
				alone = u.Load(p.Alone)
			}
			row(strings.TrimSpace(worked.HeldMark(h)+" "+p.ID), u.Across(p.StageLeft), u.UpDown(p.Downstage), u.Load(p.Static), u.Load(p.Design), alone)
			if m := p.Most; m.Where != "" {
				fmt.Fprintf(b, "%-12s %52s %9s %9s\n", "", "MORE AT "+strings.ToUpper(m.Where)+":", u.Load(m.Static), u.Load(m.Design))
			}
		}
	}
	for _, o := range j.Figures.Others {
		row(o.ID, u.Across(o.StageLeft), u.UpDown(o.Downstage), u.Load(o.Static), u.Load(o.Design), "-")
	}
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
			say.Inset(b, p.ID+": "+rules.HoistSum(h.Hung, n))
		}
	}
	for _, o := range j.Figures.Others {
		fmt.Fprintf(b, "%-12s %16s %16s\n", o.ID, "", u.Length(o.Height))
		say.Inset(b, o.ID+": "+o.What)
	}
}

// pointColumns head the venue's table as data. SI units stand in the names.
var pointColumns = []string{"point", "stack", "what", "held", "stage_left_m", "downstage_m", "pick_height_m", "low_hook_m", "high_hook_m", "chain_needed_m",
	"static_kg", "design_kg", "static_kn", "design_kn", "most_at", "most_static_kg", "most_design_kg", "alone_kg", "hoist", "hoist_class", "hoist_capacity_kn", "hoist_use", "includes", "secondary", "secondary_rating_kn"}

// PointsCSV writes the venue's table as comma-separated values: a row per point,
// numbers not rounded, nothing where something is not known or does not apply.
// The error is the writer's.
//
// Source: RFC 4180.
func PointsCSV(j *worked.Job, to io.Writer) error {
	w := csv.NewWriter(to)
	w.UseCRLF = true
	rows := [][]string{pointColumns}
	for i, h := range j.Stacks {
		for n, p := range j.Figures.Stacks[i].Points {
			rows = append(rows, csvRow(h, n, p))
		}
	}
	for _, o := range j.Figures.Others {
		rows = append(rows, []string{o.ID, "", o.What, "no", exact(o.StageLeft), exact(o.Downstage), "", exact(o.Height), "", "",
			exact(o.Static), exact(o.Design), exact(say.Kilonewtons(o.Static)), exact(say.Kilonewtons(o.Design)), "", exact(o.Static), exact(o.Design), "", "", "", "", "", "all", "", ""})
	}
	return w.WriteAll(rows)
}

func csvRow(h *rules.Checked, i int, p rig.Point) []string {
	m := h.Picks[i].Hoist
	alone, secondary, rating := "", "", ""
	if len(h.Picks) == 2 {
		alone = exact(p.Alone)
	}
	if h.Secondary != nil {
		secondary, rating = h.Secondary.What, exact(h.Secondary.Rating/1000)
	}
	held := "no"
	if h.Held() {
		held = "yes"
	}
	return []string{p.ID, h.ID, h.Name, held, exact(p.StageLeft), exact(p.Downstage), exact(p.PickHeight), exact(p.LowHook), exactOrNone(p.HighHook), exactOrNone(p.ChainNeeded),
		exact(p.Static), exact(p.Design), exact(say.Kilonewtons(p.Static)), exact(say.Kilonewtons(p.Design)), p.Most.Where, exact(p.Most.Static), exact(p.Most.Design), alone, m.Key, m.Class, exact(m.Capacity / 1000), exact(p.HoistUse),
		"hoist, chain and rigging", secondary, rating}
}

// exact writes a number with all its digits.
func exact(x float64) string { return strconv.FormatFloat(x, 'g', -1, 64) }

// exactOrNone writes a number with all its digits, or nothing where it is not known.
func exactOrNone(x *float64) string {
	if x == nil {
		return ""
	}
	return exact(*x)
}
