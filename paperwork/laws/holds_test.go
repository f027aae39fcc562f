package laws

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/paperwork/rules"
	"hangpack/paperwork/worked"
	"hangpack/testdata/deep"
	"hangpack/testdata/trials"
)

// What a check must hold over everything that the sheets let pass.

// A verdict is a rule at a place of a stack.
type verdict struct{ rule, where string }

// verdicts are those that must be found, and those so near their limit that either may
// be.
type verdicts struct{ must, may map[verdict]bool }

func newVerdicts() verdicts { return verdicts{map[verdict]bool{}, map[verdict]bool{}} }

// over finds what is more than its limit; nearness is of the limit.
func (v verdicts) over(at verdict, load, limit float64) { v.past(at, load-limit, 1e-7*math.Abs(limit)) }

// past finds what is above nothing by more than dust.
func (v verdicts) past(at verdict, by, dust float64) {
	switch {
	case by > dust:
		v.must[at] = true
	case by > -dust:
		v.may[at] = true
	}
}

// found are the findings of some rules, each place once.
func found(findings []struct{ Rule, Where string }, of ...string) map[verdict]bool {
	all := map[verdict]bool{}
	for _, f := range findings {
		if slices.Contains(of, f.Rule) {
			all[verdict{f.Rule, f.Where}] = true
		}
	}
	return all
}

// equal holds what is found to what has to be.
func (v verdicts) equal(t *testing.T, got map[verdict]bool) {
	t.Helper()
	for at := range v.may {
		if !v.must[at] {
			delete(got, at)
		}
	}
	assert.Equal(t, v.must, got)
}

func whereOf(lift, joint int, end string) string {
	var parts []string
	if lift > 0 {
		parts = append(parts, fmt.Sprintf("lift %d", lift))
	}
	if joint > 0 {
		parts = append(parts, fmt.Sprintf("joint %d", joint))
	}
	if end != "" {
		parts = append(parts, end)
	}
	return strings.Join(parts, ", ")
}

var overReach = []string{"hoist", "bar", "pick_hole", "hinge_pin", "link_pin", "link_pushed", "slack"}

// reachAsOneSystem: over every state, at its nominal tilt and at both ends of its reach,
// with unknown centres in every combination of corners, what is held is what the system
// holds.
func reachAsOneSystem(t *testing.T) (cases int, worst float64) {
	eachWithin(t, 9000, func(_ string, _ int, h *rules.Checked, f worked.StackFigures) {
		r, v := newReacher(t, h), newVerdicts()
		for _, mix := range trials.Mixes(r.unknown()) {
			for _, a := range flightsOf(h.Stack) {
				s := r.state(a, mix)
				if s.over {
					return // tips over: how it hangs is no crew's making
				}
				for _, c := range s.at {
					r.hold(v, s.lift, c)
				}
			}
		}
		cases++
		v.equal(t, found(printed(f).Holds, overReach...))
	})
	require.Greater(t, cases, 200)
	return cases, 0
}

// eachWithin asks of the stacks of random jobs, with the job and the stack's place in it.
func eachWithin(t *testing.T, from int64, ask func(yaml string, i int, h *rules.Checked, f worked.StackFigures)) {
	t.Helper()
	for seed := range int64(deep.Of(200, 1000)) {
		yaml := trials.Gamble(from + seed).Job()
		j := trials.OpenJob(t, yaml)
		for i, h := range j.Stacks {
			ask(yaml, i, h, j.Figures.Stacks[i])
			if t.Failed() {
				t.Fatalf("seed %d, stack %s", from+seed, h.ID)
			}
		}
	}
}

// hold holds what is carried at one tilt to all limits.
func (r *reacher) hold(v verdicts, lift int, c carried) {
	p, more := r.Job.Practice, 1+r.Job.Practice.MassTolerance
	design := more * p.DynamicFactor
	for i, pick := range r.Picks {
		at := whereOf(lift, 0, r.end(i))
		v.over(verdict{"hoist", at}, c.most[i]+pick.Below.Mass*gravity*more, pick.Hoist.Capacity*p.HoistUse)
		if r.Bar.PickRating > 0 {
			v.over(verdict{"pick_hole", at}, c.most[i]*p.DynamicFactor, r.Bar.PickRating*p.GearUse)
		}
		if len(r.Picks) == 2 {
			v.past(verdict{"slack", at}, 1-c.least[i], 1e-9*c.kg*gravity)
		}
	}
	if r.Bar.Rating > 0 {
		v.over(verdict{"bar", whereOf(lift, 0, "")}, c.kg*gravity*design, r.Bar.Rating*p.GearUse)
	}
	for k := range c.Links {
		at := whereOf(lift, k+1, "")
		hinge, link := pinRated(r.Stack, k)
		ofHinge, ofLink := pinShares(r.Stack, p, k)
		v.over(verdict{"hinge_pin", at}, math.Hypot(c.Pull[k], c.Side[k])*ofHinge*design, hinge*p.GearUse)
		v.over(verdict{"link_pin", at}, math.Abs(c.Links[k])*ofLink*design, link*p.GearUse)
		if !mayPush(r.Stack, k) {
			v.past(verdict{"link_pushed", at}, -1-c.leastLinks[k], 1e-9*c.kg*gravity)
		}
	}
}

func (r *reacher) end(i int) string {
	if len(r.Picks) == 1 {
		return ""
	}
	return [...]string{"front", "rear"}[i]
}
