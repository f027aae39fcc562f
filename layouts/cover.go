package layouts

import (
	"fmt"

	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
)

// Cover is the first sheet: the job, its stacks, what the roof carries and
// what is still open.
type Cover struct {
	Title  string
	Facts  []parts.Fact
	Stacks []StackRow
	Total  string
	Alone  string       // what one of two hoists alone could not hold; "" where nothing
	Sheets []SheetGroup // all others of the pack
	Venue  string       // which of them its head rigger reads
	Open   []parts.Remark
	Again  string // what must be approved again when it changes
	Note   string // beside the stacks: which hangpack, and what a hold is
}

// A SheetGroup is some sheets of the pack: those of a stack with its side mark, or of the
// whole job.
type SheetGroup struct {
	Shape  string // "" for the whole job
	Sheets []string
}

// A StackRow is one stack on the cover.
type StackRow struct {
	ID, Name, Shape string
	Facts           []parts.Fact
	Verdict         string
	Held            bool
	Code            paper.Code
}

// Name is what the sheet is called.
func (Cover) Name() string { return "COVER" }

// Pages cuts the sheet.
func (v Cover) Pages(c *paper.Canvas) []paper.Page {
	pieces := []paper.Piece{showTitle(c, v.Title)}
	for _, f := range v.Facts {
		pieces = append(pieces, f.Piece(c, c.Body().W))
	}
	pieces = append(pieces, headingWith("Stacks", v.Note))
	for _, s := range v.Stacks {
		pieces = append(pieces, stackRow(c, s))
	}
	pieces = append(pieces, paper.Words(c, paper.TextBold, v.Total, 0.5), paper.Words(c, paper.TextBold, v.Alone, 1))
	// who signs sees on the same page what is open, unless that is very long
	end := append(openItems(c, v.Open), signOff(), paper.Words(c, paper.Small, v.Again, 1))
	pieces = append(pieces, paper.Together(end, c.Body().H*0.6)...)
	head := coverHead(c)
	return paper.Flow(c, "", head, append(pieces, v.list(c, pieces, head(nil, c.Body(), "").H)...))
}

// showTitle is the show's title across the page.
func showTitle(c *paper.Canvas, title string) paper.Piece {
	lines := c.Wrap(paper.Title, c.Body().W, title)
	return paper.Piece{H: float64(len(lines))*paper.Title.Lead() + 2, Draw: func(c *paper.Canvas, room mm.Box) {
		c.Lines(room.X, room.Y+9.4, paper.Title, lines)
	}}
}

// coverHead has REV as large as sheets of stacks have it: beside the sheet's name, or
// under it where it is too wide.
func coverHead(c *paper.Canvas) paper.Top {
	name := c.Width(paper.Title, "COVER 99 of 99") + 6
	lower := 0.0
	if name+parts.RevWidth(c) > c.Body().W {
		lower = 15.4
	}
	return parts.HeadOf("COVER", 24+lower, func(c *paper.Canvas, room mm.Box) {
		c.Text(room.X, room.Y+14, paper.Small, "plan for approval until all three boxes are signed")
		parts.DrawRev(c, room.Right(), room.Y+14+lower, 1)
	})
}

// headingWith is a heading with a small text at the right of its line.
func headingWith(s, beside string) paper.Piece {
	p := parts.Heading(s)
	draw := p.Draw
	p.Draw = func(c *paper.Canvas, room mm.Box) {
		draw(c, room)
		c.Right(room.Right(), room.Y+6.4, paper.Small, beside)
	}
	return p
}

// stackRow is one stack: its id large, its figures, its code.
func stackRow(c *paper.Canvas, s StackRow) paper.Piece {
	id := paper.Digits(8)
	side := c.CodeSide(s.Code)
	idW := max(c.Width(id, s.ID), 16) + 4
	w := c.Body().W - max(side, c.Width(paper.Small, s.Code.To)) - idW - 4
	name := c.Wrap(paper.TextBold, w, s.Name+" · "+s.Verdict)
	facts := 0.0
	for _, f := range s.Facts {
		facts += f.Piece(c, w).H
	}
	h := max(float64(len(name))*paper.TextBold.Lead()+facts+3, side+3)
	return paper.Piece{H: h + 0.6, Draw: func(c *paper.Canvas, room mm.Box) {
		c.Line(room.X, room.Y, room.Right(), room.Y, paper.Light)
		c.Text(room.X, room.Y+11, id, s.ID)
		paper.SideMark(c, s.Shape, mm.BoxAt(room.X, room.Y+14, 9, 9))
		y := c.Lines(room.X+idW, room.Y+5, paper.TextBold, name) - paper.TextBold.Lead() + 1.6
		for _, f := range s.Facts {
			p := f.Piece(c, w)
			p.Draw(c, mm.BoxAt(room.X+idW, y, w, p.H))
			y += p.H
		}
		x := room.Right() - side
		c.Code(x, room.Y+0.4, side, s.Code)
		c.Right(room.Right()-max(side-c.Width(paper.Small, s.Code.To), 0)/2, room.Y+side+2.8, paper.Small, s.Code.To)
		c.LeadsTo(mm.BoxAt(room.X, room.Y, x-room.X, room.H), s.Code.To)
		if s.Held {
			parts.Stop.Draw(c, mm.BoxAt(room.X, room.Y+24, 9, 9))
		}
	}}
}

// openItems lists what is open, each with a line for a name.
func openItems(c *paper.Canvas, items []parts.Remark) []paper.Piece {
	if len(items) == 0 {
		return []paper.Piece{parts.Heading("Open items: none found by this calculation")}
	}
	pieces := []paper.Piece{parts.Heading(fmt.Sprintf("Open items: %d", len(items)))}
	columns := []paper.Column{paper.Texts("where", 26), paper.Texts("what is open", c.Body().W-66), paper.Texts("closed by (name, time)", 0)}
	var rows [][]string
	for _, o := range items {
		rows = append(rows, []string{o.Where, o.Says, ""})
	}
	return append(pieces, paper.Table(c, columns, rows, paper.Small)...)
}

// signOff is three boxes: until they are signed the pack is a plan.
func signOff() paper.Piece {
	return paper.Piece{H: 28.4, Keep: true, Draw: func(c *paper.Canvas, room mm.Box) {
		w := (room.W - 8) / 3
		for i, s := range []string{"Prepared by", "Checked by", "Accepted by the venue"} {
			x := room.X + float64(i)*(w+4)
			c.Rect(mm.BoxAt(x, room.Y+1, w, 26.6), paper.Solid, paper.White)
			c.Text(x+2, room.Y+5.4, paper.SmallBold, s)
			for n, line := range []string{"name", "date, time", "signature", "revision accepted"} {
				y := room.Y + 10.6 + float64(n)*5.2
				c.Text(x+2, y, paper.Small, line)
				c.Line(x+c.Width(paper.Small, line)+4, y+0.6, x+w-2, y+0.6, paper.Light)
			}
		}
	}}
}
