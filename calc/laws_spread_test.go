package calc

import (
	"math"
	"math/rand"

	"github.com/stretchr/testify/require"
)

// Each part's mass off by a share to its own worse side, tried one part at a time: what
// a pick carries and what a link carries are as much more and less as the spreads say,
// and no choice of sides makes more of it.

// withPart is a stack whose n-th part, in the order of Loads, has its mass times more.
func withPart(s Stack, n int, more float64) Stack {
	at := 0
	times := func(m float64) float64 {
		at++
		if at-1 == n {
			return m * more
		}
		return m
	}
	weights := func(in []Weight) (out []Weight) {
		for _, w := range in {
			out = append(out, Weight{times(w.Mass), w.At})
		}
		return out
	}
	out := s
	out.Bar.Mass, out.Bar.Extras = times(s.Bar.Mass), weights(s.Bar.Extras)
	out.Cabinets = nil
	for _, c := range s.Cabinets {
		c.Mass, c.Extras = times(c.Mass), weights(c.Extras)
		out.Cabinets = append(out.Cabinets, c)
	}
	return out
}

// picksOf are what two hooks at levels front and rear carry of a stack, in kg.
func picksOf(c *tally, s Stack, tilt, front, rear float64) (atFront, atRear float64) {
	all := Centre(s.Loads(tilt, s.Poses(tilt)))
	atFront, atRear, err := TwoPicks(all.Mass*G, all.At.X, front, rear)
	require.NoError(c, err)
	return atFront / G, atRear / G
}

var spreadsTried = stacks(func(c *tally, r *rand.Rand, s Stack, tilt float64) {
	const off = 0.1
	poses := s.Poses(tilt)
	loads := s.Loads(tilt, poses)
	rear := between(r, -1.5, 0.5)
	front := rear + between(r, 0.2, 1.5)
	f, b := picksOf(c, s, tilt, front, rear)
	links, ofLinks := s.Joints(poses), make([]float64, len(poses))
	var ofFront, ofRear float64
	for n := range loads {
		one := withPart(s, n, 1+off)
		f1, b1 := picksOf(c, one, tilt, front, rear)
		ofFront, ofRear = ofFront+math.Abs(f1-f), ofRear+math.Abs(b1-b)
		for k, j := range one.Joints(poses) {
			ofLinks[k] += math.Abs(j.Link - links[k].Link)
		}
	}
	gotFront, gotRear := PickSpread(loads, front, rear)
	scale := most(1, ofFront/off, ofRear/off)
	c.near(ofFront/off, gotFront, scale, 1e-9, "front pick, kg")
	c.near(ofRear/off, gotRear, scale, 1e-9, "rear pick, kg")
	for k, got := range s.LinkSpreads(poses, loads) {
		c.near(ofLinks[k]/off, got, most(1, ofLinks[k]/off), 1e-9, "link")
	}
})

// Hung at the tilt to which ToSlack goes, the other hook carries all; and the hole has
// risen against the other one by as much as is said.
var slackTried = stacks(func(c *tally, r *rand.Rand, s Stack, tilt float64) {
	hole := Offset{between(r, -0.2, 0.2), between(r, -0.2, 0)}
	other := Offset{hole.Behind + between(r, 0.3, 1.2), between(r, -0.2, 0)}
	cg := s.CentreInBar().At
	rise := ToSlack(hole, other, cg, tilt)
	slope := func(t float64) float64 { return hole.Turned(t).Z - other.Turned(t).Z }
	low, high := -math.Pi/2, math.Pi/2 // between which the weight crosses the plumb line of the other hook
	behind := func(t float64) float64 { return cg.Turned(t).X - other.Turned(t).X }
	if behind(low)*behind(high) > 0 {
		return
	}
	for range 80 {
		mid := (low + high) / 2
		if behind(low)*behind(mid) <= 0 {
			high = mid
		} else {
			low = mid
		}
	}
	c.near(slope(low)-slope(tilt), rise, 1, 1e-9, "m")
})

// A point's governing load is the most of its pick with the dynamic factor, and the rest
// of its line with both factors; of a pick whose spread is its load it is its design load.
var governingTried = drawn(200, func(c *tally, r *rand.Rand) {
	h := Hoist{Mass: between(r, 20, 80), ChainMass: between(r, 0.5, 2), ChainLength: between(r, 10, 40)}
	pick, below, above := between(r, 10, 900), between(r, 0, 9), between(r, 0, 9)
	tolerance, dynamic := between(r, 0, 0.3), between(r, 1, 3)
	is, design := Governing(pick*(1+tolerance), below, h, above, tolerance, dynamic), Design(Static(pick, below, h, above), tolerance, dynamic)
	c.near(design, is, design, 1e-12, "of one pick")
	more := Governing(pick*(1+tolerance)+7, below, h, above, tolerance, dynamic)
	c.near(7*dynamic, more-is, design, 1e-12, "of a heavier pick")
})
