package layouts

import "hangpack/layouts/mm"

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
	kitColumns = []column{{"what", 51, false}, {"for", 24, false}, {"count", 13, true}, {"spare", 12, true}, {"each", 20, true}, {"together", 21, true},
		{" out", 15.5, false}, {" in", 0, false}}
	truckColumns = []column{{"stack", 17, false}, {"dolly", 20, false}, {"holds", 47, false}, {"its set", 19, true}, {"with dolly", 20, true}, {"about tall", 18, true},
		{" out", 15.5, false}, {" in", 0, false}}
)

const kitRow = 7.6 // least height, for a box that takes a gloved hand

func (v Kit) pages(c *canvas) []page {
	var pieces []piece
	for _, s := range v.Says {
		pieces = append(pieces, Words(c, text, s, 1))
	}
	pieces = append(pieces, goods(c, v.Groups)...)
	pieces = append(pieces, Gap(2), Words(c, textB, v.Total, 1), Heading("Dollies for the truck"))
	pieces = append(pieces, trucks(c, v.Trucks)...)
	pieces = append(pieces, Gap(1), Words(c, small, "About tall: deck and hinge pitches; what stands above the top hinge is not in it. With dolly: what is tied to the cabinets is in it.", 0))
	return Flow(c, "kit", "KIT", "", revHead("KIT", "to count out of the truck, and in again"), pieces)
}

// goods is the table of all gear, sort by sort.
func goods(c *canvas, groups []KitGroup) []piece {
	columns, rows := Rest(c, kitColumns), []piece(nil)
	for _, g := range groups {
		rows = append(rows, groupName(g.Of))
		for _, r := range g.Rows {
			rows = append(rows, countedRow(c, columns, []string{r.Of, r.Where, r.Count, r.Spare, r.Each, r.All}))
		}
	}
	return under(TableHead(c, columns), rows)
}

// trucks is the table of loaded dollies.
func trucks(c *canvas, all []TruckRow) []piece {
	columns, rows := Rest(c, truckColumns), []piece(nil)
	for _, t := range all {
		rows = append(rows, countedRow(c, columns, []string{t.Stack, t.Dolly, t.Holds, t.Set, t.All, t.Height}))
	}
	return under(TableHead(c, columns), rows)
}

// groupName stands over the rows of one sort.
func groupName(s string) piece {
	return piece{h: 6.5, keep: true, draw: func(c *canvas, room mm.Box) {
		c.text(room.X, room.Y+4.8, textB, s)
		c.line(room.X, room.Bottom(), room.Right(), room.Bottom(), light)
	}}
}

// countedRow is a row whose last two cells are boxes for the pen.
func countedRow(c *canvas, columns []column, cells []string) piece {
	row := BareRow(c, columns[:len(cells)], cells, small)
	h := max(row.h+1.6, kitRow)
	return piece{h: h, draw: func(c *canvas, room mm.Box) {
		row.draw(c, mm.BoxAt(room.X, room.Y+(h-row.h)/2, room.W, row.h))
		x := room.X
		for _, col := range columns[:len(cells)] {
			x += col.w
		}
		for _, col := range columns[len(cells):] {
			c.rect(mm.BoxAt(x+1, room.Y+0.8, col.w-2, h-1.6), solid, white)
			x += col.w
		}
		c.line(room.X, room.Bottom(), room.Right(), room.Bottom(), light)
	}}
}
