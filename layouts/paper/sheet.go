package paper

import (
	"time"

	"hangpack/layouts/mm"
)

// A Pack is sheets in the order of their pages.
type Pack struct {
	Letter bool // Letter paper; else A4
	Title  string
	Day    time.Time
	Spine  Spine
	Sheets []Sheet
}

// A Spine is what the strip on the left edge of every page says of the job.
type Spine struct{ Title, Venue, Date, Revision, Fingerprint string }

// A Sheet is one kind of paper. It is cut into pages before any is drawn.
type Sheet interface {
	// Pages cuts the sheet. It measures with c and draws nothing on it.
	Pages(c *Canvas) []Page
}

// A Page is one side of paper, ready to be drawn.
type Page struct {
	Target string // what codes and clicks call it; "" for none
	Name   string // in the spine and in the list of bookmarks
	Shape  string // of the side mark in its spine; "" for none
	Draw   func(c *Canvas, room mm.Box)
}
