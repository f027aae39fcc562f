package sheets

import (
	"fmt"
	"strings"

	"hangpack/layouts/parts"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
	"hangpack/paperwork/worked"
)

// HoldsWords say which cabinets a dolly holds: '4 Long-throw, 2 Wide-throw'.
func HoldsWords(h *rig.Hung, s say.Span) string {
	var parts []string
	for _, run := range say.Runs(s, func(n int) bool { return h.Cabinets[n-1].Cabinet == h.Cabinets[n-2].Cabinet }) {
		parts = append(parts, fmt.Sprintf("%d %s", run.To-run.From+1, h.Cabinets[run.From-1].Name))
	}
	return strings.Join(parts, ", ")
}

// SetName names set k, counted from 0, as what rolls in and out.
func SetName(h *rig.Hung, k int) string {
	if h.HasDollies() {
		return "dolly " + say.Dolly(k)
	}
	if len(h.Cabinets) == 1 {
		return "the cabinet"
	}
	return "the cabinets"
}

// pinTarget names a stack's pin sheet to codes and clicks.
func pinTarget(h *rig.Hung) string { return "pins " + h.ID }

// stackHead is what stands at the top of a stack's sheets.
func stackHead(h *rig.Hung) parts.Head {
	picks := "one pick"
	if len(h.Picks) == 2 {
		picks = "two picks"
	}
	return parts.Head{
		ID: h.ID, Name: h.Name, Revision: h.Job.Revision, Shape: string(h.Shape),
		Says: fmt.Sprintf("%s · %s · %s", say.Count(len(h.Cabinets), "cabinet"), h.Unit().Load(h.Finished.Centre.Mass), picks),
	}
}

// JointHole is a hole as it prints: as stamped, with its splay beside it where the
// label is not the same figure.
func JointHole(at job.Hole) parts.JointHole {
	p := parts.JointHole{Label: at.Label}
	if !say.SameFigure(at.Label, at.Splay) {
		p.Splay = say.Splay(at.Splay) + "°"
	}
	return p
}

// label joins a word and the end of the bar it is at.
func label(word string, end rig.End) string {
	if end == "" {
		return word
	}
	return word + " " + string(end)
}

// aimOf writes how cabinet n of the finished stack looks, wherever unknown
// centres of gravity lie.
func aimOf(h *rig.Hung, n int) string {
	from, to := h.Over(func(v *rig.Hung) float64 { return v.Finished.Poses[n-1].Aim })
	return say.Between(from, to, say.Aim)
}

// datumOf is what the plan is measured from, in words.
func datumOf(j *worked.Job) string { return say.Given(j.Datum) }
