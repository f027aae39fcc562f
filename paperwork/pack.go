package paperwork

import (
	"fmt"
	"strings"
	"time"

	"hangpack/layouts"
)

// Version is printed small on the cover.
const Version = "hangpack 0.1"

// Draw sets the pack on paper: the cover, then of each stack its pin sheet, its
// loads and its dolly sheets, or in place of them all one page that says why
// it must not be flown, then the cautions.
func (j *Job) Draw() (layouts.Paper, error) {
	day, err := time.Parse("2006-01-02", j.job.Date)
	if err != nil {
		return layouts.Paper{}, fmt.Errorf("date of the job: %w", err)
	}
	p := layouts.Pack{
		Letter: j.job.Letter,
		Title:  j.job.Title + ", revision " + j.job.Revision,
		Day:    day,
		Spine:  layouts.Spine{Title: j.job.Title, Venue: j.job.Venue, Date: j.job.Date, Revision: j.job.Revision, Fingerprint: j.job.Fingerprint},
		Sheets: []layouts.Sheet{j.cover(), j.pointSheet(), j.planSheet()},
	}
	for _, h := range j.stacks {
		p.Sheets = append(p.Sheets, h.sheets()...)
	}
	p.Sheets = append(p.Sheets, j.cautionSheet())
	return layouts.Draw(p)
}

// sheets are the sheets of one stack in their order.
func (h *hung) sheets() (sheets []layouts.Sheet) {
	if h.held() {
		return []layouts.Sheet{h.doNotFly()}
	}
	for _, s := range h.pinSheets() {
		sheets = append(sheets, s)
	}
	for _, s := range h.dollySheets() {
		sheets = append(sheets, s)
	}
	return append(sheets, h.liftSheet(), h.downSheet(), h.calculation())
}

// target names a stack's pin sheet to codes and clicks.
func (h *hung) target() string { return "pins " + h.ID }

// head is what stands at the top of a stack's sheets.
func (h *hung) head() layouts.Head {
	picks := "one pick"
	if len(h.Picks) == 2 {
		picks = "two picks"
	}
	return layouts.Head{
		ID: h.ID, Name: h.Name, Revision: h.job.Revision, Shape: string(h.Shape),
		Says: fmt.Sprintf("%s · %s · %s", count(len(h.Cabinets), "cabinet"), h.unit().load(h.finished.centre.Mass), picks),
	}
}

// doNotFly is the one sheet of a held stack.
func (h *hung) doNotFly() layouts.DoNotFly {
	d := layouts.DoNotFly{Target: h.target(), Head: h.head(), Code: h.code(), Says: h.heldText()}
	for _, f := range h.holds {
		d.Reasons = append(d.Reasons, layouts.Caution{Where: h.whereWords(f), Says: h.ruleWords(f) + f.Says})
	}
	return d
}

// Summary says what was written: the file, its pages, a line per stack, and
// what is not checked.
func (j *Job) Summary(out string, pages int) string {
	var b strings.Builder
	fmt.Fprintf(&b, "wrote %s, %s, revision %s, %s\n", out, count(pages, "page"), j.job.Revision, j.job.Fingerprint)
	for _, h := range j.stacks {
		fmt.Fprintf(&b, "%s  %s: %s\n", h.ID, h.Name, h.verdict())
	}
	seen := map[string]bool{}
	for _, h := range j.stacks {
		for _, line := range h.unchecked() {
			if !seen[line] {
				b.WriteString(line + "\n")
			}
			seen[line] = true
		}
	}
	return b.String()
}

// unchecked writes what is not checked of a stack: of its gear under the gear's
// key, so that stacks that share it say the same.
func (h *hung) unchecked() (lines []string) {
	for _, c := range h.cautions {
		switch {
		case c.Rule != "not_checked":
		case c.Where == "":
			lines = append(lines, h.ID+": "+c.Says)
		default:
			lines = append(lines, c.Where+": "+c.Says)
		}
	}
	return lines
}
