package parts

import (
	"strings"

	"hangpack/layouts/paper"
)

// RevTall is how tall REV stands on the sheets of a stack, in mm. The sheet's mark
// stands beside it, half as tall.
const (
	RevTall   = 12.0
	headTall  = 6.0 // of REV on sheets of the whole job
	besideRev = 4.0 // between REV and mark
	underRev  = 4.4 // from their baseline to that of the words under them
)

// RevWidth is the room that REV and mark of a sheet of a stack take side by side: the same
// for all revisions of as many characters, and for all marks.
func RevWidth(c *paper.Canvas) float64 {
	return WordWidth(c) + besideRev + c.Width(paper.Capitals(RevTall/2), paper.WidestMark)
}

// WordWidth is the room of REV alone.
func WordWidth(c *paper.Canvas) float64 {
	return c.Width(paper.Capitals(RevTall), "REV "+c.WidestRevision())
}

// DrawRev draws REV and the sheet's mark with their right end at x, and under them, in so
// many lines, which sheets to throw away.
func DrawRev(c *paper.Canvas, x, y float64, lines int) {
	drawRev(c, x, y, RevTall)
	words := throwAway(c)
	if lines == 1 {
		words = []string{strings.Join(words, " ")}
	}
	c.Apart(func() { rightLines(c, x, y+underRev, words) })
}

// rightLines writes lines with their right ends at x.
func rightLines(c *paper.Canvas, x, y float64, lines []string) {
	for _, line := range lines {
		c.Right(x, y, paper.Small, line)
		y += paper.Small.Lead() - 0.2
	}
}

// drawRev draws REV, so tall, and the sheet's mark beside it.
func drawRev(c *paper.Canvas, x, y, tall float64) {
	c.Apart(func() {
		mark := paper.Capitals(tall / 2)
		c.Right(x, y, mark, c.SheetMark())
		c.Right(x-c.Width(mark, c.SheetMark())-besideRev, y, paper.Capitals(tall), "REV "+c.Revision)
	})
}

// drawSmallRev does the same for a sheet of the whole job, in two lines.
func drawSmallRev(c *paper.Canvas, x, y float64) {
	drawRev(c, x, y, headTall)
	c.Apart(func() { rightLines(c, x, y+4.1, throwAway(c)) })
}

// throwAwayLines is in how many lines those words stand in so much room.
func throwAwayLines(c *paper.Canvas, room float64) int {
	if c.Width(paper.Small, strings.Join(throwAwayWords(c.Sheet(), paper.WidestMark), " ")) > room {
		return 2
	}
	return 1
}

// DrawRevOver draws REV with its right end at x, and below it, so far left of that end,
// the sheet's mark.
func DrawRevOver(c *paper.Canvas, x, y, left float64) {
	c.Apart(func() {
		c.Right(x, y, paper.Capitals(RevTall), "REV "+c.Revision)
		c.Right(x-left, y+RevTall/2+2.4, paper.Capitals(RevTall/2), c.SheetMark())
	})
}

// DrawRevAlone draws REV and the sheet's mark side by side, without a word under them.
func DrawRevAlone(c *paper.Canvas, x, y float64) { drawRev(c, x, y, RevTall) }

// DrawThrowAway writes in one line from x which sheets to throw away.
func DrawThrowAway(c *paper.Canvas, x, y float64) {
	c.Apart(func() { c.Text(x, y, paper.Small, strings.Join(throwAway(c), " ")) })
}

// throwAway says which sheets of the same name are old ones.
func throwAway(c *paper.Canvas) []string { return throwAwayWords(c.Sheet(), c.SheetMark()) }

// throwAwayWords are those words in two lines. An old sheet would throw away the new one
// as much as the other way round, so each asks the cover first, which lists all others.
func throwAwayWords(sheet, mark string) []string {
	words := "throw away any " + sheet + " without mark " + mark
	switch sheet {
	case "COVER":
		return []string{words + "; in doubt ask who prepared it"}
	case "CHANGES":
		return []string{words}
	}
	return []string{"Mark not on the newest COVER? Throw this away.", "Else " + words}
}
