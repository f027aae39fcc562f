package calc

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"hangpack/testdata/published"
)

// The answers that these hold calc to are printed in books and on pages of the
// web: see testdata/published, whose files name their sources. TestChecked runs
// them.

const deg = math.Pi / 180

// printed is a check of a file of printed answers.
func printed(file string, work func(published.Row) map[string]float64) func(t *testing.T) (int, float64) {
	return func(t *testing.T) (int, float64) { return published.Held(t, "../testdata/published/"+file, work) }
}

func loadsOf(r published.Row) (all []Load) {
	for _, w := range r.Weights() {
		all = append(all, Load{w[0], Vec{w[1], w[2]}})
	}
	return all
}

var printedCentres = printed("centres.csv", func(r published.Row) map[string]float64 {
	c := Centre(loadsOf(r))
	return map[string]float64{"mass": c.Mass, "x": c.At.X, "z": c.At.Z}
})

var printedTwoHooks = printed("two_hooks.csv", func(r published.Row) map[string]float64 {
	c := Centre(loadsOf(r))
	return hooks(c.Mass, c.At.X, r.In("front"), r.In("rear"))
})

func hooks(w, cg, front, rear float64) map[string]float64 {
	f, b, err := TwoPicks(w, cg, front, rear)
	if err != nil {
		return nil
	}
	return map[string]float64{"front hook": f, "rear hook": b}
}

var printedBridles = printed("bridles.csv", func(r published.Row) map[string]float64 {
	slope := func(degrees, h, v string) float64 {
		if r.Text(degrees) != "" {
			return r.In(degrees) * deg
		}
		return math.Atan2(r.In(v), r.In(h))
	}
	one, two := slope("slope 1", "h1", "v1"), slope("slope 2", "h2", "v2")
	at := hooks(r.In("load"), 0, 1/math.Tan(one), -1/math.Tan(two))
	return map[string]float64{"leg 1": at["front hook"] / math.Sin(one), "leg 2": at["rear hook"] / math.Sin(two)}
})

// A joint that leans so that its link lies along the page's member. The arm is
// how far the member's line passes from the pin.
var printedJoints = printed("joints.csv", func(r published.Row) map[string]float64 {
	run, rise := r.In("run"), r.In("rise")
	length := math.Hypot(run, rise)
	lean := math.Atan2(run, rise)
	arm := (-r.In("link x")*rise + r.In("link z")*run) / length
	c := Centre(loadsOf(r))
	j := JointForces(c.Mass, -c.At.X, arm, 0, lean)
	x := (j.HingePull*run - j.HingeSide*rise) / length
	z := (j.HingePull*rise + j.HingeSide*run) / length
	return map[string]float64{"link": j.Link, "link level": j.Link * run / length,
		"hinge": j.Hinge(), "hinge x": x, "hinge z": z, "hinge angle": math.Atan2(z, x) / deg}
})

var printedTilts = printed("tilt.csv", func(r published.Row) map[string]float64 {
	at := Centre(loadsOf(r)).At
	tilt, _ := Tilt(Offset{}, Offset{Behind: -at.X, Below: at.Z})
	return map[string]float64{"tangent": math.Tan(tilt), "degrees": tilt / deg}
})

var printedPlans = printed("plan.csv", func(r published.Row) map[string]float64 {
	left, down := Plan(0, 0, r.In("bearing")*deg, r.In("distance"))
	return map[string]float64{"east": left, "north": down}
})

var printedTapes = printed("tape.csv", func(r published.Row) map[string]float64 {
	return map[string]float64{"distance": Tape(r.In("across"), r.In("along"))}
})

// Two holes on the line, the point on the side that makes it lie below.
var printedLines = printed("lines.csv", func(r published.Row) map[string]float64 {
	a, b, c := r.In("a"), r.In("b"), r.In("c")
	k := -c / (a*a + b*b)
	front, rear := Offset{k * a, k * b}, Offset{k*a - b, k*b + a}
	return map[string]float64{"distance": math.Abs(BelowPicks(front, rear, Offset{r.In("x"), r.In("y")}))}
})

var printedSineBars = printed("sine_bars.csv", func(r published.Row) map[string]float64 {
	rear := Offset{Behind: r.In("length")}
	return map[string]float64{"height": OutOfStep(Offset{}, rear, 0, r.In("degrees")*deg, 1)}
})

var printedWedges = printed("wedges.csv", func(r published.Row) map[string]float64 {
	box := Wedge{Front: 2 * r.In("falls"), Back: 2 * r.In("falls"), Depth: 1}
	wedge := Wedge{Front: box.Front, Depth: r.In("over")}
	return map[string]float64{"degrees": BackRoom(wedge, box, wedge.Front) / deg}
})

// From the bar's hinge: a link that points along x hangs turned front down by
// minus a right angle.
var printedArms = printed("arms.csv", func(r published.Row) map[string]float64 {
	s := Stack{Cabinets: []Cabinet{
		{HingePitch: r.In("link 1"), Splay: -r.In("turn 1") * deg},
		{HingePitch: r.In("link 2"), Splay: -r.In("turn 2") * deg}, {}}}
	end := s.Poses(-90 * deg)[2].Hinge
	return map[string]float64{"x": end.X, "y": end.Z}
})

// A file of printed answers that no test reads would prove nothing.
func TestEveryPublishedFileIsHeld(t *testing.T) {
	require.Empty(t, published.NotHeld(t, "../testdata/published", "published_test.go",
		"../layouts/paper/published_test.go", "../paperwork/job/published_test.go"))
}
