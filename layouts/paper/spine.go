package paper

import (
	"fmt"

	"hangpack/layouts/mm"
)

// drawSpine draws the strip along the left edge: at its foot the sheet's name, with
// revision, mark and which of its pages this is, the job in the middle, venue and date
// above. No text stands where a binder's punch bites.
func drawSpine(c *Canvas, s Spine, shape, which string) {
	strip := mm.BoxAt(margin, margin, spineWidth, c.h-2*margin)
	mid := c.h / 2
	low, high := mid+punch+punchSide/2, mid-punch-punchSide/2
	c.In("spine", strip, func() {
		c.Line(strip.Right(), strip.Y, strip.Right(), strip.Bottom(), 0.6)
		SideMark(c, shape, mm.BoxAt(strip.X+1, strip.Y, 9, 9))
		c.upwards(strip.X+8.5, strip.Bottom(), spineFace(c, strip.Bottom()-low, c.sheet), c.sheet)
		c.Apart(func() {
			c.upwards(strip.X+spineRise, strip.Bottom(), Small, fmt.Sprintf("REV %s  %s · %s", c.Revision, c.mark, which))
		})
		columnUpwards(c, strip.X, mid+punch-punchSide/2, 2*punch-punchSide, SmallBold, s.Title)
		columnUpwards(c, strip.X, high, high-strip.Y-11, SmallBold, s.Venue+" · "+s.Date)
	})
}

// spineRise is from the edge of the spine to the baseline of the line beside a sheet's
// name, in mm.
const spineRise = 2.3

// spineFace is the largest of three title sizes at which a sheet's name fits
// the spine. The widest name that a job can give fits the smallest.
func spineFace(c *Canvas, room float64, name string) Face {
	f := Face{true, 20}
	for _, pt := range []float64{20, 16, 12} {
		f.Pt = pt
		if c.Width(f, name) <= room {
			break
		}
	}
	return f
}

// columnUpwards writes a text upwards from y, in as many lines as it needs.
func columnUpwards(c *Canvas, x, y, room float64, f Face, s string) {
	upwardsLines(c, x, y, f, c.Wrap(f, room, s))
}

// upwardsLines sets lines turned to the left, spread over the spine's width.
func upwardsLines(c *Canvas, x, y float64, f Face, lines []string) {
	lead := min(f.Lead(), spineWidth/float64(len(lines)))
	first := x + (spineWidth-lead*float64(len(lines)-1)-f.Em()*0.96)/2 + f.Em()*0.75
	for i, s := range lines {
		c.upwards(first+lead*float64(i), y, f, s)
	}
}

// drawFoot writes what stands at the foot of every sheet.
func drawFoot(c *Canvas) {
	b := c.Body()
	room := mm.BoxAt(b.X, b.Bottom(), b.W, footHeight)
	c.In("foot", room, func() {
		c.Line(room.X, room.Y+1.6, room.Right(), room.Y+1.6, Light)
		c.Text(room.X, room.Y+5.4, SmallBold, "If what you see does not match this sheet: stop, leave it on the dolly, ask the rigger in charge.")
		c.Text(room.X, room.Y+9.2, Small, "Makers' instructions, local rules and the venue's competent person come first. Plan for approval: it approves nothing.")
	})
}

// SideMark draws the mark that tells twins apart by shape.
func SideMark(c *Canvas, shape string, b mm.Box) {
	mx, my := b.X+b.W/2, b.Y+b.H/2
	switch shape {
	case "square":
		c.Rect(mm.BoxAt(b.X+b.W*0.06, b.Y+b.H*0.06, b.W*0.88, b.H*0.88), 0, Black)
	case "circle":
		c.Disc(mx, my, b.W/2, 0, Black)
	case "triangle":
		c.Shape("mark", []mm.Spot{mm.At(mx, b.Y), mm.At(b.Right(), b.Bottom()), mm.At(b.X, b.Bottom())}, 0, Black)
	case "diamond":
		c.Shape("mark", []mm.Spot{mm.At(mx, b.Y), mm.At(b.Right(), my), mm.At(mx, b.Bottom()), mm.At(b.X, my)}, 0, Black)
	}
}
