package report

import (
	"encoding/csv"
	"io"
	"strconv"
	"strings"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/worked"
)

// PointsCSV writes the venue's table as comma-separated values: a row per point,
// numbers not rounded, "" where something is not known or does not apply, texts so
// that no spreadsheet runs them. The error is the writer's.
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
		rows = append(rows, []string{o.ID, "", inert(o.What), "no", exact(o.StageLeft), exact(o.Downstage), "", exact(o.Height), "", "",
			exact(o.Static), exact(o.Design), exact(say.Kilonewtons(o.Static)), exact(say.Kilonewtons(o.Design)), "", exact(o.Static), exact(o.Design), "", "", "", "", "", "all", "", "", exact(o.Design), "", ""})
	}
	return w.WriteAll(rows)
}

// pointColumns head the venue's table as data. SI units stand in the names.
var pointColumns = []string{"point", "stack", "what", "held", "stage_left_m", "downstage_m", "pick_height_m", "low_hook_m", "high_hook_m", "chain_needed_m",
	"static_kg", "design_kg", "static_kn", "design_kn", "most_at", "most_static_kg", "most_design_kg", "alone_kg", "hoist", "hoist_class", "hoist_capacity_kn", "hoist_use", "includes", "secondary", "secondary_rating_kn", "governing_kg", "governing_at", "alone_design_kg"}

// csvRow is the row of point i of a stack.
func csvRow(h *rules.Checked, i int, p rig.Point) []string {
	m := h.Picks[i].Hoist
	alone, aloneDesign, secondary, rating := "", "", "", ""
	if len(h.Picks) == 2 {
		alone, aloneDesign = exact(p.Alone), exact(p.AloneDesign)
	}
	if h.Secondary != nil {
		secondary, rating = inert(h.Secondary.What), exact(h.Secondary.Rating/1000)
	}
	held := "no"
	if h.Held() {
		held = "yes"
	}
	return []string{p.ID, h.ID, inert(h.Name), held, exact(p.StageLeft), exact(p.Downstage), exact(p.PickHeight), exact(p.LowHook), exactOrNone(p.HighHook), exactOrNone(p.ChainNeeded),
		exact(p.Static), exact(p.Design), exact(say.Kilonewtons(p.Static)), exact(say.Kilonewtons(p.Design)), p.Most.Where, exact(p.Most.Static), exact(p.Most.Design), alone, inert(m.Key), inert(m.Class), exact(m.Capacity / 1000), exact(p.HoistUse),
		"hoist, chain and rigging", secondary, rating, exact(p.Governing.Design), p.Governing.Where, aloneDesign}
}

// inert is a text of the job as a cell: with an apostrophe before what a spreadsheet would
// run as a formula. An id never begins so, and a number is no text.
// Source: OWASP, CSV Injection (from memory).
func inert(text string) string {
	if text != "" && strings.ContainsRune("=+-@\t\r", rune(text[0])) {
		return "'" + text
	}
	return text
}

// exact writes a number with all its digits.
func exact(x float64) string { return strconv.FormatFloat(x, 'g', -1, 64) }

// exactOrNone writes a number with all its digits, and "" where it is nil.
func exactOrNone(x *float64) string {
	if x == nil {
		return ""
	}
	return exact(*x)
}
