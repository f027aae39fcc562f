// Package told gathers what the rules found of a stack into lines for people: what comes
// up at several places is one line that names them all, the gravest line first.
package told

import (
	"cmp"
	"fmt"
	"slices"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
)

// A Line is findings of one rule that are told at once: of one kind of part, at one end
// and of one piece of gear. It is the worst of them, the first of equals.
type Line struct {
	rules.Finding
	At    []rig.Where // of all of them, in the order of the findings
	alike bool        // whether all say the same
}

// A kind is what findings of one line have in common. Those that are neither more nor
// less bad than another say the same, too.
type kind struct {
	rule, of string
	end      rig.End
	gear     string
	says     string
}

func kindOf(f rules.Finding) kind {
	k := kind{f.Rule, f.Of, f.Where.End, f.Where.Gear, f.Says}
	if f.By != 0 {
		k.says = ""
	}
	return k
}

// Gathered are findings as lines: the gravest rule first; of one rule each kind of part
// after the other, the worst end or gear first; else in the order of the findings.
func Gathered(findings []rules.Finding) (lines []Line) {
	at, first := map[kind]int{}, map[[2]string]int{}
	for i, f := range findings {
		if _, seen := first[[2]string{f.Rule, f.Of}]; !seen {
			first[[2]string{f.Rule, f.Of}] = i
		}
		if k, seen := at[kindOf(f)]; seen {
			lines[k].take(f)
			continue
		}
		at[kindOf(f)] = len(lines)
		lines = append(lines, Line{f, []rig.Where{f.Where}, true})
	}
	slices.SortStableFunc(lines, func(a, b Line) int {
		return cmp.Or(cmp.Compare(rules.Rank(a.Rule), rules.Rank(b.Rule)),
			cmp.Compare(first[[2]string{a.Rule, a.Of}], first[[2]string{b.Rule, b.Of}]), cmp.Compare(b.By, a.By))
	})
	return lines
}

// take adds a finding of the same kind.
func (l *Line) take(f rules.Finding) {
	l.At = append(l.At, f.Where)
	l.alike = l.alike && f.Says == l.Says
	if f.By > l.By {
		l.Finding = f
	}
}

// Words are the sentence of the worst place, for a terminal; where others say something
// else it names that place: '… (worst: lift 2, joint 1)'.
func (l Line) Words() string { return l.worst(Places) }

// OnPaper is the sentence on paper, with the rule before it.
func (l Line) OnPaper() string { return l.Lead() + l.worst(WhereWords) }

func (l Line) worst(write func(...rig.Where) string) string {
	if l.alike {
		return l.Says
	}
	at := l.Where
	at.End, at.Gear = "", ""
	return fmt.Sprintf("%s (worst: %s)", l.Says, cmp.Or(write(at), "finished"))
}

// Verdict says what the calculation found of a stack: 'DO NOT FLY: 1 hold', or 'no hold
// found by this calculation; 2 cautions; 1 not checked'. It never says that it may fly.
func Verdict(h *rules.Checked) string {
	if h.Held() {
		return "DO NOT FLY: " + say.Count(len(Gathered(h.Holds)), "hold")
	}
	cautions, unchecked := Counts(h)
	return fmt.Sprintf("%s; %s; %d not checked", rules.NoHold, say.Count(cautions, "caution"), unchecked)
}

// ShortVerdict is the verdict without the counts that are 0.
func ShortVerdict(h *rules.Checked) string {
	if h.Held() {
		return Verdict(h)
	}
	words := rules.NoHold
	cautions, unchecked := Counts(h)
	if cautions > 0 {
		words += "; " + say.Count(cautions, "caution")
	}
	if unchecked > 0 {
		words += fmt.Sprintf("; %d not checked", unchecked)
	}
	return words
}

// Counts returns how many lines of cautions there are, and how many of what is not checked.
func Counts(h *rules.Checked) (cautions, unchecked int) {
	for _, l := range Gathered(h.Cautions) {
		if l.Rule == rules.NotChecked {
			unchecked++
		} else {
			cautions++
		}
	}
	return cautions, unchecked
}
