package layouts

import (
	"fmt"

	"hangpack/layouts/mm"
)

// Cover is the first sheet: the job, its stacks, what the roof carries and
// what is still open.
type Cover struct {
	Title    string
	Revision string
	Facts    []Fact
	Stacks   []StackRow
	Total    string
	Alone    string  // what one of two hoists alone could not hold; "" where nothing
	Venue    []Entry // the sheets that its head rigger reads
	Open     []OpenItem
	Again    string // what must be approved again when it changes
	Note     string // 'hangpack 1.0'
}

// An Entry is a sheet and what codes and clicks call it.
type Entry struct{ Of, To string }

// A Fact is a word and what it is for this job.
type Fact struct{ Of, Is string }

// A StackRow is one stack on the cover.
type StackRow struct {
	ID, Name, Shape string
	Facts           []Fact
	Verdict         string
	Held            bool
	To              string // its pin sheet
	Code            Code
}

// An OpenItem is something not settled yet, with a line for the name of who
// settles it.
type OpenItem struct{ Where, Says string }

func (v Cover) pages(c *canvas) []page {
	pieces := []piece{coverTitle(c, v)}
	for _, f := range v.Facts {
		pieces = append(pieces, FactPiece(c, f, c.body().W))
	}
	pieces = append(pieces, headingWith("Stacks", v.Note))
	for _, s := range v.Stacks {
		pieces = append(pieces, stackRow(c, s))
	}
	pieces = append(pieces, Words(c, textB, v.Total, 0.5), Words(c, textB, v.Alone, 1), contents(c, v.Venue))
	// who signs sees on the same page what is open, unless that is very long
	end := append(openItems(c, v.Open), signOff(), Words(c, small, v.Again, 0))
	pieces = append(pieces, together(end, c.body().H*0.6)...)
	return Flow(c, "cover", "COVER", "", plainHead("COVER", "plan for approval until all three boxes are signed"), pieces)
}

// coverTitle is the show's title with the revision beside it.
func coverTitle(c *canvas, v Cover) piece {
	rev := capitals(revTall)
	revision := "REV " + v.Revision
	w := c.body().W - c.width(rev, revision) - 8
	beside := w > 60
	if !beside {
		w = c.body().W
	}
	lines := c.wrap(title, w, v.Title)
	h := float64(len(lines))*title.lead() + 2
	if !beside {
		h += 15.4
	}
	return piece{h: max(h, 19), draw: func(c *canvas, room mm.Box) {
		c.lines(room.X, room.Y+9.4, title, lines)
		base := room.Y + 12.5
		if !beside {
			base = room.Bottom() - 4.8
		}
		c.right(room.Right(), base, rev, revision)
		c.right(room.Right(), base+4, small, "bin any other REV")
	}}
}

func Heading(s string) piece {
	return piece{h: 9, draw: func(c *canvas, room mm.Box) { c.text(room.X, room.Y+6.4, section, s) }, keep: true}
}

// headingWith is a heading with a small text at the right of its line.
func headingWith(s, beside string) piece {
	p := Heading(s)
	draw := p.draw
	p.draw = func(c *canvas, room mm.Box) {
		draw(c, room)
		c.right(room.Right(), room.Y+6.4, small, beside)
	}
	return p
}

// FactPiece is a word and what it is, in a column w wide.
func FactPiece(c *canvas, f Fact, w float64) piece {
	ofWidth := min(ofWidth, w*0.25)
	of, is := c.wrap(textB, ofWidth-2, f.Of), c.wrap(text, w-ofWidth, f.Is)
	return piece{h: float64(max(len(of), len(is), 1)) * text.lead(), draw: func(c *canvas, room mm.Box) {
		c.lines(room.X, room.Y+text.lead()*0.8, textB, of)
		c.lines(room.X+ofWidth, room.Y+text.lead()*0.8, text, is)
	}}
}

// stackRow is one stack: its id large, its figures, its code.
func stackRow(c *canvas, s StackRow) piece {
	id := digits(8)
	side := c.codeSide(s.Code)
	idW := max(c.width(id, s.ID), 16) + 4
	w := c.body().W - max(side, c.width(small, s.ID+": page 9999")) - idW - 4
	name := c.wrap(textB, w, s.Name+" · "+s.Verdict)
	facts := 0.0
	for _, f := range s.Facts {
		facts += FactPiece(c, f, w).h
	}
	h := max(float64(len(name))*textB.lead()+facts+3, side+3)
	return piece{h: h + 0.6, draw: func(c *canvas, room mm.Box) {
		c.line(room.X, room.Y, room.Right(), room.Y, light)
		c.text(room.X, room.Y+11, id, s.ID)
		SideMark(c, s.Shape, mm.BoxAt(room.X, room.Y+14, 9, 9))
		y := c.lines(room.X+idW, room.Y+5, textB, name) - textB.lead() + 1.6
		for _, f := range s.Facts {
			p := FactPiece(c, f, w)
			p.draw(c, mm.BoxAt(room.X+idW, y, w, p.h))
			y += p.h
		}
		x := room.Right() - side
		c.code(x, room.Y+0.4, side, s.Code)
		caption := fmt.Sprintf("%s: page %d", s.ID, c.pageOf(s.To))
		c.right(room.Right()-max(side-c.width(small, caption), 0)/2, room.Y+side+2.8, small, caption)
		if s.Held {
			stop(c, mm.BoxAt(room.X, room.Y+24, 9, 9))
		}
	}}
}

// contents lists sheets with their pages, as many to a line as fit.
func contents(c *canvas, entries []Entry) piece {
	const few = 12 // sheets, of a pack with no more than 999 pages
	w, number := 0.0, " page 99"
	if len(entries) > few {
		number = " page 999"
	}
	for _, e := range entries {
		w = max(w, c.width(small, e.Of+number)+2.5)
	}
	across := max(int((c.body().W-ofWidth)/w), 1)
	rows := (len(entries) + across - 1) / across
	return piece{h: float64(rows)*small.lead() + 2, draw: func(c *canvas, room mm.Box) {
		c.text(room.X, room.Y+small.lead()*0.85, textB, "For the venue")
		for i, e := range entries {
			x, y := room.X+ofWidth+float64(i%across)*w, room.Y+small.lead()*(0.85+float64(i/across))
			c.text(x, y, small, fmt.Sprintf("%s page %d", e.Of, c.pageOf(e.To)))
		}
	}}
}

// openItems lists what is open, each with a line for a name.
func openItems(c *canvas, items []OpenItem) []piece {
	if len(items) == 0 {
		return []piece{Heading("Open items: none found by this calculation")}
	}
	pieces := []piece{Heading(fmt.Sprintf("Open items: %d", len(items)))}
	columns := []column{{"where", 26, false}, {"what is open", c.body().W - 66, false}, {"closed by (name, time)", 0, false}}
	var rows [][]string
	for _, o := range items {
		rows = append(rows, []string{o.Where, o.Says, ""})
	}
	return append(pieces, TableOf(c, columns, rows, small)...)
}

// signOff is three boxes: until they are signed the pack is a plan.
func signOff() piece {
	return piece{h: 28.4, keep: true, draw: func(c *canvas, room mm.Box) {
		w := (room.W - 8) / 3
		for i, s := range []string{"Prepared by", "Checked by", "Accepted by the venue"} {
			x := room.X + float64(i)*(w+4)
			c.rect(mm.BoxAt(x, room.Y+1, w, 26.6), solid, white)
			c.text(x+2, room.Y+5.4, smallB, s)
			for n, line := range []string{"name", "date, time", "signature", "revision accepted"} {
				y := room.Y + 10.6 + float64(n)*5.2
				c.text(x+2, y, small, line)
				c.line(x+c.width(small, line)+4, y+0.6, x+w-2, y+0.6, light)
			}
		}
	}}
}
