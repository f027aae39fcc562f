package laws

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/paperwork/rules"
	"hangpack/paperwork/worked"
	"hangpack/testdata/proof"
	"hangpack/testdata/trials"
)

// aloneAsOneSystem: at every state, swung onto each of two picks and at rest there, with
// all masses as heavy as they may be and the dynamic factor on all but the hoist, what
// is found of one hoist alone, and how much each kind of part is used then, is what the
// system gives.
func aloneAsOneSystem(t *testing.T) (cases int, worst float64) {
	var seen proof.OffBy
	eachWithin(t, 17_000, func(_ string, _ int, h *rules.Checked, f worked.StackFigures) {
		if len(h.Picks) == 1 {
			return
		}
		r, v := newReacher(t, h), newVerdicts()
		for i, pick := range h.Picks {
			uses := map[string]float64{}
			for _, mix := range trials.Mixes(r.unknown()) {
				for _, a := range flightsOf(h.Stack) {
					r.alone(v, uses, a, mix, i)
				}
			}
			for _, c := range rules.AloneChecks(h.Hung, i) {
				if c.Limit > 0 {
					seen.InDelta(t, 1, c.Load/c.Limit/uses[c.Part], 1e-8, "%s, %s", c.Part, r.end(i))
					delete(uses, c.Part)
				}
			}
			assert.Empty(t, uses, "parts that are not checked, %s", r.end(i))
			kg, _ := trials.Centre(h.Stack, len(h.Cabinets), nil)
			seen.InDelta(t, 1, f.Alone[i]/(kg+pick.Below.Mass), 1e-9)
		}
		seen.Cases++
		j := printed(f)
		v.equal(t, found(append(j.Holds, j.Cautions...), "one_hoist", "one_hoist_gear"))
	})
	require.Greater(t, seen.Cases, 80)
	return seen.Cases, seen.Worst
}

// alone holds what hangs from hook i alone to all limits, and keeps the most of how
// much each kind of part is used.
func (r *reacher) alone(v verdicts, uses map[string]float64, a flight, mix trials.Mix, i int) {
	p, more, pick := r.Job.Practice, 1+r.Job.Practice.MassTolerance, r.Picks[i]
	kg, centre := trials.Centre(r.Stack, a.flown, mix)
	parts := trials.Parts(r.t, r.Stack, a.flown, r.Holes[i:i+1], trials.Plumb(r.hole(i), centre))
	c := carriedBy(parts, mix, 0)
	assert.InDelta(r.t, 0, c.Level, 1e-9*kg*gravity)
	assert.InDelta(r.t, 0, c.Turn, 1e-9*kg*gravity)
	use := func(rule string, joint int, part string, load, limit float64) {
		v.over(verdict{rule, whereOf(a.lift, joint, r.end(i))}, load, limit)
		if limit > 0 && !math.IsInf(limit, 1) {
			uses[part] = math.Max(uses[part], load/limit)
		}
	}
	design := more * p.DynamicFactor
	use("one_hoist", 0, "hoist", (kg+pick.Below.Mass)*gravity*more, pick.Hoist.Capacity*p.HoistUse)
	if r.Bar.Rating > 0 {
		use("one_hoist_gear", 0, "bar", kg*gravity*design, r.Bar.Rating*p.GearUse)
	}
	if r.Bar.PickRating > 0 {
		use("one_hoist_gear", 0, "pick hole", kg*gravity*design, r.Bar.PickRating*p.GearUse)
	}
	v.past(verdict{"one_hoist_gear", whereOf(a.lift, 0, r.end(i))}, imag(centre)-imag(r.hole(i)), 1e-7)
	for k := range c.Links {
		hinge, link := pinRated(r.Stack, k)
		ofHinge, ofLink := pinShares(r.Stack, p, k)
		use("one_hoist_gear", k+1, "hinge pin", math.Hypot(c.Pull[k], c.Side[k])*ofHinge*design, hinge*p.GearUse)
		use("one_hoist_gear", k+1, "link pin", math.Abs(c.Links[k])*ofLink*design, link*p.GearUse)
		if !mayPush(r.Stack, k) {
			v.past(verdict{"one_hoist_gear", whereOf(a.lift, k+1, r.end(i))}, -1-c.Links[k]*more, 1e-9*kg*gravity)
		}
	}
}
