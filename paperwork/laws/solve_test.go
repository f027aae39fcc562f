package laws

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/paperwork/job"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/worked"
	"hangpack/testdata/proof"
	"hangpack/testdata/trials"
)

// The lifts and one hoist alone against a solve of its own: bar and cabinets are
// free bodies with three equations each, straight from the job, and all unknowns
// come out of one linear system of gonum. It shares no line with package calc:
// places are complex numbers, x forward and z up.

// liftsAsOneSystem: at every lift the hooks of the figures are those of the
// system, nothing has to push or turn it for balance, and the windows are its
// least and most over masses and tilts within their tolerance.
func liftsAsOneSystem(t *testing.T) (cases int, worst float64) {
	const g = 9.80665
	var seen proof.OffBy
	trials.EachStack(t, 9000, func(t *testing.T, h *rules.Checked, f worked.StackFigures) {
		if len(h.Unknown()) > 0 {
			return // unknownCentresAsJobs
		}
		p := h.Job.Practice
		for k := range h.Sets {
			hooks, flown, tilt := f.HookFigures, len(h.Cabinets), f.Tilt
			if k < len(f.Lifts) {
				hooks, flown, tilt = f.Lifts[k].HookFigures, f.Lifts[k].Cabinets, f.Lifts[k].Tilt
			}
			seen.Cases++
			offs := []float64{0}
			if len(h.Holes) == 2 {
				offs = []float64{0, -p.AimTolerance, p.AimTolerance}
			}
			for i := range h.Holes {
				below := h.Picks[i].Below.Mass
				low, high := hooks.Hooks[i]-p.ReadingFloor, hooks.Hooks[i]+p.ReadingFloor
				for n, off := range offs {
					for _, more := range []float64{1, 1 - p.MassTolerance, 1 + p.MassTolerance} {
						w := trials.Solve(t, h.Stack, flown, h.Holes, tilt*math.Pi/180+off, more)
						kg := w.Hooks[i]/g + below*more
						low, high = math.Min(low, kg), math.Max(high, kg)
						if n == 0 && more == 1 {
							seen.InDelta(t, kg, hooks.Hooks[i], 1e-6, "lift %d, hook %d", k+1, i)
							seen.InDelta(t, 0, w.Level, 1e-6)
							seen.InDelta(t, 0, w.Turn, 1e-6)
						}
					}
				}
				seen.InDelta(t, low, hooks.Low[i], 1e-6, "lift %d, hook %d, least", k+1, i)
				seen.InDelta(t, high, hooks.High[i], 1e-6, "lift %d, hook %d, most", k+1, i)
			}
		}
	})
	require.Greater(t, seen.Cases, 500)
	return seen.Cases, seen.Worst
}

// aloneAsOneSystem: hung from each of two picks alone, at the tilt worked out,
// nothing has to push or turn the stack for balance; every joint carries what the
// system gives; and what each part is used is worked out anew from that.
func aloneAsOneSystem(t *testing.T) (cases int, worst float64) {
	var seen proof.OffBy
	trials.EachStack(t, 11_000, func(t *testing.T, h *rules.Checked, f worked.StackFigures) {
		for i := range h.Finished.Alone {
			if len(h.Unknown()) > 0 {
				continue
			}
			seen.Cases++
			s, p := h.Finished.Alone[i], h.Job.Practice
			w := trials.Solve(t, h.Stack, len(h.Cabinets), h.Holes[i:i+1], s.Tilt, 1+p.MassTolerance)
			scale := w.Hooks[0]
			assert.InDelta(t, 0, w.Level, 1e-9*scale)
			assert.InDelta(t, 0, w.Turn, 1e-9*scale)
			seen.InDelta(t, f.Mass*(1+p.MassTolerance)*9.80665/scale, 1, 1e-9)
			seen.InDelta(t, f.Alone[i]/(f.Mass+h.Picks[i].Below.Mass), 1, 1e-9)
			most := map[string]float64{"hoist": (w.Hooks[0] + h.Picks[i].Below.Mass*(1+p.MassTolerance)*9.80665) / (h.Picks[i].Hoist.Capacity * p.HoistUse)}
			if h.Bar.Rating > 0 {
				most["bar"] = w.Hooks[0] / (h.Bar.Rating * p.GearUse)
			}
			if h.Bar.PickRating > 0 {
				most["pick hole"] = w.Hooks[0] / (h.Bar.PickRating * p.GearUse)
			}
			mostForce := map[string]float64{}
			for k, c := range h.Cabinets {
				share := map[int]float64{1: 1, 2: p.SideShare}
				mostForce["hinge pin"] = math.Max(mostForce["hinge pin"], math.Hypot(w.Pull[k], w.Side[k])*share[c.HingePins])
				mostForce["link pin"] = math.Max(mostForce["link pin"], math.Abs(w.Links[k])*share[c.LinkPins])
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
					most["hinge pin"] = math.Max(most["hinge pin"], math.Hypot(w.Pull[k], w.Side[k])*share[c.HingePins]/(r.Hinge*p.GearUse))
					most["link pin"] = math.Max(most["link pin"], math.Abs(w.Links[k])*share[c.LinkPins]/(r.Link*p.GearUse))
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
				seen.InDelta(t, w.Links[k]/scale, j.Link*(1+p.MassTolerance)/scale, 1e-6)
				seen.InDelta(t, w.Pull[k]/scale, j.HingePull*(1+p.MassTolerance)/scale, 1e-6)
				seen.InDelta(t, math.Hypot(w.Pull[k], w.Side[k])/scale, j.Hinge()*(1+p.MassTolerance)/scale, 1e-6)
			}
		}
	})
	require.Greater(t, seen.Cases, 100)
	return seen.Cases, seen.Worst
}
