package paper

import (
	"strings"
	"time"

	"hangpack/layouts/mm"
)

// A Pack is sheets in the order of their pages.
type Pack struct {
	Letter   bool // Letter paper; else A4
	Title    string
	Day      time.Time
	Revision string
	Spine    Spine
	Sheets   []Sheet
	Changes  bool // from one revision to this one; else what this one is
}

// A Spine is what the strip on the left edge of every page says of the job.
type Spine struct{ Title, Venue, Date string }

// A Sheet is one kind of paper, of one page or more. It is cut into pages before any
// is drawn.
type Sheet interface {
	// Name is what the sheet is called in the spine, in the list of bookmarks, and by
	// codes and clicks: 'SL DOLLY A'. No two sheets of a pack have one name.
	Name() string
	// Pages cuts the sheet. It measures with c and draws nothing on it.
	Pages(c *Canvas) []Page
}

// A Page is one side of paper, ready to be drawn.
type Page struct {
	Shape string // of the side mark in its spine; "" for none
	Draw  func(c *Canvas, room mm.Box)
}

// A Joined is one sheet that is made of several: their pages follow one another under
// its name.
type Joined struct {
	Called string
	Parts  []Sheet
}

// Name is what the sheet is called.
func (j Joined) Name() string { return j.Called }

// Pages cuts its parts.
func (j Joined) Pages(c *Canvas) (pages []Page) {
	for _, part := range j.Parts {
		pages = append(pages, part.Pages(c)...)
	}
	return pages
}

// Destination is what the PDF calls a sheet: its name with '-' for blanks. Links from
// elsewhere lead to it: pack.pdf#nameddest=SL-DOLLY-A. Source: RFC 8118, 3.
func Destination(sheet string) string { return strings.ReplaceAll(sheet, " ", "-") }
