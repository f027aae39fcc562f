package paper

import (
	"errors"
	"fmt"
	"unicode/utf8"
)

// A Drawn is a pack as drawn, or some of its sheets: the PDF's bytes, how many pages,
// of how many of the whole pack, every piece of ink, every block of it, and what it says
// of itself.
type Drawn struct {
	PDF       []byte
	Pages, Of int
	Marks     []Mark
	Blocks    []Block
	Colophon  Colophon
}

// A Laid is a pack cut into pages, its sheets with their marks, ready to be drawn whole
// or in part.
type Laid struct {
	pack   Pack
	sheets []laidSheet
	blank  *Canvas // to draw on; made while sheets are cut, for the first to draw
}

// A laidSheet is a sheet that is cut into pages: which page of the pack is its first,
// counted from 1, and which codes it has.
type laidSheet struct {
	Identity
	pages []Page
	first int
	codes []Code
	inked
}

// DrawAll sets a pack on paper. An error means that something did not fit or that
// the PDF library failed: no page is then good.
func DrawAll(p Pack) (Drawn, error) {
	l, err := Lay(p)
	if err != nil {
		return Drawn{}, err
	}
	return l.Draw(func(int) bool { return true })
}

// Lay cuts a pack into pages, numbers them and works out the marks of its sheets. It
// takes its sheets side by side.
func Lay(p Pack) (l *Laid, err error) {
	defer caught(&err)
	l = &Laid{pack: p, sheets: make([]laidSheet, len(p.Sheets))}
	faults := make([]error, len(p.Sheets))
	onAllCores(len(p.Sheets)+1, func(i int) {
		if i == len(p.Sheets) {
			l.blank = newDrawingCanvas(p)
			return
		}
		l.sheets[i], faults[i] = p.lay(p.Sheets[i])
	})
	l.number()
	l.identify()
	return l, errors.Join(append(faults, l.twoOfOneName())...)
}

// lay cuts one sheet, and finds out what ink it has. Where its lines break depends on how
// many characters a revision has and on nothing else of it.
func (p Pack) lay(s Sheet) (laidSheet, error) {
	plain := newCanvas(p.Letter, anyRevision)
	plain.sheet = s.Name()
	c, pages := plain, s.Pages(plain)
	ink, err := p.ink(s, plain, pages)
	if utf8.RuneCountInString(p.Revision) != utf8.RuneCountInString(anyRevision) {
		c = newCanvas(p.Letter, p.Revision)
		c.sheet = s.Name()
		pages = s.Pages(c)
	}
	return laidSheet{Identity{Name: s.Name()}, pages, 0, c.wanted, ink}, errors.Join(c.err, err)
}

// number counts the pages of the pack.
func (l *Laid) number() {
	next := 1
	for i := range l.sheets {
		l.sheets[i].first = next
		next += len(l.sheets[i].pages)
	}
}

// all is how many pages the pack has.
func (l *Laid) all() (n int) {
	for _, s := range l.sheets {
		n += len(s.pages)
	}
	return n
}

// twoOfOneName is an error if two sheets are called alike: codes and clicks to the
// second would lead to the first.
func (l *Laid) twoOfOneName() error {
	had := map[string]bool{}
	for _, s := range l.sheets {
		d := Destination(s.Name)
		if had[d] {
			return fmt.Errorf("two sheets are called %s", d)
		}
		had[d] = true
	}
	return nil
}

// Draw draws those sheets that are chosen, counted from 0. Their marks and codes, and
// the numbers of their pages, are those of the whole pack; clicks lead to sheets that
// are drawn.
func (l *Laid) Draw(chosen func(sheet int) bool) (Drawn, error) {
	return l.draw(chosen, l.colophon(chosen))
}

// DrawStack draws the chosen sheets, which are those of a stack, for a file of its own.
func (l *Laid) DrawStack(id string, chosen func(sheet int) bool) (Drawn, error) {
	says := l.colophon(chosen)
	says.Kind, says.Stack = StackSheets, id
	return l.draw(chosen, says)
}

func (l *Laid) draw(chosen func(sheet int) bool, says Colophon) (whole Drawn, err error) {
	defer caught(&err)
	c := l.canvas(chosen)
	texts := l.codeTexts(c, chosen)
	c.codes = codesFor(texts)
	go c.codes.ahead(texts)
	for i := range l.sheets {
		if chosen(i) {
			c.drawSheet(l.pack.Spine, l.sheets[i])
		}
	}
	if c.err != nil {
		return Drawn{}, c.err
	}
	pdf, err := c.bound(says)
	return Drawn{pdf, c.pdf.PageCount(), l.all(), c.marks, c.blocks, says}, err
}

// drawSheet draws all pages of a sheet.
func (c *Canvas) drawSheet(spine Spine, s laidSheet) {
	for i, pg := range s.pages {
		c.start(s.first+i, s.Name+OfMany(i, len(s.pages)))
		c.mark = s.Mark
		c.drawPage(spine, s.Name, pg, i, len(s.pages))
	}
}

// start turns to page n of the pack, which is listed by a name.
func (c *Canvas) start(n int, name string) {
	c.pdf.AddPage()
	c.page, c.before = n, len(c.blocks)
	c.pdf.Bookmark(name, 0, 0)
}

// drawPage draws page i of a sheet, counted from 0: spine, foot, and what is its own.
func (c *Canvas) drawPage(spine Spine, sheet string, pg Page, i, of int) {
	c.sheet = sheet
	drawSpine(c, spine, pg.Shape, fmt.Sprintf("%d of %d", i+1, of))
	drawFoot(c)
	pg.Draw(c, c.Body())
}

// canvas returns one to draw on that nothing is on yet. It knows the sheets of the
// pack, and has a link to each that is drawn.
func (l *Laid) canvas(chosen func(sheet int) bool) *Canvas {
	c := l.blank
	if l.blank = nil; c == nil {
		c = newDrawingCanvas(l.pack)
	}
	next, pieces := 1, 0
	for i, s := range l.sheets {
		c.sheets[s.Name] = s
		if chosen(i) {
			pieces += s.pieces
			c.links[s.Name] = c.pdf.AddLink()
			c.pdf.SetLink(c.links[s.Name], 0, next)
			c.destinations = append(c.destinations, destination{Destination(s.Name), next})
			next += len(s.pages)
		}
	}
	c.marks = make([]Mark, 0, pieces)
	return c
}

// codeTexts are the texts of the codes of chosen sheets, in the order of their pages. The
// canvas knows which page each sheet begins on.
func (l *Laid) codeTexts(c *Canvas, chosen func(sheet int) bool) (texts []string) {
	for i, s := range l.sheets {
		if !chosen(i) {
			continue
		}
		for _, code := range s.codes {
			texts = append(texts, code.filled(c.Revision, s.Mark, c.sheets[code.To].first))
		}
	}
	return texts
}

// caught turns a panic of the PDF library into an error.
func caught(err *error) {
	if r := recover(); r != nil {
		*err = fmt.Errorf("drawing the pack: %v", r)
	}
}
