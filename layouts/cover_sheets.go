package layouts

import (
	"fmt"
	"slices"

	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
)

// Room in a line of the list, in mm: for the side mark of a stack, between a sheet's name,
// its mark and its page, and between two sheets.
const (
	markRoom  = 6.0
	listGap   = 1.5
	listApart = 3.0
)

// A listStyle is how the list of sheets is set.
type listStyle struct {
	name, mark paper.Face
	all        bool // pages of a sheet; else the first alone
}

// The list is small where it finds room below all else, and large on a page of its own.
var (
	smallList = listStyle{paper.Small, paper.TextBold, false}
	largeList = listStyle{paper.Reading, paper.Section, true}
)

// list is the list of sheets below other pieces of a cover, on pages of a height.
func (v Cover) list(c *paper.Canvas, above []paper.Piece, height float64) []paper.Piece {
	pages := paper.IntoPages(above, height)
	small := contents(c, smallList, v.Sheets, v.Venue)
	if paper.HeightOf(pages[len(pages)-1])+paper.HeightOf(small) <= height {
		return paper.Together(small, height)
	}
	next := paper.Words(c, paper.SmallBold, "The list of all sheets with their marks: on the next page of the cover.", 0)
	return append([]paper.Piece{next}, paper.Together(contents(c, largeList, v.Sheets, v.Venue), height)...)
}

// contents lists the sheets of the pack as they call themselves, each with its mark and
// its page, as many to a line as fit, under a heading that says which of them the venue
// reads.
func contents(c *paper.Canvas, style listStyle, groups []SheetGroup, venue string) []paper.Piece {
	cell := cellFor(c, style, groups)
	across := max(int((c.Body().W-markRoom+listApart)/(cell.w+listApart)), 1)
	rule := paper.Words(c, paper.SmallBold, "Same mark as here: keep. Another mark, or not here: throw away, get the new sheet.", 1)
	rule.Keep = true
	pieces := []paper.Piece{rule}
	for _, g := range groups {
		for row := range slices.Chunk(g.Sheets, across) {
			pieces = append(pieces, paper.Piece{H: cell.h, Draw: func(c *paper.Canvas, room mm.Box) {
				paper.SideMark(c, g.Shape, mm.BoxAt(room.X, room.Y+(cell.h-3.4)/2, 3.4, 3.4))
				drawListed(c, style, mm.At(room.X+markRoom, room.Y), cell, row)
			}})
		}
		pieces[len(pieces)-1].H++
	}
	return paper.Headed(headingWith("Sheets: mark, page", venue), pieces)
}

// A listCell is the room of one sheet in the list: its name, its mark, all of it.
type listCell struct{ name, mark, w, h float64 }

// cellFor has room for the pages of a pack whose sheets take five pages each.
func cellFor(c *paper.Canvas, style listStyle, groups []SheetGroup) (cell listCell) {
	sheets := 20 // at least, for a number of three digits
	for _, g := range groups {
		for _, sheet := range g.Sheets {
			cell.name = max(cell.name, c.Width(style.name, sheet)+listGap)
			sheets++
		}
	}
	cell.mark = c.Width(style.mark, paper.WidestMark) + listGap
	most := min(5*sheets, 9999)
	cell.w = cell.name + cell.mark + c.Width(paper.Small, style.pages(most, most+1))
	cell.h = style.mark.Lead()
	return cell
}

// pages name the pages of a sheet: 'p. 9-12'.
func (s listStyle) pages(first, last int) string {
	if s.all && last > first {
		return fmt.Sprintf("p. %d-%d", first, last)
	}
	return fmt.Sprintf("p. %d", first)
}

// drawListed draws a row of the list. Each sheet is a click to its page.
func drawListed(c *paper.Canvas, style listStyle, at mm.Spot, cell listCell, row []string) {
	base := at.Y + cell.h*0.8
	for _, sheet := range row {
		first, last, mark := c.Listed(sheet)
		c.Text(at.X, base, style.name, sheet)
		c.Apart(func() {
			c.Text(at.X+cell.name, base, style.mark, mark)
			c.Text(at.X+cell.name+cell.mark, base, paper.Small, style.pages(first, last))
		})
		c.LeadsTo(mm.BoxAt(at.X, at.Y, cell.w, cell.h), sheet)
		at.X += cell.w + listApart
	}
}
