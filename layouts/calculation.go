package layouts

import (
	"slices"

	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
)

// Calculation is the sheet that a checker follows with a pencil: what went in,
// each formula as symbols and with its numbers, and what came out.
type Calculation struct {
	Sheet     string
	Head      parts.Head
	Inputs    []parts.Fact
	Parts     Table
	Hangs     []Formula // from the centre of gravity to the hooks
	Slack     []Formula // how far each of two chains is from slack; nil with one pick
	Joint     Steps     // the joint most used, in full
	Link      Steps     // the link closest to being pushed; without formulas where all may be
	Joints    [][]string
	Nominal   string // how the stack hangs for these
	Points    []Formula
	Picks     []Steps // the most that each of two picks carries
	Checks    [][]string
	Unchecked []string
	Most      string
	Limits    []string
}

// A Table is rows under their headings, the last row a sum.
type Table struct {
	Heads []string
	Rows  [][]string
	Note  string
}

// Steps are formulas that follow from each other, under their heading and a line on how
// the stack hangs then.
type Steps struct {
	Heading, How string
	Formulas     []Formula
}

// A Formula is one formula: what it is of, in symbols, with its numbers, and what
// comes out. Prints is the same as it stands on the other sheets.
type Formula struct{ Of, Symbols, Numbers, Is, Prints string }

// Columns of the tables; the last of each takes what is left.
var (
	partWidths   = []float64{38, 15, 16, 17, 17, 17, 17, 17, 0}
	jointColumns = []paper.Column{paper.Texts("joint above cabinet", 17), paper.Figures("cabinet looks", 22), paper.Figures("its lowest corner", 28),
		paper.Figures("hinge, all", 20), paper.Figures("of it along", 27), paper.Figures("rear link", 27), paper.Figures("hinge pin used", 15), paper.Figures("link pin used", 0)}
	checkColumns = []paper.Column{paper.Texts("what", 32), paper.Texts("closest at", 32), paper.Texts("worked out", 55), paper.Texts("may be", 41), paper.Figures("used", 0)}
)

// Name is what the sheet is called.
func (v Calculation) Name() string { return v.Sheet }

// Pages cuts the sheet.
func (v Calculation) Pages(c *paper.Canvas) []paper.Page {
	pieces := []paper.Piece{parts.Heading("What goes in")}
	for _, f := range v.Inputs {
		pieces = append(pieces, f.Piece(c, c.Body().W))
	}
	pieces = append(append(pieces, parts.Heading("Centre of gravity, bar level")), partsTable(c, v.Parts)...)
	pieces = append(pieces, formulas(c, "How it hangs", v.Hangs)...)
	pieces = append(pieces, formulas(c, "How far each chain of the finished stack is from slack", v.Slack)...)
	pieces = append(append(pieces, worked(c, v.Joint)...), worked(c, v.Link)...)
	pieces = append(append(pieces, parts.Heading("What each joint carries, both sides together"), how(c, v.Nominal)), paper.Table(c, jointColumns, v.Joints, paper.Small)...)
	pieces = append(pieces, paper.Gap(1), paper.Words(c, paper.Small, "Pull: the part is stretched. Push: it is pressed together, and its pin bears on the other side of the hole.", 0))
	pieces = append(pieces, formulas(c, "Points", v.Points)...)
	for _, s := range v.Picks {
		pieces = append(pieces, worked(c, s)...)
	}
	pieces = append(append(pieces, parts.Heading("Every check, where it comes closest")), paper.Table(c, checkColumns, v.Checks, paper.Small)...)
	pieces = append(pieces, paper.Gap(1))
	for _, s := range v.Unchecked {
		pieces = append(pieces, paper.Words(c, paper.Small, s, 0.6))
	}
	pieces = append(pieces, paper.Gap(1), paper.Words(c, paper.TextBold, v.Most, 2), parts.Heading("What this calculation does not see"))
	for _, s := range v.Limits {
		pieces = append(pieces, paper.Words(c, paper.Small, s, 1))
	}
	return paper.Flow(c, v.Head.Shape, v.Head.Top(c), pieces)
}

// partsTable is the table of all that hangs, and what its columns are.
func partsTable(c *paper.Canvas, t Table) []paper.Piece {
	var columns []paper.Column
	for i, head := range t.Heads {
		columns = append(columns, paper.Column{Head: head, W: partWidths[i], Right: i > 0})
	}
	pieces := paper.Table(c, columns, t.Rows, paper.Small)
	last := &pieces[len(pieces)-1]
	*last = paper.TableRow(c, paper.Rest(c, columns), t.Rows[len(t.Rows)-1], paper.SmallBold, false)
	last.Head = &pieces[0]
	return append(pieces, paper.Gap(1), paper.Words(c, paper.Small, t.Note, 1))
}

// formulas are formulas under a heading, which stands only where there are some.
func formulas(c *paper.Canvas, heading string, steps []Formula) []paper.Piece {
	if len(steps) == 0 {
		return nil
	}
	pieces := []paper.Piece{parts.Heading(heading)}
	for _, s := range steps {
		pieces = append(pieces, formula(c, s))
	}
	return pieces
}

// worked are steps with their line below the heading.
func worked(c *paper.Canvas, s Steps) []paper.Piece {
	pieces := formulas(c, s.Heading, s.Formulas)
	if len(pieces) == 0 {
		return nil
	}
	return slices.Insert(pieces, 1, how(c, s.How))
}

// how is the line below a heading on how the stack hangs.
func how(c *paper.Canvas, s string) paper.Piece {
	line := paper.Words(c, paper.SmallBold, s, 1.6)
	line.Keep = true
	return line
}

// formula is one formula: in symbols, its numbers behind them or below, what comes out
// beside it.
func formula(c *paper.Canvas, s Formula) paper.Piece {
	const of, is = 54.0, 31.0
	w := c.Body().W - of - is
	name := c.Wrap(paper.Small, of-3, s.Of)
	sums := c.Wrap(paper.Small, w-3, s.Symbols+" = "+s.Numbers)
	if len(sums) > 1 {
		sums = append(c.Wrap(paper.Small, w-3, s.Symbols), c.Wrap(paper.Small, w-3, "= "+s.Numbers)...)
	}
	results := 1
	if s.Prints != "" {
		results = 2
	}
	h := float64(max(len(name), len(sums), results))*paper.Small.Lead() + 1.6
	return paper.Piece{H: h, Draw: func(c *paper.Canvas, room mm.Box) {
		y := room.Y + paper.Small.Lead()*0.85
		c.Lines(room.X, y, paper.Small, name)
		c.Lines(room.X+of, y, paper.Small, sums)
		c.Right(room.Right(), y, paper.SmallBold, "= "+s.Is)
		if s.Prints != "" {
			c.Right(room.Right(), y+paper.Small.Lead(), paper.Small, "prints "+s.Prints)
		}
		c.Line(room.X, room.Bottom(), room.Right(), room.Bottom(), paper.Light)
	}}
}
