package laws

import (
	"fmt"
	"math"
	"regexp"
	"slices"
	"strings"

	"hangpack/layouts/paper"
	"hangpack/paperwork/sheets"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// What a sheet says, by a record that shares nothing with its digest: it is made of
// the ink of the finished drawing, not of the sheet drawn once more.

// An edition is a job as it is packed: its drawing and, by the sheets' names, what the
// pack says that each of them is and what the record says.
type edition struct {
	*worked.Job
	drawn      paper.Drawn
	identities map[string]paper.Identity
	records    map[string]record
}

// A record is all ink of a sheet whose digest it is held against, and, as one text for
// each page, what is drawn apart from that with mark, revision and numbers of pages
// taken out.
type record struct {
	ink   []paper.Mark // with pages counted from 0 within the sheet
	apart []string
}

// editionOf packs a job as it is written; an error is of a job that has complaints or
// does not fit.
func editionOf(yaml string) (*edition, error) {
	j, complaints, err := trials.Try(yaml, trials.GearFile)
	if err != nil || len(complaints) > 0 {
		return nil, fmt.Errorf("%v %v", err, complaints)
	}
	laid, _, err := sheets.Lay(j)
	if err != nil {
		return nil, err
	}
	drawn, err := laid.Draw(func(int) bool { return true })
	if err != nil {
		return nil, err
	}
	e := &edition{Job: j, drawn: drawn, identities: byName(laid)}
	e.records = e.recorded()
	return e, nil
}

// byName are the identities of a pack by the names of its sheets.
func byName(laid *paper.Laid) map[string]paper.Identity {
	all := map[string]paper.Identity{}
	for _, id := range laid.Identities() {
		all[id.Name] = id
	}
	return all
}

// digestsOf are the digests of a job as it is written, by sheets.
func digestsOf(yaml string) map[string]string {
	j, _, err := trials.Try(yaml, trials.GearFile)
	if err != nil {
		return nil
	}
	laid, _, err := sheets.Lay(j)
	if err != nil {
		return nil
	}
	all := map[string]string{}
	for name, id := range byName(laid) {
		all[name] = id.Digest
	}
	return all
}

// pageSheets is the sheet of every page of the pack, from the spine's foot.
func (e *edition) pageSheets() []string {
	names := make([]string, e.drawn.Pages)
	for _, m := range e.drawn.Marks {
		if m.Block == "spine" && m.Kind == "text" && names[m.Page-1] == "" {
			names[m.Page-1] = m.Text
		}
	}
	return names
}

// recorded sorts the ink of the drawing by sheets.
func (e *edition) recorded() map[string]record {
	names, all := e.pageSheets(), map[string]record{}
	code := e.codeMask()
	for _, m := range e.drawn.Marks {
		name := names[m.Page-1]
		r := all[name]
		m.Page -= 1 + slices.Index(names, name)
		if m.Apart {
			r.say(m.Page, e.apartSays(name, m))
		} else {
			if m.Kind == "code" {
				m.Text = revAndMark.ReplaceAllString(code.ReplaceAllString(m.Text, "${1}page$2"), "$1…")
			}
			r.ink = append(r.ink, m)
		}
		all[name] = r
	}
	return all
}

func (r *record) say(page int, text string) {
	for len(r.apart) <= page {
		r.apart = append(r.apart, "")
	}
	r.apart[page] += text + " "
}

// codeMask finds the page in the address of a code, where job.url has a place for it.
func (e *edition) codeMask() *regexp.Regexp {
	before, after, has := strings.Cut(e.URL, "{page}")
	if !has {
		return regexp.MustCompile("^()never()$")
	}
	part := func(s string) string {
		return strings.ReplaceAll(strings.ReplaceAll(regexp.QuoteMeta(s), `\{stack\}`, `[A-Z0-9-]+`), `\{page\}`, `[0-9]+`)
	}
	return regexp.MustCompile(`^(` + part(before) + `)[0-9]+(` + part(after) + `)$`)
}

var (
	onlyDigits = regexp.MustCompile(`^[0-9]+$`)
	revSays    = regexp.MustCompile(`REV \S+`)
	revAndMark = regexp.MustCompile(`^([0-9A-Z-]+ REV )\S+ [2-9A-Z]{4}\b`)
)

// apartSays is what a text that is drawn apart says beside mark, revision and page. The
// marks of other sheets, which the cover lists, stay.
func (e *edition) apartSays(sheet string, m paper.Mark) string {
	if sheet == "COVER" && onlyDigits.MatchString(m.Text) {
		return "page"
	}
	if m.Kind != "text" {
		return fmt.Sprint(m.Kind, m.X0, m.Y0, m.X1, m.Y1)
	}
	return strings.ReplaceAll(revSays.ReplaceAllString(m.Text, "REV …"), e.identities[sheet].Mark, "…")
}

// What two records are to each other.
const (
	same  = iota // but for the dust of rounding
	close        // within what a digest rounds to: it may see that or not
	other
)

// against compares two records, and says what is another in them.
func (r record) against(is record) (how int, says []string) {
	if !slices.Equal(r.apart, is.apart) {
		how, says = other, append(says, fmt.Sprintf("apart %q, %q", r.apart, is.apart))
	}
	if len(r.ink) != len(is.ink) {
		return other, append(says, fmt.Sprintf("%d pieces of ink, %d", len(r.ink), len(is.ink)))
	}
	for i, m := range r.ink {
		if one := alikeInk(m, is.ink[i]); one > same {
			how, says = max(how, one), append(says, fmt.Sprintf("%s %q at %.3f %.3f, %s %q at %.3f %.3f", m.Kind, m.Text, m.X0, m.Y0, is.ink[i].Kind, is.ink[i].Text, is.ink[i].X0, is.ink[i].Y0))
		}
	}
	return how, says
}

// alikeInk compares two pieces of ink.
func alikeInk(a, b paper.Mark) int {
	const dust, hundredth = 1e-6, 0.01 // mm
	switch off := moved(a, b); {
	case off <= dust:
		return same
	case off <= hundredth+dust:
		return close
	}
	return other
}

// moved is how far apart two pieces of ink are at most, in mm, which are alike but for
// that; else it is infinite.
func moved(a, b paper.Mark) (off float64) {
	x, y := sizesOf(a), sizesOf(b)
	if len(x) != len(y) || a.Page != b.Page || a.Kind != b.Kind || a.Text != b.Text || a.Fill != b.Fill || a.Bold != b.Bold || a.White != b.White || a.Open != b.Open || !slices.Equal(a.Dashes, b.Dashes) {
		return math.Inf(1)
	}
	for i := range x {
		off = math.Max(off, math.Abs(x[i]-y[i]))
	}
	return off
}

// sizesOf are all lengths of a piece of ink.
func sizesOf(m paper.Mark) []float64 {
	all := []float64{m.X0, m.Y0, m.X1, m.Y1, m.Pt, m.Pen, m.Rounded}
	for _, c := range m.Corners {
		all = append(all, c[0], c[1])
	}
	return all
}
