package drawings

import (
	"math"

	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/tagging"
)

// A Strip is the bar from the side with its row of pick holes, the audience to
// the right, to scale; over the holes stand the aims they give, as on a ruler.
type Strip struct {
	Ruler Ruler
	Holes []BarHole
	Used  []int  // the pick holes to use, front first
	Lead  string // what the aims are of; "" where there are none
}

// A BarHole is one pick hole: X is positive towards the audience.
type BarHole struct {
	At    Place
	Label string
	Aim   string // "" where there are none
}

// Measures of a strip, in mm.
const (
	stripLabel = 17.0 // room for an aim
	stripAims  = 8.0  // height of the aims
	stripRest  = 23.0 // height of all else
)

// Height measures a strip: with one pick it has aims over its holes.
func (s Strip) Height() float64 {
	if s.Lead == "" {
		return stripRest
	}
	return stripRest + stripAims
}

// Draw draws the bar into a room.
func (s Strip) Draw(c *paper.Canvas, room mm.Box) {
	var all []Place
	for _, h := range s.Holes {
		all = append(all, h.At)
	}
	lo, hi := Extent(all...)
	side := stripLabel / 2
	f := FrameFor(s.Ruler, lo, hi, mm.BoxAt(room.X+side, room.Bottom()-14.5, room.W-2*side, 5))
	c.Text(room.X, room.Y+3.2, paper.SmallBold, "Bar from the side, "+ScaleWords(f)+", audience to the right →")
	if s.Lead != "" {
		c.Right(room.Right(), room.Y+3.2, paper.Small, s.Lead)
	}
	stripBar(c, f, s, lo, hi)
	drawAims(c, f, s, room)
	stripNumbers(c, f, s, room)
}

// stripBar draws the bar's outline, its hinge pin and its holes.
func stripBar(c *paper.Canvas, f Frame, s Strip, lo, hi Place) {
	const edge = 3.0
	a, b := f.At(Place{lo.X, hi.Z}), f.At(Place{hi.X, lo.Z})
	c.Rect(mm.BoxAt(a.X-edge, a.Y-edge, b.X-a.X+2*edge, b.Y-a.Y+2*edge), paper.Solid, paper.White)
	r := holeRadius(f, s)
	for _, h := range s.Holes {
		p := f.At(h.At)
		c.Disc(p.X, p.Y, r, paper.Light, paper.White)
	}
	for _, u := range s.Used {
		p := f.At(s.Holes[u].At)
		c.Disc(p.X, p.Y, max(r, 1.2), 0, paper.Black)
	}
}

// holeRadius keeps neighbouring holes apart on paper.
func holeRadius(f Frame, s Strip) float64 {
	r := 0.9
	for i := 1; i < len(s.Holes); i++ {
		a, b := f.At(s.Holes[i-1].At), f.At(s.Holes[i].At)
		r = min(r, 0.4*math.Hypot(a.X-b.X, a.Y-b.Y))
	}
	return max(r, 0.1)
}

// drawAims writes the aims over their holes: those of the hole to use and of
// the two on either side on leaders, then of every fifth or tenth.
func drawAims(c *paper.Canvas, f Frame, s Strip, room mm.Box) {
	if s.Lead == "" {
		return
	}
	near := nearest(s.Used[0], 2, len(s.Holes))
	var want []float64
	for _, i := range near { // from left to right: rear to front
		want = append(want, f.At(s.Holes[i].At).X)
	}
	y := room.Y + 8.6
	at := tagging.Spread(want, stripLabel+1, room.X+stripLabel/2, room.Right()-stripLabel/2)
	for n, i := range near {
		face := paper.Small
		if i == s.Used[0] {
			face = paper.SmallBold
		}
		p := f.At(s.Holes[i].At)
		c.Centre(at[n], y, face, s.Holes[i].Aim)
		c.Line(at[n], y+1.2, p.X, p.Y-1.2, paper.Light)
	}
	farAims(c, f, s, y, at[0]-stripLabel-1, at[len(at)-1]+stripLabel+1)
}

// nearest returns the holes within n of one, in the order of the page: holes
// count from the front, which is to the right.
func nearest(i, n, of int) (near []int) {
	for k := min(i+n, of-1); k >= max(i-n, 0); k-- {
		near = append(near, k)
	}
	return near
}

// farAims writes the aims of every fifth or tenth hole that stand clear of the
// ones on leaders.
func farAims(c *paper.Canvas, f Frame, s Strip, y, left, right float64) {
	last := math.Inf(1)
	for i := 0; i < len(s.Holes); i++ {
		p := f.At(s.Holes[i].At)
		if (i+1)%5 != 0 && i != 0 && i != len(s.Holes)-1 || p.X > left && p.X < right || math.Abs(last-p.X) < stripLabel+1 {
			continue
		}
		last = p.X
		c.Centre(p.X, y, paper.Small, s.Holes[i].Aim)
		c.Line(p.X, y+1.2, p.X, p.Y-1.2, paper.Light)
	}
}

// stripNumbers writes the numbers of the holes to use, large, and of every
// fifth or so below the bar.
func stripNumbers(c *paper.Canvas, f Frame, s Strip, room mm.Box) {
	y := room.Bottom() - 1
	taken := usedNumbers(c, f, s, room, y)
	for i, h := range s.Holes {
		p, half := f.At(h.At), c.Width(paper.Small, h.Label)/2+1
		if (i+1)%5 != 0 && i != 0 && i != len(s.Holes)-1 || overlaps(p.X, half, taken) {
			continue
		}
		taken = append(taken, [2]float64{p.X - half, p.X + half})
		c.Line(p.X, p.Y+1, p.X, y-3.4, paper.Light)
		c.Hole(p.X-c.Width(paper.Small, h.Label)/2, y, paper.Small, paper.White, h.Label)
	}
}

// usedNumbers writes the holes to use, spread where they would touch, and
// returns the room they take.
func usedNumbers(c *paper.Canvas, f Frame, s Strip, room mm.Box, y float64) (taken [][2]float64) {
	big := paper.Digits(4)
	gap := 0.0
	var want []float64
	for n := len(s.Used) - 1; n >= 0; n-- { // from left to right: rear to front
		want = append(want, f.At(s.Holes[s.Used[n]].At).X)
		gap = max(gap, c.Width(big, s.Holes[s.Used[n]].Label)+3)
	}
	for i, x := range tagging.Spread(want, gap, room.X+gap/2, room.Right()-gap/2) {
		h := s.Holes[s.Used[len(s.Used)-1-i]]
		p := f.At(h.At)
		c.Line(p.X, p.Y, x, y-5, paper.Light)
		c.Hole(x-c.Width(big, h.Label)/2, y, big, paper.White, h.Label)
		taken = append(taken, [2]float64{x - gap/2, x + gap/2})
	}
	return taken
}

// overlaps reports whether x, with half a width either side, meets what is taken.
func overlaps(x, half float64, taken [][2]float64) bool {
	for _, t := range taken {
		if x+half > t[0] && x-half < t[1] {
			return true
		}
	}
	return false
}
