package layouts

import "fmt"

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
func (c *canvas) body() box {
	x := margin + spineWidth + gutter
	return box{x, margin, c.w - margin - x, c.h - 2*margin - footHeight}
}

// drawSpine draws the strip along the left edge: the sheet's name at its foot, the
// job in the middle, venue, date, revision and page above. No text stands
// where a binder's punch bites.
func drawSpine(c *canvas, s Spine, pg page, total int) {
	strip := box{margin, margin, spineWidth, c.h - 2*margin}
	mid := c.h / 2
	low, high := mid+punch+punchSide/2, mid-punch-punchSide/2
	c.in("spine", strip, func() {
		c.line(strip.right(), strip.y, strip.right(), strip.bottom(), 0.6)
		SideMark(c, pg.shape, box{strip.x + 1, strip.y, 9, 9})
		c.upwards(strip.x+8.5, strip.bottom(), spineFace(c, strip.bottom()-low, pg.name), pg.name)
		columnUpwards(c, strip.x, mid+punch-punchSide/2, 2*punch-punchSide, smallB, s.Title)
		which := fmt.Sprintf("%s · REV %s · %s · page %d of %d", s.Date, s.Revision, s.Fingerprint, c.page, total)
		room := high - strip.y - 11
		lines, venue := c.wrap(smallB, room, which), c.wrap(smallB, room, s.Venue)
		if len(lines)+len(venue) > spineLines {
			lines = nil
			c.upwards(strip.x+spineRise, strip.bottom(), small, which)
		}
		upwardsLines(c, strip.x, high, smallB, append(lines, venue...))
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
	room := box{b.x, b.bottom(), b.w, footHeight}
	c.in("foot", room, func() {
		c.line(room.x, room.y+1.6, room.right(), room.y+1.6, light)
		c.text(room.x, room.y+5.4, smallB, "If what you see does not match this sheet: stop, leave it on the dolly, ask the rigger in charge.")
		c.text(room.x, room.y+9.2, small, "Makers' instructions, local rules and the venue's competent person come first. Plan for approval: it approves nothing.")
	})
}

// SideMark draws the mark that tells twins apart by shape.
func SideMark(c *canvas, shape string, b box) {
	mx, my := b.x+b.w/2, b.y+b.h/2
	switch shape {
	case "square":
		c.rect(box{b.x + b.w*0.06, b.y + b.h*0.06, b.w * 0.88, b.h * 0.88}, 0, black)
	case "circle":
		c.disc(mx, my, b.w/2, 0, black)
	case "triangle":
		c.shape("mark", []spot{{mx, b.y}, {b.right(), b.bottom()}, {b.x, b.bottom()}}, 0, black)
	case "diamond":
		c.shape("mark", []spot{{mx, b.y}, {b.right(), my}, {mx, b.bottom()}, {b.x, my}}, 0, black)
	}
}
