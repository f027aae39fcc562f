package layouts

import (
	"fmt"
	"strings"

	"hangpack/layouts/drawings"
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/tagging"
)

// Heights of the words around a drawing, in mm.
const (
	planScaleTall = 8.0
	planWaysTall  = 11.0
	planKeyTall   = 9.0
)

// leaderPen sets leaders off from the lines that they cross.
const leaderPen = 0.3

const planRead = "Read each tag from the top: first across from the datum, then up- or downstage of it. Measure by the figures, never off the drawing."

// datumLines are the words that say what the datum is.
func datumLines(c *paper.Canvas, v Plan, w float64) []string {
	return c.Wrap(paper.Text, w-8, "Datum, 0,0: "+strings.TrimRight(v.Datum, ".")+".")
}

// aboveHeight measures the words above a drawing.
func aboveHeight(c *paper.Canvas, v Plan, w float64) float64 {
	lines := len(c.Wrap(paper.Small, w, planRead)) + whoseMost(c, v, w)
	return planScaleTall + float64(len(datumLines(c, v, w)))*paper.Text.Lead() + float64(lines)*paper.Small.Lead() + 3
}

// drawingRoom is what the words leave of a sheet for the drawing.
func drawingRoom(c *paper.Canvas, v Plan, sheet mm.Box) mm.Box {
	above := aboveHeight(c, v, sheet.W)
	return mm.BoxAt(sheet.X, sheet.Y+above, sheet.W, sheet.H-above-planWaysTall-planKeyTall)
}

// drawView draws a sheet's drawing and its words.
func drawView(c *paper.Canvas, w planView) {
	above := mm.BoxAt(w.sheet.X, w.sheet.Y, w.sheet.W, w.room.Y-w.sheet.Y)
	c.In("plan words", above, func() { planWords(c, above, w) })
	c.In("plan", w.room, func() { drawPlanOf(c, w) })
	ways := mm.BoxAt(w.sheet.X, w.room.Bottom(), w.sheet.W, planWaysTall)
	c.In("plan ways", ways, func() { planWays(c, ways) })
	key := mm.BoxAt(w.sheet.X, ways.Bottom(), w.sheet.W, planKeyTall)
	c.In("plan key", key, func() { planKey(c, key, w) })
}

// planWords writes the scale, the datum and how to read the sheet.
func planWords(c *paper.Canvas, b mm.Box, w planView) {
	scale := "Plan, " + drawings.ScaleWords(w.frame)
	c.Text(b.X, b.Y+4.5, paper.TextBold, scale)
	planBar(c, w, b.X+c.Width(paper.TextBold, scale)+10, b.Y+3.2)
	y := b.Y + planScaleTall + paper.Text.Lead()*0.8
	drawDatum(c, mm.At(b.X+3.2, y-1.2))
	y = c.Lines(b.X+8, y, paper.Text, datumLines(c, w.plan, b.W)) + 0.4
	y = c.Paragraph(b.X, y, b.W, paper.Small, planRead)
	c.Paragraph(b.X, y, b.W, paper.SmallBold, w.whose())
}

// whose says which points have their figures on a sheet.
func (w planView) whose() string {
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
func whoseMost(c *paper.Canvas, v Plan, w float64) int {
	widest := ""
	for _, p := range v.Points {
		if c.Width(paper.SmallBold, p.ID) > c.Width(paper.SmallBold, widest) {
			widest = p.ID
		}
	}
	n := len(v.Points)
	return len(c.Wrap(paper.SmallBold, w, someWords(n, n, n, widest+" to "+widest))) + 1
}

// drawPlanOf draws what is seen from above, then leaders, marks and tags.
func drawPlanOf(c *paper.Canvas, w planView) {
	drawAxes(c, w)
	for _, i := range w.stacks {
		stackPlan(c, w, i)
	}
	own := map[int]bool{}
	for _, i := range w.own {
		own[i] = true
	}
	for _, i := range w.pale {
		if !own[i] {
			palePoint(c, w.spot(i), w.plan.Points[i])
		}
	}
	for _, i := range w.own {
		offsets(c, w.spot(i), w.axes.datum)
	}
	axisWords(c, w.axes)
	for _, t := range w.tags {
		if len(t.Points) > 1 {
			c.Disc(t.To.X, t.To.Y, t.To.R, leaderPen, paper.None)
		}
		c.Leader(t.Leader, leaderPen)
	}
	for _, i := range w.own {
		drawPoint(c, w.spot(i), w.plan.Points[i])
	}
	for _, t := range w.tags {
		drawTag(c, w, t)
	}
}

// offsets draws the two lengths that a tag's figures are of, dotted: from the
// datum across to a point, and from the datum up or down to it.
func offsets(c *paper.Canvas, p, datum mm.Spot) {
	dotted(c, func() {
		c.Line(datum.X, p.Y, p.X, p.Y, paper.Light)
		c.Line(p.X, datum.Y, p.X, p.Y, paper.Light)
	})
}

func dotted(c *paper.Canvas, draw func()) { c.Dashed(0.3, 1.2, draw) }

// stackPlan draws a stack from above: its outline, its front heavy, and
// crossed out if it is held.
func stackPlan(c *paper.Canvas, w planView, i int) {
	s, at := w.plan.Stacks[i], w.corners(i)
	c.Shape("stack plan", at, paper.Light, paper.Grey)
	if s.Held {
		c.Line(at[0].X, at[0].Y, at[2].X, at[2].Y, paper.Light)
		c.Line(at[1].X, at[1].Y, at[3].X, at[3].Y, paper.Light)
	}
	a, b := w.frame.At(onPlan(s.Front[0])), w.frame.At(onPlan(s.Front[1]))
	c.Line(a.X, a.Y, b.X, b.Y, paper.Heavy)
}

// drawPoint draws the mark of a point whose figures stand on the sheet.
func drawPoint(c *paper.Canvas, p mm.Spot, of PlanPoint) {
	const r = markRadius
	c.Record("point", p.X-r, p.Y-r, p.X+r, p.Y+r)
	pointInk(c, p, of)
}

// pointInk draws a disc; a square if the point is not a stack's; a ring with a
// cross if it is held.
func pointInk(c *paper.Canvas, p mm.Spot, of PlanPoint) {
	const r = markRadius
	switch {
	case of.Other:
		c.Rect(mm.BoxAt(p.X-r*0.9, p.Y-r*0.9, r*1.8, r*1.8), paper.Solid, paper.White)
	case of.Held:
		c.Disc(p.X, p.Y, r, paper.Solid, paper.White)
	default:
		c.Disc(p.X, p.Y, r, 0, paper.Black)
	}
	if of.Held {
		c.Line(p.X-r*0.6, p.Y-r*0.6, p.X+r*0.6, p.Y+r*0.6, paper.Light)
		c.Line(p.X-r*0.6, p.Y+r*0.6, p.X+r*0.6, p.Y-r*0.6, paper.Light)
	}
}

// palePoint draws a point whose figures stand on another sheet.
func palePoint(c *paper.Canvas, p mm.Spot, of PlanPoint) {
	const r = paleRadius
	if of.Other {
		c.Rect(mm.BoxAt(p.X-r, p.Y-r, 2*r, 2*r), paper.Light, paper.White)
		return
	}
	c.Disc(p.X, p.Y, r, paper.Light, paper.Grey)
}

// drawTag writes the figures of its points in their frame.
func drawTag(c *paper.Canvas, w planView, t tagging.Tag) {
	pen := paper.Light
	for _, i := range t.Points {
		if w.plan.Points[i].Held {
			pen = paper.Solid
		}
	}
	c.Round(t.At, 0.8, pen, paper.White)
	f, x, y := w.faces, t.At.X+tagPad+0.4, t.At.Y
	for n, i := range t.Points {
		p := w.plan.Points[i]
		if n > 0 {
			c.Line(t.At.X, y, t.At.Right(), y, paper.Light)
		}
		base := y + tagPad + f.name.Lead()*0.72
		c.Text(x, base, f.name, p.ID)
		if p.Held {
			heldWord(c, x+c.Width(f.name, p.ID)+2, base, f.name)
		}
		c.Lines(x, y+tagPad+f.name.Lead()+f.figures.Lead()*0.72, f.figures, []string{p.Across, p.UpDown})
		y += f.entry()
	}
}

// heldWord writes HELD white on black.
func heldWord(c *paper.Canvas, x, base float64, f paper.Face) {
	c.Rect(mm.BoxAt(x-0.8, base-f.Em()*0.8, c.Width(f, "HELD")+1.6, f.Em()), 0, paper.Black)
	c.Inverse(func() { c.Text(x, base, f, "HELD") })
}
