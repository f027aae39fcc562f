package layouts

import (
	"fmt"

	"hangpack/layouts/mm"
)

// The frame of every page, in mm: margin, spine, gutter, foot.
const (
	margin     = 10.0
	spineWidth = 12.0
	gutter     = 6.0
	footHeight = 10.0
	punch      = 40.0 // a binder's holes, above and below the middle
	punchSide  = 12.0
)

// body is the room that the sheets have, beside the spine and above the foot.
func (c *canvas) body() mm.Box {
	x := margin + spineWidth + gutter
	return mm.BoxAt(x, margin, c.w-margin-x, c.h-2*margin-footHeight)
}

// drawSpine draws the strip along the left edge: the sheet's name at its foot, the
// job in the middle, venue, date, revision and page above. No text stands
// where a binder's punch bites.
func drawSpine(c *canvas, s Spine, pg page, total int) {
	strip := mm.BoxAt(margin, margin, spineWidth, c.h-2*margin)
	mid := c.h / 2
	low, high := mid+punch+punchSide/2, mid-punch-punchSide/2
	c.in("spine", strip, func() {
		c.line(strip.Right(), strip.Y, strip.Right(), strip.Bottom(), 0.6)
		SideMark(c, pg.shape, mm.BoxAt(strip.X+1, strip.Y, 9, 9))
		c.upwards(strip.X+8.5, strip.Bottom(), spineFace(c, strip.Bottom()-low, pg.name), pg.name)
		columnUpwards(c, strip.X, mid+punch-punchSide/2, 2*punch-punchSide, smallB, s.Title)
		which := fmt.Sprintf("%s · REV %s · %s · page %d of %d", s.Date, s.Revision, s.Fingerprint, c.page, total)
		room := high - strip.Y - 11
		lines, venue := c.wrap(smallB, room, which), c.wrap(smallB, room, s.Venue)
		if len(lines)+len(venue) > spineLines {
			lines = nil
			c.upwards(strip.X+spineRise, strip.Bottom(), small, which)
		}
		upwardsLines(c, strip.X, high, smallB, append(lines, venue...))
	})
}

// The spine holds three lines of the smallest type. Where the widest venue and
// revision take more, the revision stands above the name of its sheet.
const (
	spineLines = 3
	spineRise  = 2.3 // mm, from the edge of a line to its baseline
)

// spineFace is the largest of three title sizes at which a sheet's name fits
// the spine. The widest name that a job can give fits the smallest.
func spineFace(c *canvas, room float64, name string) face {
	f := face{true, 20}
	for _, pt := range []float64{20, 16, 12} {
		f.pt = pt
		if c.width(f, name) <= room {
			break
		}
	}
	return f
}

// columnUpwards writes a text upwards from y, in as many lines as it needs.
func columnUpwards(c *canvas, x, y, room float64, f face, s string) {
	upwardsLines(c, x, y, f, c.wrap(f, room, s))
}

// upwardsLines sets lines turned to the left, spread over the spine's width.
func upwardsLines(c *canvas, x, y float64, f face, lines []string) {
	lead := min(f.lead(), spineWidth/float64(len(lines)))
	first := x + (spineWidth-lead*float64(len(lines)-1)-f.em()*0.96)/2 + f.em()*0.75
	for i, s := range lines {
		c.upwards(first+lead*float64(i), y, f, s)
	}
}

// drawFoot writes what stands at the foot of every sheet.
func drawFoot(c *canvas) {
	b := c.body()
	room := mm.BoxAt(b.X, b.Bottom(), b.W, footHeight)
	c.in("foot", room, func() {
		c.line(room.X, room.Y+1.6, room.Right(), room.Y+1.6, light)
		c.text(room.X, room.Y+5.4, smallB, "If what you see does not match this sheet: stop, leave it on the dolly, ask the rigger in charge.")
		c.text(room.X, room.Y+9.2, small, "Makers' instructions, local rules and the venue's competent person come first. Plan for approval: it approves nothing.")
	})
}

// SideMark draws the mark that tells twins apart by shape.
func SideMark(c *canvas, shape string, b mm.Box) {
	mx, my := b.X+b.W/2, b.Y+b.H/2
	switch shape {
	case "square":
		c.rect(mm.BoxAt(b.X+b.W*0.06, b.Y+b.H*0.06, b.W*0.88, b.H*0.88), 0, black)
	case "circle":
		c.disc(mx, my, b.W/2, 0, black)
	case "triangle":
		c.shape("mark", []mm.Spot{mm.At(mx, b.Y), mm.At(b.Right(), b.Bottom()), mm.At(b.X, b.Bottom())}, 0, black)
	case "diamond":
		c.shape("mark", []mm.Spot{mm.At(mx, b.Y), mm.At(b.Right(), my), mm.At(mx, b.Bottom()), mm.At(b.X, my)}, 0, black)
	}
}
