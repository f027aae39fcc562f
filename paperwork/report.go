package paperwork

import (
	"fmt"
	"sort"
	"strings"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
)

// columns is how wide a report may be.
const columns = 100

// spaced joins parts with wide gaps, or where that is too wide with a line each.
func spaced(parts ...string) string {
	for _, gap := range []string{"     ", "   "} {
		if s := strings.Join(parts, gap); len([]rune(s)) <= columns {
			return s
		}
	}
	return strings.Join(parts, "\n    ")
}

// Report writes the figures for a person at a terminal: held stacks first, the
// verdict last, at most 100 columns.
func (j *Job) Report() string {
	var b strings.Builder
	stacks := append([]*rules.Checked{}, j.stacks...)
	sort.SliceStable(stacks, func(a, c int) bool { return len(stacks[a].Holds) > 0 && len(stacks[c].Holds) == 0 })
	for _, h := range stacks {
		reportHung(h, &b)
		b.WriteString("\n")
	}
	j.reportOthers(&b)
	b.WriteString(strings.Join(folded(j.verdict(), columns), "\n") + "\n")
	return b.String()
}

// reportOthers writes what else the job hangs from the roof.
func (j *Job) reportOthers(b *strings.Builder) {
	u := j.unit()
	for i, o := range j.Figures.Others {
		if i == 0 {
			fmt.Fprintf(b, pointLine, "other point", "across", "up/down", "static", "design")
		}
		fmt.Fprintf(b, pointLine, o.ID, u.Across(o.StageLeft), u.UpDown(o.Downstage), u.Load(o.Static), u.Load(o.Design))
	}
	if len(j.Figures.Others) > 0 {
		b.WriteString("\n")
	}
}

// pointLine is how a point stands in a report.
const pointLine = "  %-13s %-24s %-24s %9s  %9s\n"

// verdict is the last line: how many stacks, which are held, the roof's total.
func (j *Job) verdict() string {
	u, t := j.unit(), j.Figures.Total
	return fmt.Sprintf("%s, %s. Roof total %s static, %s design%s", say.Count(len(j.stacks), "stack"), j.heldWords(),
		u.Load(t.Static), u.Load(t.Design), say.After("; ", j.includesHeld()))
}

// heldWords says which stacks are held: '1 held: SR', 'none held'.
func (j *Job) heldWords() string {
	var held []string
	for _, h := range j.stacks {
		if h.Held() {
			held = append(held, h.ID)
		}
	}
	if len(held) == 0 {
		return "no hold found by this calculation"
	}
	return fmt.Sprintf("%d held: %s", len(held), strings.Join(held, ", "))
}

// includesHeld says that totals count held stacks too, where there are any.
func (j *Job) includesHeld() string {
	n := 0
	for _, h := range j.stacks {
		if h.Held() {
			n++
		}
	}
	if n == 0 {
		return ""
	}
	return "includes " + say.Count(n, "held stack")
}

func reportHung(h *rules.Checked, b *strings.Builder) {
	if h.Held() {
		fmt.Fprintf(b, "DO NOT FLY  %s  %s\n", h.ID, h.Name)
		reportFindings(h, b, "", h.Holds)
	} else {
		fmt.Fprintln(b, spaced(h.ID+"  "+h.Name, h.Verdict()))
		reportStack(h, b)
		reportJoints(h, b)
		reportLifts(h, b)
	}
	reportPoints(h, b)
	reportFindings(h, b, "caution  ", h.Cautions)
}

func reportStack(h *rules.Checked, b *strings.Builder) {
	u := h.Unit()
	fmt.Fprintln(b, spaced("  "+say.Count(len(h.Cabinets), "cabinet")+", "+u.Load(h.Finished.Centre.Mass), rules.PickHoles(h.Hung),
		fmt.Sprintf("aim %s (wanted %s)", say.Aim(h.Finished.Poses[0].Aim), say.Aim(h.Aim)),
		"lowest "+u.Length(h.Raise+h.Finished.Lowest())))
	fmt.Fprintf(b, "  most used: %s\n", h.MostUsedWords())
}

func reportJoints(h *rules.Checked, b *strings.Builder) {
	u := h.Unit()
	fmt.Fprintf(b, "  %5s  %4s  %-37s %12s  %9s  %9s  %s\n", "joint", "hole", "cabinet", "aim", "hinge", "link", "dolly")
	for k, c := range h.Cabinets {
		j := h.Finished.Joints[k]
		fmt.Fprintf(b, "  %5d  %4s  %-37s %12s  %9s  %9s  %s\n", k+1, c.Hole.Label, fmt.Sprintf("%d %s", k+1, c.Name),
			say.Aim(h.Finished.Poses[k].Aim), u.Force(j.Hinge()), linkWords(u, j.Link), say.Dolly(h.Sets.Of(k+1)))
	}
}

// linkWords writes a link's force; a minus stands for one that is pushed.
func linkWords(u say.Units, n float64) string {
	if n < -rig.Alike {
		return "-" + u.Force(n)
	}
	return u.Force(n)
}

func reportLifts(h *rules.Checked, b *strings.Builder) {
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
func hookWords(h *rules.Checked, s *rig.State) string {
	var hooks []string
	for i := range s.Loads {
		hooks = append(hooks, h.Unit().Reading(h.Hook(s, i)))
	}
	return strings.Join(hooks, ", ")
}

func reportPoints(h *rules.Checked, b *strings.Builder) {
	u := h.Unit()
	fmt.Fprintf(b, pointLine, "point", "across", "up/down", "static", "design")
	for _, p := range h.Points {
		fmt.Fprintf(b, pointLine, p.ID, u.Across(p.StageLeft), u.UpDown(p.Downstage), u.Load(p.Static), u.Load(p.Design))
	}
}

// reportFindings writes findings in columns, long sentences on lines of their own.
func reportFindings(h *rules.Checked, b *strings.Builder, kind string, findings []rules.Finding) {
	for _, f := range findings {
		head := fmt.Sprintf("  %s%-23s", kind, say.Listed(f.Rule, f.Where.String()))
		for _, line := range folded(f.Says, columns-len([]rune(head))-1) {
			fmt.Fprintf(b, "%s %s\n", head, line)
			head = strings.Repeat(" ", len([]rune(head)))
		}
	}
}

// folded breaks a sentence into lines of at most n characters: at blanks, and
// inside a word only where the word alone is longer.
func folded(s string, n int) (lines []string) {
	line := ""
	for _, word := range strings.Fields(s) {
		for r := []rune(word); len(r) > n; r = []rune(word) {
			if line != "" {
				lines, line = append(lines, line), ""
			}
			lines, word = append(lines, string(r[:n])), string(r[n:])
		}
		if line != "" && len([]rune(line))+1+len([]rune(word)) > n {
			lines, line = append(lines, line), ""
		}
		line = strings.TrimSpace(line + " " + word)
	}
	return append(lines, line)
}
