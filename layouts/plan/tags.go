package plan

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
)

// tagFaces are the faces of a tag: of a name, and of the offsets under it.
type tagFaces struct{ name, figures paper.Face }

// Faces of tags, largest first.
var tagSizes = []tagFaces{{paper.Section, paper.Reading}, {paper.Bold(12), paper.Text}, {paper.TextBold, paper.Text}, {paper.SmallBold, paper.Small}}

// What a tag holds.
const (
	tagPad  = 0.9 // mm, within a tag's frame
	tagMost = 2   // points in one tag
)

// held is how wide the word is, with its ground.
func (f tagFaces) held(c *paper.Canvas) float64 { return c.Width(f.name, "HELD") + 3 }

// entry returns how tall the lines of one point are, with air above and below.
func (f tagFaces) entry() float64 { return f.name.Lead() + 2*f.figures.Lead() + 2*tagPad }

// tagBox measures a tag.
func (v Sheet) tagBox(c *paper.Canvas, f tagFaces, points []int) mm.Box {
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
