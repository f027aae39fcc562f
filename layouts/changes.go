package layouts

import (
	"slices"

	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
)

// Changes is the sheet of what moved between two revisions: which pins go to
// which hole, what the venue has to accept anew, which sheets to throw away, print, keep.
type Changes struct {
	Says     string // 'REV A 3f9a1c07, now REV B …'
	Warnings []string
	Stacks   []ChangedStack // the last of them is the whole job, without an id
	Venue    []string       // what it has to accept anew
	Closing  string         // '5 joints are set anew (link pins: 10 out, 10 in), 11 stay.'
	Keep     string         // why a sheet that is kept stays true
}

// A ChangedStack is a stack with the joints that move and what else changes.
type ChangedStack struct {
	ID, Name, Shape string
	Orders          []string // which cabinets take the place of others
	Joints          []ChangedJoint
	Says            []string
	Points          [][]string // id, static was and now, design was and now, by how much, place
	Sheets          []ChangedSheet
}

// A ChangedSheet is a sheet with the mark of the one that is thrown away and of the one that
// takes its place: "" where there is none, and one mark where it is kept.
type ChangedSheet struct{ Name, Out, In string }

// A ChangedJoint is a joint whose link goes from one hole to another.
type ChangedJoint struct {
	Above, Below, Type string
	Why                string // 'why: hole, other cabinet above'
	OutIn              string // 'link pins: 2 out, 1 in'; "" where as many
	From, To           parts.JointHole
	Dolly              string
	Pins               int // link pins of the joint: 1 or 2
}

var changeColumns = []paper.Column{paper.Texts("point", 23), paper.Figures("static was", 19), paper.Figures("static now", 19), paper.Figures("design was", 19), paper.Figures("design now", 19),
	paper.Figures("design, by", 21), paper.Texts("place", 0)}

// Name is what the sheet is called.
func (Changes) Name() string { return "CHANGES" }

// Pages cuts the sheet.
func (v Changes) Pages(c *paper.Canvas) []paper.Page {
	pieces := []paper.Piece{paper.Words(c, paper.TextBold, v.Says, 1), paper.Words(c, paper.Section, v.Closing, 1), paper.Words(c, paper.Text, v.Keep, 2)}
	for _, s := range append(v.Warnings, v.Venue...) {
		pieces = append(pieces, warning(c, s))
	}
	for i, s := range v.Stacks {
		if i > 0 {
			pieces = append(pieces, paper.Gap(2))
		}
		pieces = append(pieces, paper.Together(changedStack(c, s), c.Body().H*0.6)...)
	}
	pieces = append(pieces, accepted())
	return paper.Flow(c, "", parts.PlainHead("CHANGES", "what moved since the revision before"), pieces)
}

// paragraphs go on from page to page where they are long: a list of all sheets of a
// large pack may take pages.
func paragraphs(c *paper.Canvas, says []string) (pieces []paper.Piece) {
	const whole = 6 // lines that stay together
	for _, s := range says {
		for lines := range slices.Chunk(c.Wrap(paper.Text, c.Body().W, s), whole) {
			pieces = append(pieces, paper.Piece{H: float64(len(lines)) * paper.Text.Lead(), Draw: func(c *paper.Canvas, room mm.Box) {
				c.Lines(room.X, room.Y+paper.Text.Lead()*0.8, paper.Text, lines)
			}})
		}
		if n := len(pieces); n > 0 {
			pieces[n-1].H++
		}
	}
	return pieces
}

// warning is a line beside a black bar.
func warning(c *paper.Canvas, s string) paper.Piece {
	lines := c.Wrap(paper.TextBold, c.Body().W-7, s)
	h := float64(len(lines)) * paper.TextBold.Lead()
	return paper.Piece{H: h + 2.5, Draw: func(c *paper.Canvas, room mm.Box) {
		c.Rect(mm.BoxAt(room.X, room.Y, 2, h), 0, paper.Black)
		c.Lines(room.X+6, room.Y+3.7, paper.TextBold, lines)
	}}
}

// accepted is a line for who has seen to it.
func accepted() paper.Piece {
	return paper.Piece{H: 12, Draw: func(c *paper.Canvas, room mm.Box) {
		third := room.W / 3
		for i, what := range []string{"pins set, name and time", "pins checked, name and time", "venue accepted, name and time"} {
			x := room.X + third*float64(i)
			c.Line(x, room.Y+6, x+third-4, room.Y+6, paper.Light)
			c.Text(x, room.Y+9.6, paper.Small, what)
		}
	}}
}

// Measures of a changed joint's row, in mm.
const (
	changeRow   = 17.0
	changeTab   = 12.0
	changeDigit = 7.0
	changeOld   = 42.0 // where the old hole's tab begins
	changeTick  = 7.0
	changeRoom  = 33.0 // of a tab and the arrow behind it
)

// changedStack is a stack's name over its joints and what else changes.
func changedStack(c *paper.Canvas, s ChangedStack) []paper.Piece {
	var rows []paper.Piece
	for _, j := range s.Joints {
		rows = append(rows, changedJoint(c, j))
	}
	pieces := []paper.Piece{changedName(c, s)}
	for _, order := range s.Orders {
		pieces = append(pieces, orderPiece(c, order))
	}
	if len(rows) > 0 {
		pieces = append(pieces, paper.Headed(changedHeads(), rows)...)
	}
	pieces = append(pieces, paragraphs(c, s.Says)...)
	if len(s.Points) > 0 {
		pieces = append(pieces, paper.Table(c, changeColumns, s.Points, paper.Text)...)
	}
	return append(pieces, changedSheets(c, s.Sheets)...)
}

// changedSheets are a stack's sheets, as many to a line as fit: the name, the mark that goes
// and the mark that comes.
func changedSheets(c *paper.Canvas, sheets []ChangedSheet) (pieces []paper.Piece) {
	const apart, gap = 5.0, 1.5
	name, words := 0.0, 0.0
	for _, s := range sheets {
		name = max(name, c.Width(paper.Small, s.Name)+gap)
		words = max(words, c.Width(paper.TextBold, s.fate()))
	}
	across := max(int((c.Body().W+apart)/(name+words+apart)), 1)
	for row := range slices.Chunk(sheets, across) {
		pieces = append(pieces, paper.Piece{H: paper.Text.Lead() + 0.4, Draw: func(c *paper.Canvas, room mm.Box) {
			for i, s := range row {
				x, y := room.X+float64(i)*(name+words+apart), room.Y+paper.Text.Lead()*0.85
				c.Text(x, y, paper.Small, s.Name)
				c.Text(x+name, y, paper.TextBold, s.fate())
			}
		}})
	}
	return append([]paper.Piece{sheetsHead(c)}, pieces...)
}

// sheetsHead says how the sheets are to be read.
func sheetsHead(c *paper.Canvas) paper.Piece {
	p := paper.Words(c, paper.SmallBold, "Sheets. Mark → mark: put the new one up, throw the old one away.", 0.4)
	p.Keep = true
	return p
}

// fate is what becomes of a sheet: '22LG → KTYH', 'keep 9RD7', 'new KTYH', 'out 22LG'.
func (s ChangedSheet) fate() string {
	switch {
	case s.Out == s.In:
		return "keep " + s.In
	case s.Out == "":
		return "new " + s.In
	case s.In == "":
		return "out " + s.Out
	}
	return s.Out + " → " + s.In
}

// changedName is a stack's name; it stays with what follows.
func changedName(c *paper.Canvas, s ChangedStack) paper.Piece {
	id := paper.Bold(18)
	x := 8 + c.Width(id, s.ID) + 4
	if s.ID == "" {
		x = 0
	}
	name := c.Wrap(paper.TextBold, c.Body().W-x, s.Name)
	h := max(10, 5+float64(len(name))*paper.TextBold.Lead())
	return paper.Piece{H: h, Keep: true, Draw: func(c *paper.Canvas, room mm.Box) {
		paper.SideMark(c, s.Shape, mm.BoxAt(room.X, room.Y+2.5, 6, 6))
		c.Text(room.X+8, room.Y+8.2, id, s.ID)
		c.Lines(room.X+x, room.Y+7.6, paper.TextBold, name)
	}}
}

// orderPiece is something that is done before any pin, with a box.
func orderPiece(c *paper.Canvas, s string) paper.Piece {
	lines := c.Wrap(paper.Reading, c.Body().W-10, s)
	return paper.Piece{H: max(8, float64(len(lines))*paper.Reading.Lead()+2), Draw: func(c *paper.Canvas, room mm.Box) {
		parts.Tick(c, room.X, room.Y+0.4, changeTick-0.6)
		c.Lines(room.X+9, room.Y+5, paper.Reading, lines)
	}, Keep: true}
}

// changedHeads stand over the columns of joints.
func changedHeads() paper.Piece {
	return paper.Piece{H: 5, Draw: func(c *paper.Canvas, room mm.Box) {
		y := room.Bottom() - 1
		c.Text(room.X+changeOld, y, paper.Small, "was in hole")
		c.Text(room.X+changeOld+changeRoom, y, paper.SmallBold, "goes to hole")
		x := changeTicks(room)
		c.Text(x-24, y, paper.Small, "on")
		c.Text(x, y, paper.Small, "set")
		c.Text(x+2*changeTick+3, y, paper.Small, "checked")
	}, Keep: true}
}

// changedJoint draws a joint on the line between its two bodies: the old hole
// struck through, an arrow, the new one.
func changedJoint(c *paper.Canvas, j ChangedJoint) paper.Piece {
	name := c.WrapAll(paper.Small, changeOld-14, []string{j.Type, j.Why, j.OutIn})
	h := max(changeRow, 2*(float64(len(name))*paper.Small.Lead()+2))
	return paper.Piece{H: h, Draw: func(c *paper.Canvas, room mm.Box) {
		y := room.Y + h/2
		ticks := changeTicks(room)
		c.Line(room.X, y, ticks-28, y, paper.Solid)
		c.Text(room.X+1, y-2, paper.Section, j.Above)
		c.Text(room.X+1, y+6, paper.Section, j.Below)
		c.Lines(room.X+12, y+4, paper.Small, name)
		changedHoles(c, room.X+changeOld, y, j)
		c.Text(ticks-24, y+1.5, paper.TextBold, j.Dolly)
		for n := range 2 * j.Pins {
			x := ticks + changeTick*float64(n%j.Pins) + float64(n/j.Pins)*(2*changeTick+3)
			parts.Tick(c, x, y-changeTick/2, changeTick-0.6)
		}
	}}
}

// changeTicks is where the boxes of a joint begin, two a side.
func changeTicks(room mm.Box) float64 { return room.Right() - 4*changeTick - 3 }

// changedHoles draws the old hole struck through, and an arrow to the new one; or the new
// one alone where it is the same hole.
func changedHoles(c *paper.Canvas, x, y float64, j ChangedJoint) {
	fit := func(h parts.JointHole) parts.Tabs {
		return parts.TabsWithin(c, changeRoom-9, changeTab, changeDigit, []parts.JointHole{h})
	}
	old, next := fit(j.From), fit(j.To)
	if j.From != j.To {
		old.Struck(c, x, y, j.From)
		parts.Arrow(c, x+old.Width()+2, x+changeRoom-2, y, 2.5)
	}
	next.Draw(c, x+changeRoom, y, j.To)
}
