package layouts

import (
	"slices"

	"hangpack/layouts/drawings"
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
)

// A Sequence is a sheet that a crew works through from card to card: what to do
// next, and how to tell that it did. The lift sheet is one, the sheet of coming
// down the other.
type Sequence struct {
	Sheet string // 'SL LIFTS'
	Head  parts.Head
	Says  []string       // before the first card
	Stop  []string       // what to do when a reading is not as it should be
	Ruler drawings.Ruler // of the drawings
	Cards []Card
	Alone AloneTable
}

// An AloneTable is what each of two hoists holds with the other one slack; no rows
// where there is one hoist.
type AloneTable struct {
	Heading string
	Views   []drawings.View
	Rows    [][]string // what, front and its use, "", rear and its use
	Note    string
}

var aloneColumns = []paper.Column{paper.Texts("", 26), paper.Texts("front hoist alone", 55), paper.Figures("used", 15), paper.Texts("", 4), paper.Texts("rear hoist alone", 55), paper.Figures("used", 0)}

// Name is what the sheet is called.
func (v Sequence) Name() string { return v.Sheet }

// Pages draws the views of one hoist alone as tall as they may be without taking one
// page more.
func (v Sequence) Pages(c *paper.Canvas) (best []paper.Page) {
	cards := slices.Clip(v.pieces(c))
	for _, tall := range []float64{62, 44, 30} {
		pieces := append(cards, aloneTable(c, v.Ruler, v.Alone, tall)...)
		pages := paper.Flow(c, v.Head.Shape, v.Head.Top(c), pieces)
		if best == nil || len(pages) < len(best) {
			best = pages
		}
		if len(v.Alone.Rows) == 0 {
			break // nothing to shrink
		}
	}
	return best
}

// pieces are the sheet down to its last card.
func (v Sequence) pieces(c *paper.Canvas) (pieces []paper.Piece) {
	for _, s := range v.Says {
		pieces = append(pieces, paper.Words(c, paper.Small, s, 1))
	}
	pieces = append(pieces, stopBox(c, v.Stop))
	size := v.viewSize()
	if size.w > 0 {
		pieces = append(pieces, drawings.ViewHead("From the side as it hangs", v.Ruler, size.scale))
	}
	for _, card := range v.Cards {
		pieces = append(pieces, cardPiece(c, card, size))
	}
	return pieces
}

// viewSize gives views more room where they would be too small to read, and the
// largest scale at which every card's view fits its column.
func (v Sequence) viewSize() (size viewSize) {
	const readable = 100 // 1:100, at which a cabinet is a few millimetres tall
	views := v.views()
	if len(views) == 0 {
		return size
	}
	for _, room := range [][2]float64{{25, 54}, {32, 54}, {32, 72}} {
		scale := drawings.ViewScale(v.Ruler, views, room[0]-2*drawings.ViewEdge, room[1])
		if size.scale == 0 || scale < size.scale {
			size = viewSize{room[0], scale}
		}
		if scale <= readable {
			break
		}
	}
	return size
}

// views are the drawings of those cards that have one.
func (v Sequence) views() (views []drawings.Elevation) {
	for _, card := range v.Cards {
		if card.View != nil {
			views = append(views, *card.View)
		}
	}
	return views
}

// stopBox is what to do when what is read is not what should be: its first line
// large.
func stopBox(c *paper.Canvas, says []string) paper.Piece {
	w := c.Body().W - 20
	first := c.Wrap(paper.TextBold, w, says[0])
	rest := c.WrapAll(paper.Small, w, says[1:])
	h := float64(len(first))*paper.TextBold.Lead() + float64(len(rest))*paper.Small.Lead() + 6
	return paper.Piece{H: h, Draw: func(c *paper.Canvas, room mm.Box) {
		c.Rect(mm.BoxAt(room.X, room.Y+1, room.W, h-3), paper.Solid, paper.White)
		parts.Stop.Draw(c, mm.BoxAt(room.X+2.5, room.Y+(h-13)/2, 11, 11))
		y := c.Lines(room.X+17, room.Y+5.6, paper.TextBold, first)
		c.Lines(room.X+17, y, paper.Small, rest)
	}}
}

// aloneTable is the table of one hoist alone with its views, which may be so tall; no
// pieces where there are no rows.
func aloneTable(c *paper.Canvas, r drawings.Ruler, t AloneTable, tall float64) []paper.Piece {
	if len(t.Rows) == 0 {
		return nil
	}
	note := paper.Words(c, paper.Small, t.Note, 2)
	note.Keep = true
	pieces := append([]paper.Piece{parts.Heading(t.Heading), note}, drawings.Views(c, t.Heading+", from the side", r, t.Views, tall)...)
	pieces = append(paper.Together(pieces, c.Body().H/2), paper.Gap(2))
	return append(pieces, paper.Table(c, aloneColumns, t.Rows, paper.Small)...)
}
