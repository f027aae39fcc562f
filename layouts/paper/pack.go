package paper

import (
	"errors"
	"fmt"
)

// A Drawn is a pack as drawn, or some of its sheets: the PDF's bytes, how many pages,
// of how many of the whole pack, every piece of ink, and every block of it.
type Drawn struct {
	PDF       []byte
	Pages, Of int
	Marks     []Mark
	Blocks    []Block
}

// A Laid is a pack cut into pages that have their numbers, ready to be drawn whole
// or in part.
type Laid struct {
	pack  Pack
	pages []numbered
	codes [][]Code // of each sheet
	blank *Canvas  // to draw on; made while sheets are cut, for the first to draw
}

// A numbered page knows of which sheet of its pack it is, counted from 0.
type numbered struct {
	Page
	sheet int
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

// Lay cuts a pack into pages and numbers them. Its sheets are cut side by side.
func Lay(p Pack) (l *Laid, err error) {
	defer caught(&err)
	l = &Laid{pack: p, codes: make([][]Code, len(p.Sheets))}
	cut, faults := make([][]Page, len(p.Sheets)), make([]error, len(p.Sheets))
	onAllCores(len(p.Sheets)+1, func(i int) {
		if i == len(p.Sheets) {
			l.blank = newDrawingCanvas(p)
			return
		}
		c := newCanvas(p.Letter, p.Spine.Revision)
		cut[i] = p.Sheets[i].Pages(c)
		l.codes[i], faults[i] = c.wanted, c.err
	})
	for i, pages := range cut {
		for _, pg := range pages {
			l.pages = append(l.pages, numbered{pg, i})
		}
	}
	return l, errors.Join(append(faults, l.twoOfOneTarget())...)
}

// twoOfOneTarget is an error if two sheets are called alike: codes and clicks to the
// second would lead to the first.
func (l *Laid) twoOfOneTarget() error {
	of := map[string]int{}
	for _, pg := range l.pages {
		if first, had := of[pg.Target]; had && pg.Target != "" && first != pg.sheet {
			return fmt.Errorf("two sheets have the target %q: %s is the second", pg.Target, pg.Name)
		}
		of[pg.Target] = pg.sheet
	}
	return nil
}

// Draw draws the pages of those sheets that are chosen, counted from 0. Their
// numbers, and those in codes, are of the whole pack; clicks lead to pages that are
// drawn.
func (l *Laid) Draw(chosen func(sheet int) bool) (whole Drawn, err error) {
	defer caught(&err)
	c := l.canvas()
	numberPages(c, l.pages, chosen)
	texts := l.codeTexts(c.pages, chosen)
	c.codes = codesFor(texts)
	go c.codes.ahead(texts)
	for i, pg := range l.pages {
		if !chosen(pg.sheet) {
			continue
		}
		c.start(i+1, pg.Page)
		drawSpine(c, l.pack.Spine, pg.Page, len(l.pages))
		drawFoot(c)
		pg.Draw(c, c.Body())
	}
	if c.err != nil {
		return Drawn{}, c.err
	}
	pdf, err := c.bound()
	return Drawn{pdf, c.pdf.PageCount(), len(l.pages), c.marks, c.blocks}, err
}

// canvas returns one to draw on that nothing is on yet.
func (l *Laid) canvas() *Canvas {
	c := l.blank
	if l.blank = nil; c == nil {
		c = newDrawingCanvas(l.pack)
	}
	return c
}

// codeTexts are the texts of the codes of chosen sheets, in the order of their pages.
func (l *Laid) codeTexts(pages map[string]int, chosen func(sheet int) bool) (texts []string) {
	for sheet, wanted := range l.codes {
		if !chosen(sheet) {
			continue
		}
		for _, code := range wanted {
			texts = append(texts, code.filled(pages))
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

// numberPages gives every page that is a target its number in the whole pack, and a
// link where it is drawn.
func numberPages(c *Canvas, pages []numbered, chosen func(sheet int) bool) {
	drawn := 0
	for i, pg := range pages {
		if chosen(pg.sheet) {
			drawn++
		}
		if _, ok := c.pages[pg.Target]; pg.Target == "" || ok {
			continue
		}
		c.pages[pg.Target] = i + 1
		if chosen(pg.sheet) {
			c.links[pg.Target] = c.pdf.AddLink()
			c.pdf.SetLink(c.links[pg.Target], 0, drawn)
		}
	}
}

// start turns to a new page.
func (c *Canvas) start(n int, pg Page) {
	c.pdf.AddPage()
	c.page, c.before = n, len(c.blocks)
	c.pdf.Bookmark(pg.Name, 0, 0)
}
