package layouts

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
)

// pictureWide is how far the words of a general caution stand from the left,
// in mm: its picture stands there.
const pictureWide = 12.0

// rolesPieces are boxes, two to a line, each with lines for a name and for how to
// reach it; then who may stop the lift, and by which word.
func rolesPieces(c *paper.Canvas, roles []Role, anyone Advice) []paper.Piece {
	pieces := []paper.Piece{parts.Heading("Who answers for what")}
	for i := 0; i < len(roles); i += 2 {
		pieces = append(pieces, rolePair(c, roles[i:min(i+2, len(roles))]))
	}
	for i := range pieces {
		pieces[i].Keep = true
	}
	return append(pieces, anyonePiece(c, anyone))
}

// rolePair is one or two boxes side by side.
func rolePair(c *paper.Canvas, pair []Role) paper.Piece {
	const gap, h = 4.0, 16.0
	w := (c.Body().W - gap) / 2
	return paper.Piece{H: h + 2, Draw: func(c *paper.Canvas, room mm.Box) {
		for i, r := range pair {
			b := mm.BoxAt(room.X+float64(i)*(w+gap), room.Y, w, h)
			c.In("role", b, func() { drawRole(c, b, r) })
		}
	}}
}

// drawRole draws the box of who answers for something.
func drawRole(c *paper.Canvas, b mm.Box, r Role) {
	c.Rect(b, paper.Solid, paper.White)
	c.Text(b.X+2, b.Y+4.6, paper.TextBold, r.Is)
	c.Text(b.X+2, b.Y+8.4, paper.Small, r.Does)
	half := b.W * 0.48
	parts.Blank(c, b.X+2, b.Bottom()-2, half-4, "name")
	parts.Blank(c, b.X+half, b.Bottom()-2, b.W-half-2, "radio, phone")
}

// anyonePiece says who may stop the lift, with lines for the word and for who read
// the sheet aloud.
func anyonePiece(c *paper.Canvas, a Advice) paper.Piece {
	const half = 70.0
	words := paper.RunIn(c, paper.Running, c.Body().W-pictureWide, a.Do, a.Says, a.From)
	return paper.Piece{H: words.Height() + 8, Draw: func(c *paper.Canvas, room mm.Box) {
		parts.Stop.Draw(c, mm.BoxAt(room.X, room.Y+1, 10, 9.4))
		words.Draw(c, room.X+pictureWide, room.Y+4.4)
		y := room.Bottom() - 1.6
		parts.Blank(c, room.X+pictureWide, y, half-pictureWide-3, "stop word")
		parts.Blank(c, room.X+half, y, room.W-half, "read aloud to the crew by (name, date, time)")
	}}
}

// cautionGroup makes pieces of a heading, which stands again on a page that the
// group goes on to, and of its rows.
func cautionGroup(c *paper.Canvas, g CautionGroup) []paper.Piece {
	head := paper.Piece{H: 8.4, Keep: true, Draw: func(c *paper.Canvas, room mm.Box) {
		c.Text(room.X, room.Y+6, paper.Section, g.Head)
		c.Line(room.X, room.Y+8, room.Right(), room.Y+8, paper.Solid)
	}}
	var rows []paper.Piece
	for _, item := range g.Items {
		rows = append(rows, advicePiece(c, item))
	}
	return paper.Headed(head, rows)
}

// advicePiece is one advice beside its picture.
func advicePiece(c *paper.Canvas, g Advice) paper.Piece {
	words := paper.RunIn(c, paper.Running, c.Body().W-pictureWide, g.Do, g.Says, g.From)
	h := words.Height()
	if g.Picture != "" {
		h = max(h, 8.2)
	}
	return paper.Piece{H: h + 1.6, Draw: func(c *paper.Canvas, room mm.Box) {
		g.Picture.Draw(c, mm.BoxAt(room.X, room.Y+1, 10, 8))
		words.Draw(c, room.X+pictureWide, room.Y+4.2)
		c.Line(room.X+pictureWide, room.Bottom(), room.Right(), room.Bottom(), paper.Light)
	}}
}

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
