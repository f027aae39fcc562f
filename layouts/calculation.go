package layouts

import "hangpack/layouts/mm"

// Calculation is the sheet that a checker follows with a pencil: what went in,
// each formula as symbols and with its numbers, and what came out.
type Calculation struct {
	Target    string
	Sheet     string
	Head      Head
	Inputs    []Fact
	Parts     Table
	Hangs     []Step // from the centre of gravity to the hooks
	Joint     []Step // the most loaded joint in full
	Which     string // that joint
	Joints    [][]string
	Points    []Step
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

// A Step is one formula: what it is of, in symbols, with its numbers, and what
// comes out. Prints is the same as it stands on the other sheets.
type Step struct{ Of, Symbols, Numbers, Is, Prints string }

// Columns of the tables; the last of each takes what is left.
var (
	partWidths   = []float64{38, 15, 16, 17, 17, 17, 17, 17, 0}
	jointColumns = []column{{"joint above cabinet", 17, false}, {"cabinet looks", 23, true}, {"its lowest corner", 29, true},
		{"hinge, all", 21, true}, {"of it along", 28, true}, {"rear link", 28, true}, {"hinge pin used", 14, true}, {"link pin used", 0, true}}
	checkColumns = []column{{"what", 32, false}, {"closest at", 33, false}, {"worked out", 54, false}, {"may be", 42, false}, {"used", 0, true}}
)

func (v Calculation) pages(c *canvas) []page {
	pieces := []piece{Heading("What goes in")}
	for _, f := range v.Inputs {
		pieces = append(pieces, FactPiece(c, f, c.body().W))
	}
	pieces = append(append(pieces, Heading("Centre of gravity, bar level")), partsTable(c, v.Parts)...)
	pieces = append(pieces, formulas(c, "How it hangs", v.Hangs)...)
	pieces = append(pieces, formulas(c, "The joint most used, finished stack at rest, in full: "+v.Which, v.Joint)...)
	pieces = append(append(pieces, Heading("What each joint carries, finished stack at rest, both sides together")), TableOf(c, jointColumns, v.Joints, small)...)
	pieces = append(pieces, Gap(1), Words(c, small, "Pull: the part is stretched. Push: it is pressed together, and its pin bears on the other side of the hole.", 0))
	pieces = append(pieces, formulas(c, "Points", v.Points)...)
	pieces = append(append(pieces, Heading("Every check, where it comes closest")), TableOf(c, checkColumns, v.Checks, small)...)
	pieces = append(pieces, Gap(1))
	for _, s := range v.Unchecked {
		pieces = append(pieces, Words(c, small, s, 0.6))
	}
	pieces = append(pieces, Gap(1), Words(c, textB, v.Most, 2), Heading("What this calculation does not see"))
	for _, s := range v.Limits {
		pieces = append(pieces, Words(c, small, s, 1))
	}
	return Flow(c, v.Target, v.Sheet, v.Head.Shape, UnderHead(c, v.Head), pieces)
}

// Gap is a piece of white paper.
func Gap(h float64) piece { return piece{h: h, draw: func(*canvas, mm.Box) {}} }

// partsTable is the table of all that hangs, and what its columns are.
func partsTable(c *canvas, t Table) []piece {
	var columns []column
	for i, head := range t.Heads {
		columns = append(columns, column{head, partWidths[i], i > 0})
	}
	pieces := TableOf(c, columns, t.Rows, small)
	last := &pieces[len(pieces)-1]
	*last = TableRow(c, Rest(c, columns), t.Rows[len(t.Rows)-1], smallB, false)
	last.head = &pieces[0]
	return append(pieces, Gap(1), Words(c, small, t.Note, 1))
}

// formulas are formulas under a heading.
func formulas(c *canvas, heading string, steps []Step) []piece {
	pieces := []piece{Heading(heading)}
	for _, s := range steps {
		pieces = append(pieces, formula(c, s))
	}
	return pieces
}

// formula is one formula: in symbols, its numbers below, what comes out beside it.
func formula(c *canvas, s Step) piece {
	const of, is = 50.0, 33.0
	w := c.body().W - of - is
	name := c.wrap(small, of-3, s.Of)
	sums := append(c.wrap(small, w-3, s.Symbols), c.wrap(small, w-3, "= "+s.Numbers)...)
	h := float64(max(len(name), len(sums), 2))*small.lead() + 1.6
	return piece{h: h, draw: func(c *canvas, room mm.Box) {
		y := room.Y + small.lead()*0.85
		c.lines(room.X, y, small, name)
		c.lines(room.X+of, y, small, sums)
		c.right(room.Right(), y, smallB, "= "+s.Is)
		if s.Prints != "" {
			c.right(room.Right(), y+small.lead(), small, "prints "+s.Prints)
		}
		c.line(room.X, room.Bottom(), room.Right(), room.Bottom(), light)
	}}
}

// UnderHead is the head of a stack's sheet, for pieces that flow below it.
func UnderHead(c *canvas, h Head) func(*canvas, mm.Box, string) mm.Box {
	return func(on *canvas, room mm.Box, _ string) mm.Box {
		if on == nil {
			return headRoom(c, room, h)
		}
		return drawHead(on, room, h)
	}
}
