package layouts

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
)

// A CheckList is what to look at before use, with boxes to tick.
type CheckList struct {
	Head   string
	When   Inspection // when to look, and what to do with what is out of use
	Items  []Inspection
	Signed []string // words before the lines for a pen
}

// A Inspection is a thing, what puts it out of use, and where that comes from.
type Inspection struct{ Thing, Out, From string }

// checkWide is how far the words of a check stand from its box.
const checkWide = 9.0

// checkList makes pieces that stay on one page, so that it can be handed to
// whoever looks.
func checkList(c *paper.Canvas, l CheckList, f paper.RunFaces) []paper.Piece {
	pieces := []paper.Piece{parts.Heading(l.Head), sourced(c, f, 0, l.When)}
	for _, item := range l.Items {
		pieces = append(pieces, inspection(c, f, item))
	}
	for i := range pieces {
		pieces[i].Keep = true
	}
	return append(pieces, signedLines(l.Signed))
}

// inspection is a box beside a thing and what puts it out of use.
func inspection(c *paper.Canvas, f paper.RunFaces, k Inspection) paper.Piece {
	words := sourced(c, f, checkWide, k)
	h := max(words.H, parts.TickSide+1.8)
	return paper.Piece{H: h, Draw: func(c *paper.Canvas, room mm.Box) {
		parts.Tick(c, room.X, room.Y+0.9, parts.TickSide)
		words.Draw(c, room)
		c.Line(room.X+checkWide, room.Bottom(), room.Right(), room.Bottom(), paper.Light)
	}}
}

// sourced is a check's words with their source.
func sourced(c *paper.Canvas, f paper.RunFaces, at float64, k Inspection) paper.Piece {
	words := paper.RunIn(c, f, c.Body().W-at, k.Thing, k.Out, k.From)
	return paper.Piece{H: words.Height() + f.Rest.Lead()*0.4, Draw: func(c *paper.Canvas, room mm.Box) { words.Draw(c, room.X+at, room.Y+f.Rest.Lead()*0.92) }}
}

// signedLines is words with lines for a pen, side by side.
func signedLines(words []string) paper.Piece {
	return paper.Piece{H: 10, Draw: func(c *paper.Canvas, room mm.Box) {
		w := room.W / float64(len(words))
		for i, s := range words {
			parts.Blank(c, room.X+float64(i)*w, room.Y+6.6, w-4, s)
		}
	}}
}
