package layouts

import "fmt"

// A piece is a part of a sheet that stays on one page: its height and how it
// is drawn into a room of that height.
type piece struct {
	h    float64
	draw func(c *canvas, room box)
	keep bool // on the page of the next piece
}

// cut shares pieces among pages of a height, in their order. A piece that is
// to be kept with the next never ends a page.
func cut(pieces []piece, height float64) (pages [][]piece) {
	var page []piece
	left := height
	for len(pages) == 0 || len(pieces) > 0 {
		group := kept(pieces)
		h := 0.0
		for _, p := range pieces[:group] {
			h += p.h
		}
		if h > left && len(page) > 0 {
			pages, page, left = append(pages, page), nil, height
		}
		page, pieces, left = append(page, pieces[:group]...), pieces[group:], left-h
		if len(pieces) == 0 {
			return append(pages, page)
		}
	}
	return pages
}

// kept returns how many of the first pieces belong on one page.
func kept(pieces []piece) int {
	n := 0
	for n < len(pieces)-1 && pieces[n].keep {
		n++
	}
	return min(n+1, len(pieces))
}

// flowing makes pages of a sheet whose pieces go on from page to page under
// the same head. A second page has the same head, never smaller type.
func (c *canvas) flowing(target, name, shape string, head func(c *canvas, room box, which string) box, pieces []piece) (pages []page) {
	probe := head(nil, c.body(), "")
	groups := cut(pieces, probe.h)
	for i, group := range groups {
		which := ""
		if len(groups) > 1 {
			which = fmt.Sprintf(" %d of %d", i+1, len(groups))
		}
		pages = append(pages, page{target: target, name: name + which, shape: shape,
			draw: func(c *canvas, room box) {
				room = head(c, room, which)
				for n, p := range group {
					c.in(fmt.Sprintf("piece %d", n+1), box{room.x, room.y, room.w, p.h}, func() { p.draw(c, box{room.x, room.y, room.w, p.h}) })
					room.y += p.h
				}
			}})
	}
	return pages
}

// plainHead is the head of a sheet that belongs to no stack.
func plainHead(name, says string) func(c *canvas, room box, which string) box {
	return func(c *canvas, room box, which string) box {
		const height = 16.0
		if c != nil {
			c.in("head", box{room.x, room.y, room.w, height}, func() {
				c.text(room.x, room.y+9, title, name+which)
				c.right(room.right(), room.y+9, small, says)
				c.line(room.x, room.y+12.5, room.right(), room.y+12.5, heavy)
			})
		}
		return box{room.x, room.y + height, room.w, room.h - height}
	}
}

// words makes a piece of a text.
func (c *canvas) words(f face, s string, after float64) piece {
	lines := c.wrap(f, c.body().w, s)
	return piece{h: float64(len(lines))*f.lead() + after, draw: func(c *canvas, room box) {
		c.lines(room.x, room.y+f.lead()*0.8, f, lines)
	}}
}

// A column of a table: its heading, its width in mm, and whether its figures
// stand to the right.
type column struct {
	head  string
	w     float64
	right bool
}

// tableHead makes a piece of a table's headings.
func (c *canvas) tableHead(columns []column) piece {
	return c.tableRow(columns, nil, smallB, true)
}

// tableRow makes a piece of one row; headings stand where cells is nil.
func (c *canvas) tableRow(columns []column, cells []string, f face, head bool) piece {
	rows, lines := 1, make([][]string, len(columns))
	for i, col := range columns {
		s := col.head
		if !head {
			s = cells[i]
		}
		lines[i] = c.wrap(f, col.w-2, s)
		rows = max(rows, len(lines[i]))
	}
	h := float64(rows)*f.lead() + 1.6
	return piece{h, func(c *canvas, room box) {
		x := room.x
		for i, col := range columns {
			c.cell(x, room.y+f.lead()*0.85, col, f, lines[i])
			x += col.w
		}
		pen := light
		if head {
			pen = solid
		}
		c.line(room.x, room.bottom(), room.right(), room.bottom(), pen)
	}, head}
}

// cell writes the lines of one cell.
func (c *canvas) cell(x, y float64, col column, f face, lines []string) {
	for _, s := range lines {
		if col.right {
			c.right(x+col.w-2, y, f, s)
		} else {
			c.text(x, y, f, s)
		}
		y += f.lead()
	}
}
