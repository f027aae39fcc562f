package laws

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"hangpack/paperwork/job"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/worked"
)

// Laws of what is not known exactly: windows of readings, unknown centres of
// gravity, one hoist of two slack.

// windowsWiden: without any tolerance a window is the reading, unless a centre of
// gravity is not known; and no window of the job is narrower than that. Where a centre
// is not known a window is a range even then, and one that is wider before it is cut may
// be cut to less: the more tilts, the less may hang.
func windowsWiden(t *trial) {
	none := t.changed(func(n tree) {
		for _, key := range []string{"mass_tolerance", "aim_tolerance", "reading_floor"} {
			n.at("practice").put(key, "0")
		}
	})
	if none == nil {
		return
	}
	for i, h := range none.Stacks {
		wide := allAloft(t.Stacks[i], t.Figures.Stacks[i])
		for k, exact := range allAloft(h, none.Figures.Stacks[i]) {
			t.cases++
			for n, kg := range exact.hooks.Hooks {
				if len(h.Unknown()) > 0 && !(h.Held() && t.Stacks[i].Held()) {
					continue
				}
				t.atLeast(exact.of+": most", exact.hooks.High[n], wide[k].hooks.High[n])
				t.atLeast(exact.of+": least, turned", -exact.hooks.Low[n], -wide[k].hooks.Low[n])
				if len(h.Unknown()) == 0 {
					t.near(exact.of+": least without tolerance", kg, exact.hooks.Low[n])
					t.near(exact.of+": most without tolerance", kg, exact.hooks.High[n])
				}
			}
		}
	}
}

// unknownIsEveryCorner: with centres of gravity that are not known the least, the
// most and the most loaded point are those of jobs that give them, in the middle of
// the outline and, type by type, in each corner of its middle third. All that is rated is strong
// enough, for windows are cut to what may hang wherever the centres lie.
func unknownIsEveryCorner(t *trial) {
	if t.stackWith(func(f worked.StackFigures) bool { return len(t.Job.Stack(f.ID).Unknown()) > 0 }) < 0 {
		return
	}
	strong := func(n tree) { n.eachOf(func(_ string, v tree) { v.set(900_000, "N") }, job.Load) }
	is := t.changed(strong)
	known := []*worked.Job{is}
	for way := range t.tree.waysUnknown() {
		known = append(known, t.changed(func(n tree) {
			strong(n)
			n.know(way)
		}))
	}
	if slices.Contains(known, nil) {
		return
	}
	known = known[1:]
	for i, s := range is.Figures.Stacks {
		t.cases++
		all := make([]worked.StackFigures, len(known))
		for k, j := range known {
			all[k] = j.Figures.Stacks[i]
		}
		t.near(s.ID+": mass", all[0].Mass, s.Mass)
		if len(t.Stacks[i].Picks) == 1 && s.Picks[0] != all[1].Picks[0] {
			continue // auto takes another hole for another centre
		}
		for n, p := range s.Points {
			most := inLine(t.Stacks[i], n) // a pick that would have to push carries nothing
			for _, k := range all {
				most = math.Max(most, k.Points[n].Most.Static)
			}
			t.must(math.Abs(most-math.Max(p.Most.Static, inLine(t.Stacks[i], n))) <= 1.01/newton, "%s: most is %v, has to be %v", p.ID, p.Most.Static, most)
			t.windowOfAll(s.ID, n, s.HookFigures, all, func(k worked.StackFigures) worked.HookFigures { return k.HookFigures })
			for l, lift := range s.Lifts {
				t.windowOfAll(fmt.Sprintf("%s, lift %d", s.ID, l+1), n, lift.HookFigures, all, func(k worked.StackFigures) worked.HookFigures { return k.Lifts[l].HookFigures })
			}
		}
	}
}

func (t *trial) windowOfAll(of string, hook int, is worked.HookFigures, all []worked.StackFigures, hooks func(worked.StackFigures) worked.HookFigures) {
	low, high := math.Inf(1), math.Inf(-1)
	for _, k := range all {
		low, high = math.Min(low, hooks(k).Low[hook]), math.Max(high, hooks(k).High[hook])
	}
	t.near(of+": hook", hooks(all[0]).Hooks[hook], is.Hooks[hook])
	floor := t.Practice.ReadingFloor
	t.atLeast(of+": least, turned", -low, -is.Low[hook]+floor)
	t.must(is.Low[hook] <= low+floor && is.High[hook] >= high-floor, "%s: window %v to %v of %v to %v", of, is.Low[hook], is.High[hook], low, high)
}

// unknown are the cabinets whose centre of gravity is not known.
func (n tree) unknown() (all []tree) {
	for _, c := range n.at("gear", "cabinets").items() {
		if c.at("centre_of_gravity").Value == job.NotKnown {
			all = append(all, c)
		}
	}
	return all
}

// waysUnknown is in how many ways their centres may lie: all in the middle of their
// outlines, or each in any of four corners.
func (n tree) waysUnknown() int { return 1 + 1<<(2*len(n.unknown())) }

// know gives every centre of gravity that is not known, in one of those ways: the middle
// of the outline, or from there a sixth of depth and of front either way.
func (n tree) know(way int) {
	corner := way - 1
	for _, c := range n.unknown() {
		depth, front := c.at("depth").si(), c.at("front_height").si()
		behind, below := depth/2, front/2
		if way > 0 {
			behind += depth / 6 * float64(corner&1*2-1)
			below += front / 6 * float64(corner&2-1)
			corner >>= 2
		}
		c.put("centre_of_gravity", fmt.Sprintf("{behind_front: %s, below_top: %s}", quantityText(behind, "m"), quantityText(below, "m")))
	}
}

// oneMustHoldOrMay: what is a caution of one hoist alone is a hold where each must
// hold all, and nothing else changes.
func oneMustHoldOrMay(t *trial) {
	other := !t.Practice.OneMustHold
	is := t.changed(func(n tree) { n.at("practice").put("one_must_hold", map[bool]string{true: "yes", false: "no"}[other]) })
	t.alike(is, anyFinding.and(anotherJob))
	if is == nil {
		return
	}
	for i, s := range is.Figures.Stacks {
		was := t.Figures.Stacks[i]
		t.must(slices.Equal(placesOf(butTwins(findingsOf(was))), placesOf(butTwins(findingsOf(s)))), "%s: finds other things", s.ID)
		loose, strict := s, was
		if other {
			loose, strict = was, s
		}
		for _, f := range append(slices.Clone(loose.Holds), strict.Cautions...) {
			t.must(!strings.HasPrefix(f.Rule, "one_hoist"), "%s: %s on the wrong side", s.ID, say.Listed(f.Rule, f.Where.String()))
		}
	}
}

// butTwins are findings but for those of twins: of a stack that is held now the holes are
// compared with its twin's no more.
func butTwins(findings []rules.Finding) []rules.Finding {
	return slices.DeleteFunc(findings, func(f rules.Finding) bool { return f.Rule == "twin_differs" })
}

// findingsOf are holds and cautions.
func findingsOf(s worked.StackFigures) []rules.Finding {
	return append(slices.Clone(s.Holds), s.Cautions...)
}
