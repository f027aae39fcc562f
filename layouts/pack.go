// Package layouts sets sheets on paper. Every figure it is given is already
// worked out, rounded and turned into words with its unit; it only places
// them. It alone knows the PDF library, and knows nothing of jobs or statics.
//
// Lengths are millimetres from the top left corner of the page. Drawings are
// given in metres of the real thing, and are drawn to a scale that is stated.
package layouts

import (
	"bytes"
	"fmt"
	"time"
)

// A Pack is sheets in the order of their pages.
type Pack struct {
	Letter bool // Letter paper; else A4
	Title  string
	Day    time.Time
	Spine  Spine
	Sheets []Sheet
}

// Spine is what the strip on the left edge of every page says of the job.
type Spine struct{ Title, Venue, Date, Revision, Fingerprint string }

// A Sheet is one kind of paper. It is cut into pages before any is drawn.
type Sheet interface {
	// pages cuts the sheet. It measures with c and draws nothing on it.
	pages(c *canvas) []page
}

// A page is one side of paper, ready to be drawn.
type page struct {
	target string // what codes and clicks call it; "" for none
	name   string // in the spine and in the list of bookmarks
	shape  string
	draw   func(c *canvas, room box)
}

// Paper is a pack as drawn: the PDF's bytes, how many pages, and every piece
// of ink.
type Paper struct {
	PDF   []byte
	Pages int
	Marks []Mark
}

// Draw sets a pack on paper. An error means that something did not fit or that
// the PDF library failed: no page is then good.
func Draw(p Pack) (paper Paper, err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("drawing the pack: %v", r)
		}
	}()
	c := newCanvas(p.Letter, p.Day)
	c.revision = p.Spine.Revision
	c.pdf.SetTitle(p.Title, true)
	c.pdf.SetLang("en")
	var pages []page
	for _, s := range p.Sheets {
		pages = append(pages, s.pages(c)...)
	}
	c.number(pages)
	for i, pg := range pages {
		c.start(i+1, pg)
		c.spine(p.Spine, pg, len(pages))
		c.foot()
		pg.draw(c, c.body())
	}
	var out bytes.Buffer
	if err := c.pdf.Output(&out); err != nil {
		return Paper{}, fmt.Errorf("writing the PDF: %w", err)
	}
	return Paper{out.Bytes(), len(pages), c.marks}, c.err
}

// number gives every page that is a target its number and its link.
func (c *canvas) number(pages []page) {
	for i, pg := range pages {
		if _, ok := c.pages[pg.target]; pg.target == "" || ok {
			continue
		}
		c.pages[pg.target] = i + 1
		c.links[pg.target] = c.pdf.AddLink()
		c.pdf.SetLink(c.links[pg.target], 0, i+1)
	}
}

// start turns to a new page.
func (c *canvas) start(n int, pg page) {
	c.pdf.AddPage()
	c.page = n
	c.pdf.Bookmark(pg.name, 0, 0)
}
