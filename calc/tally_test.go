package calc

import (
	"math"
	"math/rand"
	"testing"
)

// rounding is what a machine may be off by where another one is not: a difference
// below it is not told from none.
const rounding = 0x1p-52

// A tally is a check at work: how many cases it took, and the largest difference
// that it saw, rounding at least.
type tally struct {
	*testing.T
	cases int
	worst float64
}

// near holds got to want within a part of scale.
func (c *tally) near(want, got, scale, within float64, of string) {
	c.Helper()
	off := math.Abs(got-want) / scale
	if !(off <= within) {
		c.Errorf("%s: %.12g, where %.12g is wanted, is off by %.1e of %.3g", of, got, want, off, scale)
	}
	c.worst = math.Max(c.worst, math.Max(off, rounding))
}

// drawn runs a check over so many random draws, each with a seed of its own, and
// stops at the first that fails.
func drawn(draws int, check func(c *tally, r *rand.Rand)) func(t *testing.T) (int, float64) {
	return func(t *testing.T) (int, float64) {
		c := &tally{T: t}
		for seed := range int64(draws) {
			check(c, rand.New(rand.NewSource(seed)))
			c.cases++
			if t.Failed() {
				t.Fatalf("seed %d", seed)
			}
		}
		return c.cases, c.worst
	}
}

// stacks runs a check over 300 random stacks, held up to 20 degrees either way.
func stacks(check func(c *tally, r *rand.Rand, s Stack, tilt float64)) func(t *testing.T) (int, float64) {
	return drawn(300, func(c *tally, r *rand.Rand) {
		s := randomStack(r)
		check(c, r, s, (r.Float64()-0.5)*40*deg)
	})
}

// between draws a number from lo to hi.
func between(r *rand.Rand, lo, hi float64) float64 { return lo + (hi-lo)*r.Float64() }

// randomStack makes a stack of mixed cabinets with extras on bar and cabinets.
func randomStack(r *rand.Rand) Stack {
	extras := func() (e []Weight) {
		for range r.Intn(3) {
			e = append(e, Weight{between(r, 0.5, 40), Offset{between(r, -0.3, 1), between(r, -0.2, 0.6)}})
		}
		return e
	}
	s := Stack{Bar: Bar{between(r, 5, 120), Offset{between(r, 0.1, 0.6), between(r, -0.2, 0)}, between(r, 0.2, 0.6), extras()}}
	for range 1 + r.Intn(20) {
		front, depth := between(r, 0.15, 0.5), between(r, 0.25, 0.8)
		s.Cabinets = append(s.Cabinets, Cabinet{
			Mass: between(r, 5, 120), CentreOfGravity: Offset{between(r, 0.05, depth), between(r, 0, front)},
			Splay: between(r, 0, 12) * deg, HingePitch: front + between(r, 0, 0.01), LinkArm: between(r, 0.2, depth),
			Corners: Outline(depth, front, front*between(r, 0.6, 1), between(r, 0, 0.05), 0), Extras: extras(),
		})
	}
	return s
}

// wildStack is randomStack without its tameness: splays of both signs, and
// centres of gravity ahead of the hinge, so that links are pushed as well.
func wildStack(r *rand.Rand) Stack {
	s := randomStack(r)
	for k := range s.Cabinets {
		c := &s.Cabinets[k]
		c.Splay = between(r, -15, 15) * deg
		c.CentreOfGravity.Behind = between(r, -0.3, 0.6)
	}
	return s
}

// most returns the largest of some forces, whatever their signs.
func most(forces ...float64) (m float64) {
	for _, f := range forces {
		m = math.Max(m, math.Abs(f))
	}
	return m
}
