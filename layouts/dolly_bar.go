package layouts

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
)

// pickWidth is how wide a pick hole prints, with the words before it.
func pickWidth(c *paper.Canvas, p PickHole) float64 {
	return pickWords + c.Width(paper.Digits(paper.AfarTall), p.Label) + 9
}

// picksInLine reports whether all pick holes fit beside the widest tab of a
// sheet w wide; else each has a line to itself, above the tab.
func picksInLine(c *paper.Canvas, d Dolly, w float64) bool {
	left := besideTabs(c, d, w) - 12
	for _, p := range d.Picks {
		left -= pickWidth(c, p)
	}
	return left > 0
}

// barHeight is the height of what the first joint hangs from.
func barHeight(c *paper.Canvas, d Dolly, w float64) float64 {
	switch {
	case len(d.Picks) == 0:
		return 11.5 + max(float64(len(aboveLines(c, d, w))-2), 0)*paper.TextBold.Lead()
	case picksInLine(c, d, w):
		return d.pickTall()
	}
	return d.pickTall()*float64(len(d.Picks)) + dollyTabs(c, d, dollyRow).Height/2 + 1
}

// pickTall is how tall the bar is around a pick hole.
func (d Dolly) pickTall() float64 {
	for _, p := range d.Picks {
		if parts.HasTail(p.Label) {
			return pickBar + paper.AfarTall*parts.Tailed
		}
	}
	return pickBar
}

// aboveLines are what the first joint hangs from, beside the widest tab there may be.
func aboveLines(c *paper.Canvas, d Dolly, w float64) []string {
	return c.Wrap(paper.TextBold, besideTabs(c, d, w)-12, d.Above)
}

// dollyBar draws what the first joint hangs from: on the first dolly the bar
// with its pick holes, as tall as the holes of the joints.
func dollyBar(c *paper.Canvas, b mm.Box, w float64, d Dolly) {
	c.Rect(b, paper.Solid, paper.Grey)
	if len(d.Picks) == 0 {
		c.Lines(b.X+4, b.Y+5.4, paper.TextBold, aboveLines(c, d, w))
		return
	}
	at := mm.At(b.X+4, b.Y)
	for _, p := range d.Picks {
		drawPickHole(c, at, d.pickTall(), p)
		if picksInLine(c, d, w) {
			at.X += pickWidth(c, p)
		} else {
			at.Y += d.pickTall()
		}
	}
}

// drawPickHole draws one pick hole, 12 mm tall, with its words before it.
func drawPickHole(c *paper.Canvas, at mm.Spot, tall float64, p PickHole) {
	words, f := c.Wrap(paper.TextBold, pickWords-1, p.Of), paper.Digits(paper.AfarTall)
	c.Lines(at.X, at.Y+pickBar/2+1.4-float64(len(words)-1)*paper.TextBold.Lead()/2, paper.TextBold, words)
	x := at.X + pickWords
	c.Rect(mm.BoxAt(x, at.Y+0.6, c.Width(f, p.Label)+3, tall-1.2), paper.Solid, paper.White)
	parts.EndLabel(c, x+1.5+c.Width(f, p.Label), at.Y+pickBar/2+paper.AfarTall/2, paper.AfarTall, p.Label)
}
