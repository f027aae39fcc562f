package laws

import (
	"math"
	"math/cmplx"
	"math/rand"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/paperwork/rules"
	"hangpack/paperwork/worked"
	"hangpack/testdata/proof"
	"hangpack/testdata/trials"
)

// A span is the least and the most that something may read, in kg.
type span struct{ low, high float64 }

// wide is a span no closer to what it is about than a floor.
func (s span) wide(is, floor float64) span {
	return span{math.Min(s.low, is-floor), math.Max(s.high, is+floor)}
}

// within is a span cut to another one.
func (s span) within(least, most float64) span {
	return span{math.Max(s.low, least), math.Min(s.high, most)}
}

// windowsAsOneSystem: at every state the bar's tilt and what each hook holds, with
// nothing else to push or turn the stack for balance; what each hook and both together
// may read, with each of its cuts, wherever unknown centres lie; and how far each chain is
// from slack. Of stacks as they are drawn, and with gear that is up to little more than
// them.
func windowsAsOneSystem(t *testing.T) (cases int, worst float64) {
	var seen proof.OffBy
	draw := rand.New(rand.NewSource(1))
	eachWithin(t, 13_000, func(yaml string, i int, h *rules.Checked, f worked.StackFigures) {
		newReacher(t, h).windows(&seen, printed(f))
		if !h.Held() {
			sharp := asTree(yaml)
			newReacher(t, h).sharpen(sharp, i, draw)
			j := trials.OpenJob(t, sharp.text())
			newReacher(t, j.Stacks[0]).windows(&seen, printed(j.Figures.Stacks[0]))
		}
	})
	require.Greater(t, seen.Cases, 500)
	return seen.Cases, seen.Worst
}

// windows holds what is printed of hooks at every state to the system.
func (r *reacher) windows(seen *proof.OffBy, j jsonStack) {
	for _, a := range flightsOf(r.Stack) {
		ways, hooks := r.ways(a), j.of(a)
		if slices.ContainsFunc(ways, func(s reached) bool { return s.over }) {
			continue
		}
		seen.Cases++
		s := ways[0]
		assert.InDelta(r.t, 0, s.at[0].Level, 1e-9*s.at[0].kg*gravity)
		assert.InDelta(r.t, 0, s.at[0].Turn, 1e-9*s.at[0].kg*gravity)
		seen.InDelta(r.t, s.tilts[0]*180/math.Pi, hooks.Tilt, 1e-9, "%v, tilt", a)
		for i, pick := range r.Picks {
			seen.InDelta(r.t, s.at[0].Hooks[i]/gravity+pick.Below.Mass, hooks.Hooks[i], 1e-6, "%v, hook %d", a, i)
			r.same(seen, r.window(ways, a, i, j.Held), span{hooks.Low[i], hooks.High[i]}, a, i)
		}
		if len(r.Picks) == 2 {
			r.same(seen, r.windowOfSum(ways, a, j.Held), span{hooks.SumLow, hooks.SumHigh}, a, "both")
			require.Len(r.t, hooks.Slack, 2)
			for i := range r.Picks {
				seen.InDelta(r.t, r.slack(s, i), hooks.Slack[i], 1e-6, "%v, hook %d, from slack", a, i)
			}
		}
	}
}

// ways are a state with the unknown centres in the middle of their outlines, then in every
// combination of corners.
func (r *reacher) ways(a flight) (all []reached) {
	for _, mix := range trials.Mixes(r.unknown()) {
		all = append(all, r.state(a, mix))
	}
	return all
}

// everyTilt is what is carried at every tilt of some ways.
func everyTilt(ways []reached) (all []carried) {
	for _, s := range ways {
		all = append(all, s.at...)
	}
	return all
}

func (r *reacher) same(seen *proof.OffBy, want, got span, a flight, hook any) {
	seen.InDelta(r.t, want.low, got.low, 1e-6, "%v, hook %v, least", a, hook)
	seen.InDelta(r.t, want.high, got.high, 1e-6, "%v, hook %v, most", a, hook)
}

// window is what hook i may read.
func (r *reacher) window(ways []reached, a flight, i int, held bool) span {
	p, pick := r.Job.Practice, r.Picks[i]
	all, leastPick := span{math.Inf(1), math.Inf(-1)}, math.Inf(1)
	for _, c := range everyTilt(ways) {
		for _, more := range []float64{1 - p.MassTolerance, 1 + p.MassTolerance} {
			kg := c.Hooks[i] / gravity * more
			reads := kg + pick.Below.Mass*more
			all, leastPick = span{math.Min(all.low, reads), math.Max(all.high, reads)}, math.Min(leastPick, kg)
		}
	}
	nominal := ways[0].at[0].Hooks[i] / gravity
	all = all.wide(nominal+pick.Below.Mass, p.ReadingFloor)
	if held {
		return all
	}
	most := math.Min(pick.Hoist.Capacity*p.HoistUse/gravity, nominal*r.strength(ways, a)+pick.Below.Mass)
	if r.Bar.PickRating > 0 {
		most = math.Min(most, r.Bar.PickRating*p.GearUse/p.DynamicFactor/gravity+pick.Below.Mass)
	}
	return all.within(pick.Below.Mass+leastPick/2, most)
}

// windowOfSum is what both hooks may read together.
func (r *reacher) windowOfSum(ways []reached, a flight, held bool) span {
	p, kg, below := r.Job.Practice, ways[0].at[0].kg, r.Picks[0].Below.Mass+r.Picks[1].Below.Mass
	all := span{(kg + below) * (1 - p.MassTolerance), (kg + below) * (1 + p.MassTolerance)}.wide(kg+below, p.ReadingFloor)
	if held {
		return all
	}
	return all.within(below+kg*(1-p.MassTolerance)/2, kg*r.strength(ways, a)+below)
}

// strength is how many times all masses may be what the job gives before bar or a pin
// would be at its limit; where each of two hoists must hold the stack alone, before
// anything would be then.
func (r *reacher) strength(ways []reached, a flight) float64 {
	p, times := r.Job.Practice, math.Inf(1)
	if r.Bar.Rating > 0 {
		times = r.Bar.Rating * p.GearUse / (ways[0].at[0].kg * gravity * p.DynamicFactor)
	}
	for _, c := range everyTilt(ways) {
		for k := range c.Links {
			hinge, link := pinRated(r.Stack, k)
			ofHinge, ofLink := pinShares(r.Stack, p, k)
			times = math.Min(times, hinge*p.GearUse/(math.Hypot(c.Pull[k], c.Side[k])*ofHinge*p.DynamicFactor))
			times = math.Min(times, link*p.GearUse/(math.Abs(c.Links[k])*ofLink*p.DynamicFactor))
		}
	}
	for i := range r.Picks {
		if uses := map[string]float64{}; p.OneMustHold && len(r.Picks) == 2 {
			for _, mix := range trials.Mixes(r.unknown()) {
				r.alone(newVerdicts(), uses, a, mix, i)
			}
			for _, use := range uses {
				times = math.Min(times, (1+p.MassTolerance)/use)
			}
		}
	}
	return times
}

// slack is by how much, in mm, the difference in height of both pick holes changes from
// where the bar hangs to where the centre of gravity lies below the other one than i.
func (r *reacher) slack(s reached, i int) float64 {
	if s.at[0].Hooks[i] <= 0 {
		return 0
	}
	_, centre := trials.Centre(r.Stack, s.flown, nil)
	rise := func(tilt float64) float64 {
		return imag((r.hole(0) - r.hole(1)) * cmplx.Exp(complex(0, -tilt)))
	}
	return math.Abs(rise(trials.Plumb(r.hole(1-i), centre))-rise(s.tilts[0])) * 1000
}

// pointsAsOneSystem: the governing load of each point, where it is, and what the point
// carries with the other chain slack.
func pointsAsOneSystem(t *testing.T) (cases int, worst float64) {
	var seen proof.OffBy
	eachWithin(t, 15_000, func(_ string, _ int, h *rules.Checked, f worked.StackFigures) {
		r, j, p := newReacher(t, h), printed(f), h.Job.Practice
		for i, pick := range h.Picks {
			hangs := (pick.Below.Mass + pick.Hoist.Mass + pick.Hoist.ChainMass*pick.Hoist.ChainLength + pick.Above.Mass) * (1 + p.MassTolerance)
			most, at := math.Inf(-1), map[string]float64{}
			for _, a := range flightsOf(h.Stack) {
				kg := math.Inf(-1)
				for _, mix := range trials.Mixes(r.unknown()) {
					for _, c := range r.state(a, mix).at {
						kg = math.Max(kg, (c.most[i]/gravity+hangs)*p.DynamicFactor)
					}
				}
				at[whereOf(a.lift, 0, "")], most = kg, math.Max(most, kg)
			}
			seen.Cases++
			is := j.Points[i].Governing
			seen.InDelta(t, most, is.Design, 1e-6, "point %d", i)
			assert.InDelta(t, most, at[is.Where], 1e-6*math.Abs(most), "point %d: %q is not where it carries most", i, is.Where)
			if len(h.Picks) == 2 {
				seen.InDelta(t, (f.Mass*(1+p.MassTolerance)+hangs)*p.DynamicFactor, j.Points[i].AloneDesign, 1e-6, "point %d alone", i)
			}
		}
	})
	require.Greater(t, seen.Cases, 200)
	return seen.Cases, seen.Worst
}
