package layouts

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/tagging"
)

// tagFaces are the faces of a tag: of a name, and of the offsets under it.
type tagFaces struct{ name, figures paper.Face }

// Faces of tags, largest first, and their measures in mm.
var tagSizes = []tagFaces{{paper.Section, paper.Reading}, {paper.Bold(12), paper.Text}, {paper.TextBold, paper.Text}, {paper.SmallBold, paper.Small}}

const (
	tagPad  = 0.9
	tagMost = 2 // points in one tag
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

// untagged makes the tags, one for each point or for a few whose marks would
// touch.
func (w *planView) untagged(c *paper.Canvas) (tags []tagging.Tag) {
	var marks []mm.Spot
	for _, i := range w.own {
		marks = append(marks, w.spot(i))
	}
	for _, group := range tagging.Together(marks, touching, tagMost) {
		var t tagging.Tag
		var around []mm.Spot
		for _, n := range group {
			t.Points, around = append(t.Points, w.own[n]), append(around, marks[n])
		}
		t.At, t.To = w.plan.tagBox(c, w.faces, t.Points), tagging.Ring(around, markRadius)
		tags = append(tags, t)
	}
	return tags
}
