package sheets

import (
	"fmt"
	"strings"

	"hangpack/layouts"
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// dollyMost is how many cabinets one dolly sheet holds.
const dollyMost = 8

// dollySheets are the sheets that are taped to the dollies, from the top. A dolly of many
// cabinets has one sheet of several pages; without dollies each page is a sheet.
func dollySheets(h *rig.Hung) (sheets []paper.Sheet) {
	for k := range h.Sets {
		var parts []paper.Sheet
		for _, d := range dollyParts(h, k) {
			parts = append(parts, d)
		}
		if h.HasDollies() {
			parts = []paper.Sheet{paper.Joined{Called: parts[0].Name(), Parts: parts}}
		}
		sheets = append(sheets, parts...)
	}
	return sheets
}

// dollyParts are the sheets of set k, counted from 0, each of as many cabinets as one
// holds.
func dollyParts(h *rig.Hung, k int) (parts []layouts.Dolly) {
	set := setSpan(h, k)
	for from := set.From; from <= set.To; from += dollyMost {
		parts = append(parts, dollySheet(h, k, say.Span{From: from, To: min(from+dollyMost-1, set.To)}))
	}
	return parts
}

// dollySheet is the sheet of a span of cabinets of set k, counted from 0.
func dollySheet(h *rig.Hung, k int, s say.Span) layouts.Dolly {
	d := layouts.Dolly{
		ID: h.ID, Shape: string(h.Shape),
		Above: aboveWords(h, s), Picks: pickHolesOf(h, s), First: firstWords(h, k, s),
		Rows: pinRows(h, s, false), Caption: dollyCaption(h, s), Boxes: anyPins(h, s, 2),
		PinsSet: setWords(h, k, s), Sum: splaySum(h, s), Figures: dollyFigures(h, k),
		LoadOut: loadOut(h, k, s), Code: paper.Code{Text: pinText(h, s.From, s.To)},
	}
	d.Word, d.Which = sheetName(h, k, s)
	d.Sheet = strings.ToUpper(h.ID + " " + d.Word + " " + d.Which)
	if d.Code.To = d.Sheet; h.Job.URL != "" {
		d.Address = addressOf(h, d.Sheet)
		d.Address.Small = true
	}
	d.Joins = joinWords(h, k, s)
	d.Below, d.Ghost = belowWords(h, s)
	return d
}

// sheetName is 'dolly', 'A', or where a stack has none 'cabinets', '1-8'.
func sheetName(h *rig.Hung, k int, s say.Span) (word, which string) {
	switch {
	case !h.HasDollies() && s.From == s.To:
		return "cabinet", s.Dashed()
	case !h.HasDollies():
		return "cabinets", s.Dashed()
	}
	return "dolly", say.Dolly(k)
}

// isSplit reports whether a set takes more than one sheet.
func isSplit(h *rig.Hung, k int) bool { return h.Sets[k] > dollyMost }

// joinWords says what a dolly joins above and below.
func joinWords(h *rig.Hung, k int, s say.Span) string {
	which := ""
	if h.HasDollies() {
		which = fmt.Sprintf("%s of %s: ", say.Ordinal(k+1), countDollies(len(h.Sets)))
		if isSplit(h, k) {
			which = fmt.Sprintf("cabinets %s of this dolly, %s", s.Dashed(), which)
		}
	}
	return which + "joins " + neighbourOf(h, s.From-1) + " above, " + neighbourOf(h, s.To+1) + " below"
}

// countDollies writes a number of dollies: their plural is not that of say.Count.
func countDollies(n int) string {
	if n == 1 {
		return "1 dolly"
	}
	return fmt.Sprintf("%d dollies", n)
}

// neighbourOf names what holds cabinet n: the bar, a dolly, or the next sheet.
func neighbourOf(h *rig.Hung, n int) string {
	switch {
	case n < 1:
		return "the bar"
	case n > len(h.Cabinets):
		return "nothing"
	case !h.HasDollies():
		return fmt.Sprintf("cabinet %d", n)
	}
	return fmt.Sprintf("dolly %s (cabinet %d)", say.Dolly(h.Sets.Of(n)), n)
}

// aboveWords says what the first joint of a sheet hangs from.
func aboveWords(h *rig.Hung, s say.Span) string {
	if s.From == 1 {
		return h.Bar.Key
	}
	return neighbourOf(h, s.From-1) + " above"
}

// firstWords says how the first joint of a sheet is made, and "" where it is one of its
// set's own.
func firstWords(h *rig.Hung, k int, s say.Span) string {
	switch {
	case s.From == 1:
		return "before the hoist takes weight"
	case s.From == setSpan(h, k).From && h.HasDollies():
		return "made hanging: hinge first, then link"
	}
	return ""
}

// belowWords says what hangs below, and whose its joint is; "", "" where nothing does.
func belowWords(h *rig.Hung, s say.Span) (what, ghost string) {
	if s.To == len(h.Cabinets) {
		return "", ""
	}
	what = neighbourOf(h, s.To+1) + " below"
	if set := h.Sets.Of(s.To + 1); h.HasDollies() && set != h.Sets.Of(s.To) {
		return what, fmt.Sprintf("hole %s goes with dolly %s", showHole(h, s.To+1), say.Dolly(set))
	}
	return what, onNextSheet(h, s.To+1)
}

// onNextSheet stands for the joint above cabinet n on the sheet before its own.
func onNextSheet(h *rig.Hung, n int) string {
	return fmt.Sprintf("hole %s on the next sheet", showHole(h, n))
}

// setWords says when the link pins are set, and how the first joint is made, which is
// not set on the dolly; "" where the job does not say when.
func setWords(h *rig.Hung, k int, s say.Span) string {
	first := firstWords(h, k, s)
	if first != "" {
		first = fmt.Sprintf(" Joint above cabinet %d: %s.", s.From, first)
	}
	switch h.PinsSet {
	case job.OnDolly:
		return "Set all pins now, before it rolls in." + first
	case job.AtTheHoist:
		return "Leave its links in their truck holes; at the hoist (motor), from the top joint down, one at a time, each goes to its show hole." + first
	case job.InTheAir:
		return "Hinges only now, link pins at the lift." + first
	}
	return ""
}

// splaySum writes out the splays of a sheet's own joints, to be read over the radio.
func splaySum(h *rig.Hung, s say.Span) string {
	total, parts := 0.0, []string{}
	for n := s.From; n <= s.To; n++ {
		total += h.Cabinets[n-1].Hole.Splay
		parts = append(parts, say.Splay(h.Cabinets[n-1].Hole.Splay))
	}
	sum := parts[0]
	if len(parts) > 1 {
		sum = strings.Join(parts, " + ") + " = " + say.Splay(total)
	}
	for n := s.From; n <= s.To; n++ {
		if c := h.Cabinets[n-1]; !say.SameFigure(c.Hole.Label, c.Hole.Splay) {
			return sum + " degrees"
		}
	}
	return sum
}

// dollyFigures are the masses of a set, and how it stands where that is not flat.
func dollyFigures(h *rig.Hung, k int) []parts.FigureLine {
	kg, extras := rig.SetMass(h, k)
	says := say.Count(h.Sets[k], "cabinet")
	if extras > 0 {
		says += fmt.Sprintf(" and %s tied to them", say.Count(extras, "extra"))
	}
	if h.Dolly != nil && h.Dolly.Plumb {
		says += fmt.Sprintf(", standing with the front of cabinet %d plumb", h.Sets.First(k)+h.Sets[k])
	}
	if h.Dolly != nil {
		says += fmt.Sprintf("; %s with the dolly", h.Unit().Load(kg+h.Dolly.Mass))
	}
	return []parts.FigureLine{{Of: massOf(h, k), Figure: h.Unit().Load(kg), Says: says}}
}

// dollyCaption says what the boxes are for, and on the first sheet which bar it
// is and where its pick holes count from.
func dollyCaption(h *rig.Hung, s say.Span) string {
	caption := "Framed: the hole, as stamped, of the joint above each cabinet, for its " + boxWords(h, s)
	if anyPins(h, s, 2) {
		caption += " L and R seen from behind, looking at the audience."
	}
	if s.From == 1 {
		caption += fmt.Sprintf(" Bar: %s, its pick holes counted from the front, the audience's side.", h.Bar.Key)
	}
	return caption
}

// pickHolesOf are the pick holes to use, on the sheet that joins the bar.
func pickHolesOf(h *rig.Hung, s say.Span) (picks []layouts.PickHole) {
	if s.From > 1 {
		return nil
	}
	for i, hole := range h.Holes {
		picks = append(picks, layouts.PickHole{Of: label("pick hole", h.End(i)), Label: h.Label(hole).Text})
	}
	return picks
}

// massOf says what the mass on the sheet of set k, counted from 0, is of.
func massOf(h *rig.Hung, k int) string {
	if h.HasDollies() {
		return "Mass of dolly " + say.Dolly(k)
	}
	return "Mass of cabinets"
}
