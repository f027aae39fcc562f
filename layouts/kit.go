package layouts

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
)

// Kit is the sheet by which gear is counted out of the truck and in again.
type Kit struct {
	Says   []string
	Groups []KitGroup
	Total  string
	Trucks []TruckRow
}

// A KitGroup is gear of one sort.
type KitGroup struct {
	Of   string
	Rows []KitRow
}

// A KitRow is pieces that are alike.
type KitRow struct{ Of, Where, Count, Spare, Each, All string }

// A TruckRow is one loaded dolly.
type TruckRow struct{ Stack, Dolly, Holds, Set, All, Height string }

// Columns of both tables; the last two are boxes for the pen.
var (
	kitColumns = []paper.Column{paper.Texts("what", 51), paper.Texts("for", 24), paper.Figures("count", 13), paper.Figures("spare", 12), paper.Figures("each", 20), paper.Figures("together", 21),
		paper.Texts(" out", 15.5), paper.Texts(" in", 0)}
	truckColumns = []paper.Column{paper.Texts("stack", 17), paper.Texts("dolly", 20), paper.Texts("holds", 47), paper.Figures("its set", 19), paper.Figures("with dolly", 20), paper.Figures("about tall", 18),
		paper.Texts(" out", 15.5), paper.Texts(" in", 0)}
)

const kitRow = 7.6 // least height, for a box that takes a gloved hand

// Name is what the sheet is called.
func (Kit) Name() string { return "KIT" }

// Pages cuts the sheet.
func (v Kit) Pages(c *paper.Canvas) []paper.Page {
	var pieces []paper.Piece
	for _, s := range v.Says {
		pieces = append(pieces, paper.Words(c, paper.Text, s, 1))
	}
	pieces = append(pieces, goods(c, v.Groups)...)
	pieces = append(pieces, paper.Gap(2), paper.Words(c, paper.TextBold, v.Total, 1), parts.Heading("Dollies for the truck"))
	pieces = append(pieces, trucks(c, v.Trucks)...)
	pieces = append(pieces, paper.Gap(1), paper.Words(c, paper.Small, "About tall: deck and hinge pitches; what stands above the top hinge is not in it. With dolly: what is tied to the cabinets is in it.", 0))
	return paper.Flow(c, "", parts.PlainHead("KIT", "to count out of the truck, and in again"), pieces)
}

// goods is the table of all gear, sort by sort.
func goods(c *paper.Canvas, groups []KitGroup) []paper.Piece {
	columns, rows := paper.Rest(c, kitColumns), []paper.Piece(nil)
	for _, g := range groups {
		rows = append(rows, groupName(g.Of))
		for _, r := range g.Rows {
			rows = append(rows, countedRow(c, columns, []string{r.Of, r.Where, r.Count, r.Spare, r.Each, r.All}))
		}
	}
	return paper.Headed(paper.TableHead(c, columns), rows)
}

// trucks is the table of loaded dollies.
func trucks(c *paper.Canvas, all []TruckRow) []paper.Piece {
	columns, rows := paper.Rest(c, truckColumns), []paper.Piece(nil)
	for _, t := range all {
		rows = append(rows, countedRow(c, columns, []string{t.Stack, t.Dolly, t.Holds, t.Set, t.All, t.Height}))
	}
	return paper.Headed(paper.TableHead(c, columns), rows)
}

// groupName stands over the rows of one sort.
func groupName(s string) paper.Piece {
	return paper.Piece{H: 6.5, Keep: true, Draw: func(c *paper.Canvas, room mm.Box) {
		c.Text(room.X, room.Y+4.8, paper.TextBold, s)
		c.Line(room.X, room.Bottom(), room.Right(), room.Bottom(), paper.Light)
	}}
}

// countedRow is a row whose last two cells are boxes for the pen.
func countedRow(c *paper.Canvas, columns []paper.Column, cells []string) paper.Piece {
	row := paper.BareRow(c, columns[:len(cells)], cells, paper.Small)
	h := max(row.H+1.6, kitRow)
	return paper.Piece{H: h, Draw: func(c *paper.Canvas, room mm.Box) {
		row.Draw(c, mm.BoxAt(room.X, room.Y+(h-row.H)/2, room.W, row.H))
		x := room.X
		for _, col := range columns[:len(cells)] {
			x += col.W
		}
		for _, col := range columns[len(cells):] {
			c.Rect(mm.BoxAt(x+1, room.Y+0.8, col.W-2, h-1.6), paper.Solid, paper.White)
			x += col.W
		}
		c.Line(room.X, room.Bottom(), room.Right(), room.Bottom(), paper.Light)
	}}
}
