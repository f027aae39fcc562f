package laws

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"gopkg.in/yaml.v3"

	"hangpack/calc"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// Laws of a stack that hangs in another way: cut after a lift, from another pick
// hole, from one hoist of two.

// onlyStack is a job of one stack, changed.
func (t *trial) onlyStack(i int, change func(s tree)) *worked.Job {
	return t.changed(func(n tree) {
		s := n.at("stacks").items()[i]
		n.inFull(s)
		n.keepStacks(i)
		change(s)
	})
}

// cutTo leaves the first n cabinets of a stack, on one dolly, and what is tied to
// them.
func (s tree) cutTo(n int) {
	list, left := s.at("cabinets"), n
	var kept []*yaml.Node
	for _, c := range list.items() {
		some := min(left, len(c.at("splay").Content))
		if some == 0 {
			break
		}
		c.at("splay").Content = c.at("splay").Content[:some]
		c.put("count", fmt.Sprint(some))
		kept, left = append(kept, c.Node), left-some
	}
	list.Content = kept
	s.put("sets", fmt.Sprintf("[%d]", n))
	if extras := s.at("extras"); extras.Node != nil {
		extras.Content = slices.DeleteFunc(extras.Content, func(e *yaml.Node) bool {
			on := tree{e}.at("on_cabinet")
			return on.Node != nil && int(trials.Number(on.Value)) > n
		})
	}
}

// hangFrom names the pick hole of a stack on one pick.
func (s tree) hangFrom(hole rig.Label) {
	text := hole.Text
	if !hole.Number {
		text = fmt.Sprintf("%q", text)
	}
	s.at("hang").put("pick_hole", text)
}

// cutJob is a job of one stack, cut to its first n cabinets.
func (t *trial) cutJob(i, n int) *worked.Job {
	return t.onlyStack(i, func(s tree) {
		s.cutTo(n)
		if len(t.Stacks[i].Picks) == 1 {
			s.hangFrom(t.Figures.Stacks[i].Picks[0].Hole)
		}
	})
}

// liftsAreStacks: after a lift the stack hangs as one does that ends there.
func liftsAreStacks(t *trial) {
	i := t.stackWith(func(f worked.StackFigures) bool { return len(f.Lifts) > 0 })
	if i < 0 {
		return
	}
	was := t.Figures.Stacks[i]
	l := was.Lifts[t.Intn(len(was.Lifts))]
	is := t.cutJob(i, l.Cabinets)
	if is == nil {
		return
	}
	t.cases++
	s, of := is.Figures.Stacks[0], fmt.Sprintf("%s, lift %d: ", was.ID, l.Set)
	t.near(of+"mass", s.Mass, l.Mass)
	t.near(of+"tilt", s.Tilt, l.Tilt)
	t.near(of+"aim", s.Aim, l.Aim)
	t.near(of+"last aim", s.LastAim, l.LastAim)
	high := math.Inf(-1)
	for k, p := range s.Points {
		high = math.Max(high, p.PickHeight)
		t.near(of+"hook", s.Hooks[k], l.Hooks[k])
		if s.Held == was.Held { // else cut in one of both
			t.near(of+"least", s.Low[k], l.Low[k])
			t.near(of+"most", s.High[k], l.High[k])
		}
	}
	t.near(of+"drop", high-s.Lowest, l.Drop)
}

// finishedWhateverItsSets: how it came to hang is not in how it hangs.
func finishedWhateverItsSets(t *trial) {
	is := t.changedInPlace(func(n tree) {
		for _, s := range n.at("stacks").items() {
			s.drop("dolly")
			s.drop("sets")
		}
	})
	t.alike(is, but{"lifts": nil, "set": nil, "most": nil, "governing": nil, "hoist_use": nil, "chain_needed_m": nil}.and(anyFinding).and(anotherJob))
	if is == nil {
		return
	}
	for i, s := range is.Figures.Stacks { // fewer states, less held
		t.within(s.ID+": held in one lift", s.Holds, t.Figures.Stacks[i].Holds)
	}
}

// optionsAreHoles: what is told of a pick hole is how the stack hangs from it.
func optionsAreHoles(t *trial) {
	i := t.stackWith(func(f worked.StackFigures) bool { return len(f.Options) > 0 })
	if i < 0 {
		return
	}
	was := t.Figures.Stacks[i]
	o := was.Options[t.Intn(len(was.Options))]
	is := t.onlyStack(i, func(s tree) { s.hangFrom(o.Hole) })
	if is == nil {
		return
	}
	t.cases++
	s := is.Figures.Stacks[0]
	t.must(s.Picks[0].Hole == o.Hole, "%s: hangs from %s", s.ID, s.Picks[0].Hole.Text)
	t.near(fmt.Sprintf("%s: aim from pick hole %s", s.ID, o.Hole.Text), o.Aim, s.Aim)
	for k, other := range s.Options {
		t.near(fmt.Sprintf("%s: aim from pick hole %s, told again", s.ID, other.Hole.Text), was.Options[k].Aim, other.Aim)
	}
}

// aloneIsOnePick: with the other hoist slack a stack hangs as from one pick, and what
// is found of that is what is found of the one, at rest.
func aloneIsOnePick(t *trial) {
	i, k := t.stackWith(func(f worked.StackFigures) bool { return len(f.Picks) == 2 }), t.Intn(2)
	if i < 0 {
		return
	}
	was, state := t.Figures.Stacks[i], t.Stacks[i].Finished.Alone[k]
	is := t.changed(func(n tree) {
		n.at("practice").put("aim_tolerance", "0") // at rest there
		s := n.at("stacks").items()[i]
		n.inFull(s)
		n.keepStacks(i)
		s.oneOf(k, was.Picks[k].Hole)
		s.drop("dolly")
		s.drop("sets")
	})
	if is == nil {
		return
	}
	t.cases++
	of, one := fmt.Sprintf("%s alone: ", was.Points[k].ID), is.Figures.Stacks[0]
	t.near(of+"tilt", one.Tilt, calc.Degrees(state.Tilt))
	t.near(of+"drop", one.Points[0].PickHeight-one.Lowest, state.Drop())
	t.near(of+"hook", one.Hooks[0], was.Alone[k])
	t.near(of+"point", one.Points[0].Static*(1+t.Practice.MassTolerance), was.Points[k].Alone)
	for n, c := range one.Cabinets {
		t.near(of+"hinge", c.Hinge*1000, state.Joints[n].Hinge())
		t.near(of+"link", c.Link*1000, state.Joints[n].Link)
	}
	end := [...]string{"front", "rear"}[k]
	t.must(finds(is, "hoist") == t.findsAt("one_hoist", was, end), "%shoist found otherwise", of)
	gear := finds(is, "bar", "pick_hole", "hinge_pin", "link_pin", "tips_over")
	for _, v := range is.Stacks[0].Ways() { // wherever unknown centres lie
		for n, j := range v.Finished.Joints {
			gear = gear || -j.Link*(1+t.Practice.MassTolerance) > 1 && !t.Stacks[i].MayPush(n)
		}
	}
	t.must(gear == t.findsAt("one_hoist_gear", was, end), "%sgear found otherwise: %q, alone %q", of, placesOf(one.Holds), placesOf(findingsOf(was)))
}

// finds reports whether the first stack is held by any of some rules.
func finds(j *worked.Job, ids ...string) bool {
	return slices.ContainsFunc(j.Figures.Stacks[0].Holds, func(f rules.Finding) bool { return slices.Contains(ids, f.Rule) })
}

// findsAt reports whether a finished stack has a finding of a rule at one of its two ends.
func (t *trial) findsAt(rule string, s worked.StackFigures, end string) bool {
	return slices.ContainsFunc(findingsOf(s), func(f rules.Finding) bool {
		return f.Rule == rule && f.Where.Lift == 0 && strings.HasSuffix(f.Where.String(), end)
	})
}

// oneOf leaves the front or the rear hoist of two, 0 or 1.
func (s tree) oneOf(k int, hole rig.Label) {
	end := [...]string{"front", "rear"}[k]
	for _, section := range []tree{s, s.at("hang")} {
		for _, key := range []string{"steel", "rigging_below", "rigging_above", "hoist"} {
			if at := section.at(key); at.Node != nil && at.at(end).Node != nil {
				section.put(key, strings.TrimSpace(at.at(end).text()))
			}
		}
	}
	hang := s.at("hang")
	hang.drop("front_hole")
	hang.drop("rear_hole")
	hang.put("picks", "1")
	s.hangFrom(hole)
}
