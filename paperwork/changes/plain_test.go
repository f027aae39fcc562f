package changes

import (
	"fmt"
	"math/rand"
	"reflect"
	"slices"
	"sort"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/paperwork/job"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/worked"
	"hangpack/testdata/deep"
	"hangpack/testdata/trials"
)

// The changes are held here against a comparison that is written apart, field by field,
// of jobs that were edited at random.

// unnoticed are the fields of gear that neither a hand nor a load would notice at a joint,
// and noticed are the others. A new field has to be put into one of both.
var (
	unnoticed = []string{"Origin", "Key", "Transport", "PinRatings", "LinkPushes"}
	noticed   = []string{"Name", "Mass", "Width", "Depth", "FrontHeight", "BackHeight", "HingeBehindFront", "HingeBelowTop", "HingePitch",
		"CentreOfGravity", "CentreUnknown", "LinkArm", "Holes", "HolesForJointAbove", "HingePins", "LinkPins"}
	unnoticedOfBar = []string{"Origin", "Rating", "PickRating", "Most", "TiltLimit", "PinRatings"}
	noticedOfBar   = []string{"Key", "Mass", "CentreOfGravity", "PickHoles", "LinkArm", "Holes"}
)

// written out is a piece of gear by the fields that are noticed.
func writtenOut(t *testing.T, gear any, noticed, unnoticed []string) string {
	t.Helper()
	v, all := reflect.ValueOf(gear), ""
	for i := range v.NumField() {
		name := v.Type().Field(i).Name
		require.True(t, slices.Contains(noticed, name) != slices.Contains(unnoticed, name), "%T.%s: is it noticed at a joint?", gear, name)
		if slices.Contains(noticed, name) {
			all += fmt.Sprintf("%s %v; ", name, v.Field(i).Interface())
		}
	}
	return all
}

// plainBodies are the bodies of a stack from the bar down.
func plainBodies(t *testing.T, s *job.Stack) []string {
	bodies := []string{fmt.Sprint(s.LinkArm, writtenOut(t, *s.Bar, noticedOfBar, unnoticedOfBar))}
	for _, c := range s.Cabinets {
		bodies = append(bodies, writtenOut(t, *c.Cabinet, noticed, unnoticed))
	}
	return bodies
}

// A plainCount is which joints are set anew, why, and how many there are.
type plainCount struct {
	moves                []string
	set, pins, out, stay int
}

// plainJoints compares the joints of two jobs.
func plainJoints(t *testing.T, old, new *worked.Job) (c plainCount) {
	for _, h := range new.Stacks {
		if h.Held() {
			continue
		}
		was := old.Stack(h.ID)
		for k, at := range h.Cabinets {
			if was == nil || was.Held() || k >= len(was.Cabinets) {
				c.set, c.pins = c.set+1, c.pins+at.LinkPins
				continue
			}
			before, now := plainBodies(t, was.Stack), plainBodies(t, h.Stack)
			why := ""
			for _, w := range []struct {
				other bool
				word  string
			}{{at.Hole.Label != was.Cabinets[k].Hole.Label || at.Hole.Splay != was.Cabinets[k].Hole.Splay, " hole"}, {before[k] != now[k], " above"}, {before[k+1] != now[k+1], " below"}} {
				if w.other {
					why += w.word
				}
			}
			if why == "" {
				c.stay++
				continue
			}
			c.set, c.pins, c.out = c.set+1, c.pins+at.LinkPins, c.out+was.Cabinets[k].LinkPins
			c.moves = append(c.moves, fmt.Sprintf("%s %d%s", h.ID, k+1, why))
		}
		if was != nil && !was.Held() && len(was.Cabinets) > len(h.Cabinets) {
			for _, gone := range was.Cabinets[len(h.Cabinets):] {
				c.out += gone.LinkPins
			}
		}
	}
	return c
}

// plainFacts are what else of a stack crew and venue are told, by the word for it. Those
// of holes are not told of a stack that is held in either.
func plainFacts(s *job.Stack, holes bool) map[string]string {
	facts := map[string]string{
		"side mark": string(s.Shape), "name": s.Name, "twin of": s.TwinOf, "sets": fmt.Sprint(s.Sets), "pins set": string(s.PinsSet), "dolly": "",
	}
	if s.Dolly != nil {
		facts["dolly"] = s.Dolly.Key
	}
	for _, c := range s.Cabinets {
		facts["pins per joint"] += fmt.Sprint(c.HingePins, " ", c.LinkPins, ";")
	}
	if holes {
		facts["note"] = s.Note
		for _, c := range s.Cabinets {
			hole := "none"
			if c.Transport != nil {
				hole = fmt.Sprint(*c.Transport)
			}
			if one := c.Name + " " + hole + ";"; !strings.Contains(facts["truck holes"], one) {
				facts["truck holes"] += one
			}
		}
	}
	return facts
}

// plainOthers are the facts of stacks that differ: 'SL: sets'.
func plainOthers(old, new *worked.Job) (all []string) {
	for _, h := range new.Stacks {
		was := old.Stack(h.ID)
		if was == nil {
			continue
		}
		holes := !was.Held() && !h.Held()
		before := plainFacts(was.Stack, holes)
		for of, is := range plainFacts(h.Stack, holes) {
			if is != before[of] {
				all = append(all, h.ID+": "+of)
			}
		}
	}
	sort.Strings(all)
	return all
}

// plainFindings are the kinds of some findings that others do not have.
func plainFindings(stack string, findings, others []rules.Finding) (all []string) {
	kind := func(f rules.Finding) string {
		return fmt.Sprint(stack, " ", f.Rule, " ", f.Of, " ", f.Where.End, " ", f.Where.Gear)
	}
	for _, f := range findings {
		had := slices.ContainsFunc(others, func(o rules.Finding) bool { return kind(o) == kind(f) })
		if !had && !slices.Contains(all, kind(f)) {
			all = append(all, kind(f))
		}
	}
	return all
}

// kindsIn are the kinds of findings in a list.
func kindsIn(list []FoundChange) (all []string) {
	for _, f := range list {
		all = append(all, plainFindings(f.Stack, []rules.Finding{f.Finding}, nil)...)
	}
	return slices.Compact(all)
}

// An edit changes a stack as it was read.
type edit func(r *rand.Rand, s *job.Stack)

// anotherType puts another type of cabinet into the place of each of one.
func anotherType(change func(r *rand.Rand, c *job.Cabinet)) edit {
	return func(r *rand.Rand, s *job.Stack) {
		was := s.Cabinets[r.Intn(len(s.Cabinets))].Cabinet
		other := *was
		change(r, &other)
		for i := range s.Cabinets {
			if s.Cabinets[i].Cabinet == was {
				s.Cabinets[i].Cabinet = &other
			}
		}
	}
}

var edits = map[string]edit{
	"none":       func(*rand.Rand, *job.Stack) {},
	"a mass":     anotherType(func(_ *rand.Rand, c *job.Cabinet) { c.Mass *= 1.01 }),
	"a name":     anotherType(func(_ *rand.Rand, c *job.Cabinet) { c.Name += "x" }),
	"a source":   anotherType(func(_ *rand.Rand, c *job.Cabinet) { c.AsOf = "2026-01-02" }),
	"a key":      anotherType(func(_ *rand.Rand, c *job.Cabinet) { c.Key += "x" }),
	"a rating":   anotherType(func(_ *rand.Rand, c *job.Cabinet) { c.PinRatings = &job.PinRatings{Hinge: 9e5, Link: 9e5} }),
	"pins":       anotherType(func(_ *rand.Rand, c *job.Cabinet) { c.LinkPins = 3 - c.LinkPins }),
	"truck hole": anotherType(func(r *rand.Rand, c *job.Cabinet) { c.Transport = &c.Holes[r.Intn(len(c.Holes))] }),
	"a bar":      func(_ *rand.Rand, s *job.Stack) { bar := *s.Bar; bar.Key += "x"; s.Bar = &bar },
	"bar rating": func(_ *rand.Rand, s *job.Stack) { bar := *s.Bar; bar.Rating += 1; s.Bar = &bar },
	"a label":    func(r *rand.Rand, s *job.Stack) { relabel(s, r.Intn(len(s.Cabinets))) },
	"a hole": func(r *rand.Rand, s *job.Stack) {
		c := &s.Cabinets[r.Intn(len(s.Cabinets))]
		c.Hole = c.Joint[r.Intn(len(c.Joint))]
	},
	"sets": func(_ *rand.Rand, s *job.Stack) {
		if n := len(s.Cabinets); n > 1 {
			s.Sets = job.Sets{1, n - 1}
		}
	},
	"the way":  func(r *rand.Rand, s *job.Stack) { s.PinsSet = []job.PinsSet{job.OnDolly, job.InTheAir, ""}[r.Intn(3)] },
	"a shape":  func(r *rand.Rand, s *job.Stack) { s.Shape = []job.Shape{"circle", "diamond", ""}[r.Intn(3)] },
	"new name": func(_ *rand.Rand, s *job.Stack) { s.Name += "x" },
	"a note":   func(_ *rand.Rand, s *job.Stack) { s.Note += "x" },
	"a twin":   func(_ *rand.Rand, s *job.Stack) { s.TwinOf = map[bool]string{true: "", false: "X"}[s.TwinOf != ""] },
	"too low":  func(_ *rand.Rand, s *job.Stack) { s.Trim = job.Trim{Height: -9} },
	"a cabinet": func(_ *rand.Rand, s *job.Stack) {
		s.Cabinets = append(slices.Clip(s.Cabinets), s.Cabinets[len(s.Cabinets)-1])
		s.Sets = job.Sets{len(s.Cabinets)}
	},
}

// relabel stamps the hole of a joint otherwise, in its list too.
func relabel(s *job.Stack, k int) {
	c := &s.Cabinets[k]
	c.Joint = slices.Clone(c.Joint)
	for i, hole := range c.Joint {
		if hole == c.Hole {
			c.Joint[i].Label = "ZZ"
		}
	}
	c.Hole.Label = "ZZ"
}

// edited is a job with some stacks edited, first one that is not held by the edit of a
// number, and worked out anew.
func edited(t *testing.T, yaml string, first int, r *rand.Rand) *worked.Job {
	t.Helper()
	was := trials.OpenJob(t, yaml)
	j, flown := was.Job, 0
	for i, h := range was.Stacks {
		if !h.Held() {
			flown = i
		}
	}
	names := make([]string, 0, len(edits))
	for name := range edits {
		names = append(names, name)
	}
	sort.Strings(names)
	for n := range 1 + r.Intn(3) {
		edits[names[(first+5*n)%len(names)]](r, &j.Stacks[[]int{flown, r.Intn(len(j.Stacks))}[n%2]])
	}
	j.Fingerprint = "edited"
	w, err := worked.Out("edited.yaml", j)
	require.NoError(t, err)
	return w
}

// TestChangesPlainly holds the changes of random pairs, there and back, against the plain
// comparison: joints with their reasons, counts, facts, and findings.
func TestChangesPlainly(t *testing.T) {
	r := rand.New(rand.NewSource(31))
	moves, others, found := 0, map[string]int{}, 0
	for seed := range int64(deep.Of(120, 600)) {
		yaml := trials.Gamble(60_000 + seed%150).Job()
		old, new := trials.OpenJob(t, yaml), edited(t, yaml, int(seed), r)
		for _, pair := range [][2]*worked.Job{{old, new}, {new, old}} {
			c, want := Compare(pair[0], pair[1]), plainJoints(t, pair[0], pair[1])
			var got []string
			for _, m := range c.Joints {
				got = append(got, fmt.Sprintf("%s %d %s", m.Stack, m.Cabinet, strings.Join(m.Why, " ")))
			}
			assert.Equal(t, want.moves, got, "seed %d", seed)
			assert.Equal(t, []int{len(want.moves), want.set, want.pins, want.out, want.stay}, []int{c.Move, c.Set, c.Pins, c.Out, c.Stay}, "seed %d", seed)
			moves += len(got)
			assert.Equal(t, plainOthers(pair[0], pair[1]), toldFacts(c, others), "seed %d", seed)
			found += comparesFindings(t, c, pair[0], pair[1])
		}
	}
	require.Greater(t, moves, 100)
	require.Greater(t, found, 5)
	for _, of := range []string{"side mark", "name", "twin of", "sets", "pins set", "pins per joint", "note", "truck holes"} {
		require.NotZero(t, others[of], of)
	}
}

// toldFacts are those facts of stacks that the changes name and the plain comparison
// knows; it counts them.
func toldFacts(c List, counts map[string]int) (all []string) {
	known := plainFacts(&job.Stack{}, true)
	for _, o := range c.Others {
		if _, is := known[o.What]; o.Stack != "" && (is || o.What == "truck holes" || o.What == "pins per joint") {
			counts[o.What]++
			all = append(all, o.Stack+": "+o.What)
		}
	}
	sort.Strings(all)
	return all
}

// comparesFindings holds holds and cautions, gained and lost, against the plain ones.
func comparesFindings(t *testing.T, c List, old, new *worked.Job) (n int) {
	t.Helper()
	var holds, added, gone []string
	for _, h := range new.Stacks {
		was := old.Stack(h.ID)
		holds = append(holds, plainFindings(h.ID, h.Holds, nil)...)
		if was.Held() != h.Held() {
			continue
		}
		added = append(added, plainFindings(h.ID, h.Cautions, was.Cautions)...)
		gone = append(gone, plainFindings(h.ID, was.Cautions, h.Cautions)...)
	}
	assert.ElementsMatch(t, holds, unique(kindsIn(c.Holds)))
	assert.ElementsMatch(t, added, unique(kindsIn(c.CautionsAdded)))
	assert.ElementsMatch(t, gone, unique(kindsIn(c.CautionsGone)))
	return len(added) + len(gone)
}

func unique(all []string) []string {
	sort.Strings(all)
	return slices.Compact(all)
}
