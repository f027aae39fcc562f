package layouts

import (
	"strings"

	"hangpack/layouts/mm"
)

// A CautionGroup is what holds for every lift of its kind while one part of the
// work lasts.
type CautionGroup struct {
	Head  string // 'while it moves'
	Items []GeneralCaution
}

// A GeneralCaution says what to do, in a few words that stand out, then more of
// it, and where that comes from.
type GeneralCaution struct {
	Do, Says, From string
	Picture        Picture // "" for none
}

// pictureWide is how far the words of a general caution stand from the left,
// in mm: its picture stands there.
const pictureWide = 12.0

// cautionGroup makes pieces of a heading, which stands again on a page that the
// group goes on to, and of its rows.
func cautionGroup(c *canvas, g CautionGroup) []piece {
	head := piece{h: 8.4, keep: true, draw: func(c *canvas, room mm.Box) {
		c.text(room.X, room.Y+6, section, g.Head)
		c.line(room.X, room.Y+8, room.Right(), room.Y+8, solid)
	}}
	var rows []piece
	for _, item := range g.Items {
		rows = append(rows, advicePiece(c, item))
	}
	return under(head, rows)
}

func advicePiece(c *canvas, g GeneralCaution) piece {
	words := runInFor(c, running, c.body().W-pictureWide, g.Do, g.Says, g.From)
	h := words.height()
	if g.Picture != "" {
		h = max(h, 8.2)
	}
	return piece{h: h + 1.6, draw: func(c *canvas, room mm.Box) {
		drawPicture(c, g.Picture, mm.BoxAt(room.X, room.Y+1, 10, 8))
		words.draw(c, room.X+pictureWide, room.Y+4.2)
		c.line(room.X+pictureWide, room.Bottom(), room.Right(), room.Bottom(), light)
	}}
}

// runFaces are the faces of a text whose beginning stands out.
type runFaces struct{ start, rest face }

var (
	running = runFaces{textB, text}
	larger  = runFaces{face{true, reading.pt}, reading}
)

// A runIn is a text whose beginning stands out, broken into lines, with its
// source small at the right of its last line, or below it where it has no room.
type runIn struct {
	runFaces
	w     float64
	bold  []string
	at    float64 // where the rest begins, on the last line of the beginning
	first string  // of the rest, on that line; "" where nothing fits there
	more  []string
	from  []string
	below bool // the source
}

// runInFor breaks a beginning in bold, and what follows it on the same line, into
// lines no wider than w.
func runInFor(c *canvas, f runFaces, w float64, bold, rest, from string) runIn {
	r := runIn{runFaces: f, w: w, bold: c.wrap(f.start, w, bold), from: c.wrap(small, w, from)}
	r.at = c.width(f.start, r.bold[len(r.bold)-1]) + c.width(f.rest, " ")
	words := wordsOf(rest)
	n := len(words)
	for c.width(f.rest, strings.Join(words[:n], " ")) > w-r.at && n > 0 {
		n--
	}
	r.first = strings.Join(words[:n], " ")
	r.more = c.wrap(f.rest, w, strings.Join(words[n:], " "))
	r.below = len(r.from) > 1 || lastOf(c, r)+4+c.width(small, from) > w
	return r
}

// lastOf returns how wide the last line of a text is.
func lastOf(c *canvas, r runIn) float64 {
	if n := len(r.more); n > 0 {
		return c.width(r.rest, r.more[n-1])
	}
	return r.at + c.width(r.rest, r.first)
}

func (r runIn) height() float64 {
	h := float64(len(r.bold)+len(r.more)) * r.rest.lead()
	if r.below {
		h += float64(len(r.from)) * small.lead()
	}
	return h
}

// draw writes the lines from the baseline y down.
func (r runIn) draw(c *canvas, x, y float64) {
	y = c.lines(x, y, r.start, r.bold)
	c.text(x+r.at, y-r.rest.lead(), r.rest, r.first)
	y = c.lines(x, y, r.rest, r.more) - r.rest.lead()
	for _, s := range r.from {
		if r.below {
			y += small.lead()
		}
		c.right(x+r.w, y, small, s)
	}
}
