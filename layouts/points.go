package layouts

import (
	"strings"

	"hangpack/layouts/mm"
)

// Points is the venue's sheet: what every point of the roof carries, where it
// is and what is in the figure, with room for the venue's pen.
type Points struct {
	Facts  []Fact
	Groups []PointGroup
	Totals []TotalRow
	Notes  []string
}

// A PointGroup is the points of one stack, or of what no stack carries.
type PointGroup struct {
	ID, Name, Shape string
	Held            bool
	Says            []string // lines under the name: its secondary
	Points          []VenuePoint
}

// A VenuePoint is one point, in words.
type VenuePoint struct {
	ID      string
	Where   []string // across, up or down
	Loads   []Load   // static, design, with the other hoist slack
	Lift    string   // the lift at which it carries more, "" where none does
	AtLift  []Load   // static, design at that lift
	Heights []string // 'pick hole 12.50 m'
	Sums    []string // what the static load includes; the hoist and its use
}

// A Load is a figure, and the same small in another unit below it.
type Load struct{ Is, Also string }

// A TotalRow is the sum of some points.
type TotalRow struct{ Of, Count, Static, Design string }

// Columns of a point: its figures, then boxes for the venue's pen.
var (
	venueColumns = []column{{"point", 22, false}, {"across, up- or downstage of the datum", 42, false},
		{"static", 18.5, true}, {"design", 18.5, true}, {"other hoist slack", 18.5, true}, {"", 2.5, false}}
	penColumns   = []column{{" venue's limit", 17, false}, {" accepted", 17, false}, {" initials", 0, false}}
	totalColumns = []column{{"total of", 52, false}, {"of", 44, false}, {"static", 37, true}, {"design", 0, true}}
)

func (v Points) pages(c *canvas) []page {
	var pieces []piece
	for _, f := range v.Facts {
		pieces = append(pieces, FactPiece(c, f, c.body().W))
	}
	for _, g := range v.Groups {
		pieces = append(pieces, pointGroup(c, g, venueAndPen(c, v.Groups))...)
	}
	var rows [][]string
	for _, t := range v.Totals {
		rows = append(rows, []string{t.Of, t.Count, t.Static, t.Design})
	}
	end := append([]piece{Heading("Totals")}, TableOf(c, totalColumns, rows, text)...)
	end = append(end, Gap(3))
	for _, n := range v.Notes {
		end = append(end, Words(c, small, n, 1))
	}
	pieces = append(pieces, together(end, c.body().H/2)...)
	return Flow(c, "points", "POINTS", "", revHead("POINTS", "for the venue's head rigger: plan for approval"), pieces)
}

// pointGroup is a stack's name, the headings, and its points.
func pointGroup(c *canvas, g PointGroup, columns []column) []piece {
	var rows []piece
	for _, p := range g.Points {
		rows = append(rows, venuePoint(c, p, columns))
	}
	return under(pointHead(c, g, columns), rows)
}

// pointHead is a group's name over the headings of its points.
func pointHead(c *canvas, g PointGroup, all []column) piece {
	columns := TableRow(c, all, nil, smallB, true)
	x := 7 + c.width(section, g.ID) + 3
	if g.Shape == "" {
		x -= 7
	}
	name := g.Name
	if g.Held {
		name = "HELD: DO NOT FLY. " + name
	}
	lines := c.wrap(textB, c.body().W-x, name)
	var says []string
	for _, s := range g.Says {
		says = append(says, c.wrap(small, c.body().W-x, s)...)
	}
	h := 4.6 + float64(len(lines))*textB.lead() + float64(len(says))*small.lead()
	return piece{h: h + columns.h, keep: true, draw: func(c *canvas, room mm.Box) {
		SideMark(c, g.Shape, mm.BoxAt(room.X, room.Y+3.6, 5, 5))
		c.text(room.X+x-3-c.width(section, g.ID), room.Y+8, section, g.ID)
		y := c.lines(room.X+x, room.Y+7.6, textB, lines)
		c.lines(room.X+x, y-0.4, small, says)
		columns.draw(c, mm.BoxAt(room.X, room.Y+h, room.W, columns.h))
	}}
}

// venueAndPen are the columns of a point and of the pen, across the page. Loads of
// very many digits take from the pen's.
func venueAndPen(c *canvas, groups []PointGroup) []column {
	columns := append(append([]column{}, venueColumns...), penColumns...)
	w := widestLoad(c, groups) + 3.5
	for i := 2; i < 5; i++ {
		more := max(w-columns[i].w, 0)
		columns[i].w += more
		if pen := &columns[i+4]; pen.w > 0 { // the last one takes what is left
			pen.w -= more
		}
	}
	return Rest(c, columns)
}

func widestLoad(c *canvas, groups []PointGroup) (w float64) {
	for _, g := range groups {
		for _, p := range g.Points {
			for _, l := range append(append([]Load{}, p.Loads...), p.AtLift...) {
				w = max(w, c.width(textB, l.Is), c.width(small, l.Also))
			}
		}
	}
	return w
}

// venuePoint is one point: its loads in the largest type, below them its
// heights and its sums, and beside all of it the boxes for the pen.
func venuePoint(c *canvas, p VenuePoint, columns []column) piece {
	w := 0.0
	for _, col := range columns[:len(venueColumns)] {
		w += col.w
	}
	id, where := c.wrap(textB, columns[0].w-2, p.ID), c.wrapAll(text, columns[1].w-1, p.Where)
	top := float64(max(len(id), len(where), 2))*text.lead() + 1
	lift, at := 0.0, []string(nil)
	if p.Lift != "" {
		at = c.wrap(textB, columns[1].w-1, "AT "+strings.ToUpper(p.Lift)+", more")
		lift = float64(max(len(at), 2))*text.lead() + 1
	}
	sums := c.wrapAll(small, w-2, p.Sums)
	heights := pairs(c, p.Heights, w)
	h := top + lift + heights.h + float64(len(sums))*small.lead() + 4
	return piece{h: h, draw: func(c *canvas, room mm.Box) {
		c.lines(room.X, room.Y+4.4, textB, id)
		c.lines(room.X+columns[0].w, room.Y+4.4, text, where)
		pointLoads(c, room, columns, p.Loads)
		if p.Lift != "" {
			c.lines(room.X+columns[0].w, room.Y+top+4.4, textB, at)
			pointLoads(c, mm.BoxAt(room.X, room.Y+top, room.W, lift), columns, p.AtLift)
		}
		heights.draw(c, mm.BoxAt(room.X, room.Y+top+lift, w, heights.h))
		c.lines(room.X, room.Y+top+lift+heights.h+3.6, small, sums)
		penBoxes(c, mm.BoxAt(room.X+w, room.Y, room.W-w, h), columns[len(venueColumns):])
		c.line(room.X, room.Bottom(), room.Right(), room.Bottom(), light)
	}}
}

func pointLoads(c *canvas, room mm.Box, columns []column, loads []Load) {
	x := room.X + columns[0].w + columns[1].w
	for i, l := range loads {
		right := x + columns[2+i].w - 2
		c.right(right, room.Y+4.4, textB, l.Is)
		c.right(right, room.Y+4.4+text.lead(), small, l.Also)
		x += columns[2+i].w
	}
}

// penBoxes are empty boxes, one in each column.
func penBoxes(c *canvas, room mm.Box, columns []column) {
	x := room.X
	for _, col := range columns {
		c.rect(mm.BoxAt(x+1, room.Y+1.2, col.w-2, room.H-2.4), solid, white)
		x += col.w
	}
}

// pairs sets texts in two columns across a width, two to a line.
func pairs(c *canvas, texts []string, w float64) piece {
	columns := []column{{w: w / 2}, {w: w / 2}}
	var rows []piece
	for i := 0; i < len(texts); i += 2 {
		cells := append(append([]string{}, texts[i:min(i+2, len(texts))]...), "")[:2]
		rows = append(rows, BareRow(c, columns, cells, text))
	}
	return piece{h: heightOf(rows), draw: func(c *canvas, room mm.Box) {
		for _, r := range rows {
			r.draw(c, room)
			room.Y += r.h
		}
	}}
}
