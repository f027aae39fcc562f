package sheets

import (
	"fmt"
	"slices"
	"strings"

	"hangpack/layouts"
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/told"
)

// pinsMost is how many cabinets one pin sheet holds.
const pinsMost = 16

// pinSheet is the pin sheet of a stack, which may take more than one page.
func pinSheet(h *rules.Checked) paper.Sheet {
	sheet := paper.Joined{Called: pinName(h.Hung)}
	spans := pinSpans(h.Hung)
	for i, s := range spans {
		p := layouts.Pins{
			Sheet: sheet.Called, Head: stackHead(h.Hung),
			Rows: pinRows(h.Hung, s, true), Caption: pinCaption(h.Hung, s), Boxes: anyPins(h.Hung, s, 2),
			Side: sideView(h.Hung, s), Code: codeOf(h),
		}
		if len(spans) > 1 {
			p.Head.Says += fmt.Sprintf(" · cabinets %d to %d", s.From, s.To)
		}
		if i == 0 {
			strip := barStrip(h.Hung)
			p.Bar, p.Strip = h.Bar.Key+" · "+rules.PickHoleWords(h.Hung), &strip
			p.Figures, p.Notes = pinFigures(h), pinNotes(h)
		} else {
			p.Above = fmt.Sprintf("cabinet %d, on the sheet before", s.From-1)
		}
		sheet.Parts = append(sheet.Parts, p)
	}
	return sheet
}

// pinSpans cuts a stack into pin sheets: of at most 16 cabinets, cut between
// two dollies where there is one to cut at.
func pinSpans(h *rig.Hung) (spans []say.Span) {
	from, n := 1, len(h.Cabinets)
	for n-from+1 > pinsMost {
		to := from + pinsMost - 1
		for k := range h.Sets {
			if end := setSpan(h, k).To; end >= from && end <= from+pinsMost-1 {
				to = end
			}
		}
		spans = append(spans, say.Span{From: from, To: to})
		from = to + 1
	}
	return append(spans, say.Span{From: from, To: n})
}

// pinRows are the cabinets of a span with their joints. cuts marks where a dolly
// ends.
func pinRows(h *rig.Hung, s say.Span, cuts bool) (rows []layouts.PinRow) {
	for n := s.From; n <= s.To; n++ {
		c := h.Cabinets[n-1]
		r := layouts.PinRow{Number: fmt.Sprint(n), Type: c.Name, Hole: JointHole(c.Hole), Ghost: onNextSheet(h, n), Pins: c.LinkPins}
		for i, other := range c.Joint {
			if other == c.Hole {
				r.Ladder = parts.Ladder{Of: len(c.Joint), Right: i}
				r.Ordinal = fmt.Sprintf("%s of %d", say.Ordinal(i+1), len(c.Joint))
			}
		}
		if set := h.Sets.Of(n); cuts && n > 1 && set != h.Sets.Of(n-1) {
			r.Cut = "dolly " + say.Dolly(set)
		}
		rows = append(rows, r)
	}
	return rows
}

// pinCaption says what the figures and the boxes of a pin sheet are.
func pinCaption(h *rig.Hung, s say.Span) string {
	return "A figure on a line is the hole of the joint it straddles: " + boxWords(h, s) +
		" Seen: a second person walks the column and touches every pin."
}

// boxWords says which pins the boxes of a span are for.
func boxWords(h *rig.Hung, s say.Span) string {
	switch {
	case !anyPins(h, s, 2):
		return "rear link pin, one in the middle: one box."
	case anyPins(h, s, 1):
		return "rear link pins, both sides; one box: one pin in the middle."
	}
	return "rear link pins, both sides."
}

// anyPins reports whether any joint of a span has so many link pins: one each side, or
// one in the middle.
func anyPins(h *rig.Hung, s say.Span, pins int) bool {
	return slices.ContainsFunc(h.Cabinets[s.From-1:s.To], func(c job.Placed) bool { return c.LinkPins == pins })
}

// pinFigures are the figures of a pin sheet, each with its sum.
func pinFigures(h *rules.Checked) []parts.FigureLine {
	u, s := h.Unit(), h.Finished
	lines := []parts.FigureLine{{Of: "Below the hooks", Figure: u.Load(s.Centre.Mass), Says: massWords(h)}}
	for i := range h.Picks {
		kg := h.Hook(s, i)
		lines = append(lines, parts.FigureLine{
			Of: label("Hoist (motor)", h.End(i)), Figure: u.Load(kg),
			Says: "at rest; at most " + rules.HoistSum(h.Hung, i),
		})
	}
	for _, p := range h.Points {
		lines = append(lines, parts.FigureLine{
			Of: "Point " + p.ID, Figure: u.Load(p.Static),
			Says: fmt.Sprintf("static; design %s (x %s)%s", u.Load(p.Design), rules.FactorWords(h.Job.Practice), moreAt(u, p.Most)),
		})
	}
	return append(lines, inclinometer(h.Hung)...)
}

// moreAt says at which lift a point carries more than finished, if at one.
func moreAt(u say.Units, m rig.MostCarried) string {
	if m.Where == "" {
		return ""
	}
	return fmt.Sprintf("; MORE AT %s: %s static, %s design", strings.ToUpper(m.Where), u.Load(m.Static), u.Load(m.Design))
}

// massWords says what the mass below the hooks is of.
func massWords(h *rules.Checked) string {
	s := "bar and " + say.Count(len(h.Cabinets), "cabinet")
	if n := len(h.Extras); n > 0 {
		s += ", " + say.Count(n, "extra")
	}
	return s + "; most used: " + h.MostUsedWords()
}

// inclinometer says what to read on the first and on the last cabinet.
func inclinometer(h *rig.Hung) []parts.FigureLine {
	poses := h.Finished.Poses
	tilt, most := h.Between(func(v *rig.Hung) float64 { return v.Finished.Tilt })
	lines := []parts.FigureLine{{Of: "Cabinet 1 reads", Figure: aimOf(h, 1), Says: fmt.Sprintf("wanted %s; bar %s; inclinometer on the flat of the front or back marked by the maker, not on the sloping lid", say.Aim(h.Aim), say.Between(tilt, most, say.Aim))}}
	if len(poses) == 1 {
		return lines
	}
	return append(lines, parts.FigureLine{
		Of: fmt.Sprintf("Cabinet %d reads", len(poses)), Figure: aimOf(h, len(poses)),
		Says: fmt.Sprintf("difference %s: a wrong pin shows in the difference; two that cancel do not: touch every pin", say.Angle(rig.Bend(h))),
	})
}

// pinNotes are the sentences under the figures.
func pinNotes(h *rules.Checked) []string {
	var notes []string
	if note := noteOf(h); note != "" {
		notes = append(notes, note)
	}
	if steer := steerWords(h.Hung); steer != "" {
		notes = append(notes, steer)
	}
	if words := rules.TwinWords(h); words != "" {
		notes = append(notes, fmt.Sprintf("Not like its twin %s: %s. On purpose? Ask; see the cautions.", h.Twin.ID, words))
	}
	if over := aloneShort(h.Hung); over != "" {
		notes = append(notes, fmt.Sprintf("One hoist alone: %s. Run both together, watch the tilt; see %s LIFTS.", over, h.ID))
	}
	if slack := slackWords(h.Hung, h.Finished); slack != "" {
		notes = append(notes, slack)
	}
	notes = append(notes, told.PassedOverWords(h)...)
	if between := betweenWords(h.Hung); between != "" {
		notes = append(notes, between)
	}
	return append(notes, fmt.Sprintf("Worked out for a rigid column on plumb chains, each link along the mean of its two bodies. Heights above %s.", h.Job.HeightsFrom))
}
