package sheets

import (
	"fmt"
	"maps"
	"math"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/layouts/paper"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// A sketch is the ink of one page's plan, with what it takes to turn metres from
// the datum into millimetres of its paper.
type sketch struct {
	marks []paper.Mark
	datum [2]float64
	scale float64
}

// sketches are the plans of a pack that have a drawing.
func sketches(pdf paper.Drawn, pages []string) (all []sketch) {
	for n, page := range pages {
		s := sketch{}
		for _, w := range trials.WordsOn(page) {
			if m := planScale.FindStringSubmatch(w.S); m != nil {
				s.scale = trials.Number(m[1])
			}
		}
		for _, m := range pdf.Marks {
			if m.Page == n+1 && slices.Contains([]string{"plan", "plan words", "plan key"}, m.Block) {
				s.marks = append(s.marks, m)
				if m.Kind == "datum" && m.Block == "plan" {
					s.datum = middle(m)
				}
			}
		}
		if s.scale > 0 && strings.HasPrefix(trials.SheetOf(trials.WordsOn(page)), "PLAN") {
			all = append(all, s)
		}
	}
	return all
}

func middle(m paper.Mark) [2]float64 { return [2]float64{(m.X0 + m.X1) / 2, (m.Y0 + m.Y1) / 2} }

// at is where a place stands on the page.
func (s sketch) at(p onPlan) [2]float64 {
	return [2]float64{s.datum[0] + p.left*1000/s.scale, s.datum[1] + p.down*1000/s.scale}
}

func apart(a, b [2]float64) float64 { return math.Hypot(a[0]-b[0], a[1]-b[1]) }

// lines counts the lines of a pen from one place of the page to another, either
// way; a pen of 0 is any.
func (s sketch) lines(a, b [2]float64, pen float64) (n int) {
	const dust = 0.1
	for _, m := range s.marks {
		if m.Kind != "line" || pen > 0 && m.Pen != pen {
			continue
		}
		from, to := m.Corners[0], m.Corners[1]
		if apart(from, a) < dust && apart(to, b) < dust || apart(from, b) < dust && apart(to, a) < dust {
			n++
		}
	}
	return n
}

// within lists the marks of a kind that lie within some millimetres of a place.
func (s sketch) within(kind string, p [2]float64, r float64) (all []paper.Mark) {
	for _, m := range s.marks {
		if m.Kind == kind && m.X0 > p[0]-r && m.X1 < p[0]+r && m.Y0 > p[1]-r && m.Y1 < p[1]+r {
			all = append(all, m)
		}
	}
	return all
}

// A planned point is what the figures say of a mark on the plan.
type plannedPoint struct {
	id          string
	at          onPlan
	held, other bool
}

func plannedPoints(j *worked.Job) (points []plannedPoint) {
	for _, s := range j.Figures.Stacks {
		for _, p := range s.Points {
			points = append(points, plannedPoint{p.ID, onPlan{p.StageLeft, p.Downstage}, s.Held, false})
		}
	}
	for _, o := range j.Figures.Others {
		points = append(points, plannedPoint{o.ID, onPlan{o.StageLeft, o.Downstage}, false, true})
	}
	return points
}

// TestPlanInk holds what tells one thing from another on the plan: which edge of
// a stack is its heavy front, who is crossed out, the mark of each kind of
// point, the dotted lengths that its figures are of, and the scale bar.
func TestPlanInk(t *testing.T) {
	const heavy = 0.8
	for name, j := range trials.ReadJobs(t) {
		pdf, pages := paperOf(t, j)
		for _, s := range sketches(pdf, pages) {
			s.scaleBar(t, name)
			for _, h := range j.Stacks {
				c := outlineOf(h) // front left, front right, rear right, rear left
				assert.Equal(t, 1, s.lines(s.at(c[0]), s.at(c[1]), heavy), "%s: the front of %s", name, h.ID)
				crossed := s.lines(s.at(c[0]), s.at(c[2]), 0) + s.lines(s.at(c[1]), s.at(c[3]), 0)
				assert.Equal(t, h.Held(), crossed == 2, "%s: %s is crossed out", name, h.ID)
			}
			for _, p := range plannedPoints(j) {
				if at := s.at(p.at); len(s.within("point", at, 1.1)) > 0 { // its figures stand on this page
					s.pointInk(t, name, p, at)
				}
			}
		}
	}
}

// pointInk holds the mark of one point: a square of another point, a ring with
// a cross of a held one, else a disc; and the two dotted lengths.
func (s sketch) pointInk(t *testing.T, name string, p plannedPoint, at [2]float64) {
	t.Helper()
	const radius = 1.1
	cross := 0
	for _, m := range s.within("line", at, radius) {
		if long := apart(m.Corners[0], m.Corners[1]); long > 0.5 && long < 2*radius && m.Pen < 0.8 && apart(middle(m), at) < 0.1 {
			cross++
		}
	}
	if crowded := len(s.within("point", at, 2*radius)) > 1; !crowded {
		assert.Equal(t, p.held, cross == 2, "%s: %s is marked as held, %d lines", name, p.id, cross)
		assert.Equal(t, p.other, len(s.within("rect", at, radius)) > 0, "%s: %s is marked as another point", name, p.id)
		assert.Equal(t, !p.other, len(s.within("disc", at, radius)) > 0, "%s: %s is marked as a stack's point", name, p.id)
	}
	assert.NotZero(t, s.lines([2]float64{s.datum[0], at[1]}, at, 0), "%s: the length across of %s", name, p.id)
	assert.NotZero(t, s.lines([2]float64{at[0], s.datum[1]}, at, 0), "%s: the length up or down of %s", name, p.id)
}

var barWords = regexp.MustCompile(`^([0-9.]+) (m|ft|in)$`)

// scaleBar holds the scale bar to its own words at the scale that is printed.
func (s sketch) scaleBar(t *testing.T, name string) {
	t.Helper()
	metres := map[string]float64{"m": 1, "ft": 0.3048, "in": 0.0254}
	bars := 0
	for _, m := range s.marks {
		if says := barWords.FindStringSubmatch(m.Text); says != nil && m.Block != "plan" {
			long := trials.Number(says[1]) * metres[says[2]]
			end := [2]float64{m.X0 - 1.5, m.Y0 + (m.Y1-m.Y0)*0.75/0.96 - 1}
			bars += s.lines([2]float64{end[0] - long*1000/s.scale, end[1]}, end, 0)
		}
	}
	assert.Equal(t, 1, bars, "%s: a scale bar as long as it says at 1:%g", name, s.scale)
}

// TestSideScaleBars: the bar below each side elevation is as long as it says at
// the scale that is printed above it.
func TestSideScaleBars(t *testing.T) {
	scale := regexp.MustCompile(`^From the side, 1:([0-9]+)$`)
	for name, j := range trials.ReadJobs(t) {
		pdf, pages := paperOf(t, j)
		for n := range pages {
			s := sketch{}
			for _, m := range pdf.Marks {
				if m.Page != n+1 || m.Block != "side" {
					continue
				}
				if says := scale.FindStringSubmatch(m.Text); says != nil {
					s.scale = trials.Number(says[1])
				}
				s.marks = append(s.marks, m)
			}
			if s.scale > 0 {
				s.scaleBar(t, name)
			}
		}
	}
}

// TestLeadersLeadHome: the leader of every tag ends at the points whose ids
// stand in the tag, and every point has its tag.
func TestLeadersLeadHome(t *testing.T) {
	for name, j := range trials.ReadJobs(t) {
		pdf, pages := paperOf(t, j)
		where := map[string]onPlan{}
		for _, p := range plannedPoints(j) {
			where[p.id] = p.at
		}
		led := map[string]int{}
		for _, s := range sketches(pdf, pages) {
			for _, m := range s.marks {
				if m.Kind != "leader" {
					continue
				}
				ids, far := s.tagOf(m, where)
				require.NotEmpty(t, ids, "%s: a leader ends in no tag", name)
				for _, id := range ids {
					led[id]++
					assert.Less(t, apart(s.at(where[id]), far), s.reach(far), "%s: the leader of %s", name, id)
				}
			}
		}
		for id := range where {
			assert.Equal(t, 1, led[id], "%s: %s has a tag with a leader", name, id)
		}
	}
}

// tagOf returns the ids in the frame that one end of a leader stands on, and the
// leader's other end.
func (s sketch) tagOf(leader paper.Mark, where map[string]onPlan) (ids []string, far [2]float64) {
	const dust = 0.15
	for _, m := range s.marks {
		if m.Kind != "rect" || m.X1-m.X0 < 8 || m.Y1-m.Y0 < 6 {
			continue
		}
		for i, end := range leader.Corners {
			in := end[0] > m.X0-dust && end[0] < m.X1+dust && end[1] > m.Y0-dust && end[1] < m.Y1+dust
			edge := math.Min(math.Min(math.Abs(end[0]-m.X0), math.Abs(end[0]-m.X1)), math.Min(math.Abs(end[1]-m.Y0), math.Abs(end[1]-m.Y1)))
			if in && edge < dust {
				return s.idsIn(m, where), leader.Corners[1-i]
			}
		}
	}
	return nil, far
}

func (s sketch) idsIn(frame paper.Mark, where map[string]onPlan) (ids []string) {
	for _, m := range s.marks {
		if _, id := where[m.Text]; id && m.X0 > frame.X0 && m.X1 < frame.X1+1 && m.Y0 > frame.Y0-1 && m.Y1 < frame.Y1 {
			ids = append(ids, m.Text)
		}
	}
	return ids
}

// reach is how far from a leader's end its points may stand: the radius of a
// mark, or of the ring around several that the end stands on.
func (s sketch) reach(end [2]float64) float64 {
	const mark, dust = 1.0, 0.3
	for _, m := range s.marks {
		r := (m.X1 - m.X0) / 2
		if m.Kind == "disc" && r > mark+dust && math.Abs(apart(middle(m), end)-r) < dust {
			return 2*r + dust
		}
	}
	return mark + dust
}

// crowded is a job of more points than one sheet has room for.
func crowded() string {
	head, stack, _ := strings.Cut(trials.Plain, "stacks:\n")
	yaml := head + "stacks:\n"
	others := "other_points:\n"
	for i := range 50 {
		place := fmt.Sprintf("stage_left: %d m, downstage: %d m", 3*(i%10)-15, 3*(i/10)-6)
		yaml += strings.Replace(strings.Replace(stack, "id: SL", fmt.Sprintf("id: WWWW%d", 10+i), 1), "stage_left: 8.2 m, downstage: 0.6 m", place, 1)
		others += fmt.Sprintf("  - {id: MMMM%d, place: {%s}, height: 9 m, mass: 40 kg, what: drape}\n", 10+i, strings.Replace(place, " m, downstage", ".7 m, downstage", 1))
	}
	return yaml + others
}

// TestPlanKeyNamesPalePoints: where a page shows points whose figures stand on
// another one, its key says so, of stacks' points and of others.
func TestPlanKeyNamesPalePoints(t *testing.T) {
	jobs := maps.Clone(trials.ReadJobs(t))
	jobs["crowded"] = trials.OpenJob(t, crowded())
	seen := map[bool]int{}
	for name, j := range jobs {
		pdf, pages := paperOfKind(t, j, "points")
		for _, s := range sketches(pdf, pages) {
			want := map[bool]bool{}
			for _, p := range plannedPoints(j) {
				at := s.at(p.at)
				pale := len(s.within("disc", at, 0.75))+len(s.within("rect", at, 0.75)) > 0
				if pale && len(s.within("point", at, 1.1)) == 0 {
					want[p.other] = true
					seen[p.other]++
				}
			}
			got := map[bool]bool{}
			for _, m := range s.marks {
				switch m.Text {
				case "figures on another sheet":
					got[false] = true
				case "other point, figures on another sheet":
					got[true] = true
				}
			}
			assert.Equal(t, want, got, name)
		}
	}
	assert.NotZero(t, seen[false])
	assert.NotZero(t, seen[true])
}
