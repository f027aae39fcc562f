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

// contents lists the sheets of the pack as they call themselves, each with its mark and
// its page, as many to a line as fit, under a heading that says which of them the venue
// reads.
func contents(c *paper.Canvas, groups []SheetGroup, venue string) []paper.Piece {
	cell := cellFor(c, groups)
	across := max(int((c.Body().W-markRoom+listApart)/(cell.w+listApart)), 1)
	rule := paper.Words(c, paper.SmallBold, "Throw away every sheet that is not in this list with this mark. Two COVERs of one REV: ask.", 0.5)
	rule.Keep = true
	pieces := []paper.Piece{rule}
	for _, g := range groups {
		rows := slices.Collect(slices.Chunk(g.Sheets, across))
		pieces = append(pieces, paper.Piece{H: float64(len(rows))*paper.Text.Lead() + 1, Draw: func(c *paper.Canvas, room mm.Box) {
			paper.SideMark(c, g.Shape, mm.BoxAt(room.X, room.Y+0.6, 3.6, 3.6))
			for i, row := range rows {
				drawListed(c, mm.At(room.X+markRoom, room.Y+float64(i)*paper.Text.Lead()), cell, row)
			}
		}})
	}
	return paper.Headed(headingWith("Sheets: mark, page", venue), pieces)
}

// A listCell is the room of one sheet in the list: its name, its mark, all of it.
type listCell struct{ name, mark, w float64 }

// cellFor has room for the pages of a pack whose sheets take five pages each.
func cellFor(c *paper.Canvas, groups []SheetGroup) (cell listCell) {
	sheets := 20 // at least, for a number of three digits
	for _, g := range groups {
		for _, sheet := range g.Sheets {
			cell.name = max(cell.name, c.Width(paper.Small, sheet)+listGap)
			sheets++
		}
	}
	cell.mark = c.Width(paper.TextBold, paper.WidestMark) + listGap
	cell.w = cell.name + cell.mark + c.Width(paper.Small, pageWords(min(5*sheets, 9999)))
	return cell
}

func pageWords(page int) string { return fmt.Sprintf("p. %d", page) }

// drawListed draws a row of the list. Each sheet is a click to its page.
func drawListed(c *paper.Canvas, at mm.Spot, cell listCell, row []string) {
	base := at.Y + paper.Text.Lead()*0.85
	for _, sheet := range row {
		page, mark := c.Listed(sheet)
		c.Text(at.X, base, paper.Small, sheet)
		c.Apart(func() {
			c.Text(at.X+cell.name, base, paper.TextBold, mark)
			c.Text(at.X+cell.name+cell.mark, base, paper.Small, pageWords(page))
		})
		c.LeadsTo(mm.BoxAt(at.X, at.Y, cell.w, paper.Text.Lead()), sheet)
		at.X += cell.w + listApart
	}
}
