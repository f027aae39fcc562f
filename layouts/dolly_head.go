package layouts

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
)

// A dollyTop is the head of a dolly sheet as measured: the faces and the baselines of its
// parts, from the top of the page's body, in mm.
type dollyTop struct {
	id, which paper.Face
	word, rev float64 // baselines
	wordX     float64
	mark      mm.Spot // corner of the side mark
	height    float64
	over      bool // REV over the sheet's mark; else they stand side by side
}

// Measures of the head, in mm.
const (
	markSide = 14.0
	idBase   = idTall + 6 // clear of the edge of the paper with the font's full height
	tailOf24 = 5.4        // how deep a J or a Q of that height reaches, and some air
)

// dollyTopFor measures the head: the stack's id and the dolly's letter, 24 mm
// tall, and REV, all in one line where they fit. A long id has the line to
// itself, dolly and REV below it; a revision too wide to stand beside the
// dolly gets a third line, and the letter then is as tall as its word. The
// widest ids are set less tall, so that the side mark stands beside them.
func dollyTopFor(c *paper.Canvas, d Dolly, w float64) dollyTop {
	const first, lineRev = idBase, parts.RevTall + 3.4
	t := dollyTop{id: dollyID(c, d, w), which: paper.Capitals(idTall), word: first, rev: 14.8, mark: mm.At(w-markSide, 20.4)}
	if d.Word != "dolly" {
		t.which = paper.Capitals(wordTall)
	}
	id, rev, column := c.Width(t.id, d.ID), parts.RevWidth(c), parts.WordWidth(c)
	which := func() float64 { return 5 + c.Width(paper.Capitals(wordTall), d.Word) + 5 + c.Width(t.which, d.Which) }
	t.wordX = id
	switch long := len(d.ID) > 3; {
	case !long && id+which()+4+column <= w:
		t.over = true
		t.height = first + 16.4 // below the tail of a J
		return t
	case !long && id+which()+markSide+3 <= w:
		t.rev = first + lineRev + 3 // below the tail of a Q
	default:
		t.wordX, t.word = -5, first+max(t.which.Em()*paper.CapHeight, parts.RevTall)+tailOf24
		if which()+6+rev > w {
			t.which = paper.Capitals(wordTall)
			t.word = first + wordTall + tailOf24
			t.rev = t.word + lineRev
		} else {
			t.rev = t.word
		}
	}
	t.mark.Y = 6
	t.height = t.rev + 15
	return t
}

// dollyID is the largest of three faces in which an id leaves the side mark its room, or
// the smallest.
func dollyID(c *paper.Canvas, d Dolly, w float64) (f paper.Face) {
	for _, tall := range []float64{idTall, 20, 16} {
		f = paper.Capitals(tall)
		if c.Width(f, d.ID)+markSide+3 <= w {
			break
		}
	}
	return f
}

// dollyHeadHeight measures the head of a sheet w wide.
func dollyHeadHeight(c *paper.Canvas, d Dolly, w float64) float64 {
	joins := c.Wrap(paper.Text, w-markSide-4, d.Joins)
	return dollyTopFor(c, d, w).height + float64(len(joins)-1)*paper.Text.Lead()
}

// dollyHead draws the head and returns the room below it.
func dollyHead(c *paper.Canvas, room mm.Box, d Dolly) mm.Box {
	t := dollyTopFor(c, d, room.W)
	joins := c.Wrap(paper.Text, room.W-markSide-4, d.Joins)
	height := dollyHeadHeight(c, d, room.W)
	c.In("head", mm.BoxAt(room.X, room.Y, room.W, height), func() {
		c.Text(room.X, room.Y+idBase, t.id, d.ID)
		x := room.X + t.wordX + 5
		c.Text(x, room.Y+t.word, paper.Capitals(wordTall), d.Word)
		c.Text(x+c.Width(paper.Capitals(wordTall), d.Word)+5, room.Y+t.word, t.which, d.Which)
		if t.over {
			parts.DrawRevOver(c, room.Right(), room.Y+t.rev, markSide+3)
		} else {
			parts.DrawRevAlone(c, room.Right(), room.Y+t.rev)
		}
		paper.SideMark(c, d.Shape, mm.BoxAt(room.X+t.mark.X, room.Y+t.mark.Y, markSide, markSide))
		y := c.Lines(room.X, room.Y+t.height-8.4, paper.Text, joins)
		parts.DrawThrowAway(c, room.X, y-0.6)
		c.Line(room.X, room.Y+height-1.5, room.Right(), room.Y+height-1.5, paper.Heavy)
	})
	return mm.BoxAt(room.X, room.Y+height, room.W, room.H-height)
}
