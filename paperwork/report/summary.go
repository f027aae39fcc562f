package report

import (
	"fmt"
	"slices"
	"strings"

	"hangpack/layouts/paper"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/told"
	"hangpack/paperwork/worked"
)

// Summary says what was written: the file, its pages, a line per stack, and
// what is not checked.
func Summary(j *worked.Job, out string, pdf paper.Drawn) string {
	var b strings.Builder
	b.WriteString(wrote(j, out, pdf) + "\n")
	for _, h := range j.Stacks {
		b.WriteString(verdictLine(h))
	}
	for _, line := range uncheckedAll(j) {
		b.WriteString(line + "\n")
	}
	return b.String()
}

// ShortSummary says of one among many jobs what was written: the file, its pages, how many
// cautions there are and how much is not checked, and a line per held stack.
func ShortSummary(j *worked.Job, out string, pdf paper.Drawn) string {
	cautions, held := 0, ""
	for _, h := range j.Stacks {
		n, _ := told.Counts(h)
		cautions += n
		if h.Held() {
			held += verdictLine(h)
		}
	}
	return fmt.Sprintf("%s; %s; %d not checked\n", wrote(j, out, pdf), say.Count(cautions, "caution"), len(uncheckedAll(j))) + held
}

// wrote says which file was written, and of which job.
func wrote(j *worked.Job, out string, pdf paper.Drawn) string {
	return fmt.Sprintf("wrote %s, %s, revision %s, %s", out, pagesOf(pdf), j.Revision, j.Fingerprint)
}

// verdictLine is a stack and what the calculation found of it.
func verdictLine(h *rules.Checked) string {
	return fmt.Sprintf("%s  %s: %s\n", h.ID, h.Name, told.Verdict(h))
}

// uncheckedAll writes what is not checked of a job, once of gear that stacks share.
func uncheckedAll(j *worked.Job) (lines []string) {
	for _, h := range j.Stacks {
		for _, line := range h.Unchecked() {
			if !slices.Contains(lines, line) {
				lines = append(lines, line)
			}
		}
	}
	return lines
}

// pagesOf writes how many pages there are: '21 pages', '3 of 21 pages'.
func pagesOf(p paper.Drawn) string {
	if p.Pages == p.Of {
		return say.Count(p.Pages, "page")
	}
	return fmt.Sprintf("%d of %s", p.Pages, say.Count(p.Of, "page"))
}
