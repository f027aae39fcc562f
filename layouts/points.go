package layouts

import (
	"slices"
	"strings"

	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
)

// Points is the venue's sheet: what every point of the roof carries, where it
// is and what is in the figure, with room for the venue's pen.
type Points struct {
	Facts  []parts.Fact
	Groups []PointGroup
	Totals []PointTotal
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
	Loads   []Load   // static, design, governing; with two hoists anywhere in the job with the other chain slack too
	Lift    string   // the lift at which it carries more, "" where none does
	AtLift  []Load   // static, design at that lift
	Heights []string // 'pick hole 12.50 m'
	Sums    []string // what the static load includes; the hoist and its use
}

// A Load is a figure, and the same small in another unit below it.
type Load struct{ Is, Also string }

// A PointTotal is the sum of some points.
type PointTotal struct{ Of, Count, Static, Design string }

// Columns of a point: its figures, then boxes for the venue's pen.
var (
	venueColumns = []paper.Column{paper.Texts("point", 20), paper.Texts("across, up- or downstage of the datum", 35)}
	placeLeast   = 23.0 // in which 'downstage' stands on a line
	loadColumns  = []paper.Column{paper.Figures("static", 16.5), paper.Figures("design", 16.5), paper.Figures("governing", 17.5), paper.Figures("if other chain slack", 18)}
	penColumns   = []paper.Column{paper.Texts(" venue's limit", 15.4), paper.Texts(" accepted", 16.6), paper.Texts(" initials", 0)}
	totalColumns = []paper.Column{paper.Texts("total of", 52), paper.Texts("of", 44), paper.Figures("static", 37), paper.Figures("design", 0)}
)

// Name is what the sheet is called.
func (Points) Name() string { return "POINTS" }

// Pages cuts the sheet.
func (v Points) Pages(c *paper.Canvas) []paper.Page {
	var pieces []paper.Piece
	for _, f := range v.Facts {
		pieces = append(pieces, f.Piece(c, c.Body().W))
	}
	for _, g := range v.Groups {
		pieces = append(pieces, pointGroup(c, g, venueAndPen(c, v.Groups))...)
	}
	var rows [][]string
	for _, t := range v.Totals {
		rows = append(rows, []string{t.Of, t.Count, t.Static, t.Design})
	}
	end := append([]paper.Piece{parts.Heading("Totals")}, paper.Table(c, totalColumns, rows, paper.Text)...)
	end = append(end, paper.Gap(3))
	for _, n := range v.Notes {
		end = append(end, paper.Words(c, paper.Small, n, 1))
	}
	pieces = append(pieces, paper.Together(end, c.Body().H/2)...)
	return paper.Flow(c, "", parts.PlainHead("POINTS", "for the venue's head rigger: plan for approval"), pieces)
}

// pointGroup is a stack's name, the headings, and its points.
func pointGroup(c *paper.Canvas, g PointGroup, columns []paper.Column) []paper.Piece {
	var rows []paper.Piece
	for _, p := range g.Points {
		rows = append(rows, venuePoint(c, p, columns))
	}
	return paper.Headed(pointHead(c, g, columns), rows)
}

// pointHead is a group's name over the headings of its points.
func pointHead(c *paper.Canvas, g PointGroup, all []paper.Column) paper.Piece {
	columns := paper.TableRow(c, all, nil, paper.SmallBold, true)
	x := 7 + c.Width(paper.Section, g.ID) + 3
	if g.Shape == "" {
		x -= 7
	}
	name := g.Name
	if g.Held {
		name = "HELD: DO NOT FLY. " + name
	}
	lines := c.Wrap(paper.TextBold, c.Body().W-x, name)
	var says []string
	for _, s := range g.Says {
		says = append(says, c.Wrap(paper.Small, c.Body().W-x, s)...)
	}
	h := 4.6 + float64(len(lines))*paper.TextBold.Lead() + float64(len(says))*paper.Small.Lead()
	return paper.Piece{H: h + columns.H, Keep: true, Draw: func(c *paper.Canvas, room mm.Box) {
		paper.SideMark(c, g.Shape, mm.BoxAt(room.X, room.Y+3.6, 5, 5))
		c.Text(room.X+x-3-c.Width(paper.Section, g.ID), room.Y+8, paper.Section, g.ID)
		y := c.Lines(room.X+x, room.Y+7.6, paper.TextBold, lines)
		c.Lines(room.X+x, y-0.4, paper.Small, says)
		columns.Draw(c, mm.BoxAt(room.X, room.Y+h, room.W, columns.H))
	}}
}

// venueAndPen are the columns of a point and of the pen, across the page: of as many loads
// as any point has. Loads of very many digits take from the words of where it is, which
// wrap, and those have the room of a load that no point has.
func venueAndPen(c *paper.Canvas, groups []PointGroup) []paper.Column {
	columns, loads := slices.Clone(venueColumns), 0
	for _, g := range groups {
		for _, p := range g.Points {
			loads = max(loads, len(p.Loads))
		}
	}
	w := widestLoad(c, groups) + 2.6
	for i, col := range loadColumns {
		if i >= loads {
			columns[1].W += col.W
			continue
		}
		more := max(w-col.W, 0)
		col.W, columns[1].W = col.W+more, columns[1].W-more
		columns = append(columns, col)
	}
	pen := slices.Clone(penColumns)
	if more := placeLeast - columns[1].W; more > 0 {
		columns[1].W = placeLeast
		for i := range pen {
			pen[i].W = max(pen[i].W-more/2, 0) // of the last one what is left
		}
	}
	return paper.Rest(c, append(append(columns, paper.Texts("", 2)), pen...))
}

// widestLoad measures the widest load of all points.
func widestLoad(c *paper.Canvas, groups []PointGroup) (w float64) {
	for _, g := range groups {
		for _, p := range g.Points {
			for _, l := range append(append([]Load{}, p.Loads...), p.AtLift...) {
				w = max(w, c.Width(paper.TextBold, l.Is), c.Width(paper.Small, l.Also))
			}
		}
	}
	return w
}

// venuePoint is one point: its loads in the largest type, below them its
// heights and its sums, and beside all of it the boxes for the pen.
func venuePoint(c *paper.Canvas, p VenuePoint, columns []paper.Column) paper.Piece {
	w := 0.0
	own := len(columns) - len(penColumns)
	for _, col := range columns[:own] {
		w += col.W
	}
	id, where := c.Wrap(paper.TextBold, columns[0].W-2, p.ID), c.WrapAll(paper.Text, columns[1].W-1, p.Where)
	top := float64(max(len(id), len(where), 2))*paper.Text.Lead() + 1
	lift, at := 0.0, []string(nil)
	if p.Lift != "" {
		at = c.Wrap(paper.TextBold, columns[1].W-1, "AT "+strings.ToUpper(p.Lift)+", more")
		lift = float64(max(len(at), 2))*paper.Text.Lead() + 1
	}
	sums := c.WrapAll(paper.Small, w-2, p.Sums)
	heights := pairs(c, p.Heights, w)
	h := top + lift + heights.H + float64(len(sums))*paper.Small.Lead() + 4
	return paper.Piece{H: h, Draw: func(c *paper.Canvas, room mm.Box) {
		c.Lines(room.X, room.Y+4.4, paper.TextBold, id)
		c.Lines(room.X+columns[0].W, room.Y+4.4, paper.Text, where)
		pointLoads(c, room, columns, p.Loads)
		if p.Lift != "" {
			c.Lines(room.X+columns[0].W, room.Y+top+4.4, paper.TextBold, at)
			pointLoads(c, mm.BoxAt(room.X, room.Y+top, room.W, lift), columns, p.AtLift)
		}
		heights.Draw(c, mm.BoxAt(room.X, room.Y+top+lift, w, heights.H))
		c.Lines(room.X, room.Y+top+lift+heights.H+3.6, paper.Small, sums)
		penBoxes(c, mm.BoxAt(room.X+w, room.Y, room.W-w, h), columns[own:])
		c.Line(room.X, room.Bottom(), room.Right(), room.Bottom(), paper.Light)
	}}
}

// pointLoads writes loads into their columns, the small unit below.
func pointLoads(c *paper.Canvas, room mm.Box, columns []paper.Column, loads []Load) {
	x := room.X + columns[0].W + columns[1].W
	for i, l := range loads {
		right := x + columns[2+i].W - 2
		c.Right(right, room.Y+4.4, paper.TextBold, l.Is)
		c.Right(right, room.Y+4.4+paper.Text.Lead(), paper.Small, l.Also)
		x += columns[2+i].W
	}
}

// penBoxes are empty boxes, one in each column.
func penBoxes(c *paper.Canvas, room mm.Box, columns []paper.Column) {
	x := room.X
	for _, col := range columns {
		c.Rect(mm.BoxAt(x+1, room.Y+1.2, col.W-2, room.H-2.4), paper.Solid, paper.White)
		x += col.W
	}
}

// pairs sets texts in two columns across a width, two to a line.
func pairs(c *paper.Canvas, texts []string, w float64) paper.Piece {
	columns := []paper.Column{{W: w / 2}, {W: w / 2}}
	var rows []paper.Piece
	for i := 0; i < len(texts); i += 2 {
		cells := append(append([]string{}, texts[i:min(i+2, len(texts))]...), "")[:2]
		rows = append(rows, paper.BareRow(c, columns, cells, paper.Text))
	}
	return paper.Piece{H: paper.HeightOf(rows), Draw: func(c *paper.Canvas, room mm.Box) {
		for _, r := range rows {
			r.Draw(c, room)
			room.Y += r.H
		}
	}}
}
