package layouts

import (
	"fmt"

	"hangpack/layouts/mm"
)

// A piece is a part of a sheet that stays on one page: its height and how it
// is drawn into a room of that height.
type piece struct {
	h    float64
	draw func(c *canvas, room mm.Box)
	keep bool   // on the page of the next piece
	head *piece // of its table: stands again above it at the top of a page
}

// cut shares pieces among pages of a height, in their order. A piece that is
// to be kept with the next never ends a page.
func cut(pieces []piece, height float64) (pages [][]piece) {
	var page []piece
	left := height
	for len(pieces) > 0 {
		group := pieces[:kept(pieces)]
		pieces = pieces[len(group):]
		h := heightOf(group)
		if h > left && len(page) > 0 {
			pages, page, left = append(pages, page), nil, height
			if head := group[0].head; head != nil {
				group = append([]piece{*head}, group...)
				h += head.h
			}
		}
		page, left = append(page, group...), left-h
	}
	return append(pages, page)
}

func heightOf(pieces []piece) (h float64) {
	for _, p := range pieces {
		h += p.h
	}
	return h
}

// together keeps pieces on one page if they are no taller than most.
func together(pieces []piece, most float64) []piece {
	if heightOf(pieces) > most {
		return pieces
	}
	for i := range pieces[:len(pieces)-1] {
		pieces[i].keep = true
	}
	return pieces
}

// kept returns how many of the first pieces belong on one page.
func kept(pieces []piece) int {
	n := 0
	for n < len(pieces)-1 && pieces[n].keep {
		n++
	}
	return min(n+1, len(pieces))
}

// Flow makes pages of a sheet whose pieces go on from page to page under
// the same head. A second page has the same head, never smaller type.
func Flow(c *canvas, target, name, shape string, head func(c *canvas, room mm.Box, which string) mm.Box, pieces []piece) (pages []page) {
	probe := head(nil, c.body(), "")
	groups := cut(pieces, probe.H)
	for i, group := range groups {
		which := ofMany(i, len(groups))
		pages = append(pages, page{target: target, name: name + which, shape: shape,
			draw: func(c *canvas, room mm.Box) {
				room = head(c, room, which)
				if h := heightOf(group); h > room.H+0.5 {
					c.fault("page %d: %s is %.1f mm tall and has %.1f mm", c.page, name, h, room.H)
				}
				Pile(c, "piece", room, group)
			}})
	}
	return pages
}

// ofMany is what tells page i of a sheet, counted from 0, from its others.
func ofMany(i, pages int) string {
	if pages == 1 {
		return ""
	}
	return fmt.Sprintf(" %d of %d", i+1, pages)
}

// Pile draws pieces one under the other, each a block of its own.
func Pile(c *canvas, block string, room mm.Box, pieces []piece) {
	for n, p := range pieces {
		b := mm.BoxAt(room.X, room.Y, room.W, p.h)
		c.in(fmt.Sprintf("%s %d", block, n+1), b, func() { p.draw(c, b) })
		room.Y += p.h
	}
}

// revHead is a plain head with the revision large at its right.
func revHead(name, says string) func(c *canvas, room mm.Box, which string) mm.Box {
	return headOf(name, func(c *canvas, room mm.Box) {
		c.right(room.Right(), room.Y+2.6, small, says)
		c.right(room.Right(), room.Y+10.4, face{true, 18}, "REV "+c.revision)
	})
}

// plainHead is the head of a sheet that belongs to no stack.
func plainHead(name, says string) func(c *canvas, room mm.Box, which string) mm.Box {
	return headOf(name, func(c *canvas, room mm.Box) { c.right(room.Right(), room.Y+9, small, says) })
}

// headOf is a sheet's name over a rule, with what stands at its right.
func headOf(name string, right func(c *canvas, room mm.Box)) func(c *canvas, room mm.Box, which string) mm.Box {
	return func(c *canvas, room mm.Box, which string) mm.Box {
		const height = 16.0
		if c != nil {
			c.in("head", mm.BoxAt(room.X, room.Y, room.W, height), func() {
				c.text(room.X, room.Y+9, title, name+which)
				right(c, room)
				c.line(room.X, room.Y+12.5, room.Right(), room.Y+12.5, heavy)
			})
		}
		return mm.BoxAt(room.X, room.Y+height, room.W, room.H-height)
	}
}

// Words makes a piece of a text.
func Words(c *canvas, f face, s string, after float64) piece {
	lines := c.wrap(f, c.body().W, s)
	return piece{h: float64(len(lines))*f.lead() + after, draw: func(c *canvas, room mm.Box) {
		c.lines(room.X, room.Y+f.lead()*0.8, f, lines)
	}}
}

// A column of a table: its heading, its width in mm, and whether its figures
// stand to the right.
type column struct {
	head  string
	w     float64
	right bool
}

// TableHead makes a piece of a table's headings.
func TableHead(c *canvas, columns []column) piece {
	return TableRow(c, columns, nil, smallB, true)
}

// TableRow makes a piece of one row, with a rule below it; headings stand where
// head is set.
func TableRow(c *canvas, columns []column, cells []string, f face, head bool) piece {
	pen := light
	if head {
		pen, cells = solid, nil
		for _, col := range columns {
			cells = append(cells, col.head)
		}
	}
	bare := BareRow(c, columns, cells, f)
	return piece{h: bare.h + 1.6, keep: head, draw: func(c *canvas, room mm.Box) {
		bare.draw(c, room)
		c.line(room.X, room.Bottom(), room.Right(), room.Bottom(), pen)
	}}
}

// BareRow makes a piece of the cells of one row.
func BareRow(c *canvas, columns []column, cells []string, f face) piece {
	rows, lines := 1, make([][]string, len(columns))
	for i, col := range columns {
		lines[i] = c.wrap(f, col.w-2, cells[i])
		rows = max(rows, len(lines[i]))
	}
	return piece{h: float64(rows) * f.lead(), draw: func(c *canvas, room mm.Box) {
		x := room.X
		for i, col := range columns {
			cell(c, x, room.Y+f.lead()*0.85, col, f, lines[i])
			x += col.w
		}
	}}
}

// TableOf makes pieces of a table: its headings, which stand again on every page
// that it goes on to, and its rows.
func TableOf(c *canvas, columns []column, rows [][]string, f face) []piece {
	columns = Rest(c, columns)
	var pieces []piece
	for _, r := range rows {
		pieces = append(pieces, TableRow(c, columns, r, f, false))
	}
	return under(TableHead(c, columns), pieces)
}

// under is rows below a head, which stands again on every page that they go on to.
func under(head piece, rows []piece) []piece {
	for i := range rows {
		rows[i].head = &head
	}
	return append([]piece{head}, rows...)
}

// Rest gives a last column without a width what the others leave of the page.
func Rest(c *canvas, columns []column) []column {
	columns = append([]column{}, columns...)
	left := c.body().W
	for _, col := range columns {
		left -= col.w
	}
	if last := &columns[len(columns)-1]; last.w == 0 {
		last.w = left
	}
	return columns
}

// cell writes the lines of one cell.
func cell(c *canvas, x, y float64, col column, f face, lines []string) {
	for _, s := range lines {
		if col.right {
			c.right(x+col.w-2, y, f, s)
		} else {
			c.text(x, y, f, s)
		}
		y += f.lead()
	}
}
