package layouts

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
)

// A tag is a frame with the names and both offsets of a point, or of a few
// points whose marks would touch, and a leader to the mark. Name and figures
// cannot part in it, as they can on two dimension lines.
type tag struct {
	points []int // of the plan
	at     mm.Box
	to     dot // what the leader goes to
	leader mm.Segment
	whole  mm.Box // of frame and leader
	cost   int    // of its place
}

// tagFaces are the faces of a tag: of a name, and of the offsets under it.
type tagFaces struct{ name, figures paper.Face }

// Faces of tags, largest first, and their measures in mm.
var tagSizes = []tagFaces{{paper.Section, paper.Reading}, {paper.Bold(12), paper.Text}, {paper.TextBold, paper.Text}, {paper.SmallBold, paper.Small}}

const (
	tagPad  = 0.9
	tagMost = 2   // points in one tag
	tagAir  = 1.6 // between two tags
	lineAir = 0.9 // between a leader and anything that is not its own
	ringAir = 0.6 // between marks and the ring around them
)

// held is how wide the word is, with its ground.
func (f tagFaces) held(c *paper.Canvas) float64 { return c.Width(f.name, "HELD") + 3 }

// entry returns how tall the lines of one point are, with air above and below.
func (f tagFaces) entry() float64 { return f.name.Lead() + 2*f.figures.Lead() + 2*tagPad }

// tagBox measures a tag.
func (v Plan) tagBox(c *paper.Canvas, f tagFaces, points []int) mm.Box {
	b := mm.Box{H: float64(len(points)) * f.entry()}
	for _, i := range points {
		p := v.Points[i]
		name := c.Width(f.name, p.ID)
		if p.Held {
			name += f.held(c)
		}
		b.W = max(b.W, name, c.Width(f.figures, p.Across), c.Width(f.figures, p.UpDown))
	}
	b.W += 2*tagPad + 0.8
	return b
}

// stand puts a tag at a place and sets its leader: from the nearest point of
// its frame to the rim of the mark.
func (t *tag) stand(p place) {
	t.at.X, t.at.Y, t.cost = p.X, p.Y, p.cost
	from, to := t.at.Nearest(t.to.Spot), t.to.Spot
	if l := mm.Distance(from, to); l > 0 {
		to = mm.Segment{A: from, B: to}.Along(max(0, l-t.to.r) / l)
	}
	t.leader = mm.Segment{A: from, B: to}
	lo := mm.At(min(t.at.X, to.X), min(t.at.Y, to.Y))
	t.whole = mm.BoxAt(lo.X, lo.Y, max(t.at.Right(), to.X)-lo.X, max(t.at.Bottom(), to.Y)-lo.Y)
}

// clearOf reports whether two tags and their leaders can be told apart.
// Leaders to the same mark may come near each other at it.
func (t *tag) clearOf(o *tag) bool {
	if !t.whole.Grown(tagAir).Meets(o.whole) {
		return true
	}
	if t.at.Grown(tagAir).Meets(o.at) || t.leader.Hits(o.at.Grown(lineAir)) || o.leader.Hits(t.at.Grown(lineAir)) {
		return false
	}
	if mm.Distance(t.to.Spot, o.to.Spot) < t.to.r+o.to.r {
		return !t.leader.Crosses(o.leader)
	}
	return t.leader.Gap(o.leader) >= lineAir
}

// untagged makes the tags, one for each point or for a few whose marks would
// touch.
func (w *planView) untagged(c *paper.Canvas) (tags []tag) {
	done := map[int]bool{}
	for n, i := range w.own {
		if done[i] {
			continue
		}
		t := tag{points: []int{i}}
		for _, k := range w.own[n+1:] {
			if !done[k] && len(t.points) < tagMost && mm.Distance(w.spot(i), w.spot(k)) < touching {
				t.points, done[k] = append(t.points, k), true
			}
		}
		t.at, t.to = w.plan.tagBox(c, w.faces, t.points), w.target(t.points)
		tags = append(tags, t)
	}
	return tags
}

// target returns what a leader goes to: a mark, or the ring around a few.
func (w *planView) target(points []int) dot {
	if len(points) == 1 {
		return dot{w.spot(points[0]), markRadius}
	}
	var mid mm.Spot
	for _, i := range points {
		mid.X += w.spot(i).X / float64(len(points))
		mid.Y += w.spot(i).Y / float64(len(points))
	}
	r := 0.0
	for _, i := range points {
		r = max(r, mm.Distance(mid, w.spot(i)))
	}
	return dot{mid, r + markRadius + ringAir}
}
