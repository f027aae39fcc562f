package layouts

import (
	"fmt"
	"strings"
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
func drawingRoom(c *canvas, v Plan, sheet box) box {
	above := aboveHeight(c, v, sheet.w)
	return box{sheet.x, sheet.y + above, sheet.w, sheet.h - above - planWaysTall - planKeyTall}
}

// drawView draws a sheet's drawing and its words.
func drawView(c *canvas, w planView) {
	above := box{w.sheet.x, w.sheet.y, w.sheet.w, w.room.y - w.sheet.y}
	c.in("plan words", above, func() { planWords(c, above, w) })
	c.in("plan", w.room, func() { drawPlanOf(c, w) })
	ways := box{w.sheet.x, w.room.bottom(), w.sheet.w, planWaysTall}
	c.in("plan ways", ways, func() { planWays(c, ways) })
	key := box{w.sheet.x, ways.bottom(), w.sheet.w, planKeyTall}
	c.in("plan key", key, func() { planKey(c, key, w) })
}

// planWords writes the scale, the datum and how to read the sheet.
func planWords(c *canvas, b box, w planView) {
	scale := "Plan, " + scaleWords(w.frame)
	c.text(b.x, b.y+4.5, textB, scale)
	planBar(c, w, b.x+c.width(textB, scale)+10, b.y+3.2)
	y := b.y + planScaleTall + text.lead()*0.8
	drawDatum(c, spot{b.x + 3.2, y - 1.2})
	y = c.lines(b.x+8, y, text, datumLines(c, w.plan, b.w)) + 0.4
	y = c.paragraph(b.x, y, b.w, small, planRead)
	c.paragraph(b.x, y, b.w, smallB, w.whose())
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
			c.disc(t.to.x, t.to.y, t.to.r, leaderPen, none)
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
func offsets(c *canvas, p, datum spot) {
	dotted(c, func() {
		c.line(datum.x, p.y, p.x, p.y, light)
		c.line(p.x, datum.y, p.x, p.y, light)
	})
}

func dotted(c *canvas, draw func()) { c.dashed(0.3, 1.2, draw) }

// stackPlan draws a stack from above: its outline, its front heavy, and
// crossed out if it is held.
func stackPlan(c *canvas, w planView, i int) {
	s, at := w.plan.Stacks[i], w.corners(i)
	c.shape("stack plan", at, light, grey)
	if s.Held {
		c.line(at[0].x, at[0].y, at[2].x, at[2].y, light)
		c.line(at[1].x, at[1].y, at[3].x, at[3].y, light)
	}
	a, b := w.frame.at(onPlan(s.Front[0])), w.frame.at(onPlan(s.Front[1]))
	c.line(a.x, a.y, b.x, b.y, heavy)
}

// drawPoint draws the mark of a point whose figures stand on the sheet.
func drawPoint(c *canvas, p spot, of PlanPoint) {
	const r = markRadius
	c.record("point", p.x-r, p.y-r, p.x+r, p.y+r)
	pointInk(c, p, of)
}

// pointInk draws a disc; a square if the point is not a stack's; a ring with a
// cross if it is held.
func pointInk(c *canvas, p spot, of PlanPoint) {
	const r = markRadius
	switch {
	case of.Other:
		c.rect(box{p.x - r*0.9, p.y - r*0.9, r * 1.8, r * 1.8}, solid, white)
	case of.Held:
		c.disc(p.x, p.y, r, solid, white)
	default:
		c.disc(p.x, p.y, r, 0, black)
	}
	if of.Held {
		c.line(p.x-r*0.6, p.y-r*0.6, p.x+r*0.6, p.y+r*0.6, light)
		c.line(p.x-r*0.6, p.y+r*0.6, p.x+r*0.6, p.y-r*0.6, light)
	}
}

// palePoint draws a point whose figures stand on another sheet.
func palePoint(c *canvas, p spot, of PlanPoint) {
	const r = paleRadius
	if of.Other {
		c.rect(box{p.x - r, p.y - r, 2 * r, 2 * r}, light, white)
		return
	}
	c.disc(p.x, p.y, r, light, grey)
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
	f, x, y := w.faces, t.at.x+tagPad+0.4, t.at.y
	for n, i := range t.points {
		p := w.plan.Points[i]
		if n > 0 {
			c.line(t.at.x, y, t.at.right(), y, light)
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
	c.rect(box{x - 0.8, base - f.em()*0.8, c.width(f, "HELD") + 1.6, f.em()}, 0, black)
	c.inverse(func() { c.text(x, base, f, "HELD") })
}
