package sheets

import (
	"math"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/layouts/paper"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/testdata/trials"
)

// The plan is read back: points and outlines as drawn, divided by the scale that
// is printed, are those of the figures; its words are the figures' words.

var planScale = regexp.MustCompile(`^Plan, 1:([0-9]+)$`)

// onPlan is where a mark's middle stands from the datum, in metres: stage left
// and downstage positive.
type onPlan struct{ left, down float64 }

// planPage is what is read of one page: places of points, corners of outlines,
// and how many metres 0.1 mm of its paper is.
type planPage struct {
	points   []onPlan
	outlines [][]onPlan
	dust     float64
}

func planPages(t *testing.T, pdf paper.Drawn, pages []string) (read []planPage) {
	t.Helper()
	for n, page := range pages {
		words, scale := trials.WordsOn(page), 0.0
		if !strings.HasPrefix(trials.SheetOf(words), "PLAN") {
			continue
		}
		for _, w := range words {
			if m := planScale.FindStringSubmatch(w.S); m != nil {
				scale = trials.Number(m[1])
			}
		}
		if scale == 0 {
			continue // tape checks alone
		}
		read = append(read, readPlan(t, pdf.Marks, n+1, scale))
	}
	return read
}

func readPlan(t *testing.T, marks []paper.Mark, page int, scale float64) planPage {
	t.Helper()
	p := planPage{dust: 0.1 * scale / 1000}
	var x0, y0 float64
	at := func(x, y float64) onPlan { return onPlan{(x - x0) * scale / 1000, (y - y0) * scale / 1000} }
	datums := 0
	for _, m := range marks {
		if m.Page == page && m.Kind == "datum" && m.Block == "plan" { // and not the sign beside its words
			x0, y0 = (m.X0+m.X1)/2, (m.Y0+m.Y1)/2
			datums++
		}
	}
	require.Equal(t, 1, datums)
	for _, m := range marks {
		switch {
		case m.Page != page:
		case m.Kind == "point":
			p.points = append(p.points, at((m.X0+m.X1)/2, (m.Y0+m.Y1)/2))
		case m.Kind == "stack plan":
			var corners []onPlan
			for _, c := range m.Corners {
				corners = append(corners, at(c[0], c[1]))
			}
			p.outlines = append(p.outlines, corners)
		}
	}
	return p
}

func planAsDrawn(t *testing.T) (cases int, worst float64) {
	for name, j := range trials.ReadJobs(t) {
		pdf, pages := paperOf(t, j)
		read := planPages(t, pdf, pages)
		require.NotEmpty(t, read, name)
		var want []onPlan
		for _, c := range allChalks(j) {
			want = append(want, onPlan{c.left, c.down})
		}
		drawn := 0
		for _, p := range read {
			drawn += len(p.points)
			cases += len(p.points) + len(p.outlines)
			for _, at := range p.points {
				assert.True(t, near(at, want, p.dust), "%s: a point at %v is none of the job's", name, at)
			}
			require.Len(t, p.outlines, len(j.Stacks), name)
			for i, h := range j.Stacks {
				for k, corner := range outlineOf(h) {
					assert.InDelta(t, corner.left, p.outlines[i][k].left, p.dust, "%s: %s", name, h.ID)
					assert.InDelta(t, corner.down, p.outlines[i][k].down, p.dust, "%s: %s", name, h.ID)
				}
			}
		}
		assert.Equal(t, len(want), drawn, "%s: each point once", name)
		for _, at := range want {
			assert.True(t, nearAny(at, read), "%s: the point at %v is not drawn", name, at)
		}
	}
	return cases, 0
}

func near(at onPlan, among []onPlan, dust float64) bool {
	for _, b := range among {
		if math.Hypot(at.left-b.left, at.down-b.down) <= dust {
			return true
		}
	}
	return false
}

func nearAny(at onPlan, read []planPage) bool {
	for _, p := range read {
		if near(at, p.points, p.dust) {
			return true
		}
	}
	return false
}

// outlineOf works out a stack's outline from its corners by complex rotation,
// another way than the sheet does: forward is downstage turned by the pan.
func outlineOf(h *rules.Checked) (corners []onPlan) {
	rear, front, half := math.Inf(1), math.Inf(-1), 0.0
	for k, four := range h.Finished.Corners {
		for _, c := range four {
			rear, front = math.Min(rear, c.X), math.Max(front, c.X)
		}
		half = math.Max(half, h.Cabinets[k].Width/2)
	}
	turn := complex(math.Cos(h.Pan), math.Sin(h.Pan)) // downstage real, stage left imaginary
	for _, c := range []complex128{complex(front, half), complex(front, -half), complex(rear, -half), complex(rear, half)} {
		// beside the forward direction, to stage left when the stack looks straight
		// downstage, is a quarter turn from it
		at := complex(h.Downstage, h.StageLeft) + turn*c
		corners = append(corners, onPlan{imag(at), real(at)})
	}
	return corners
}

// tapeChecks redoes the distances along the floor from the figures, and
// finds each on paper.
func tapeChecks(t *testing.T) (cases int, worst float64) {
	for name, j := range trials.ReadJobs(t) {
		_, pages := paperOf(t, j)
		pdf := trials.TextOf(pages, "PLAN")
		at := map[string]onPlan{"datum": {}}
		for _, s := range j.Figures.Stacks {
			for _, p := range s.Points {
				at[p.ID] = onPlan{p.StageLeft, p.Downstage}
			}
		}
		for _, o := range j.Figures.Others {
			at[o.ID] = onPlan{o.StageLeft, o.Downstage}
		}
		pairs := map[string]bool{}
		for _, c := range tapeChecksOf(j) {
			a, b := at[c.From], at[c.To]
			is := say.Units{Imperial: j.Imperial}.Tape(math.Sqrt((a.left-b.left)*(a.left-b.left) + (a.down-b.down)*(a.down-b.down)))
			assert.Equal(t, is, c.Is, "%s: %s to %s", name, c.From, c.To)
			assert.Contains(t, pdf, c.From+" to "+c.To+" "+is, name)
			cases++
			pairs[c.From+" to "+c.To] = true
		}
		for id := range at {
			if id != "datum" {
				assert.True(t, pairs["datum to "+id], "%s: %s", name, id)
			}
		}
		for _, s := range j.Figures.Stacks {
			if len(s.Points) == 2 {
				assert.True(t, pairs[s.ID+"-front to "+s.ID+"-rear"], "%s: %s", name, s.ID)
			}
		}
	}
	return cases, 0
}
