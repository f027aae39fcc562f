package sheets

import (
	"fmt"
	"strings"

	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/worked"
)

// stackHead is what stands at the top of a stack's sheets.
func stackHead(h *rig.Hung) parts.Head {
	picks := "one pick"
	if len(h.Picks) == 2 {
		picks = "two picks"
	}
	return parts.Head{
		ID: h.ID, Name: h.Name, Shape: string(h.Shape),
		Says: fmt.Sprintf("%s · %s · %s", say.Count(len(h.Cabinets), "cabinet"), h.Unit().Load(h.Finished.Centre.Mass), picks),
	}
}

// SetName names set k, counted from 0, as what rolls in and out: 'dolly A', or 'the
// cabinets' where there is no dolly.
func SetName(h *rig.Hung, k int) string {
	if h.HasDollies() {
		return "dolly " + say.Dolly(k)
	}
	if len(h.Cabinets) == 1 {
		return "the cabinet"
	}
	return "the cabinets"
}

// noteOf is what the job says of a stack besides, "" where it says nothing. It may name
// holes, so a held stack's is not printed.
func noteOf(h *rules.Checked) string {
	switch {
	case h.Note == "":
		return ""
	case h.Held():
		return "Note: not printed while it is held"
	}
	return "Note: " + h.Note
}

// setSpan is the cabinets of set k, counted from 0.
func setSpan(h *rig.Hung, k int) say.Span {
	first := h.Sets.First(k)
	return say.Span{From: first + 1, To: first + h.Sets[k]}
}

// HoldsWords say which cabinets a span is, run by run: '4 Long-throw, 2 Wide-throw'.
func HoldsWords(h *rig.Hung, s say.Span) string {
	var parts []string
	for _, run := range say.Runs(s, func(n int) bool { return h.Cabinets[n-1].Cabinet == h.Cabinets[n-2].Cabinet }) {
		parts = append(parts, fmt.Sprintf("%d %s", run.To-run.From+1, h.Cabinets[run.From-1].Name))
	}
	return strings.Join(parts, ", ")
}

// Above names the body above cabinet n in few letters: '4', and 'bar' above the first.
func Above(n int) string {
	if n == 1 {
		return "bar"
	}
	return fmt.Sprint(n - 1)
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

// showHole is the hole of the joint above cabinet n in running words, as it flies.
func showHole(h *rig.Hung, n int) string {
	at := h.Cabinets[n-1].Hole
	return say.Hole(at.Label, at.Splay)
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
	from, to := h.Between(func(v *rig.Hung) float64 { return v.Finished.Poses[n-1].Aim })
	return say.Between(from, to, say.Aim)
}

// datumOf is what the plan is measured from, in words.
func datumOf(j *worked.Job) string { return say.Given(j.Datum) }

// The names of some sheets of a stack: codes and clicks call them by these.
func pinName(h *rig.Hung) string         { return h.ID + " PINS" }
func calculationName(h *rig.Hung) string { return h.ID + " CALCULATION" }

// codeOf is a stack's code on the cover and on its pin sheet: the job's address of that
// sheet, or without one all pins as text.
func codeOf(h *rules.Checked) paper.Code {
	switch {
	case h.Held():
		return paper.Code{Text: codeHead(h.Hung) + " DO NOT FLY", To: stackHead(h.Hung).HeldName()}
	case h.Job.URL == "":
		return paper.Code{Text: pinText(h.Hung, 1, len(h.Cabinets)), To: pinName(h.Hung)}
	}
	return addressOf(h.Hung, pinName(h.Hung))
}

// addressOf is the job's address of a stack's sheet. One without placeholders gets the
// sheet's name as a fragment, which leads right when pages before it come or go.
// Source: RFC 8118, section 3 (nameddest=).
func addressOf(h *rig.Hung, sheet string) paper.Code {
	url := strings.ReplaceAll(h.Job.URL, "{stack}", h.ID)
	if !strings.Contains(h.Job.URL, "{page}") && !strings.Contains(h.Job.URL, "{stack}") {
		url += "#nameddest=" + paper.Destination(sheet)
	}
	return paper.Code{Text: url, To: sheet}
}

// codeHead is what every code that carries text begins with: which stack, which
// revision, the mark of the sheet that it stands on. It is in the letters of a QR code's
// alphanumeric mode.
func codeHead(h *rig.Hung) string { return h.ID + " REV {rev} {mark}" }

// pinText is the pick holes, where the first cabinet is among them, and the holes of
// cabinets from to, both counted from 1, as a phone shows them with no network: 'SL REV B
// 7KQ2 PICK 22 1:0 2:0.5'.
func pinText(h *rig.Hung, from, to int) string {
	parts := []string{codeHead(h)}
	if from == 1 {
		parts = append(parts, pickText(h))
	}
	for n := from; n <= to; n++ {
		parts = append(parts, fmt.Sprintf("%d:%s", n, h.Cabinets[n-1].Hole.Label))
	}
	return strings.Join(parts, " ")
}

// pickText is the pick holes of a stack in its code: 'PICK 22', 'PICK FRONT 5 REAR 33'.
func pickText(h *rig.Hung) string {
	words := []string{"PICK"}
	for i, hole := range h.Holes {
		if end := h.End(i); end != "" {
			words = append(words, strings.ToUpper(string(end)))
		}
		words = append(words, h.Label(hole).Text)
	}
	return strings.Join(words, " ")
}
