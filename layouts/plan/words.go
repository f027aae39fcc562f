package plan

import (
	"fmt"
	"strings"

	"hangpack/layouts/drawings"
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
)

// Heights of the words around a drawing, in mm.
const (
	scaleTall = 8.0
	waysTall  = 11.0
	keyTall   = 9.0
)

const howToRead = "Read each tag from the top: first across from the datum, then up- or downstage of it. Measure by the figures, never off the drawing."

// datumLines are the words that say what the datum is.
func datumLines(c *paper.Canvas, v Sheet, w float64) []string {
	return c.Wrap(paper.Text, w-8, "Datum, 0,0: "+strings.TrimRight(v.Datum, ".")+".")
}

// aboveHeight measures the words above a drawing.
func aboveHeight(c *paper.Canvas, v Sheet, w float64) float64 {
	lines := len(c.Wrap(paper.Small, w, howToRead)) + whoseMost(c, v, w)
	return scaleTall + float64(len(datumLines(c, v, w)))*paper.Text.Lead() + float64(lines)*paper.Small.Lead() + 3
}

// drawingRoom is what the words leave of a sheet for the drawing.
func drawingRoom(c *paper.Canvas, v Sheet, sheet mm.Box) mm.Box {
	above := aboveHeight(c, v, sheet.W)
	return mm.BoxAt(sheet.X, sheet.Y+above, sheet.W, sheet.H-above-waysTall-keyTall)
}

// drawWords writes the scale, the datum and how to read the sheet.
func drawWords(c *paper.Canvas, b mm.Box, w drawing) {
	scale := "Plan, " + drawings.ScaleWords(w.frame)
	c.Text(b.X, b.Y+4.5, paper.TextBold, scale)
	drawBar(c, w, b.X+c.Width(paper.TextBold, scale)+10, b.Y+3.2)
	y := b.Y + scaleTall + paper.Text.Lead()*0.8
	drawDatum(c, mm.At(b.X+3.2, y-1.2))
	y = c.Lines(b.X+8, y, paper.Text, datumLines(c, w.plan, b.W)) + 0.4
	y = c.Paragraph(b.X, y, b.W, paper.Small, howToRead)
	c.Paragraph(b.X, y, b.W, paper.SmallBold, w.whose())
}

// whose says which points have their figures on a sheet.
func (w drawing) whose() string {
	all := len(w.plan.Points)
	if len(w.own) == all {
		return fmt.Sprintf("All figures are on this sheet: %s.", pointsWords(all))
	}
	span := ""
	if first, last := w.own[0], w.own[len(w.own)-1]; last-first+1 == len(w.own) && last > first {
		span = w.plan.Points[first].ID + " to " + w.plan.Points[last].ID
	}
	return someWords(len(w.own), all, w.outside, span)
}

// someWords says that a sheet has the figures of only some points.
func someWords(own, all, outside int, span string) string {
	says := fmt.Sprintf("Figures on this sheet: %d of %s", own, pointsWords(all))
	if span != "" {
		says += ", " + span + " in the job's order"
	}
	says += "; the others have theirs on other PLAN sheets."
	if outside > 0 {
		says += fmt.Sprintf(" Outside this drawing: %s.", pointsWords(outside))
	}
	return says
}

// whoseMost returns how many lines such words may take on any sheet of a plan.
func whoseMost(c *paper.Canvas, v Sheet, w float64) int {
	widest := ""
	for _, p := range v.Points {
		if c.Width(paper.SmallBold, p.ID) > c.Width(paper.SmallBold, widest) {
			widest = p.ID
		}
	}
	n := len(v.Points)
	return len(c.Wrap(paper.SmallBold, w, someWords(n, n, n, widest+" to "+widest))) + 1
}

// pointsWords counts points.
func pointsWords(n int) string {
	if n == 1 {
		return "1 point"
	}
	return fmt.Sprintf("%d points", n)
}
