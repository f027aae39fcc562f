package paperwork

import (
	"math"
	"math/cmplx"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/mat"

	"hangpack/paperwork/job"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/worked"
)

// The lifts and one hoist alone against a solve of its own: bar and cabinets are
// free bodies with three equations each, straight from the job, and all unknowns
// come out of one linear system of gonum. It shares no line with package calc:
// places are complex numbers, x forward and z up.

// A system is what that system gives: what each hook pulls up with, what would have
// to push it level and turn it for balance, and what each joint carries, in newtons.
type system struct {
	hooks       []float64
	level, turn float64
	links, pull []float64
	side        []float64
}

// at turns what lies behind and below in a body's axes by t, front down.
func at(o job.Offset, t float64) complex128 {
	return complex(-o.Behind, -o.Below) * cmplx.Exp(complex(0, -t))
}

// solve hangs the first n cabinets of a stack by some of its pick holes with the
// bar at a tilt, all masses times more.
func solve(t *testing.T, s *job.Stack, n int, holes []int, tilt, more float64) system {
	t.Helper()
	size := 3 * (n + 1)
	a, b := mat.NewDense(size, size, nil), mat.NewVecDense(size, nil)
	force := func(body, unknown int, at, way complex128) {
		for i, v := range []float64{real(way), imag(way), real(at)*imag(way) - imag(at)*real(way)} {
			a.Set(3*body+i, unknown, a.At(3*body+i, unknown)+v)
		}
	}
	weigh := func(body int, kg float64, at complex128) {
		w := kg * more * 9.80665
		b.SetVec(3*body+1, b.AtVec(3*body+1)+w)
		b.SetVec(3*body+2, b.AtVec(3*body+2)+w*real(at))
	}
	weigh(0, s.Bar.Mass, at(s.Bar.CentreOfGravity, tilt))
	for _, e := range s.Extras {
		if e.Cabinet == 0 {
			weigh(0, e.Mass, at(e.At, tilt))
		}
	}
	hook := func(i int) complex128 { return at(s.Bar.PickHoles[holes[i]].At, tilt) }
	for i := range holes {
		force(0, i, hook(i), 1i)
	}
	force(0, len(holes), hook(0), 1)
	if len(holes) == 1 {
		a.Set(2, 2, a.At(2, 2)+1) // a bare turning moment at the bar
	}
	turn, pin, arm := tilt, complex128(0), s.LinkArm
	for k, c := range s.Cabinets[:n] {
		above := turn
		turn += c.Hole.Splay * math.Pi / 180
		mean, half := (above+turn)/2, (turn-above)/2
		up, back := at(job.Offset{Below: -1}, mean), at(job.Offset{Behind: 1}, mean)
		link := pin + back*complex(math.Min(arm, c.LinkArm)*math.Cos(half), 0)
		for j, body := range []int{k + 1, k} {
			sign := complex(float64(1-2*j), 0)
			force(body, 3*k+3, pin, sign*up)
			force(body, 3*k+4, pin, sign*back)
			force(body, 3*k+5, link, sign*up)
		}
		weigh(k+1, c.Mass, pin+at(c.CentreOfGravity, turn))
		for _, e := range s.Extras {
			if e.Cabinet == k+1 {
				weigh(k+1, e.Mass, pin+at(e.At, turn))
			}
		}
		pin, arm = pin+at(job.Offset{Below: c.HingePitch}, turn), c.LinkArm
	}
	var x mat.VecDense
	require.NoError(t, x.SolveVec(a, b))
	w := system{level: x.AtVec(len(holes))}
	for i := range holes {
		w.hooks = append(w.hooks, x.AtVec(i))
	}
	if len(holes) == 1 {
		w.turn = x.AtVec(2)
	}
	for k := range n {
		w.pull, w.side, w.links = append(w.pull, x.AtVec(3*k+3)), append(w.side, x.AtVec(3*k+4)), append(w.links, x.AtVec(3*k+5))
	}
	return w
}

// eachStack asks of the stacks of random jobs.
func eachStack(t *testing.T, from int64, ask func(t *testing.T, h *rules.Checked, f worked.StackFigures)) {
	t.Helper()
	for seed := range int64(120) {
		j := open(t, gamble(from+seed).job())
		for i, h := range j.Stacks {
			ask(t, h, j.Figures.Stacks[i])
		}
		if t.Failed() {
			t.Fatalf("seed %d", from+seed)
		}
	}
}

// liftsAsOneSystem: at every lift the hooks of the figures are those of the
// system, nothing has to push or turn it for balance, and the windows are its
// least and most over masses and tilts within their tolerance.
func liftsAsOneSystem(t *testing.T) (cases int, worst float64) {
	const g = 9.80665
	var seen offBy
	eachStack(t, 9000, func(t *testing.T, h *rules.Checked, f worked.StackFigures) {
		if len(h.Unknown()) > 0 {
			return // unknownCentresAsJobs
		}
		p := h.Job.Practice
		for k := range h.Sets {
			hooks, flown, tilt := f.HookFigures, len(h.Cabinets), f.Tilt
			if k < len(f.Lifts) {
				hooks, flown, tilt = f.Lifts[k].HookFigures, f.Lifts[k].Cabinets, f.Lifts[k].Tilt
			}
			seen.cases++
			offs := []float64{0}
			if len(h.Holes) == 2 {
				offs = []float64{0, -p.AimTolerance, p.AimTolerance}
			}
			for i := range h.Holes {
				below := h.Picks[i].Below.Mass
				low, high := hooks.Hooks[i]-p.ReadingFloor, hooks.Hooks[i]+p.ReadingFloor
				for n, off := range offs {
					for _, more := range []float64{1, 1 - p.MassTolerance, 1 + p.MassTolerance} {
						w := solve(t, h.Stack, flown, h.Holes, tilt*math.Pi/180+off, more)
						kg := w.hooks[i]/g + below*more
						low, high = math.Min(low, kg), math.Max(high, kg)
						if n == 0 && more == 1 {
							seen.inDelta(t, kg, hooks.Hooks[i], 1e-6, "lift %d, hook %d", k+1, i)
							seen.inDelta(t, 0, w.level, 1e-6)
							seen.inDelta(t, 0, w.turn, 1e-6)
						}
					}
				}
				seen.inDelta(t, low, hooks.Low[i], 1e-6, "lift %d, hook %d, least", k+1, i)
				seen.inDelta(t, high, hooks.High[i], 1e-6, "lift %d, hook %d, most", k+1, i)
			}
		}
	})
	require.Greater(t, seen.cases, 500)
	return seen.cases, seen.worst
}

// aloneAsOneSystem: hung from each of two picks alone, at the tilt worked out,
// nothing has to push or turn the stack for balance; every joint carries what the
// system gives; and what each part is used is worked out anew from that.
func aloneAsOneSystem(t *testing.T) (cases int, worst float64) {
	var seen offBy
	eachStack(t, 11_000, func(t *testing.T, h *rules.Checked, f worked.StackFigures) {
		for i := range h.Swung {
			if len(h.Unknown()) > 0 {
				continue
			}
			seen.cases++
			s, p := h.Swung[i], h.Job.Practice
			w := solve(t, h.Stack, len(h.Cabinets), h.Holes[i:i+1], s.Tilt, 1+p.MassTolerance)
			scale := w.hooks[0]
			assert.InDelta(t, 0, w.level, 1e-9*scale)
			assert.InDelta(t, 0, w.turn, 1e-9*scale)
			seen.inDelta(t, f.Mass*(1+p.MassTolerance)*9.80665/scale, 1, 1e-9)
			seen.inDelta(t, f.Alone[i]/(f.Mass+h.Picks[i].Below.Mass), 1, 1e-9)
			most := map[string]float64{"hoist": (w.hooks[0] + h.Picks[i].Below.Mass*(1+p.MassTolerance)*9.80665) / (h.Picks[i].Hoist.Capacity * p.HoistUse)}
			if h.Bar.Rating > 0 {
				most["bar"] = w.hooks[0] / (h.Bar.Rating * p.GearUse)
			}
			if h.Bar.PickRating > 0 {
				most["pick hole"] = w.hooks[0] / (h.Bar.PickRating * p.GearUse)
			}
			mostForce := map[string]float64{}
			for k, c := range h.Cabinets {
				share := map[int]float64{1: 1, 2: p.SideShare}
				mostForce["hinge pin"] = math.Max(mostForce["hinge pin"], math.Hypot(w.pull[k], w.side[k])*share[c.HingePins])
				mostForce["link pin"] = math.Max(mostForce["link pin"], math.Abs(w.links[k])*share[c.LinkPins])
				r := c.PinRatings
				if above := h.Bar.PinRatings; k > 0 || above != nil {
					if k > 0 {
						above = h.Cabinets[k-1].PinRatings
					}
					if r == nil {
						r = above
					} else if above != nil {
						r = &job.PinRatings{Hinge: math.Min(r.Hinge, above.Hinge), Link: math.Min(r.Link, above.Link)}
					}
				}
				if r != nil {
					most["hinge pin"] = math.Max(most["hinge pin"], math.Hypot(w.pull[k], w.side[k])*share[c.HingePins]/(r.Hinge*p.GearUse))
					most["link pin"] = math.Max(most["link pin"], math.Abs(w.links[k])*share[c.LinkPins]/(r.Link*p.GearUse))
				}
			}
			for _, c := range rules.AloneChecks(h.Hung, i) {
				if c.Limit == 0 && strings.HasSuffix(c.Part, " pin") {
					assert.InDelta(t, mostForce[c.Part], c.Load, 1+1e-9*scale, "%s, not rated, %s", c.Part, h.End(i))
				}
				if c.Limit > 0 {
					assert.InDelta(t, most[c.Part], c.Load/c.Limit, 1e-6*math.Max(1, most[c.Part]), "%s, %s", c.Part, h.End(i))
				}
			}
			for k, j := range s.Joints {
				seen.inDelta(t, w.links[k]/scale, j.Link*(1+p.MassTolerance)/scale, 1e-6)
				seen.inDelta(t, w.pull[k]/scale, j.HingePull*(1+p.MassTolerance)/scale, 1e-6)
				seen.inDelta(t, math.Hypot(w.pull[k], w.side[k])/scale, j.Hinge()*(1+p.MassTolerance)/scale, 1e-6)
			}
		}
	})
	require.Greater(t, seen.cases, 100)
	return seen.cases, seen.worst
}
