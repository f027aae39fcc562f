// Package report writes a worked job for people at a terminal, the venue's table as
// data, and what a pack that was written holds.
package report

import (
	"fmt"
	"strings"
	"unicode/utf8"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/told"
	"hangpack/paperwork/worked"
)

// Check writes the figures for a person at a terminal: held stacks first, the verdict
// last, at most 100 columns.
func Check(j *worked.Job) string {
	var b strings.Builder
	for _, held := range []bool{true, false} {
		for _, h := range j.Stacks {
			if h.Held() == held {
				writeStack(h, &b)
				b.WriteString("\n")
			}
		}
	}
	writeOthers(j, &b)
	b.WriteString(strings.Join(say.Folded(verdictOf(j), say.Columns), "\n") + "\n")
	return b.String()
}

// writeStack writes one stack: a held one with its holds in place of its figures.
func writeStack(h *rules.Checked, b *strings.Builder) {
	if h.Held() {
		fmt.Fprintf(b, "DO NOT FLY  %s  %s\n", h.ID, h.Name)
		writeFindings(b, "", h.Holds)
		if says := told.OtherHoleWords(h); says != "" {
			say.Inset(b, says)
		}
	} else {
		fmt.Fprintln(b, say.Spaced(h.ID+"  "+h.Name, told.Verdict(h)))
		writeFigures(h, b)
		writeJoints(h.Hung, b)
		writeLifts(h.Hung, b)
	}
	writePoints(h.Hung, b)
	writeFindings(b, "caution  ", h.Cautions)
}

// writeFigures writes what a stack weighs, hangs from and looks at.
func writeFigures(h *rules.Checked, b *strings.Builder) {
	u := h.Unit()
	fmt.Fprintln(b, say.Spaced("  "+say.Count(len(h.Cabinets), "cabinet")+", "+u.Load(h.Finished.Centre.Mass), rules.PickHoleWords(h.Hung),
		fmt.Sprintf("aim %s (wanted %s)", say.Aim(h.Finished.Poses[0].Aim), say.Aim(h.Aim)),
		"lowest "+u.Length(h.Raise+h.Finished.Lowest())))
	for _, line := range say.Folded("most used: "+h.MostUsedWords(), say.Columns-2) {
		fmt.Fprintln(b, "  "+line)
	}
	for _, says := range told.PassedOverWords(h) {
		say.Inset(b, says)
	}
}

// writeJoints writes the joints of the finished stack in columns, from the top.
func writeJoints(h *rig.Hung, b *strings.Builder) {
	u := h.Unit()
	wide := len("hole")
	for _, c := range h.Cabinets {
		wide = max(wide, utf8.RuneCountInString(say.Hole(c.Hole.Label, c.Hole.Splay)))
	}
	jointRow(b, wide, "joint", "hole", "cabinet", "aim", "hinge", "link", "dolly")
	for k, c := range h.Cabinets {
		j := h.Finished.Joints[k]
		jointRow(b, wide, fmt.Sprint(k+1), say.Hole(c.Hole.Label, c.Hole.Splay), fmt.Sprintf("%d %s", k+1, c.Name),
			say.Aim(h.Finished.Poses[k].Aim), u.Force(j.Hinge()), linkWords(u, j.Link), say.Dolly(h.Sets.Of(k+1)))
	}
}

// jointRow writes one joint in columns, that of the holes so wide, or run together where
// they do not fit.
func jointRow(b *strings.Builder, wide int, joint, hole, cabinet, aim, hinge, link, dolly string) {
	line := fmt.Sprintf("  %5s  %*s  %-37s %12s  %9s  %9s  %s", joint, wide, hole, cabinet, aim, hinge, link, dolly)
	if utf8.RuneCountInString(line) > say.Columns {
		line = "  " + strings.Join(strings.Fields(line), " ")
	}
	fmt.Fprintln(b, line)
}

// linkWords writes a link's force; a minus stands for one that is pushed.
func linkWords(u say.Units, n float64) string {
	if n < -rig.Alike {
		return "-" + u.Force(n)
	}
	return u.Force(n)
}

// writeLifts writes the stack after each lift but the last, in columns.
func writeLifts(h *rig.Hung, b *strings.Builder) {
	if len(h.Lifts) == 0 {
		return
	}
	u := h.Unit()
	fmt.Fprintf(b, "  %-4s  %5s  %-21s %12s  %s\n", "lift", "flown", "hook", "aim", "drop")
	for _, s := range h.Lifts {
		fmt.Fprintf(b, "  %-4s  %5d  %-21s %12s  %s\n", say.Dolly(h.Sets.Of(s.Flown)), s.Flown,
			hookWords(h, s), say.Aim(s.Poses[0].Aim), u.Length(s.Drop()))
	}
}

// hookWords writes what the hooks hold, front first.
func hookWords(h *rig.Hung, s *rig.State) string {
	var hooks []string
	for i := range s.Loads {
		hooks = append(hooks, h.Unit().Reading(h.Hook(s, i)))
	}
	return strings.Join(hooks, ", ")
}

// writePoints writes the points of a stack in columns.
func writePoints(h *rig.Hung, b *strings.Builder) {
	u := h.Unit()
	fmt.Fprintf(b, pointLine, "point", "across", "up/down", "static", "design")
	for _, p := range h.Points {
		fmt.Fprintf(b, pointLine, p.ID, u.Across(p.StageLeft), u.UpDown(p.Downstage), u.Load(p.Static), u.Load(p.Design))
	}
}

// pointLine is how a point stands in a report.
const pointLine = "  %-13s %-24s %-24s %9s  %9s\n"

// ruleColumn is how many characters a rule and its places take beside their sentence.
const ruleColumn = 23

// writeFindings writes findings in columns, those that repeat at once; a long sentence,
// and places that take more than their column, take lines of their own.
func writeFindings(b *strings.Builder, kind string, findings []rules.Finding) {
	for _, l := range told.Gathered(findings) {
		head := kind + say.Listed(l.Rule, told.Places(l.At...))
		if len([]rune(head)) > len(kind)+ruleColumn {
			rest := say.Folded(strings.TrimPrefix(head, kind), say.Columns-len(kind)-6)
			fmt.Fprintln(b, "  "+kind+strings.Join(rest, "\n      "+strings.Repeat(" ", len(kind))))
			head = ""
		}
		for _, line := range say.Folded(l.Words(), say.Columns-len(kind)-ruleColumn-3) {
			fmt.Fprintf(b, "  %-*s %s\n", len(kind)+ruleColumn, head, line)
			head = ""
		}
	}
}

// writeOthers writes what else the job hangs from the roof.
func writeOthers(j *worked.Job, b *strings.Builder) {
	u := j.Unit()
	for i, o := range j.Figures.Others {
		if i == 0 {
			fmt.Fprintf(b, pointLine, "other point", "across", "up/down", "static", "design")
		}
		fmt.Fprintf(b, pointLine, o.ID, u.Across(o.StageLeft), u.UpDown(o.Downstage), u.Load(o.Static), u.Load(o.Design))
	}
	for _, words := range rules.OthersMeet(j.Job) {
		say.Inset(b, words)
	}
	if len(j.Figures.Others) > 0 {
		b.WriteString("\n")
	}
}

// verdictOf is the last line: how many stacks, which are held, the roof's total.
func verdictOf(j *worked.Job) string {
	u, t := j.Unit(), j.Figures.Total
	return fmt.Sprintf("%s, %s. Roof total %s static, %s design%s", say.Count(len(j.Stacks), "stack"), j.HeldWords(),
		u.Load(t.Static), u.Load(t.Design), say.After("; ", j.IncludesHeld()))
}
