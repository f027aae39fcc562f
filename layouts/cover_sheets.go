package layouts

import (
	"fmt"
	"slices"
	"strings"

	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
)

// Room in a line of the list, in mm: for what a group is of, between a sheet's name, its
// mark and its page, and between two sheets.
const (
	groupWidth = 16.0
	listGap    = 1.5
	listApart  = 4.0
)

// contents lists the sheets of the pack, each with its mark and its page, as many to a
// line as fit, under a heading that says which of them the venue reads.
func contents(c *paper.Canvas, groups []SheetGroup, venue string) []paper.Piece {
	columns := columnsFor(c, groups)
	var pieces []paper.Piece
	for _, g := range groups {
		rows := slices.Collect(slices.Chunk(g.Sheets, len(columns)))
		pieces = append(pieces, paper.Piece{H: float64(len(rows)) * paper.Small.Lead(), Draw: func(c *paper.Canvas, room mm.Box) {
			c.Text(room.X, room.Y+paper.Small.Lead()*0.85, paper.SmallBold, g.Of)
			for i, row := range rows {
				drawListed(c, mm.At(room.X+groupWidth, room.Y+float64(i)*paper.Small.Lead()), columns, g.Of, row)
			}
		}})
	}
	pieces[len(pieces)-1].H += 2
	return paper.Headed(headingWith("Sheets: mark and page", venue), pieces)
}

// columnsFor are the widths of the names in as many columns as fit.
func columnsFor(c *paper.Canvas, groups []SheetGroup) (names []float64) {
	const most = 6
	for n := most; n > 0; n-- {
		names = make([]float64, n)
		all := groupWidth - listApart
		for _, g := range groups {
			for i, sheet := range g.Sheets {
				names[i%n] = max(names[i%n], c.Width(paper.Small, shortName(g.Of, sheet)))
			}
		}
		for _, name := range names {
			all += name + besideName(c) + listApart
		}
		if all <= c.Body().W {
			break
		}
	}
	return names
}

// besideName is the room for mark and page beside a name.
func besideName(c *paper.Canvas) float64 {
	return listGap + c.Width(paper.SmallBold, paper.WidestMark) + listGap + c.Width(paper.Small, "9999")
}

// shortName is a sheet's name in a group of its stack: 'DOLLY A'.
func shortName(of, sheet string) string { return strings.TrimPrefix(sheet, of+" ") }

// drawListed draws a row of the list. Each sheet is a click to its page.
func drawListed(c *paper.Canvas, at mm.Spot, names []float64, of string, row []string) {
	lead := paper.Small.Lead()
	base := at.Y + lead*0.85
	for k, sheet := range row {
		w := names[k] + besideName(c)
		page, mark := c.Listed(sheet)
		c.Text(at.X, base, paper.Small, shortName(of, sheet))
		c.Apart(func() {
			c.Text(at.X+names[k]+listGap, base, paper.SmallBold, mark)
			c.Right(at.X+w, base, paper.Small, fmt.Sprint(page))
		})
		c.LeadsTo(mm.BoxAt(at.X, at.Y, w, lead), sheet)
		at.X += w + listApart
	}
}
