package rules_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/testdata/trials"
)

func TestPlainJobIsNotHeld(t *testing.T) {
	for _, hang := range []string{trials.OnePick, trials.TwoPicks} {
		s := trials.OpenJob(t, trials.Edited(t, trials.OnePick, hang)).Figures.Stacks[0]
		assert.Empty(t, s.Holds)
		assert.False(t, s.Held)
	}
}

// TestRules: for each rule a job that is held by it and where, and for those
// that can be, one in which only a lift is. The limits are set by hand on
// either side of the load; masses below the hook are 28 + 8 · 32.5 = 288 kg,
// and 28 + 4 · 32.5 = 158 kg after dolly A.
func TestRules(t *testing.T) {
	const noLimit = "tilt_limit: {down: 15 deg, up: 8 deg}"
	tests := []struct {
		name  string
		edits []string
		want  []string
	}{
		// 288 · 1.05 = 302.4 kg.
		{"hoist", []string{"capacity: 500 kg", "capacity: 302 kg"}, []string{"hoist"}},
		{"hoist at its limit passes", []string{"capacity: 500 kg", "capacity: 302.4 kg"}, nil},
		{"hoist in use", []string{"practice: {", "practice: {hoist_use: 60 %, "}, []string{"hoist"}},
		{"hoist on a lift too", []string{"capacity: 500 kg", "capacity: 160 kg"}, []string{"hoist", "hoist, lift 1"}},
		// 288 · 1.05 · 1.25 = 378 kg; 158 · 1.05 · 1.25 = 207.4 kg.
		{"bar", []string{"rating: 750 kg", "rating: 377 kg"}, []string{"bar"}},
		{"bar at its limit passes", []string{"rating: 750 kg", "rating: 378 kg"}, nil},
		{"bar in use", []string{"practice: {", "practice: {gear_use: 50 %, "}, []string{"bar", "pick_hole"}},
		{"pick hole", []string{"pick_rating: 600 kg", "pick_rating: 377 kg"}, []string{"pick_hole"}},
		{"pick hole on a lift too", []string{"pick_rating: 600 kg", "pick_rating: 207 kg"}, []string{"pick_hole", "pick_hole, lift 1"}},
		{"most", []string{"{box: 12}", "{box: 7}"}, []string{"most, box"}},
		{"most on a lift too", []string{"{box: 12}", "{box: 3}"}, []string{"most, box", "most, lift 1, box"}},
		{"bar tilt", []string{noLimit, "tilt_limit: {down: 0.5 deg, up: 8 deg}", trials.OnePick, trials.TwoPicks}, []string{"bar_tilt", "bar_tilt, lift 1"}},
		{"bar tilt on a lift only", []string{noLimit, "tilt_limit: {down: 3 deg, up: 8 deg}", "aim: 1 deg down", "aim: 2 deg down"}, []string{"bar_tilt, lift 1"}},
		{"bar tilt up", []string{noLimit, "tilt_limit: {down: 15 deg, up: 2 deg}", "aim: 1 deg down", "aim: 3 deg up"}, []string{"bar_tilt", "bar_tilt, lift 1"}},
		// The centre of gravity of it all lies about 0.23 m behind the hinge.
		{"light rear", []string{"practice: {", "practice: {least_share: 20 %, ", trials.OnePick, "{picks: 2, hoist: hoist, front_hole: 17, rear_hole: 41}"}, []string{"light_pick, rear"}},
		{"rear would push", []string{trials.OnePick, "{picks: 2, hoist: hoist, front_hole: 30, rear_hole: 41}"},
			[]string{"hoist, front", "slack, rear", "light_pick, rear", "slack, lift 1, rear"}},
		{"a push is less than no share at all", []string{"practice: {", "practice: {least_share: 0 %, ", trials.OnePick, "{picks: 2, hoist: hoist, front_hole: 30, rear_hole: 41}"}, []string{"light_pick, rear"}},
		{"headroom at trim", []string{"steel: 14 m", "steel: 7 m"}, []string{"headroom"}},
		{"headroom of one end", []string{"steel: 14 m", "steel: {front: 7 m, rear: 14 m}", trials.OnePick, trials.TwoPicks}, []string{"headroom, front"}},
		// A floor near the trim: the stack is lower at trim than at the roll-in.
		{"headroom at a roll-in only", []string{"lowest: 4.5 m", "lowest: 0.05 m", "steel: 14 m", "steel: 3.4 m"}, []string{"headroom, lift 1"}},
		{"chain reach", []string{"chain_length: 24 m", "chain_length: 9 m"}, []string{"chain_reach"}},
		// 14 - 0.55 - (L - 0.3)/2 <= 0.18 + 4 · 0.29 · cos 4.4248° + 0.095 = 1.4315 m from L = 24.337 m.
		{"chain reach of two falls", []string{"chain_length: 24 m", "falls: 2, chain_length: 24.34 m"}, nil},
		{"chain too short for two falls", []string{"chain_length: 24 m", "falls: 2, chain_length: 24.32 m"}, []string{"chain_reach"}},
		{"below the floor", []string{"lowest: 4.5 m", "highest_pick: 2 m"}, []string{"below_floor"}},
		{"on a high floor", []string{"steel: 14 m", "steel: 14 m\n    floor: 4.6 m"}, []string{"below_floor"}},
		{"dolly", []string{"dolly: dolly\n", "dolly: dolly\n    sets: [3, 5]\n"}, []string{"dolly, set 2"}},
		{"tips over", []string{"above_hinge: 95 mm", "below_hinge: 1500 mm", noLimit, "splay_holes: [0]"}, []string{"tips_over", "tips_over, lift 1"}},
		{"two picks roll over", []string{"above_hinge: 95 mm", "below_hinge: 1500 mm", noLimit, "splay_holes: [0]", trials.OnePick, trials.TwoPicks}, []string{"tips_over", "tips_over, lift 1"}},
		{"two picks roll over on a lift only", []string{"above_hinge: 95 mm", "below_hinge: 700 mm", noLimit, "splay_holes: [0]", trials.OnePick, trials.TwoPicks}, []string{"tips_over, lift 1"}},
		{"tips over on a lift only", []string{"above_hinge: 95 mm", "below_hinge: 700 mm", noLimit, "splay_holes: [0]"}, []string{"tips_over, lift 1"}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			s := trials.OpenJob(t, trials.Edited(t, tt.edits...)).Figures.Stacks[0]
			assert.Equal(t, tt.want, trials.OfRules(s.Holds, tt.want))
			assert.Equal(t, len(s.Holds) > 0, s.Held)
			if tt.want == nil {
				assert.Empty(t, s.Holds)
			}
		})
	}
}

// TestPinRules finds the limits of pins from the figures of the stack itself:
// a rating just under a joint's force on one pin holds that joint alone.
func TestPinRules(t *testing.T) {
	exact := []string{"practice: {", "practice: {aim_tolerance: 0 deg, "}
	s := trials.OpenJob(t, trials.Plain).Figures.Stacks[0]
	onePin := s.Cabinets[0].Link * 0.6 * 1.05 * 1.25
	second := s.Cabinets[1].Link * 0.6 * 1.05 * 1.25
	require.Greater(t, onePin, second)
	rating := say.Trimmed((onePin+second)/2) + " kN"
	held := trials.OpenJob(t, trials.Edited(t, append(exact, "link: 4.5 kN}\n  bars", "link: "+rating+"}\n  bars")...)).Figures.Stacks[0]
	assert.Equal(t, []string{"link_pin, joint 1"}, trials.Found(held.Holds))
	// The lower of two bodies' ratings: the bar's alone holds joint 1 too.
	held = trials.OpenJob(t, trials.Edited(t, append(exact, "link: 4.5 kN}\n  dollies", "link: "+rating+"}\n  dollies")...)).Figures.Stacks[0]
	assert.Equal(t, []string{"link_pin, joint 1"}, trials.Found(held.Holds))
	// One pin in the middle carries all of it: 1/0.6 of the force.
	one := trials.Edited(t, "practice: {", "practice: {aim_tolerance: 0 deg, ", "pin_ratings: {hinge: 6 kN, link: 4.5 kN}\n  bars", "pins: {hinge: 2, link: 1}\n      pin_ratings: {hinge: 6 kN, link: "+say.Trimmed(onePin*1.5)+" kN}\n  bars")
	assert.Equal(t, []string{"link_pin, joint 1"}, trials.Found(trials.OpenJob(t, one).Figures.Stacks[0].Holds))
	hinge := say.Trimmed(s.Cabinets[0].Hinge*0.6*1.05*1.25-0.01) + " kN"
	held = trials.OpenJob(t, trials.Edited(t, "{hinge: 6 kN, link: 4.5 kN}\n  bars", "{hinge: "+hinge+", link: 4.5 kN}\n  bars")).Figures.Stacks[0]
	assert.Contains(t, trials.Found(held.Holds), "hinge_pin, joint 1")
}

// TestLinkPushed: cabinets that lean far back hang ahead of their hinges, and
// their links are pushed; that is a hold, or a caution where all makers of a
// joint allow it.
func TestLinkPushed(t *testing.T) {
	back := []string{"aim: 1 deg down", "aim: 45 deg down", trials.OnePick, trials.TwoPicks, "tilt_limit: {down: 15 deg, up: 8 deg}", "splay_holes: [0]",
		"splay: [0, 0.5, 0.5, 1, 1, 2, 3, 4]", "splay: [0, 12, 12, 12, 12, 12, 12, 12]"}
	s := trials.OpenJob(t, trials.Edited(t, back...)).Figures.Stacks[0]
	pushed := trials.Found(s.Holds)
	assert.Contains(t, pushed, "link_pushed, joint 8")
	assert.Negative(t, s.Cabinets[7].Link)
	allowed := append(back, "link_arm: 370 mm", "link_arm: 370 mm\n      link_pushes: yes")
	s = trials.OpenJob(t, trials.Edited(t, allowed...)).Figures.Stacks[0]
	assert.NotContains(t, trials.Found(s.Holds), "link_pushed, joint 8")
	assert.Contains(t, trials.Found(s.Cautions), "link_pushed, joint 8")
}

// TestCautions: for each caution a job that has it, and where.
func TestCautions(t *testing.T) {
	tests := []struct {
		name  string
		edits []string
		want  string
	}{
		{"one pick", nil, "one_pick_turns"},
		{"aim missed", []string{"aim: 1 deg down", "aim: 30 deg down"}, "aim_missed"},
		{"lift tilt", []string{"practice: {", "practice: {lift_tilt: 2 deg, "}, "lift_tilt, lift 1"},
		{"one hoist", []string{trials.OnePick, trials.TwoPicks, "capacity: 500 kg", "capacity: 300 kg"}, "one_hoist, front"},
		{"one hoist's pick hole", []string{trials.OnePick, trials.TwoPicks, "pick_rating: 600 kg", "pick_rating: 290 kg"}, "one_hoist_gear, rear"},
		{"one hoist's link pushed", []string{trials.OnePick, trials.TwoPicks}, "one_hoist_gear, joint 1, front"},
		{"backs meet", []string{"splay: [0, 0.5, 0.5, 1, 1, 2, 3, 4]", "splay: [0, 0.5, 0.5, 1, 1, 2, 3, 12]"}, "backs_meet, joint 8"},
		{"mixed arms", []string{"rating: 750 kg", "rating: 750 kg\n      link_arm: 364 mm"}, "mixed_arms, joint 1"},
		{"a type without a limit", []string{"most: {box: 12}", "most: {other: 12}", "  cabinets:\n    box:", "  cabinets:\n" + trials.OtherBox + "    box:"}, "not_checked, bar"},
		{"no rating", []string{"      rating: 750 kg\n", ""}, "not_checked, bar"},
		{"no steel", []string{"    steel: 14 m\n", ""}, "not_checked"},
		{"no pin ratings", []string{"      pin_ratings: {hinge: 6 kN, link: 4.5 kN}\n  bars", "  bars"}, "not_checked, box"},
		{"light pick on a lift", []string{trials.OnePick, "{picks: 2, hoist: hoist, front_hole: 16, rear_hole: 41}", "practice: {", "practice: {least_share: 23 %, "}, "light_pick, lift 1, rear"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			s := trials.OpenJob(t, trials.Edited(t, tt.edits...)).Figures.Stacks[0]
			assert.Contains(t, trials.Found(s.Cautions), tt.want)
		})
	}
	calm := trials.OpenJob(t, trials.Edited(t, trials.OnePick, trials.TwoPicks, "link_arm: 370 mm", "link_arm: 370 mm\n      link_pushes: yes")).Figures.Stacks[0]
	assert.Empty(t, trials.Found(calm.Cautions))
}

// TestSlackFromANewton: a chain that carries a newton at the least, of masses at their
// worse sides and at any tilt, is not slack; 1 N is 0.10197 kg.
func TestSlackFromANewton(t *testing.T) {
	yaml := trials.Edited(t, trials.OnePick, "{picks: 2, hoist: hoist, front_hole: 1, rear_hole: 41}", "practice: {", "practice: {least_share: 0 %, ")
	h := trials.OpenJob(t, yaml).Stacks[0]
	require.Len(t, h.Finished.Reach, 3)
	for n := range h.Finished.Reach {
		was := h.Finished.Reach[n].Loads[1]
		h.Finished.Reach[n].Loads[1] = rig.PickLoad{Is: 5.10198, Spread: 100} // 5 % of 100 kg is 5 kg
		assert.Empty(t, trials.Found(rules.Check(h.Hung).Holds), "tilt %d", n)
		h.Finished.Reach[n].Loads[1].Is = 5.10196
		assert.Equal(t, []string{"slack, rear"}, trials.Found(rules.Check(h.Hung).Holds), "tilt %d", n)
		h.Finished.Reach[n].Loads[1] = was
	}
}

// TestLimitsToTheLastPart: a load passes its limit at one part in 10^9 over, and no
// longer at more: 288 · 1.05 = 302.4 kg on the hook.
func TestLimitsToTheLastPart(t *testing.T) {
	for capacity, held := range map[string]bool{"302.4 kg": false, "302.3999998 kg": false, "302.399999 kg": true} {
		s := trials.OpenJob(t, trials.Edited(t, "capacity: 500 kg", "capacity: "+capacity)).Figures.Stacks[0]
		assert.Equal(t, held, s.Held, capacity)
	}
}

// TestHingeTurns: where a hinge's pull changes sign from lift to lift, the
// caution stands at that joint and at no other.
func TestHingeTurns(t *testing.T) {
	for seed := range int64(60) {
		j := trials.OpenJob(t, trials.Gamble(seed).Job())
		for _, h := range j.Stacks {
			if len(h.Unknown()) > 0 {
				continue // its cautions are of more than these states
			}
			var want []string
			for k := range h.Cabinets {
				up, down := false, false
				for _, s := range h.States() {
					if k < len(s.Joints) {
						up = up || s.Joints[k].HingePull > rig.Alike
						down = down || s.Joints[k].HingePull < -rig.Alike
					}
				}
				if up && down {
					want = append(want, "hinge_turns, "+say.Joint(k))
				}
			}
			assert.Equal(t, want, trials.OfRules(h.Cautions, []string{"hinge_turns"}), "seed %d, %s", seed, h.ID)
		}
	}
}
