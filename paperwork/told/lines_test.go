package told_test

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/paperwork/report"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/told"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// numbersOf reads a list of numbers back: '2 to 5, 7 and 9'.
func numbersOf(t *testing.T, list string) (all []int) {
	t.Helper()
	for _, part := range regexp.MustCompile(`, | and `).Split(list, -1) {
		from, to, run := strings.Cut(part, " to ")
		if !run {
			to = from
		}
		a, err := strconv.Atoi(from)
		require.NoError(t, err, list)
		b, err := strconv.Atoi(to)
		require.NoError(t, err, list)
		for n := a; n <= b; n++ {
			all = append(all, n)
		}
	}
	return all
}

var (
	listWords = `((?:\d+(?: to \d+)?(?:, | and )?)+?)`
	ofLifts   = regexp.MustCompile(`^(finished)?(?: and )?(?:lifts? ` + listWords + `)?(?:$|, (?:joints|joint|front|rear|sets|set|[a-z])|: )`)
	ofJoints  = regexp.MustCompile(`joints? ` + listWords + `(?:$|, (?:front|rear|sets?|[a-z])|;)`)
	ofSets    = regexp.MustCompile(`sets? ` + listWords + `(?:$|, [a-z]|;|:)`)
)

// placesIn reads the words of a line back as lifts, joints and sets: 'lift joint set'.
func placesIn(t *testing.T, words string) (all []string) {
	t.Helper()
	for _, group := range strings.Split(words, "; ") {
		group = strings.TrimPrefix(strings.TrimPrefix(group, "front, "), "rear, ")
		lifts, joints, sets := []int{0}, []int{0}, []int{0}
		if m := ofLifts.FindStringSubmatch(group); m != nil && m[2] != "" {
			lifts = numbersOf(t, m[2])
			if m[1] != "" {
				lifts = append(lifts, 0)
			}
		}
		if m := ofJoints.FindStringSubmatch(group); m != nil {
			joints = numbersOf(t, m[1])
		}
		if m := ofSets.FindStringSubmatch(group); m != nil {
			sets = numbersOf(t, m[1])
		}
		for _, l := range lifts {
			for _, k := range joints {
				for _, s := range sets {
					all = append(all, fmt.Sprint(l, k, s))
				}
			}
		}
	}
	slices.Sort(all)
	return all
}

// TestEveryFindingStandsInOneLine: in random jobs each finding of check -json is named, its
// rule and its place, by one line and no line names another; the terminal has those lines
// and no more, and counts them.
func TestEveryFindingStandsInOneLine(t *testing.T) {
	several := 0
	for seed := range int64(150) {
		g := trials.Gamble(53_000 + seed)
		g.Wild = seed%3 == 0
		j := trials.OpenJob(t, g.Job())
		text := strings.Join(strings.Fields(report.Check(j)), " ")
		for i, h := range j.Stacks {
			for _, findings := range [][]rules.Finding{j.Figures.Stacks[i].Holds, j.Figures.Stacks[i].Cautions} {
				lines := told.Gathered(findings)
				var want, got []string
				for _, f := range findings {
					want = append(want, fmt.Sprint(f.Rule, f.Where.End, f.Where.Gear, " ", f.Where.Lift, f.Where.Joint, f.Where.Set))
				}
				for _, l := range lines {
					words := told.Places(l.At...)
					for _, at := range placesIn(t, words) {
						got = append(got, fmt.Sprint(l.Rule, l.Where.End, l.Where.Gear, " ", at))
					}
					assert.Contains(t, words, string(l.Where.End))
					assert.Contains(t, words, l.Where.Gear)
					assert.Contains(t, text, strings.Join(strings.Fields(say.Listed(l.Rule, words)+" "+l.Words()), " "), "seed %d", seed)
					if len(l.At) > 1 {
						several++
					}
				}
				slices.Sort(want)
				slices.Sort(got)
				assert.Equal(t, slices.Compact(want), slices.Compact(got), "seed %d, %s", seed, h.ID)
			}
		}
		assert.Equal(t, countsOf(j), strings.Count(report.Check(j), "\n  caution  "), "seed %d", seed)
		if t.Failed() {
			t.Fatalf("seed %d", seed)
		}
	}
	assert.Greater(t, several, 100)
}

// countsOf are the counts of all stacks together.
func countsOf(j *worked.Job) (n int) {
	for _, h := range j.Stacks {
		cautions, unchecked := told.Counts(h)
		n += cautions + unchecked
	}
	return n
}

// knocks are hinges that turn over at joints 2 to 17.
func knocks() (all []rules.Finding) {
	for k := 2; k <= 17; k++ {
		all = append(all, rules.Finding{Rule: "hinge_turns", Title: "Hinge turns over", Where: rig.Where{Joint: k}, Says: "expect a knock"})
	}
	return all
}

func TestSixteenKnocksAreOneLine(t *testing.T) {
	lines := told.Gathered(knocks())
	require.Len(t, lines, 1)
	assert.Equal(t, "joints 2 to 17", told.Places(lines[0].At...))
	assert.Equal(t, "joints 2 to 17", told.WhereWords(lines[0].At...))
	assert.Equal(t, "expect a knock", lines[0].Words())
	assert.Equal(t, "Hinge turns over: expect a knock", lines[0].OnPaper())
	assert.Equal(t, "no hold found by this calculation; 1 caution; 0 not checked", told.Verdict(&rules.Checked{Cautions: knocks()}))
	assert.Equal(t, "DO NOT FLY: 1 hold", told.Verdict(&rules.Checked{Holds: knocks()}))
	assert.Equal(t, "DO NOT FLY: 1 hold", told.ShortVerdict(&rules.Checked{Holds: knocks()}))
	other := append(knocks(), rules.Finding{Rule: "hinge_turns", Where: rig.Where{Joint: 18}, Says: "expect another knock"})
	assert.Len(t, told.Gathered(other), 2, "what says something else is a line of its own")
}

// TestTheWorstIsSaid: the sentence is that of the worst place, which is named; the gravest
// rule comes first, and of one rule the worst end.
func TestTheWorstIsSaid(t *testing.T) {
	pin := func(lift, joint int, by float64) rules.Finding {
		return rules.Finding{Rule: "link_pin", Where: rig.Where{Lift: lift, Joint: joint}, Says: fmt.Sprint(by, " is too much"), By: by}
	}
	hook := func(end rig.End, by float64) rules.Finding {
		return rules.Finding{Rule: "hoist", Where: rig.Where{End: end}, Says: "over", By: by}
	}
	lines := told.Gathered([]rules.Finding{{Rule: "aim_missed", Says: "off"}, pin(0, 1, 1.1), pin(1, 1, 1.2), pin(2, 1, 1.5), pin(2, 2, 1.3), hook(rig.Front, 1.1), hook(rig.Rear, 1.4)})
	require.Len(t, lines, 4)
	assert.Equal(t, rig.Rear, lines[0].Where.End)
	assert.Equal(t, rig.Front, lines[1].Where.End)
	assert.Equal(t, "1.5 is too much (worst: lift 2, joint 1)", lines[2].Words())
	assert.Equal(t, "finished and lift 1: joint 1; lift 2: joints 1 and 2", told.Places(lines[2].At...))
	assert.Equal(t, "the finished stack and lift 1 (dolly A): joint 1; lift 2 (dolly B): joints 1 and 2", told.WhereWords(lines[2].At...))
	assert.Equal(t, "aim_missed", lines[3].Rule)
	lines = told.Gathered([]rules.Finding{pin(0, 1, 1.6), pin(1, 1, 1.2)})
	assert.Equal(t, "1.6 is too much (worst: joint 1)", lines[0].Words())
	lines = told.Gathered([]rules.Finding{pin(0, 1, 1.6), pin(1, 1, 1.2), pin(2, 1, 1.6)})
	assert.Equal(t, "1.6 is too much (worst: joint 1)", lines[0].Words(), "the first of equals, and not all say the same")
	gear, lift := pin(0, 0, 8), pin(1, 0, 4)
	gear.Where.Gear, lift.Where.Gear = "box", "box"
	assert.Equal(t, "8 is too much (worst: finished)", told.Gathered([]rules.Finding{gear, lift})[0].Words(), "the line names the gear already")
	for _, by := range [][2]float64{{0.1, 0.2}, {-0.2, -0.1}} {
		lines = told.Gathered([]rules.Finding{pin(0, 1, by[0]), pin(1, 1, by[1])})
		require.Len(t, lines, 1)
		assert.Equal(t, fmt.Sprint(by[1], " is too much (worst: lift 1, joint 1)"), lines[0].Words())
	}
}

// TestOneLineIsOfOnePart: of what one hoist alone could not hold each kind of part, a link
// that is pushed and a stack that tips over are lines of their own.
func TestOneLineIsOfOnePart(t *testing.T) {
	part := map[string]string{} // of what a finding is of
	trials.EachStack(t, 56_000, func(t *testing.T, h *rules.Checked, f worked.StackFigures) {
		for _, f := range append(f.Holds, f.Cautions...) {
			if f.Rule != rules.OneHoistGear {
				continue
			}
			says, _, _ := strings.Cut(f.Says, ", with the ")
			if strings.Contains(says, "tips over") {
				says = "tips over"
			}
			before, seen := part[f.Of]
			assert.True(t, !seen || before == says, "%s: %s and %s", f.Of, before, says)
			part[f.Of] = says
		}
	})
	assert.Len(t, part, 6, "bar, pick hole, both kinds of pins, push, balance")
}

// TestWhereInWords: on paper a lift has the dolly that it joins beside it, and a set is
// its dolly; a place by itself stands at a terminal as data has it.
func TestWhereInWords(t *testing.T) {
	for at, want := range map[rig.Where]string{{}: "the finished stack", {Lift: 1}: "lift 1 (dolly A)", {Lift: 2, Joint: 3}: "lift 2 (dolly B), joint 3", {Set: 2}: "dolly B", {End: rig.Front}: "front"} {
		assert.Equal(t, want, told.WhereWords(at), at)
		assert.Equal(t, at.String(), told.Places(at), at)
	}
	for want, at := range map[string][]rig.Where{
		"finished and lifts 1 to 3, rear":          {{End: rig.Rear}, {Lift: 1, End: rig.Rear}, {Lift: 2, End: rig.Rear}, {Lift: 3, End: rig.Rear}},
		"sets 1 and 3":                             {{Set: 1}, {Set: 3}},
		"joints 2, 4 to 6 and 8":                   {{Joint: 2}, {Joint: 4}, {Joint: 5}, {Joint: 6}, {Joint: 8}},
		"front, finished; lift 1: joint 2":         {{End: rig.Front}, {Lift: 1, Joint: 2, End: rig.Front}},
		"finished: joint 1; lift 1: joint 2":       {{Joint: 1}, {Lift: 1, Joint: 2}},
		"lifts 1 and 2, box":                       {{Lift: 1, Gear: "box"}, {Lift: 2, Gear: "box"}},
		"finished: joints 1 to 4; lift 2: joint 1": {{Joint: 1}, {Joint: 2}, {Joint: 3}, {Joint: 4}, {Lift: 2, Joint: 1}},
	} {
		assert.Equal(t, want, told.Places(at...))
	}
}

// TestEveryRuleIsGrave: each rule of the table says how grave it is.
func TestEveryRuleIsGrave(t *testing.T) {
	for _, r := range rules.All() {
		assert.True(t, r.Grave >= rules.ComesDown && r.Grave <= rules.Unknown, "%s: give its row how grave it is", r.ID)
	}
	assert.Less(t, rules.Rank("tips_over"), rules.Rank("light_pick"))
	assert.Equal(t, len(rules.All())-1, rules.Rank("not_checked"))
}
