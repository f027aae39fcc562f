package plan

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/layouts/drawings"
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
)

// planPoint makes a point with its words; x is positive stage left, z positive
// downstage, in metres.
func planPoint(id string, x, z float64) Point {
	offset := func(m float64, positive, negative, none string) string {
		switch {
		case math.Abs(m) < 0.005:
			return none
		case m > 0:
			return fmt.Sprintf("%s %.2f m", positive, m)
		}
		return fmt.Sprintf("%s %.2f m", negative, -m)
	}
	return Point{ID: id, At: drawings.Place{X: x, Z: z}, Across: offset(x, "stage left", "stage right", "on the centre line"),
		UpDown: offset(z, "downstage", "upstage", "on the datum line")}
}

// rig adds a stack with two points 'apart' metres from each other, turned by
// pan degrees towards stage left.
func rig(v *Sheet, id string, x, z, pan, apart float64) {
	sin, cos := math.Sincos(pan * math.Pi / 180)
	at := func(ahead, left float64) drawings.Place {
		return drawings.Place{X: x + ahead*sin + left*cos, Z: z + ahead*cos - left*sin}
	}
	front, rear := at(0, 0), at(-apart, 0)
	v.Points = append(v.Points, planPoint(id+"-front", front.X, front.Z), planPoint(id+"-rear", rear.X, rear.Z))
	a, b := at(0.3, 0.6), at(0.3, -0.6)
	v.Stacks = append(v.Stacks, Stack{Corners: [4]drawings.Place{a, b, at(-1.5, -0.6), at(-1.5, 0.6)}, Front: [2]drawings.Place{a, b}})
}

func planOf() Sheet {
	return Sheet{Datum: "downstage edge of the stage on its centre line"}
}

func fourStacks() Sheet {
	v := planOf()
	rig(&v, "SL", 11.4, 0.6, 6, 0.9)
	rig(&v, "SR", -11.4, 0.6, -6, 0.9)
	rig(&v, "OL", 14.9, -2.2, 55, 0.7)
	rig(&v, "OR", -14.9, -2.2, -55, 0.7)
	for i, x := range []float64{-12.6, 0, 12.6} {
		p := planPoint(fmt.Sprintf("C%d", i+1), x, -3)
		p.Other = true
		v.Points = append(v.Points, p)
	}
	for _, i := range []int{4, 5} {
		v.Points[i].Held = true
	}
	v.Stacks[2].Held = true
	v.Checks = checksOf(v.Points[:8])
	return v
}

func checksOf(points []Point) (checks []TapeCheck) {
	for i, a := range points {
		for _, b := range points[:i] {
			checks = append(checks, TapeCheck{b.ID, a.ID, fmt.Sprintf("%.3f m", math.Hypot(a.At.X-b.At.X, a.At.Z-b.At.Z))})
		}
	}
	return checks
}

// manyStacks has n stacks of two points with the longest ids, in rows.
func manyStacks(n int) Sheet {
	v := planOf()
	v.Datum = strings.Repeat("a very long datum ", 6) + "indeed"
	for i := range n {
		x, z := float64(i%12)*3.6-19.8, float64(i/12)*5.5-6
		rig(&v, fmt.Sprintf("WWWW%02d", i), x, z, x*2, 1)
	}
	return v
}

var planCases = map[string]func() Sheet{
	"one": func() Sheet {
		v := planOf()
		v.Datum = "not given"
		v.Points = []Point{planPoint("SL", 8.2, 0.6)}
		return v
	},
	"atdatum": func() Sheet {
		v := planOf()
		v.Points = []Point{planPoint("C", 0, 0)}
		return v
	},
	"twins": func() Sheet {
		v := planOf()
		v.Points = []Point{planPoint("SL", 8.2, 0.6), planPoint("SR", -8.2, 0.6)}
		v.Checks = checksOf(v.Points)
		return v
	},
	"four": fourStacks,
	"twelve": func() Sheet {
		v := planOf()
		for i, x := range []float64{4, 8, 11, 14, 17, 20} {
			rig(&v, fmt.Sprintf("L%d", i+1), x, float64(i%3)-2, x*4, 0.8)
			rig(&v, fmt.Sprintf("R%d", i+1), -x, float64(i%3)-2, -x*4, 0.8)
		}
		v.Checks = checksOf(v.Points[:5])
		return v
	},
	"many": func() Sheet { return manyStacks(60) },
	"line across": func() Sheet {
		v := planOf()
		for i := range 14 {
			v.Points = append(v.Points, planPoint(fmt.Sprintf("P%d", i+1), float64(i)*1.5-9.75, -1))
		}
		return v
	},
	"line down": func() Sheet {
		v := planOf()
		for i := range 14 {
			v.Points = append(v.Points, planPoint(fmt.Sprintf("P%d", i+1), 0, float64(i)*3-9))
		}
		return v
	},
	"delays": func() Sheet {
		v := fourStacks()
		v.Points[5].Held = false
		rig(&v, "DL", 22, 120, 0, 1)
		rig(&v, "DR", -22, 120, 0, 1)
		rig(&v, "DC", 0, 300, 0, 1)
		return v
	},
	"far": func() Sheet {
		v := planOf()
		for i := range 6 {
			rig(&v, fmt.Sprintf("F%d", i), 300+float64(i)*4, -300, 10, 1)
		}
		return v
	},
	"all on one spot": func() Sheet {
		v := planOf()
		for i := range 30 {
			v.Points = append(v.Points, planPoint(fmt.Sprintf("P%d", i), 5, 5))
		}
		return v
	},
	"field of 180": func() Sheet {
		v := planOf()
		for i := range 180 {
			v.Points = append(v.Points, planPoint(fmt.Sprintf("WWW%03d-front", i), float64(i%12)*14-77, float64(i/12)*14-98))
		}
		return v
	},
}

func drawPlan(t *testing.T, v Sheet, letter bool) paper.Drawn {
	t.Helper()
	drawn, err := paper.DrawAll(paper.Pack{Letter: letter, Title: "Plan", Day: time.Date(2027, 6, 12, 0, 0, 0, 0, time.UTC),
		Revision: "B", Spine: paper.Spine{Title: "Lantern Quay summer concert", Venue: "Quayside Hall", Date: "2027-06-12"}, Sheets: []paper.Sheet{v}})
	require.NoError(t, err)
	return drawn
}

// TestPlan draws each case on both papers and in both units, and reads it
// back. PLAN_OUT keeps the PDFs, to be looked at.
func TestPlan(t *testing.T) {
	for name, of := range planCases {
		for _, letter := range []bool{false, true} {
			for _, imperial := range []bool{false, true} {
				name := fmt.Sprintf("%s letter=%t imperial=%t", name, letter, imperial)
				t.Run(name, func(t *testing.T) {
					v := of()
					v.Ruler.Imperial = imperial
					drawn := drawPlan(t, v, letter)
					if dir := os.Getenv("PLAN_OUT"); dir != "" {
						require.NoError(t, os.WriteFile(filepath.Join(dir, strings.NewReplacer(" ", "-", "=", "-").Replace(name)+".pdf"), drawn.PDF, 0o644))
					}
					wordsApart(t, drawn)
					pointsToScale(t, v, drawn)
					figuresOnce(t, v, drawn)
					leadersClear(t, drawn)
				})
			}
		}
	}
}

func ofKind(drawn paper.Drawn, page int, kind string) (marks []paper.Mark) {
	for _, m := range drawn.Marks {
		if m.Page == page && m.Kind == kind {
			marks = append(marks, m)
		}
	}
	return marks
}

// wordsApart: no two texts of a page overlap, and none is too small.
func wordsApart(t *testing.T, drawn paper.Drawn) {
	for page := 1; page <= drawn.Pages; page++ {
		texts := ofKind(drawn, page, "text")
		for i, a := range texts {
			assert.GreaterOrEqual(t, a.Pt, 8.5, a.Text)
			for _, b := range texts[:i] {
				if a.X0 < b.X1 && b.X0 < a.X1 && a.Y0 < b.Y1 && b.Y0 < a.Y1 {
					t.Errorf("page %d: %q and %q overlap", page, a.Text, b.Text)
				}
			}
		}
	}
}

// pointsToScale: on every drawing, points and outlines stand from the datum as
// the plan has them, at the scale that the sheet says.
func pointsToScale(t *testing.T, v Sheet, drawn paper.Drawn) {
	for page := 1; page <= drawn.Pages; page++ {
		datum := ofKind(drawn, page, "datum")
		if len(datum) == 0 {
			continue
		}
		k, o := scaleOn(t, drawn, page), middle(datum[len(datum)-1])
		on := func(p drawings.Place) mm.Spot { return mm.At(o.X+p.X*k, o.Y+p.Z*k) }
		for _, m := range ofKind(drawn, page, "point") {
			assert.True(t, anyPlace(v.Points, func(p Point) bool { return mm.Distance(on(p.At), middle(m)) < 0.1 }), "page %d: no point at %v", page, middle(m))
		}
		for _, m := range ofKind(drawn, page, "stack plan") {
			assert.True(t, anyPlace(v.Stacks, func(s Stack) bool {
				for i, p := range s.Corners {
					if mm.Distance(on(p), mm.At(m.Corners[i][0], m.Corners[i][1])) > 0.1 {
						return false
					}
				}
				return true
			}))
		}
	}
}

func middle(m paper.Mark) mm.Spot { return mm.At((m.X0+m.X1)/2, (m.Y0+m.Y1)/2) }

func anyPlace[T any](all []T, is func(T) bool) bool {
	for _, x := range all {
		if is(x) {
			return true
		}
	}
	return false
}

// scaleOn reads how many mm of drawn a metre takes.
func scaleOn(t *testing.T, drawn paper.Drawn, page int) float64 {
	scale := regexp.MustCompile(`^Plan, 1:([0-9]+)$`)
	for _, m := range ofKind(drawn, page, "text") {
		if got := scale.FindStringSubmatch(m.Text); got != nil {
			per, err := strconv.Atoi(got[1])
			require.NoError(t, err)
			return 1000 / float64(per)
		}
	}
	t.Fatalf("page %d says no scale", page)
	return 0
}

// figuresOnce: over all pages every point has one mark and one tag.
func figuresOnce(t *testing.T, v Sheet, drawn paper.Drawn) {
	want, got, points := map[string]int{}, map[string]int{}, 0
	for _, p := range v.Points {
		want[p.ID+"|"+p.Across+"|"+p.UpDown]++
	}
	for page := 1; page <= drawn.Pages; page++ {
		points += len(ofKind(drawn, page, "point"))
		var in []string
		for _, m := range ofKind(drawn, page, "text") {
			if m.Block == "plan" && m.Text != "HELD" {
				in = append(in, m.Text)
			}
		}
		for i := 2; i < len(in); i++ {
			if key := strings.Join(in[i-2:i+1], "|"); want[key] > 0 {
				got[key]++
			}
		}
	}
	assert.Equal(t, want, got)
	assert.Equal(t, len(v.Points), points)
}

// leadersClear: no leader crosses another, runs over words, or passes over the
// mark of a point that is not its own.
func leadersClear(t *testing.T, drawn paper.Drawn) {
	for page := 1; page <= drawn.Pages; page++ {
		var leaders []mm.Segment
		for _, m := range ofKind(drawn, page, "leader") {
			leaders = append(leaders, mm.Segment{A: mm.At(m.Corners[0][0], m.Corners[0][1]), B: mm.At(m.Corners[1][0], m.Corners[1][1])})
		}
		for i, l := range leaders {
			for _, o := range leaders[:i] {
				assert.False(t, l.Crosses(o), "page %d: leaders %v and %v cross", page, l, o)
			}
			for _, m := range ofKind(drawn, page, "text") {
				assert.False(t, l.Hits(mm.BoxAt(m.X0, m.Y0, m.X1-m.X0, m.Y1-m.Y0)), "page %d: leader %v runs over %q", page, l, m.Text)
			}
			for _, m := range ofKind(drawn, page, "point") {
				if near := mm.Distance(l.B, middle(m)); near > 3*touching {
					assert.Greater(t, l.From(middle(m)), markRadius, "page %d: leader %v runs over the point at %v", page, l, middle(m))
				}
			}
		}
	}
}
