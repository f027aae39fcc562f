package layouts

// pickWidth is how wide a pick hole prints, with the words before it.
func (c *canvas) pickWidth(p PickHole) float64 {
	return pickWords + c.width(digits(dollyDigit), p.Label) + 9
}

// picksInLine reports whether all pick holes fit beside the widest tab of a
// sheet w wide; else each has a line to itself, above the tab.
func (c *canvas) picksInLine(d Dolly, w float64) bool {
	left := boxesWidth(w) - 12 - c.dollyTabs(d, dollyRow).width()
	for _, p := range d.Picks {
		left -= c.pickWidth(p)
	}
	return left > 0
}

// pickHole draws one pick hole, 12 mm tall, with its words before it.
func (c *canvas) pickHole(at spot, p PickHole) {
	words, f := c.wrap(textB, pickWords-1, p.Of), digits(dollyDigit)
	c.lines(at.x, at.y+pickBar/2+1.4-float64(len(words)-1)*textB.lead()/2, textB, words)
	x := at.x + pickWords
	c.rect(box{x, at.y + 0.6, c.width(f, p.Label) + 3, pickBar - 1.2}, solid, white)
	c.endLabel(x+1.5+c.width(f, p.Label), at.y+pickBar/2+dollyDigit/2, dollyDigit, p.Label)
}
