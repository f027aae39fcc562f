package paper

import (
	"fmt"

	"hangpack/layouts/mm"
)

// A Piece is a part of a sheet that stays on one page: its height and how it
// is drawn into a room of that height.
type Piece struct {
	H    float64
	Draw func(c *Canvas, room mm.Box)
	Keep bool   // on the page of the next piece
	Head *Piece // of its table: stands again above it at the top of a page
}

// Words makes a piece of a text across the body, with white below it, in mm.
func Words(c *Canvas, f Face, s string, after float64) Piece {
	lines := c.Wrap(f, c.Body().W, s)
	return Piece{H: float64(len(lines))*f.Lead() + after, Draw: func(c *Canvas, room mm.Box) {
		c.Lines(room.X, room.Y+f.Lead()*0.8, f, lines)
	}}
}

// Gap is a piece of white paper, in mm.
func Gap(h float64) Piece { return Piece{H: h, Draw: func(*Canvas, mm.Box) {}} }

// HeightOf returns how tall pieces are, one under the other.
func HeightOf(pieces []Piece) (h float64) {
	for _, p := range pieces {
		h += p.H
	}
	return h
}

// Together keeps pieces on one page if they are no taller than most, in mm. It marks the
// pieces that it is given, at least one, and returns them.
func Together(pieces []Piece, most float64) []Piece {
	if HeightOf(pieces) > most {
		return pieces
	}
	for i := range pieces[:len(pieces)-1] {
		pieces[i].Keep = true
	}
	return pieces
}

// IntoPages shares pieces among pages of a height, in their order. A piece that is
// to be kept with the next never ends a page.
func IntoPages(pieces []Piece, height float64) (pages [][]Piece) {
	var page []Piece
	left := height
	for len(pieces) > 0 {
		group := pieces[:kept(pieces)]
		pieces = pieces[len(group):]
		h := HeightOf(group)
		if h > left && len(page) > 0 {
			pages, page, left = append(pages, page), nil, height
			if head := group[0].Head; head != nil {
				group = append([]Piece{*head}, group...)
				h += head.H
			}
		}
		page, left = append(page, group...), left-h
	}
	return append(pages, page)
}

// kept returns how many of the first pieces belong on one page.
func kept(pieces []Piece) int {
	n := 0
	for n < len(pieces)-1 && pieces[n].Keep {
		n++
	}
	return min(n+1, len(pieces))
}

// A Top draws the head of a page and returns the room below it; which tells the page
// from the others of its sheet. With no canvas it only measures.
type Top func(c *Canvas, room mm.Box, which string) mm.Box

// Flow makes pages of a sheet whose pieces go on from page to page under
// the same head. A second page has the same head, never smaller type.
func Flow(c *Canvas, shape string, head Top, pieces []Piece) (pages []Page) {
	probe := head(nil, c.Body(), "")
	groups := IntoPages(pieces, probe.H)
	for i, group := range groups {
		which := OfMany(i, len(groups))
		pages = append(pages, Page{Shape: shape,
			Draw: func(c *Canvas, room mm.Box) {
				room = head(c, room, which)
				if h := HeightOf(group); h > room.H+0.5 {
					c.Fault("page %d: %s is %.1f mm tall and has %.1f mm", c.page, c.sheet, h, room.H)
				}
				Pile(c, "piece", room, group)
			}})
	}
	return pages
}

// OfMany is what tells page i of a sheet, counted from 0, from its others.
func OfMany(i, pages int) string {
	if pages == 1 {
		return ""
	}
	return fmt.Sprintf(" %d of %d", i+1, pages)
}

// Pile draws pieces one under the other, each a block of its own.
func Pile(c *Canvas, block string, room mm.Box, pieces []Piece) {
	for n, p := range pieces {
		b := mm.BoxAt(room.X, room.Y, room.W, p.H)
		c.In(fmt.Sprintf("%s %d", block, n+1), b, func() { p.Draw(c, b) })
		room.Y += p.H
	}
}
