package drawings

import (
	"math"
	"strings"

	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/tagging"
)

// An Elevation is a stack seen from the side, the audience to the right, as it
// hangs. Places are metres; Z is a height, as the levels say it.
type Elevation struct {
	Ruler    Ruler
	Cabinets []Side
	Bar      []Place // its outline
	Holes    []Place // all pick holes
	Picks    []Place // the pick holes in use, with their hook lines
	Centre   Place   // of gravity
	Levels   []Level // the picks' first
	From, To int     // the cabinets that get labels, counted from 1
}

// A Side is one cabinet from the side.
type Side struct {
	Number  string
	Corners [4]Place // top front, bottom front, bottom rear, top rear
	Hole    string   // of the joint above it
	Looks   string   // '2.5° down'
	Aim     float64  // rad, positive down: the way of its aim line
}

// A Level is a height marked at the side of the drawing.
type Level struct {
	Z     float64
	Says  []string // lines, the one next to the mark first
	Under bool     // the words stand under the column; else above the mark, to the right
}

// places of the elevation that its frame must hold.
func (e Elevation) places() (all []Place) {
	all = append(append(all, e.Bar...), e.Centre)
	for _, s := range e.Cabinets {
		all = append(all, s.Corners[:]...)
	}
	for _, l := range e.Levels {
		all = append(all, Place{e.Centre.X, l.Z})
	}
	return all
}

// labelled are the cabinets of the sheet that the drawing stands on.
func (e Elevation) labelled() []Side { return e.Cabinets[e.From-1 : e.To] }

// Draw draws a stack from the side into a room and states its scale.
func (e Elevation) Draw(c *paper.Canvas, room mm.Box) {
	holes, looks := sideLabels(c, e)
	top := room.Y + 5 + hookStub
	right := max(looks+leader+rayLength, levelWords(c, e)+1)
	inner := mm.BoxAt(room.X+holes+leader, top, room.W-holes-leader-right, room.Bottom()-top-12)
	lo, hi := Extent(e.places()...)
	f := FrameFor(e.Ruler, lo, hi, inner)
	c.Text(room.X, room.Y+3, paper.SmallBold, "From the side, "+ScaleWords(f))
	c.Right(room.Right(), room.Y+3, paper.SmallBold, "audience →")
	c.Text(room.X, room.Y+8, paper.Small, "hole")
	first := c.Inked()
	stackFromSide(c, f, e, hookStub)
	for _, l := range e.Levels {
		y := f.At(Place{e.Centre.X, l.Z}).Y
		c.Dashed(1, 1, func() { c.Line(room.X, y, room.Right(), y, paper.Light) })
	}
	last := max(holeLabels(c, f, e, room, room.X+holes), lookLabels(c, f, e, room, room.Right()-looks))
	levelMarks(c, f, e, room, last)
	numbersInside(c, f, e, first)
	scaleBar(c, e.Ruler, f, room.X+holes+leader, room.Bottom()-2, room.W*0.5)
}

// levelWords measures the widest words that stand above a level at the right.
func levelWords(c *paper.Canvas, e Elevation) (w float64) {
	for _, l := range e.Levels {
		for _, says := range l.Says {
			if !l.Under {
				w = max(w, c.Width(paper.Small, says))
			}
		}
	}
	return w
}

// sideLabels measures the widest labels left and right of the column.
func sideLabels(c *paper.Canvas, e Elevation) (holes, looks float64) {
	for _, s := range e.labelled() {
		holes = max(holes, c.Width(paper.SmallBold, s.Hole), c.Width(paper.Small, "hole"))
		looks = max(looks, c.Width(paper.Small, s.Number+"  "+s.Looks))
	}
	return holes, looks
}

// firstLabel is where the topmost label may stand, clear of the words of the
// pick's level.
func firstLabel(f Frame, e Elevation) float64 {
	return f.At(Place{0, e.Levels[0].Z}).Y + 7
}

// holeLabels writes each joint's hole behind the rear end of the joint, with a
// leader where labels had to be spread, and returns where the last one stands.
func holeLabels(c *paper.Canvas, f Frame, e Elevation, room mm.Box, x float64) (last float64) {
	var want []float64
	for _, s := range e.labelled() {
		want = append(want, f.At(s.Corners[3]).Y)
	}
	for i, y := range tagging.Spread(want, labelPitch, firstLabel(f, e), room.Bottom()-12) {
		s := e.labelled()[i]
		c.OnWhite(x-c.Width(paper.SmallBold, s.Hole), y+1.1, paper.SmallBold, s.Hole)
		c.Hole(x-c.Width(paper.SmallBold, s.Hole), y+1.1, paper.SmallBold, paper.White, s.Hole)
		rear := f.At(s.Corners[3])
		c.Line(x+0.8, y, rear.X-0.4, rear.Y, paper.Light)
		last = y
	}
	return last
}

// lookLabels writes each cabinet's number and aim before its front, and returns
// where the last one stands.
func lookLabels(c *paper.Canvas, f Frame, e Elevation, room mm.Box, x float64) (last float64) {
	var want []float64
	for _, s := range e.labelled() {
		want = append(want, front(f, s).Y)
	}
	for i, y := range tagging.Spread(want, labelPitch, firstLabel(f, e), room.Bottom()-12) {
		s := e.labelled()[i]
		if i == 0 {
			c.OnWhite(room.Right()-c.Width(paper.Small, "looks"), y-2.6, paper.Small, "looks")
			c.Right(room.Right(), y-2.6, paper.Small, "looks")
		}
		c.OnWhite(x, y+1.1, paper.SmallBold, s.Number)
		c.Text(x, y+1.1, paper.SmallBold, s.Number)
		c.OnWhite(room.Right()-c.Width(paper.Small, s.Looks), y+1.1, paper.Small, s.Looks)
		c.Right(room.Right(), y+1.1, paper.Small, s.Looks)
		a := front(f, s)
		sin, cos := math.Sincos(s.Aim)
		c.Line(a.X+rayLength*cos, a.Y+rayLength*sin, x-0.8, y, paper.Light)
		last = y
	}
	return last
}

// levelMarks writes the words of the height marks: above their lines, or below the
// column, the end of its plumb line and the leaders of the last labels.
func levelMarks(c *paper.Canvas, f Frame, e Elevation, room mm.Box, last float64) {
	low := f.At(Place{0, lowest(e)}).Y
	for _, l := range e.Levels {
		y := f.At(Place{e.Centre.X, l.Z}).Y
		if l.Under {
			y = max(y, low) + 7
			if last > y-5 {
				y = max(y, last+4.6)
			}
			says := strings.Join(l.Says, ", ")
			half := c.Width(paper.Small, says) / 2
			c.Centre(min(max(f.At(e.Centre).X, room.X+half), room.Right()-half), y, paper.Small, says)
			continue
		}
		for n, line := range l.Says {
			x, y := room.Right()-c.Width(paper.Small, line), y-0.8-float64(n)*paper.Small.Lead()
			c.OnWhite(x, y, paper.Small, line)
			c.Text(x, y, paper.Small, line)
		}
	}
}

// numbersInside writes cabinets' numbers inside them, at the first place from the
// front where the number fits between all lines of the drawing, whose first mark
// is given. One that fits nowhere stands beside the drawing only.
func numbersInside(c *paper.Canvas, f Frame, e Elevation, first int) {
	for _, s := range e.Cabinets {
		w := c.Width(paper.SmallBold, s.Number)
		top, low, rear := f.At(s.Corners[0]), f.At(s.Corners[1]), f.At(s.Corners[2])
		for _, k := range []float64{0.25, 0.5, 0.75} {
			x, y := top.X+(rear.X-top.X)*k, (top.Y+low.Y)/2*(1-k)+(f.At(s.Corners[3]).Y+rear.Y)/2*k
			if c.ClearSince(first, mm.BoxAt(x-w/2, y-1.2, w, 2.4).Grown(0.2)) {
				c.Centre(x, y+1.1, paper.SmallBold, s.Number)
				break
			}
		}
	}
}
