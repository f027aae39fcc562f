package layouts

import (
	"fmt"
	"math"

	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
)

// A Place is a place in a drawing of the real thing, in metres: X to the right
// of the page, Z up.
type Place struct{ X, Z float64 }

// Scales of drawings, largest first.
var (
	metricScales   = []int{5, 10, 20, 25, 50, 100, 200}
	imperialScales = []int{6, 12, 24, 48, 96, 192}
)

// A Ruler is how a drawing tells its scale: the scales it may take, and the
// lengths its scale bar may have, longest first.
type Ruler struct {
	Imperial bool
}

func (r Ruler) scales() []int {
	if r.Imperial {
		return imperialScales
	}
	return metricScales
}

// a bar of the scale: its length in metres and its words.
type barLength struct {
	m    float64
	says string
}

const footM = 0.3048

// scaleMost is where a drawing gives up looking for a smaller scale: its ink
// then leaves its block, and the pack fails.
const scaleMost = 100_000

func (r Ruler) bars() []barLength {
	if r.Imperial {
		return []barLength{{20 * footM, "20 ft"}, {10 * footM, "10 ft"}, {5 * footM, "5 ft"}, {2 * footM, "2 ft"}, {footM, "1 ft"}, {footM / 2, "6 in"}}
	}
	return []barLength{{10, "10 m"}, {5, "5 m"}, {2, "2 m"}, {1, "1 m"}, {0.5, "0.5 m"}, {0.2, "0.2 m"}, {0.1, "0.1 m"}}
}

// A frame is a drawing's room and the real room it shows.
type frame struct {
	scale  int
	lo     Place   // bottom left corner of what is shown
	origin mm.Spot // where lo stands on paper
}

// at returns where a place of the drawing stands on paper.
func (f frame) at(p Place) mm.Spot {
	k := 1000 / float64(f.scale)
	return mm.At(f.origin.X+(p.X-f.lo.X)*k, f.origin.Y-(p.Z-f.lo.Z)*k)
}

// frameFor returns the largest scale at which places from lo to hi fit into a
// room, and stands them in its middle from its top. If none of the usual
// scales is small enough it goes on doubling the last.
func frameFor(r Ruler, lo, hi Place, room mm.Box) frame {
	w, h := (hi.X-lo.X)*1000, (hi.Z-lo.Z)*1000
	scales := r.scales()
	scale := scales[len(scales)-1]
	for _, s := range scales {
		if w/float64(s) <= room.W && h/float64(s) <= room.H {
			scale = s
			break
		}
	}
	for scale < scaleMost && (w/float64(scale) > room.W || h/float64(scale) > room.H) {
		scale *= 2
	}
	k := float64(scale)
	return frame{scale, lo, mm.At(room.X+(room.W-w/k)/2, room.Y+h/k)}
}

// extent returns the corners of the least upright rectangle around places.
func extent(places ...Place) (lo, hi Place) {
	lo, hi = Place{math.Inf(1), math.Inf(1)}, Place{math.Inf(-1), math.Inf(-1)}
	for _, p := range places {
		lo = Place{min(lo.X, p.X), min(lo.Z, p.Z)}
		hi = Place{max(hi.X, p.X), max(hi.Z, p.Z)}
	}
	return lo, hi
}

// ScaleBar draws a bar that stays true when a copier shrinks the page: the
// longest that takes at most w.
func ScaleBar(c *paper.Canvas, r Ruler, f frame, x, y, w float64) {
	bars := r.bars()
	bar := bars[len(bars)-1]
	for _, b := range bars {
		if b.m*1000/float64(f.scale) <= w {
			bar = b
			break
		}
	}
	l := bar.m * 1000 / float64(f.scale)
	c.Line(x, y, x+l, y, paper.Solid)
	for _, at := range []float64{0, 0.5, 1} {
		c.Line(x+at*l, y-1.2, x+at*l, y+1.2, paper.Solid)
	}
	c.Text(x+l+1.5, y+1, paper.Small, bar.says)
}

// scaleWords writes a scale.
func scaleWords(f frame) string { return fmt.Sprintf("1:%d", f.scale) }
