package parts

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
)

// Room in a line, in mm.
const (
	OfWidth   = 34.0 // for what a fact or a figure is of
	figureGap = 3.0  // behind a figure
)

// Heading is a line in the largest running type. It stays with what follows.
func Heading(s string) paper.Piece {
	return paper.Piece{H: 9, Draw: func(c *paper.Canvas, room mm.Box) { c.Text(room.X, room.Y+6.4, paper.Section, s) }, Keep: true}
}

// A Fact is a word and what it is for this job.
type Fact struct{ Of, Is string }

// Piece is a word and what it is, in a column w wide.
func (f Fact) Piece(c *paper.Canvas, w float64) paper.Piece {
	ofWidth := min(OfWidth, w*0.25)
	of, is := c.Wrap(paper.TextBold, ofWidth-2, f.Of), c.Wrap(paper.Text, w-ofWidth, f.Is)
	return paper.Piece{H: float64(max(len(of), len(is), 1)) * paper.Text.Lead(), Draw: func(c *paper.Canvas, room mm.Box) {
		c.Lines(room.X, room.Y+paper.Text.Lead()*0.8, paper.TextBold, of)
		c.Lines(room.X+ofWidth, room.Y+paper.Text.Lead()*0.8, paper.Text, is)
	}}
}

// A FigureLine is a figure with what it is of and what is to be said of it.
type FigureLine struct{ Of, Figure, Says string }

// Height measures such a line in a column w wide.
func (l FigureLine) Height(c *paper.Canvas, w float64) float64 {
	rows := max(len(l.text(c, w)), len(c.Wrap(paper.Small, OfWidth-2, l.Of)))
	return max(5.7, float64(rows)*paper.Small.Lead()+1.2)
}

// Draw writes a figure with what it is of and what is said of it, on one
// baseline.
func (l FigureLine) Draw(c *paper.Canvas, x, y, w float64) {
	c.Lines(x, y, paper.Small, c.Wrap(paper.Small, OfWidth-2, l.Of))
	c.Text(x+OfWidth, y, paper.Section, l.Figure)
	c.Lines(x+OfWidth+c.Width(paper.Section, l.Figure)+figureGap, y, paper.Small, l.text(c, w))
}

// text is what stands beside a figure, in lines.
func (l FigureLine) text(c *paper.Canvas, w float64) []string {
	return c.Wrap(paper.Small, w-OfWidth-c.Width(paper.Section, l.Figure)-figureGap, l.Says)
}

// A Remark is a sentence with where it applies: a caution, what is not settled yet,
// a reason why a stack is held.
type Remark struct{ Where, Says string }

// Row is a row of where it applies and what it says.
func (r Remark) Row(c *paper.Canvas) paper.Piece {
	const at = 46.0
	where, says := c.Wrap(paper.Small, at-4, r.Where), c.Wrap(paper.Reading, c.Body().W-at, r.Says)
	h := max(float64(len(where))*paper.Small.Lead(), float64(len(says))*paper.Reading.Lead()) + 2.4
	return paper.Piece{H: h, Draw: func(c *paper.Canvas, room mm.Box) {
		c.Lines(room.X, room.Y+4.6, paper.Small, where)
		c.Lines(room.X+at, room.Y+4.6, paper.Reading, says)
		c.Line(room.X, room.Bottom(), room.Right(), room.Bottom(), paper.Light)
	}}
}
