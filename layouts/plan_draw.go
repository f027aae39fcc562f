package layouts

import (
	"fmt"
	"strings"

	"hangpack/layouts/mm"
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
func datumLines(c *canvas, v Plan, w float64) []string {
	return c.wrap(text, w-8, "Datum, 0,0: "+strings.TrimRight(v.Datum, ".")+".")
}

// aboveHeight measures the words above a drawing.
func aboveHeight(c *canvas, v Plan, w float64) float64 {
	lines := len(c.wrap(small, w, planRead)) + whoseMost(c, v, w)
	return planScaleTall + float64(len(datumLines(c, v, w)))*text.lead() + float64(lines)*small.lead() + 3
}

// drawingRoom is what the words leave of a sheet for the drawing.
func drawingRoom(c *canvas, v Plan, sheet mm.Box) mm.Box {
	above := aboveHeight(c, v, sheet.W)
	return mm.BoxAt(sheet.X, sheet.Y+above, sheet.W, sheet.H-above-planWaysTall-planKeyTall)
}

// drawView draws a sheet's drawing and its words.
func drawView(c *canvas, w planView) {
	above := mm.BoxAt(w.sheet.X, w.sheet.Y, w.sheet.W, w.room.Y-w.sheet.Y)
	c.in("plan words", above, func() { planWords(c, above, w) })
	c.in("plan", w.room, func() { drawPlanOf(c, w) })
	ways := mm.BoxAt(w.sheet.X, w.room.Bottom(), w.sheet.W, planWaysTall)
	c.in("plan ways", ways, func() { planWays(c, ways) })
	key := mm.BoxAt(w.sheet.X, ways.Bottom(), w.sheet.W, planKeyTall)
	c.in("plan key", key, func() { planKey(c, key, w) })
}

// planWords writes the scale, the datum and how to read the sheet.
func planWords(c *canvas, b mm.Box, w planView) {
	scale := "Plan, " + scaleWords(w.frame)
	c.text(b.X, b.Y+4.5, textB, scale)
	planBar(c, w, b.X+c.width(textB, scale)+10, b.Y+3.2)
	y := b.Y + planScaleTall + text.lead()*0.8
	drawDatum(c, mm.At(b.X+3.2, y-1.2))
	y = c.lines(b.X+8, y, text, datumLines(c, w.plan, b.W)) + 0.4
	y = c.paragraph(b.X, y, b.W, small, planRead)
	c.paragraph(b.X, y, b.W, smallB, w.whose())
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
func whoseMost(c *canvas, v Plan, w float64) int {
	widest := ""
	for _, p := range v.Points {
		if c.width(smallB, p.ID) > c.width(smallB, widest) {
			widest = p.ID
		}
	}
	n := len(v.Points)
	return len(c.wrap(smallB, w, someWords(n, n, n, widest+" to "+widest))) + 1
}

// drawPlanOf draws what is seen from above, then leaders, marks and tags.
func drawPlanOf(c *canvas, w planView) {
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
		if len(t.points) > 1 {
			c.disc(t.to.X, t.to.Y, t.to.r, leaderPen, none)
		}
		c.leader(t.leader, leaderPen)
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
func offsets(c *canvas, p, datum mm.Spot) {
	dotted(c, func() {
		c.line(datum.X, p.Y, p.X, p.Y, light)
		c.line(p.X, datum.Y, p.X, p.Y, light)
	})
}

func dotted(c *canvas, draw func()) { c.dashed(0.3, 1.2, draw) }

// stackPlan draws a stack from above: its outline, its front heavy, and
// crossed out if it is held.
func stackPlan(c *canvas, w planView, i int) {
	s, at := w.plan.Stacks[i], w.corners(i)
	c.shape("stack plan", at, light, grey)
	if s.Held {
		c.line(at[0].X, at[0].Y, at[2].X, at[2].Y, light)
		c.line(at[1].X, at[1].Y, at[3].X, at[3].Y, light)
	}
	a, b := w.frame.at(onPlan(s.Front[0])), w.frame.at(onPlan(s.Front[1]))
	c.line(a.X, a.Y, b.X, b.Y, heavy)
}

// drawPoint draws the mark of a point whose figures stand on the sheet.
func drawPoint(c *canvas, p mm.Spot, of PlanPoint) {
	const r = markRadius
	c.record("point", p.X-r, p.Y-r, p.X+r, p.Y+r)
	pointInk(c, p, of)
}

// pointInk draws a disc; a square if the point is not a stack's; a ring with a
// cross if it is held.
func pointInk(c *canvas, p mm.Spot, of PlanPoint) {
	const r = markRadius
	switch {
	case of.Other:
		c.rect(mm.BoxAt(p.X-r*0.9, p.Y-r*0.9, r*1.8, r*1.8), solid, white)
	case of.Held:
		c.disc(p.X, p.Y, r, solid, white)
	default:
		c.disc(p.X, p.Y, r, 0, black)
	}
	if of.Held {
		c.line(p.X-r*0.6, p.Y-r*0.6, p.X+r*0.6, p.Y+r*0.6, light)
		c.line(p.X-r*0.6, p.Y+r*0.6, p.X+r*0.6, p.Y-r*0.6, light)
	}
}

// palePoint draws a point whose figures stand on another sheet.
func palePoint(c *canvas, p mm.Spot, of PlanPoint) {
	const r = paleRadius
	if of.Other {
		c.rect(mm.BoxAt(p.X-r, p.Y-r, 2*r, 2*r), light, white)
		return
	}
	c.disc(p.X, p.Y, r, light, grey)
}

// drawTag writes the figures of its points in their frame.
func drawTag(c *canvas, w planView, t tag) {
	pen := light
	for _, i := range t.points {
		if w.plan.Points[i].Held {
			pen = solid
		}
	}
	c.round(t.at, 0.8, pen, white)
	f, x, y := w.faces, t.at.X+tagPad+0.4, t.at.Y
	for n, i := range t.points {
		p := w.plan.Points[i]
		if n > 0 {
			c.line(t.at.X, y, t.at.Right(), y, light)
		}
		base := y + tagPad + f.name.lead()*0.72
		c.text(x, base, f.name, p.ID)
		if p.Held {
			heldWord(c, x+c.width(f.name, p.ID)+2, base, f.name)
		}
		c.lines(x, y+tagPad+f.name.lead()+f.figures.lead()*0.72, f.figures, []string{p.Across, p.UpDown})
		y += f.entry()
	}
}

// heldWord writes HELD white on black.
func heldWord(c *canvas, x, base float64, f face) {
	c.rect(mm.BoxAt(x-0.8, base-f.em()*0.8, c.width(f, "HELD")+1.6, f.em()), 0, black)
	c.inverse(func() { c.text(x, base, f, "HELD") })
}
