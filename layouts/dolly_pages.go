package layouts

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
)

// Name is what the sheet is called.
func (d Dolly) Name() string { return d.Sheet }

// Pages is one page, or where rows of the least height do not fit below a long
// id and above long words, as many as they need, each with all the words.
func (d Dolly) Pages(c *paper.Canvas) (pages []paper.Page) {
	room := c.Body()
	left := room.H - dollyHeadHeight(c, d, room.W) - dollyFootHeight(c, d, room.W)
	most := max(int((left-rowsUp-barHeight(c, d, room.W)-ghostBar-1)/dollyRowLeast(c, d)), 1)
	sheets := (len(d.Rows) + most - 1) / most
	for i := range sheets {
		part := d
		if sheets > 1 {
			part = d.part(i*len(d.Rows)/sheets, (i+1)*len(d.Rows)/sheets)
		}
		pages = append(pages, paper.Page{Shape: d.Shape, Draw: part.draw})
	}
	return pages
}

// draw draws one page.
func (d Dolly) draw(c *paper.Canvas, room mm.Box) {
	room = dollyHead(c, room, d)
	foot := dollyFootHeight(c, d, room.W)
	rows := mm.BoxAt(room.X, room.Y, room.W, room.H-foot)
	c.In("joints", rows, func() { dollyRows(c, rows, d) })
	dollyFoot(c, mm.BoxAt(room.X, rows.Bottom(), room.W, foot), d)
}
