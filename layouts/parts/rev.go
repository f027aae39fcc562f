package parts

import (
	"slices"
	"strings"
	"unicode/utf8"

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

// RevWidth is the room that REV and mark of a sheet take side by side, REV so tall: the
// same for all revisions of as many characters, and for all marks.
func RevWidth(c *paper.Canvas, tall float64) float64 {
	return WordWidth(c, tall) + besideRev + MarkWidth(c, tall)
}

// WordWidth is the room of REV alone.
func WordWidth(c *paper.Canvas, tall float64) float64 {
	return c.Width(paper.Capitals(tall), "REV "+strings.Repeat("W", utf8.RuneCountInString(c.Revision)))
}

// MarkWidth is the room of a mark beside a REV so tall.
func MarkWidth(c *paper.Canvas, tall float64) float64 {
	return c.Width(paper.Capitals(tall/2), paper.WidestMark)
}

// DrawRev draws REV and the sheet's mark with their right end at x, and under them in one
// line which sheets to throw away.
func DrawRev(c *paper.Canvas, x, y float64) {
	drawRev(c, x, y, RevTall)
	c.Apart(func() { c.Right(x, y+underRev, paper.Small, strings.Join(throwAway(c), " ")) })
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
	c.Apart(func() {
		for i, line := range throwAway(c) {
			c.Right(x, y+4+float64(i)*3.6, paper.Small, line)
		}
	})
}

// throwAwayWidth is the room of that line on the widest sheet of a stack.
func throwAwayWidth(c *paper.Canvas, id string) float64 {
	return c.Width(paper.Small, "throw away any "+id+" CALCULATION without mark "+paper.WidestMark+", unless the newest COVER has another")
}

// DrawRevOver draws REV with its right end at x, and below it, so far left of that end
// and in what is left of a column so wide, the sheet's mark and which sheets to throw
// away.
func DrawRevOver(c *paper.Canvas, x, y, column, left float64) {
	c.Apart(func() {
		c.Right(x, y, paper.Capitals(RevTall), "REV "+c.Revision)
		x, y = x-left, y+RevTall/2+2.4
		c.Right(x, y, paper.Capitals(RevTall/2), c.SheetMark())
		for _, line := range c.Wrap(paper.Small, column-left, strings.Join(throwAway(c), " ")) {
			y += paper.Small.Lead()
			c.Right(x, y+0.4, paper.Small, line)
		}
	})
}

// throwAway says which sheets of the same name are old ones, in two lines. An old sheet
// says so of the new one, so both leave it to the cover, which lists all sheets but itself
// and that of changes.
func throwAway(c *paper.Canvas) []string {
	words := "throw away any " + c.Sheet() + " without mark " + c.SheetMark()
	if slices.Contains([]string{"COVER", "CHANGES"}, c.Sheet()) {
		return []string{words}
	}
	return []string{words + ",", "unless the newest COVER has another"}
}
