package paperwork

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"hangpack/layouts"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/worked"
)

// Version is printed small on the cover.
const Version = "hangpack 0.1"

// A Sheet is one sheet of a pack: which kind it is of, and the stack it belongs to,
// "" where it is of the whole job.
type Sheet struct {
	Kind, Stack string
	layouts.Sheet
}

// kindsInOrder are the kinds of sheets in the order of the pack; ofJob are those of the
// whole job.
var kindsInOrder = []struct {
	name  string
	ofJob bool
}{{"cover", true}, {"points", true}, {"pins", false}, {"dollies", false}, {"lifts", false}, {"down", false}, {"kit", true}, {"calculation", false}, {"cautions", true}}

// All are all sheets of a pack in their order: the cover and what the venue
// reads, then those of each stack, then the kit and the cautions.
func All(j *worked.Job) []Sheet {
	all := []Sheet{{"cover", "", coverSheet(j)}, {"points", "", pointSheet(j)}, {"points", "", planSheet(j)}}
	for _, h := range j.Stacks {
		all = append(all, stackSheets(h)...)
	}
	return append(all, Sheet{"kit", "", kitSheet(j)}, Sheet{"cautions", "", cautionSheet(j)})
}

// PackOf is some sheets as a pack of this job.
func PackOf(j *worked.Job, sheets []layouts.Sheet) (layouts.Pack, error) {
	day, err := time.Parse("2006-01-02", j.Date)
	if err != nil {
		return layouts.Pack{}, fmt.Errorf("date of the job: %w", err)
	}
	return layouts.Pack{
		Letter: j.Letter, Title: j.Title + ", revision " + j.Revision, Day: day, Sheets: sheets,
		Spine: layouts.Spine{Title: j.Title, Venue: j.Venue, Date: j.Date, Revision: j.Revision, Fingerprint: j.Fingerprint},
	}, nil
}

// Lay cuts the pack into pages.
func Lay(j *worked.Job) (*layouts.Laid, []Sheet, error) {
	sheets := All(j)
	var all []layouts.Sheet
	for _, s := range sheets {
		all = append(all, s.Sheet)
	}
	pack, err := PackOf(j, all)
	if err != nil {
		return nil, nil, err
	}
	laid, err := layouts.Lay(pack)
	return laid, sheets, err
}

// Draw sets the whole pack on paper.
func Draw(j *worked.Job) (layouts.Paper, error) { return DrawChosen(j, Choice{}) }

// DrawChosen sets the chosen sheets on paper, with the page numbers and codes that
// they have in the whole pack.
func DrawChosen(j *worked.Job, c Choice) (layouts.Paper, error) {
	laid, sheets, err := Lay(j)
	if err != nil {
		return layouts.Paper{}, err
	}
	return laid.Draw(func(i int) bool { return c.takes(sheets[i]) })
}

// A StackPaper is the sheets of one stack.
type StackPaper struct {
	ID string
	layouts.Paper
}

// TellsStacksApart reports whether the job's address is another one for each stack.
func TellsStacksApart(j *worked.Job) bool { return strings.Contains(j.URL, "{stack}") }

// DrawStacks sets the sheets of each stack on paper of its own, with the page
// numbers and codes that they have in the whole pack.
func DrawStacks(j *worked.Job) (papers []StackPaper, err error) {
	laid, sheets, err := Lay(j)
	if err != nil {
		return nil, err
	}
	for _, h := range j.Stacks {
		paper, err := laid.Draw(func(i int) bool { return sheets[i].Stack == h.ID })
		if err != nil {
			return nil, err
		}
		papers = append(papers, StackPaper{h.ID, paper})
	}
	return papers, nil
}

// stackSheets are the sheets of one stack in their order: or in place of them all one
// page that says why it must not be flown.
func stackSheets(h *rules.Checked) (sheets []Sheet) {
	add := func(kind string, s layouts.Sheet) { sheets = append(sheets, Sheet{kind, h.ID, s}) }
	if h.Held() {
		add(doNotFly, doNotFlySheet(h))
		return sheets
	}
	for _, s := range pinSheets(h) {
		add("pins", s)
	}
	for _, s := range dollySheets(h) {
		add("dollies", s)
	}
	add("lifts", liftSheet(h))
	add("down", downSheet(h))
	add("calculation", calculationSheet(h))
	return sheets
}

// pinTarget names a stack's pin sheet to codes and clicks.
func pinTarget(h *rules.Checked) string { return "pins " + h.ID }

// stackHead is what stands at the top of a stack's sheets.
func stackHead(h *rules.Checked) layouts.Head {
	picks := "one pick"
	if len(h.Picks) == 2 {
		picks = "two picks"
	}
	return layouts.Head{
		ID: h.ID, Name: h.Name, Revision: h.Job.Revision, Shape: string(h.Shape),
		Says: fmt.Sprintf("%s · %s · %s", say.Count(len(h.Cabinets), "cabinet"), h.Unit().Load(h.Finished.Centre.Mass), picks),
	}
}

// doNotFlySheet is the one sheet of a held stack.
func doNotFlySheet(h *rules.Checked) layouts.DoNotFly {
	d := layouts.DoNotFly{Target: pinTarget(h), Head: stackHead(h), Code: codeOf(h), Says: heldText(h)}
	for _, f := range h.Holds {
		d.Reasons = append(d.Reasons, layouts.Caution{Where: rules.OnPaper(f.Where), Says: f.Lead() + f.Says})
	}
	return d
}

// Summary says what was written: the file, its pages, a line per stack, and
// what is not checked.
func Summary(j *worked.Job, out string, paper layouts.Paper) string {
	var b strings.Builder
	b.WriteString(wrote(j, out, paper) + "\n")
	for _, h := range j.Stacks {
		b.WriteString(verdictLine(h))
	}
	for _, line := range uncheckedAll(j) {
		b.WriteString(line + "\n")
	}
	return b.String()
}

// ShortSummary says it of one among many jobs: the file, its pages, how many
// cautions there are and how much is not checked, and a line per held stack.
func ShortSummary(j *worked.Job, out string, paper layouts.Paper) string {
	cautions, held := 0, ""
	for _, h := range j.Stacks {
		n, _ := h.Counts()
		cautions += n
		if h.Held() {
			held += verdictLine(h)
		}
	}
	return fmt.Sprintf("%s; %s; %d not checked\n", wrote(j, out, paper), say.Count(cautions, "caution"), len(uncheckedAll(j))) + held
}

// wrote says which file was written, and of which job.
func wrote(j *worked.Job, out string, paper layouts.Paper) string {
	return fmt.Sprintf("wrote %s, %s, revision %s, %s", out, pagesOf(paper), j.Revision, j.Fingerprint)
}

func verdictLine(h *rules.Checked) string {
	return fmt.Sprintf("%s  %s: %s\n", h.ID, h.Name, h.Verdict())
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
func pagesOf(p layouts.Paper) string {
	if p.Pages == p.Of {
		return say.Count(p.Pages, "page")
	}
	return fmt.Sprintf("%d of %s", p.Pages, say.Count(p.Of, "page"))
}
