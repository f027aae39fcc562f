package layouts

import "hangpack/layouts/mm"

// A CheckList is what to look at before use, with boxes to tick.
type CheckList struct {
	Head   string
	When   Check // when to look, and what to do with what is out of use
	Items  []Check
	Signed []string // words before the lines for a pen
}

// A Check is a thing, what puts it out of use, and where that comes from.
type Check struct{ Thing, Out, From string }

// checkWide is how far the words of a check stand from its box.
const checkWide = 9.0

// checkList makes pieces that stay on one page, so that it can be handed to
// whoever looks.
func checkList(c *canvas, l CheckList, f runFaces) []piece {
	pieces := []piece{Heading(l.Head), sourced(c, f, 0, l.When)}
	for _, item := range l.Items {
		pieces = append(pieces, inspection(c, f, item))
	}
	for i := range pieces {
		pieces[i].keep = true
	}
	return append(pieces, signedLines(l.Signed))
}

// inspection is a box beside a thing and what puts it out of use.
func inspection(c *canvas, f runFaces, k Check) piece {
	words := sourced(c, f, checkWide, k)
	h := max(words.h, tickSide+1.8)
	return piece{h: h, draw: func(c *canvas, room mm.Box) {
		Tick(c, room.X, room.Y+0.9, tickSide)
		words.draw(c, room)
		c.line(room.X+checkWide, room.Bottom(), room.Right(), room.Bottom(), light)
	}}
}

// sourced is a check's words with their source.
func sourced(c *canvas, f runFaces, at float64, k Check) piece {
	words := runInFor(c, f, c.body().W-at, k.Thing, k.Out, k.From)
	return piece{h: words.height() + f.rest.lead()*0.4, draw: func(c *canvas, room mm.Box) { words.draw(c, room.X+at, room.Y+f.rest.lead()*0.92) }}
}

// signedLines is words with lines for a pen, side by side.
func signedLines(words []string) piece {
	return piece{h: 10, draw: func(c *canvas, room mm.Box) {
		w := room.W / float64(len(words))
		for i, s := range words {
			blank(c, room.X+float64(i)*w, room.Y+6.6, w-4, s)
		}
	}}
}
