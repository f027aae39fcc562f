package layouts

import (
	"fmt"

	"hangpack/layouts/drawings"
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
)

// A Card is one moment of a sequence.
type Card struct {
	Of, Which string // 'after', 'dolly B'
	Says      []string
	View      *drawings.Elevation // as it hangs then; nil where nothing does
	Joint     *CardJoint          // the joint that is made or released
	Steps     []Task              // in their order, each with its number
	Reads     []Instrument
	Warnings  []string
	Notes     []string
}

// A CardJoint is a joint as a tab between two bodies.
type CardJoint struct {
	Above, Below string // 'bar' or '4', and '5'
	Hole         parts.JointHole
}

// A Task is one thing to do; what a hand or an eye goes by is strong.
type Task struct {
	Says   string
	Strong bool
}

// An Instrument is what an instrument should show, with a box for what it does show.
type Instrument struct{ Of, Is, May string }

// A viewSize is how wide the views of cards are, in mm, and their scale, 1 to so many;
// zero where they have none.
type viewSize struct {
	w     float64
	scale int
}

// Measures of a card, in mm: which moment it is, what to do, what to read.
const (
	whichWidth = 25.0
	readWidth  = 61.0
	cardGap    = 2.0
	readRow    = 7.4
	readBox    = 14.0
)

// Columns of what to read; the last one is a box for the pen.
var readColumns = []paper.Column{paper.Texts("", 20), paper.Texts("should, may read", 27), paper.Texts("you read", readBox)}

// cardPiece is one moment of a sequence, whole on one page; its view has a width and a
// scale.
func cardPiece(c *paper.Canvas, v Card, size viewSize) paper.Piece {
	stepWidth := c.Body().W - whichWidth - size.w - readWidth - 2*cardGap
	which, reads := whichMoment(c, v), readingsPiece(c, v.Reads)
	steps := numberedTasks(c, v.Steps, stepWidth)
	tail := cardTail(c, v)
	upper := max(which.H, steps.H, reads.H)
	if v.View != nil {
		upper = max(upper, drawings.ViewHeight(*v.View, size.scale))
	}
	h := upper + tail.H + 3
	return paper.Piece{H: h + 1.5, Draw: func(c *paper.Canvas, room mm.Box) {
		c.Rect(mm.BoxAt(room.X, room.Y, room.W, h), paper.Solid, paper.White)
		y := room.Y + 1
		which.Draw(c, mm.BoxAt(room.X+1.5, y, whichWidth-1.5, upper))
		x := room.X + whichWidth
		if v.View != nil {
			drawings.DrawSmall(c, x+size.w/2-1.5, y, *v.View, size.scale)
		}
		x += size.w + cardGap
		steps.Draw(c, mm.BoxAt(x, y, stepWidth, upper))
		reads.Draw(c, mm.BoxAt(x+stepWidth+cardGap, y, readWidth, upper))
		tail.Draw(c, mm.BoxAt(room.X+1.5, y+upper+1, room.W-3, tail.H))
	}}
}

// whichMoment says which moment a card is of, with its joint, and boxes for time and
// initials.
func whichMoment(c *paper.Canvas, v Card) paper.Piece {
	name := c.Wrap(paper.Section, whichWidth-2, v.Which)
	says := c.WrapAll(paper.Small, whichWidth-2, v.Says)
	top := 3.6 + float64(len(name))*paper.Section.Lead() + float64(len(says))*paper.Small.Lead() + 1
	joint := 0.0
	if v.Joint != nil {
		_, tall := cardTab(c, *v.Joint, whichWidth-2.5)
		joint = 2*tall + 2.5
	}
	return paper.Piece{H: top + joint + 11.5, Draw: func(c *paper.Canvas, room mm.Box) {
		c.Text(room.X, room.Y+3.2, paper.Small, v.Of)
		y := c.Lines(room.X, room.Y+8.6, paper.Section, name)
		c.Lines(room.X, y-1.6, paper.Small, says)
		if v.Joint != nil {
			drawCardJoint(c, mm.BoxAt(room.X, room.Y+top, room.W-1, joint), *v.Joint)
		}
		whenAndWho(c, room.X, room.Y+top+joint, (room.W-1)/2)
	}}
}

// whenAndWho draws two boxes for the pen side by side, each in a room so wide.
func whenAndWho(c *paper.Canvas, x, y, w float64) {
	c.Text(x, y+3, paper.Small, "time")
	c.Text(x+w, y+3, paper.Small, "initials")
	c.Rect(mm.BoxAt(x, y+4, w-1, 7), paper.Solid, paper.White)
	c.Rect(mm.BoxAt(x+w, y+4, w-1, 7), paper.Solid, paper.White)
}

// cardTab measures the tab of a card's joint in a width, and its two bodies, which
// are taller where the names of both stand above and below a wide tab.
func cardTab(c *paper.Canvas, j CardJoint, w float64) (t parts.Tabs, tall float64) {
	const names = 9.0
	t = parts.TabsWithin(c, w-names, 9, 5.5, []parts.JointHole{j.Hole})
	if t.Width() > w-names {
		return t, 9
	}
	return t, 7
}

// drawCardJoint draws a joint as a small tab that straddles the line between two
// bodies.
func drawCardJoint(c *paper.Canvas, room mm.Box, j CardJoint) {
	t, tall := cardTab(c, j, room.W)
	c.Rect(mm.BoxAt(room.X, room.Y+1, room.W, tall), paper.Solid, paper.White)
	c.Rect(mm.BoxAt(room.X, room.Y+1+tall, room.W, tall), paper.Solid, paper.White)
	out := (tall - 7) * 0.6
	c.Text(room.X+1.5, room.Y+1+3.5+1-out, paper.TextBold, j.Above)
	c.Text(room.X+1.5, room.Y+1+tall+3.5+2+2*out, paper.TextBold, j.Below)
	t.Draw(c, room.Right()-t.Width()-1, room.Y+1+tall, j.Hole)
}

// numberedTasks is what to do, sentence by sentence.
func numberedTasks(c *paper.Canvas, steps []Task, w float64) paper.Piece {
	const in, between = 5.5, 0.7
	var all [][]string
	h := 1.0
	for _, s := range steps {
		lines := c.Wrap(s.face(), w-in, s.Says)
		all = append(all, lines)
		h += float64(len(lines))*paper.Text.Lead() + between
	}
	return paper.Piece{H: h, Draw: func(c *paper.Canvas, room mm.Box) {
		y := room.Y + 4
		for i, lines := range all {
			c.Text(room.X, y, paper.TextBold, fmt.Sprintf("%d.", i+1))
			y = c.Holes(room.X+in, y, steps[i].face(), paper.White, lines) + between
		}
	}}
}

func (d Task) face() paper.Face { return paper.Face{Bold: d.Strong, Pt: paper.Text.Pt} }

// readingsPiece is what to read, each with a box for what is read.
func readingsPiece(c *paper.Canvas, reads []Instrument) paper.Piece {
	var rows []paper.Piece
	h := 4.5
	for _, r := range reads {
		row := readingLine(c, r)
		rows, h = append(rows, row), h+row.H
	}
	return paper.Piece{H: h, Draw: func(c *paper.Canvas, room mm.Box) {
		x := room.X
		for _, col := range readColumns {
			c.Text(x, room.Y+3, paper.Small, col.Head)
			x += col.W
		}
		y := room.Y + 4.5
		for _, row := range rows {
			row.Draw(c, mm.BoxAt(room.X, y, room.W, row.H))
			y += row.H
		}
	}}
}

// readingLine is one instrument: what it should show largest, what it may show below
// that, and the box beside both.
func readingLine(c *paper.Canvas, r Instrument) paper.Piece {
	var big paper.Face
	for _, big = range []paper.Face{paper.Bold(13), paper.TextBold} {
		if c.Width(big, r.Is) <= readColumns[1].W-1.5 {
			break
		}
	}
	of, is, may := c.Wrap(paper.Small, readColumns[0].W-1, r.Of), c.Wrap(big, readColumns[1].W-1.5, r.Is), c.Wrap(paper.Small, readColumns[1].W-1, r.May)
	figures := float64(len(is))*big.Lead() + float64(len(may))*paper.Small.Lead()
	h := max(readRow, float64(len(of))*paper.Small.Lead(), figures) + 0.3
	return paper.Piece{H: h, Draw: func(c *paper.Canvas, room mm.Box) {
		y := room.Y + (h-figures)/2
		c.Lines(room.X, y+big.Lead()*0.75, paper.Small, of)
		x := room.X + readColumns[0].W
		c.Lines(x, y+big.Lead()*0.75, big, is)
		c.Lines(x, y+float64(len(is))*big.Lead()+paper.Small.Lead()*0.7, paper.Small, may)
		c.Rect(mm.BoxAt(x+readColumns[1].W, room.Y+0.5, readBox-0.5, h-1), paper.Solid, paper.White)
	}}
}

// cardTail is what a card says across its width: warnings first.
func cardTail(c *paper.Canvas, v Card) paper.Piece {
	w := c.Body().W - 3
	warnings, notes := c.WrapAll(paper.TextBold, w-7, v.Warnings), c.WrapAll(paper.Small, w, v.Notes)
	h := float64(len(warnings))*paper.TextBold.Lead() + float64(len(notes))*paper.Small.Lead()
	if len(v.Warnings) > 0 {
		h += 2
	}
	return paper.Piece{H: h, Draw: func(c *paper.Canvas, room mm.Box) {
		y := room.Y + 3
		if n := float64(len(warnings)); n > 0 {
			c.Rect(mm.BoxAt(room.X, room.Y, 2, n*paper.TextBold.Lead()), 0, paper.Black)
			y = c.Lines(room.X+5, room.Y+3.6, paper.TextBold, warnings) + 1
		}
		c.Lines(room.X, y, paper.Small, notes)
	}}
}
