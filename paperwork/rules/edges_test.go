package rules_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/testdata/trials"
)

// TestEndOfReach: stacks that are without a hold as they are meant to hang, all masses
// off together, and are held over all that their sheets let pass. Eight boxes and the bar
// are 288 kg; masses may be 2 % off, the aim 1 degree.
func TestEndOfReach(t *testing.T) {
	j := trials.OpenFile(t, "testdata/jobs/end-of-reach.yaml")
	held := map[string][]string{
		"PUSH":  {"link_pushed, joint 1"}, // pulled with 99 N, and 1 degree more up pushed with 42 N
		"SLACK": {"slack, front"},         // carries 2.0 kg, and 1 degree more down would have to push
		"HOIST": {"hoist"},                // 288 kg x 1.02 = 293.76 kg of 293.75 kg: 0.1 N too much
	}
	for id, want := range held {
		assert.Equal(t, want, trials.Found(j.Stack(id).Holds), id)
	}
	push := j.Stack("PUSH")
	assert.Positive(t, push.Finished.Joints[0].Link)
	assert.Contains(t, push.Holds[0].Says, " at 1.0° more up")
	slack := j.Stack("SLACK")
	assert.Positive(t, slack.Finished.Loads[0])
	assert.Contains(t, slack.Holds[0].Says, " at 1.0° more down")
}

// TestWindowEndsAtTheHoist: a rear hook of a hoist of 235 kg may read that at the most, and
// not the 40 kg more than it holds that the floor of readings would give; a front one that
// holds less than 40 kg never begins where its chain is slack.
func TestWindowEndsAtTheHoist(t *testing.T) {
	j := trials.OpenFile(t, "testdata/jobs/end-of-reach.yaml")
	finished := func(id string) []rig.Reading { return j.Stack(id).Readings(len(j.Stack(id).Lifts)) }
	require.False(t, j.Stack("WINDOW").Held())
	rear, front := finished("WINDOW")[1], finished("ALONE")[0]
	require.Greater(t, rear.Is+40, 235.0)
	assert.InDelta(t, 235, rear.High, 1e-9)
	require.Less(t, front.Is-40, 0.0)
	assert.Greater(t, front.Low, 10.0)
}

// TestPassedOver: of two pick holes within the tolerance the nearer one tilts the bar past
// its limit, and the next one is taken. Named in the job, the nearer one is held, and it
// is known that the other one would not be.
func TestPassedOver(t *testing.T) {
	auto := trials.OpenFile(t, "testdata/jobs/end-of-reach.yaml").Stack("AUTO")
	require.False(t, auto.Held())
	require.Len(t, auto.PassedOver, 1)
	over := auto.PassedOver[0]
	assert.Equal(t, []string{"18", "19"}, []string{auto.Label(over.Hole).Text, auto.Label(auto.Holes[0]).Text})
	assert.Equal(t, "bar_tilt", over.Why.Rule)
	assert.Less(t, over.Aim, auto.Options[auto.Holes[0]].Aim) // both are up; 1.9 degrees are wanted
	assert.False(t, auto.OtherHole)
	asAuto := "aim: 1.9 deg up\n    hang: {picks: 1, hoist: hoist"
	named := trials.OpenJob(t, strings.Replace(trials.Text(t, "testdata/jobs/end-of-reach.yaml"), asAuto, asAuto+", pick_hole: 18", 1)).Stack("AUTO")
	require.True(t, named.Held())
	assert.True(t, named.OtherHole)
	assert.False(t, trials.OpenFile(t, "testdata/jobs/end-of-reach.yaml").Stack("HOIST").OtherHole, "every hole has the same load")
}

// TestPassedOverInOrder: with twice the tolerance several holes are nearer than the first
// that is not held, and all of them are named, the nearest first; of a hole that is named
// in the job it is known that another one would do.
func TestPassedOverInOrder(t *testing.T) {
	wide := func(aim, hole string) *rules.Checked {
		return trials.OpenJob(t, strings.NewReplacer("mass_tolerance: 2 %", "mass_tolerance: 2 %, aim_tolerance: 2 deg", "aim: 1.9 deg up\n    hang: {picks: 1, hoist: hoist",
			"aim: "+aim+" deg up\n    hang: {picks: 1, hoist: hoist"+hole).Replace(trials.Text(t, "testdata/jobs/end-of-reach.yaml"))).Stack("AUTO")
	}
	auto := wide("2.8", "")
	require.Greater(t, len(auto.PassedOver), 1)
	off, last := 0.0, math.Abs(auto.Options[auto.Holes[0]].Aim-auto.Aim)
	for _, p := range auto.PassedOver {
		assert.GreaterOrEqual(t, math.Abs(p.Aim-auto.Aim), off-1e-9)
		off = math.Abs(p.Aim - auto.Aim)
	}
	assert.GreaterOrEqual(t, last, off-1e-9)
	assert.True(t, wide("1.9", ", pick_hole: 18").OtherHole)
	assert.False(t, wide("1.9", ", pick_hole: 19").Held(), "one that would do")
}

// TestAloneAtALift: at a lift one hoist alone pushes a link, and that is found there too.
func TestAloneAtALift(t *testing.T) {
	s := trials.OpenFile(t, "testdata/jobs/end-of-reach.yaml").Stack("ALONE")
	assert.Contains(t, trials.Found(s.Cautions), "one_hoist_gear, lift 1, joint 1, front")
}

// TestPushedAloneFromANewton: with one hoist alone a link is pushed from 1 N, masses with
// their tolerance: 0.952 N x 1.05 = 0.9996 N, 0.953 N x 1.05 = 1.00065 N.
func TestPushedAloneFromANewton(t *testing.T) {
	h := trials.OpenJob(t, trials.Edited(t, trials.OnePick, trials.TwoPicks)).Stacks[0]
	for _, s := range h.States() {
		for _, swung := range s.Alone {
			for k := range swung.Joints {
				swung.Joints[k].Link = 5
			}
		}
	}
	link := &h.Finished.Alone[0].Joints[2].Link
	pushed := func() bool {
		_, force := rules.PushedAlone(h.Hung, 0, false)
		found := slices.Contains(trials.Found(rules.Check(h.Hung).Cautions), "one_hoist_gear, joint 3, front")
		assert.Equal(t, force > 0, found, "%g N", *link)
		return found
	}
	*link = -0.952
	assert.False(t, pushed())
	*link = -0.953
	assert.True(t, pushed())
}

// TestUnratedAloneIsTheLargest: of a kind of part without a rating the one with the largest
// load is told.
func TestUnratedAloneIsTheLargest(t *testing.T) {
	unrated := []string{"      pin_ratings: {hinge: 6 kN, link: 4.5 kN}\n  bars", "  bars", "      pin_ratings: {hinge: 6 kN, link: 4.5 kN}\n", ""}
	h := trials.OpenJob(t, trials.Edited(t, append(unrated, trials.OnePick, trials.TwoPicks)...)).Stacks[0]
	most := 0.0
	for _, s := range h.States() {
		for _, j := range s.Alone[1].Joints {
			most = math.Max(most, j.Hinge()*0.6*1.05*1.25)
		}
	}
	for _, c := range rules.AloneChecks(h.Hung, 1) {
		if c.Part == "hinge pin" {
			require.Zero(t, c.Limit)
			assert.InDelta(t, most, c.Load, 1)
			return
		}
	}
	assert.Fail(t, "no hinge pin")
}
