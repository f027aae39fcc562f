package changes

import (
	"fmt"
	"regexp"
	"strings"

	"hangpack/layouts/paper"
	"hangpack/paperwork/sheets"
	"hangpack/paperwork/worked"
)

// pageChanges are the names of sheets of both revisions, by what has to be done with
// them.
type pageChanges struct{ other, same, added, gone []string }

// paperWords say which sheets to bin and which to print again.
func (c List) paperWords() ([]string, error) {
	s, err := c.pages()
	if err != nil {
		return nil, err
	}
	if c.Old == c.New {
		return []string{"Both are one and the same job: no sheet has to be changed."}, nil
	}
	return append([]string{fmt.Sprintf("Bin every sheet of REV %s %s; print the new pack.", c.old.Revision, c.Old)}, listed(".",
		nameList{"These say something else now", s.other}, nameList{"New", s.added}, nameList{"Gone", s.gone},
		nameList{"These say the same, but for revision and page number", s.same})...), nil
}

// changedPages draws both packs and compares them page by page, but for what every
// new revision changes: its spine, its REV, page numbers, fingerprints and codes.
func changedPages(old, new *worked.Job) (pageChanges, error) {
	was, err := pageWordsOf(old)
	if err != nil {
		return pageChanges{}, err
	}
	now, err := pageWordsOf(new)
	if err != nil {
		return pageChanges{}, err
	}
	return compareSheets(was, now), nil
}

// compareSheets tells the sheets of two packs apart by what they say and where.
func compareSheets(was, now pageWords) (s pageChanges) {
	for _, name := range now.names {
		switch text, both := was.says[name]; {
		case !both:
			s.added = append(s.added, name)
		case text != now.says[name]:
			s.other = append(s.other, name)
		default:
			s.same = append(s.same, name)
		}
	}
	for _, name := range was.names {
		if _, both := now.says[name]; !both {
			s.gone = append(s.gone, name)
		}
	}
	return s
}

// pageWords are what the pages of a pack say, by their names in their order.
type pageWords struct {
	names []string
	says  map[string]string
}

// pageWordsOf draws a pack and reads it page by page.
func pageWordsOf(j *worked.Job) (p pageWords, err error) {
	pdf, err := sheets.Draw(j)
	if err != nil {
		return p, err
	}
	p.says = map[string]string{}
	name, page, everNew := "", 0, everNew(j)
	for _, m := range pdf.Marks {
		if m.Page != page && m.Text != "" {
			name, page = m.Text, m.Page
			p.names = append(p.names, name)
		}
		if m.Block != "spine" && m.Kind != "code" {
			p.says[name] += "\n" + said(m, everNew)
		}
	}
	return p, nil
}

// everNew takes out of a text what every revision changes: its REV and its fingerprint.
func everNew(j *worked.Job) *strings.Replacer {
	rev, mark := j.Revision, j.Fingerprint
	return strings.NewReplacer("REV "+rev, "REV", strings.ToUpper("REV "+rev), "REV", mark, "", strings.ToUpper(mark), "", "revision "+rev, "revision")
}

var pageNumbers = regexp.MustCompile(`page [0-9]+`)

// said is what a mark says and where.
func said(m paper.Mark, everNew *strings.Replacer) string {
	text := pageNumbers.ReplaceAllString(everNew.Replace(m.Text), "page")
	if strings.HasPrefix(text, "REV") {
		return "REV" // it stands further left the longer it is
	}
	return fmt.Sprintf("%s %.1f %.1f %s", m.Kind, m.X0, m.Y1, text)
}
