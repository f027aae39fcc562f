package layouts

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
)

// A CautionGroup is what holds for every lift of its kind while one part of the
// work lasts.
type CautionGroup struct {
	Head  string // 'while it moves'
	Items []Advice
}

// A Advice says what to do, in a few words that stand out, then more of
// it, and where that comes from.
type Advice struct {
	Do, Says, From string
	Picture        parts.Picture // "" for none
}

// pictureWide is how far the words of a general caution stand from the left,
// in mm: its picture stands there.
const pictureWide = 12.0

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
	return paper.Under(head, rows)
}

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
