package paper

import (
	"hangpack/layouts/mm"
)

// A Column of a table: its heading, its width in mm, and whether its figures
// stand to the right.
type Column struct {
	Head  string
	W     float64
	Right bool
}

// Texts is a column of words, w mm wide; 0 for what the others leave of the page.
func Texts(head string, w float64) Column { return Column{head, w, false} }

// Figures is a column whose figures stand to the right.
func Figures(head string, w float64) Column { return Column{head, w, true} }

// Table makes pieces of a table: its headings, which stand again on every page
// that it goes on to, and its rows.
func Table(c *Canvas, columns []Column, rows [][]string, f Face) []Piece {
	columns = Rest(c, columns)
	var pieces []Piece
	for _, r := range rows {
		pieces = append(pieces, TableRow(c, columns, r, f, false))
	}
	return Headed(TableHead(c, columns), pieces)
}

// TableHead makes a piece of a table's headings.
func TableHead(c *Canvas, columns []Column) Piece {
	return TableRow(c, columns, nil, SmallBold, true)
}

// TableRow makes a piece of one row, with a rule below it; headings stand where
// head is set.
func TableRow(c *Canvas, columns []Column, cells []string, f Face, head bool) Piece {
	pen := Light
	if head {
		pen, cells = Solid, nil
		for _, col := range columns {
			cells = append(cells, col.Head)
		}
	}
	bare := BareRow(c, columns, cells, f)
	return Piece{H: bare.H + 1.6, Keep: head, Draw: func(c *Canvas, room mm.Box) {
		bare.Draw(c, room)
		c.Line(room.X, room.Bottom(), room.Right(), room.Bottom(), pen)
	}}
}

// BareRow makes a piece of the cells of one row.
func BareRow(c *Canvas, columns []Column, cells []string, f Face) Piece {
	rows, lines := 1, make([][]string, len(columns))
	for i, col := range columns {
		lines[i] = c.Wrap(f, col.W-2, cells[i])
		rows = max(rows, len(lines[i]))
	}
	return Piece{H: float64(rows) * f.Lead(), Draw: func(c *Canvas, room mm.Box) {
		x := room.X
		for i, col := range columns {
			cell(c, x, room.Y+f.Lead()*0.85, col, f, lines[i])
			x += col.W
		}
	}}
}

// Rest gives a last column without a width what the others leave of the page.
func Rest(c *Canvas, columns []Column) []Column {
	columns = append([]Column{}, columns...)
	left := c.Body().W
	for _, col := range columns {
		left -= col.W
	}
	if last := &columns[len(columns)-1]; last.W == 0 {
		last.W = left
	}
	return columns
}

// Headed is rows below a head, which stands again on every page that they go on to. It
// marks the rows that it is given.
func Headed(head Piece, rows []Piece) []Piece {
	for i := range rows {
		rows[i].Head = &head
	}
	return append([]Piece{head}, rows...)
}

// cell writes the lines of one cell.
func cell(c *Canvas, x, y float64, col Column, f Face, lines []string) {
	for _, s := range lines {
		if col.Right {
			c.Right(x+col.W-2, y, f, s)
		} else {
			c.Text(x, y, f, s)
		}
		y += f.Lead()
	}
}
