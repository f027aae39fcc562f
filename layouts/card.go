package layouts

import (
	"fmt"

	"hangpack/layouts/mm"
)

// Measures of a card, in mm: which moment it is, what to do, what to read.
const (
	whichWidth = 25.0
	readWidth  = 61.0
	cardGap    = 2.0
	readRow    = 7.4
	readBox    = 14.0
)

// Columns of what to read; the last one is a box for the pen.
var readColumns = []column{{"", 20, false}, {"should, may read", 27, false}, {"you read", readBox, false}}

// cardPiece is one moment of a sequence, whole on one page; its view has a width and a
// scale.
func cardPiece(c *canvas, v Card, size viewSize) piece {
	stepWidth := c.body().W - whichWidth - size.w - readWidth - 2*cardGap
	which, reads := whichMoment(c, v), readingsPiece(c, v.Reads)
	steps := numberedTasks(c, v.Steps, stepWidth)
	tail := cardTail(c, v)
	upper := max(which.h, steps.h, reads.h)
	if v.View != nil {
		upper = max(upper, viewHeight(*v.View, size.scale))
	}
	h := upper + tail.h + 3
	return piece{h: h + 1.5, draw: func(c *canvas, room mm.Box) {
		c.rect(mm.BoxAt(room.X, room.Y, room.W, h), solid, white)
		y := room.Y + 1
		which.draw(c, mm.BoxAt(room.X+1.5, y, whichWidth-1.5, upper))
		x := room.X + whichWidth
		if v.View != nil {
			DrawView(c, x+size.w/2-1.5, y, *v.View, size.scale)
		}
		x += size.w + cardGap
		steps.draw(c, mm.BoxAt(x, y, stepWidth, upper))
		reads.draw(c, mm.BoxAt(x+stepWidth+cardGap, y, readWidth, upper))
		tail.draw(c, mm.BoxAt(room.X+1.5, y+upper+1, room.W-3, tail.h))
	}}
}

// whichMoment says which moment a card is of, with its joint, and boxes for time and
// initials.
func whichMoment(c *canvas, v Card) piece {
	name := c.wrap(section, whichWidth-2, v.Which)
	says := c.wrapAll(small, whichWidth-2, v.Says)
	top := 3.6 + float64(len(name))*section.lead() + float64(len(says))*small.lead() + 1
	joint := 0.0
	if v.Joint != nil {
		_, tall := cardTab(c, whichWidth-2.5, *v.Joint)
		joint = 2*tall + 2.5
	}
	return piece{h: top + joint + 11.5, draw: func(c *canvas, room mm.Box) {
		c.text(room.X, room.Y+3.2, small, v.Of)
		y := c.lines(room.X, room.Y+8.6, section, name)
		c.lines(room.X, y-1.6, small, says)
		if v.Joint != nil {
			drawCardJoint(c, mm.BoxAt(room.X, room.Y+top, room.W-1, joint), *v.Joint)
		}
		whenAndWho(c, room.X, room.Y+top+joint, (room.W-1)/2)
	}}
}

// whenAndWho draws two boxes for the pen side by side, each in a room so wide.
func whenAndWho(c *canvas, x, y, w float64) {
	c.text(x, y+3, small, "time")
	c.text(x+w, y+3, small, "initials")
	c.rect(mm.BoxAt(x, y+4, w-1, 7), solid, white)
	c.rect(mm.BoxAt(x+w, y+4, w-1, 7), solid, white)
}

// cardTab measures the tab of a card's joint in a width, and its two bodies, which
// are taller where the names of both stand above and below a wide tab.
func cardTab(c *canvas, w float64, j CardJoint) (t tabStyle, tall float64) {
	const names = 9.0
	t = TabsWithin(c, w-names, 9, 5.5, []Hole{j.Hole})
	if t.width() > w-names {
		return t, 9
	}
	return t, 7
}

// drawCardJoint draws a joint as a small tab that straddles the line between two
// bodies.
func drawCardJoint(c *canvas, room mm.Box, j CardJoint) {
	t, tall := cardTab(c, room.W, j)
	c.rect(mm.BoxAt(room.X, room.Y+1, room.W, tall), solid, white)
	c.rect(mm.BoxAt(room.X, room.Y+1+tall, room.W, tall), solid, white)
	out := (tall - 7) * 0.6
	c.text(room.X+1.5, room.Y+1+3.5+1-out, textB, j.Above)
	c.text(room.X+1.5, room.Y+1+tall+3.5+2+2*out, textB, j.Below)
	DrawTab(c, room.Right()-t.width()-1, room.Y+1+tall, t, j.Hole)
}

// numberedTasks is what to do, sentence by sentence.
func numberedTasks(c *canvas, steps []Do, w float64) piece {
	const in, between = 5.5, 0.7
	var all [][]string
	h := 1.0
	for _, s := range steps {
		lines := c.wrap(s.face(), w-in, s.Says)
		all = append(all, lines)
		h += float64(len(lines))*text.lead() + between
	}
	return piece{h: h, draw: func(c *canvas, room mm.Box) {
		y := room.Y + 4
		for i, lines := range all {
			c.text(room.X, y, textB, fmt.Sprintf("%d.", i+1))
			y = c.holes(room.X+in, y, steps[i].face(), white, lines) + between
		}
	}}
}

func (d Do) face() face { return face{d.Strong, text.pt} }

// readingsPiece is what to read, each with a box for what is read.
func readingsPiece(c *canvas, reads []Read) piece {
	var rows []piece
	h := 4.5
	for _, r := range reads {
		row := readingLine(c, r)
		rows, h = append(rows, row), h+row.h
	}
	return piece{h: h, draw: func(c *canvas, room mm.Box) {
		x := room.X
		for _, col := range readColumns {
			c.text(x, room.Y+3, small, col.head)
			x += col.w
		}
		y := room.Y + 4.5
		for _, row := range rows {
			row.draw(c, mm.BoxAt(room.X, y, room.W, row.h))
			y += row.h
		}
	}}
}

// readingLine is one instrument: what it should show largest, what it may show below
// that, and the box beside both.
func readingLine(c *canvas, r Read) piece {
	var big face
	for _, big = range []face{{true, 13}, textB} {
		if c.width(big, r.Is) <= readColumns[1].w-1.5 {
			break
		}
	}
	of, is, may := c.wrap(small, readColumns[0].w-1, r.Of), c.wrap(big, readColumns[1].w-1.5, r.Is), c.wrap(small, readColumns[1].w-1, r.May)
	figures := float64(len(is))*big.lead() + float64(len(may))*small.lead()
	h := max(readRow, float64(len(of))*small.lead(), figures) + 0.3
	return piece{h: h, draw: func(c *canvas, room mm.Box) {
		y := room.Y + (h-figures)/2
		c.lines(room.X, y+big.lead()*0.75, small, of)
		x := room.X + readColumns[0].w
		c.lines(x, y+big.lead()*0.75, big, is)
		c.lines(x, y+float64(len(is))*big.lead()+small.lead()*0.7, small, may)
		c.rect(mm.BoxAt(x+readColumns[1].w, room.Y+0.5, readBox-0.5, h-1), solid, white)
	}}
}

// cardTail is what a card says across its width: warnings first.
func cardTail(c *canvas, v Card) piece {
	w := c.body().W - 3
	warnings, notes := c.wrapAll(textB, w-7, v.Warnings), c.wrapAll(small, w, v.Notes)
	h := float64(len(warnings))*textB.lead() + float64(len(notes))*small.lead()
	if len(v.Warnings) > 0 {
		h += 2
	}
	return piece{h: h, draw: func(c *canvas, room mm.Box) {
		y := room.Y + 3
		if n := float64(len(warnings)); n > 0 {
			c.rect(mm.BoxAt(room.X, room.Y, 2, n*textB.lead()), 0, black)
			y = c.lines(room.X+5, room.Y+3.6, textB, warnings) + 1
		}
		c.lines(room.X, y, small, notes)
	}}
}
