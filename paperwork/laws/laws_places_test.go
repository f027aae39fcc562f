package laws

import (
	"fmt"
	"math"
	"math/cmplx"
	"strings"

	"hangpack/calc"
	"hangpack/paperwork/job"
	"hangpack/paperwork/worked"
)

// Laws of jobs that stand elsewhere: in plan, in height, and in another size.

// eachPlace visits the places of stacks and of other points.
func (n tree) eachPlace(visit func(place tree)) {
	for _, key := range []string{"stacks", "other_points"} {
		for _, s := range n.at(key).items() {
			visit(s.at("place"))
		}
	}
}

// way is a place along one of two opposite keys, positive along the first.
func (n tree) way(one, other string) float64 {
	if v := n.at(one); v.Node != nil {
		return v.si()
	}
	return -n.at(other).si()
}

// move writes a place along the first of two opposite keys.
func (n tree) move(one, other string, m float64) {
	n.drop(other)
	n.put(one, quantityText(m, "m"))
}

func datumIsOfThePlan(t *trial) {
	left, down := 50*t.Float64()-25, 50*t.Float64()-25
	t.alike(t.changed(func(n tree) {
		n.eachPlace(func(p tree) {
			p.move("stage_left", "stage_right", p.way("stage_left", "stage_right")+left)
			p.move("downstage", "upstage", p.way("downstage", "upstage")+down)
		})
	}), but{"stage_left_m": plus(left), "downstage_m": plus(down)}.and(anotherJob))
}

func mirrorIsOfThePlan(t *trial) {
	swap := map[string]string{"stage_left": "stage_right", "stage_right": "stage_left"}
	t.alike(t.changed(func(n tree) {
		n.eachPlace(func(p tree) {
			for i := 0; i < len(p.Content); i += 2 {
				if other, ok := swap[p.Content[i].Value]; ok {
					p.Content[i].Value = other
				}
			}
			if pan := p.at("pan"); pan.Node != nil {
				words := strings.Fields(pan.Value)
				words[2] = swap[words[2]]
				pan.Value = strings.Join(words, " ")
			}
		})
	}), but{"stage_left_m": times(-1)}.and(anotherJob))
}

// panTurnsThePlan: points turn about the bar's hinge pin, and nothing else does.
func panTurnsThePlan(t *trial) {
	turn := map[string]float64{}
	is := t.changed(func(n tree) {
		for i, s := range n.at("stacks").items() {
			pan := 360*t.Float64() - 180
			turn[s.at("id").Value] = calc.Radians(pan) - t.Stacks[i].Pan
			s.at("place").put("pan", fmt.Sprintf("%s stage_left", quantityText(calc.Radians(pan), "deg")))
		}
	})
	t.alike(is, but{"stacks.points.stage_left_m": nil, "stacks.points.downstage_m": nil}.and(anyPlaces).and(anotherJob))
	if is == nil {
		return
	}
	for i, s := range is.Figures.Stacks {
		hinge := complex(t.Stacks[i].Downstage, t.Stacks[i].StageLeft)
		for k, p := range s.Points {
			was := t.Figures.Stacks[i].Points[k]
			want := hinge + (complex(was.Downstage, was.StageLeft)-hinge)*cmplx.Rect(1, turn[s.ID])
			t.near(p.ID+": downstage", real(want), p.Downstage)
			t.near(p.ID+": stage left", imag(want), p.StageLeft)
		}
	}
}

// raise raises some heights of every stack.
func (n tree) raise(m float64, keys ...string) {
	n.eachOf(func(path string, v tree) {
		for _, key := range keys {
			if strings.HasPrefix(path, key) {
				v.set(v.si()+m, "m")
			}
		}
	}, job.Length)
}

// trimRaisesAll: random trims are far above the dollies, so that chain is needed for a
// higher trim only where nothing lower is checked.
func trimRaisesAll(t *trial) {
	const m = 1.75
	up := plus(m)
	is := t.changed(func(n tree) { n.raise(m, "stacks[].trim") })
	t.alike(is, but{"lowest_m": up, "pick_height_m": up, "low_hook_m": up, "stacks.points.chain_needed_m": nil}.and(anyFinding).and(anotherJob))
	if is == nil {
		return
	}
	for i, h := range is.Stacks {
		for k, p := range is.Figures.Stacks[i].Points {
			if p.ChainNeeded == nil {
				continue
			}
			less := 0.0
			if h.Dolly == nil && len(h.Picks) == 1 {
				less = m * float64(h.Picks[k].Hoist.Falls)
			}
			t.chainOf(p.ID, *t.Figures.Stacks[i].Points[k].ChainNeeded, -less, *p.ChainNeeded)
		}
	}
}

func heightsHaveNoZero(t *trial) {
	const m = 2.5
	up := plus(m)
	t.alike(t.changed(func(n tree) {
		for _, s := range n.stacksInFull() {
			if s.at("floor").Node == nil {
				s.put("floor", "0 m")
			}
		}
		n.raise(m, "stacks[].trim", "stacks[].floor", "stacks[].steel", "other_points[].height")
	}), but{"lowest_m": up, "pick_height_m": up, "low_hook_m": up, "high_hook_m": up, "pick_clear_m": up, "height_m": up}.and(anotherJob))
}

func steelTakesChain(t *trial) {
	const m = 3.0
	is := t.changedInPlace(func(n tree) { n.raise(m, "stacks[].steel") })
	t.alike(is, but{"high_hook_m": plus(m), "stacks.points.chain_needed_m": nil}.and(anyFinding).and(anotherJob))
	t.chainGrows(is, m)
}

// chainOf holds the chain that a hoist needs to what it needed and so much more; but for
// one that, run right up, hangs lower already, and needs no more than its reserve.
func (t *trial) chainOf(id string, was, more, is float64) {
	least := t.Practice.LimitReserve + rounding
	if was > least && is > least {
		t.near(id+": chain needed", was+more, is)
	}
}

// chainGrows: hoists need so many metres more for each fall.
func (t *trial) chainGrows(is *worked.Job, m float64) {
	if is == nil {
		return
	}
	for i, s := range is.Figures.Stacks {
		for k, p := range s.Points {
			if was := t.Figures.Stacks[i].Points[k]; p.ChainNeeded != nil {
				t.chainOf(p.ID, *was.ChainNeeded, m*float64(t.Stacks[i].Picks[k].Hoist.Falls), *p.ChainNeeded)
			}
		}
	}
}

func longerRiggingTakesHeight(t *trial) {
	const m = 0.2
	is := t.changed(func(n tree) {
		n.eachRigging("rigging_below", func(r tree) { r.more("length", m, "m") })
	})
	t.alike(is, but{"low_hook_m": plus(m), "stacks.points.chain_needed_m": nil}.and(anyFinding).and(anotherJob))
	t.chainGrows(is, -m)
}

// smallerIsSimilar: with every length by one factor, and chains of the same mass, no
// angle, no load and no finding of angles and loads changes.
func smallerIsSimilar(t *trial) {
	const f = 0.7
	small := times(f)
	b := but{"stacks.cautions": nil} // 5 mm between link arms are 5 mm
	for _, key := range []string{"behind_hinge_m", "below_hinge_m", "lowest_m", "pick_height_m", "low_hook_m", "high_hook_m", "chain_needed_m",
		"stage_left_m", "downstage_m", "height_m", "drop_m", "pick_clear_m", "slack_mm"} {
		b[key] = small
	}
	t.alike(t.changed(func(n tree) {
		for _, key := range []string{"clearance", "limit_reserve"} {
			if n.at("practice", key).Node == nil {
				n.at("practice").put(key, "0.3 m")
			}
		}
		n.times(f, job.Length)
		n.times(1/f, job.MassPerLength)
	}), b.and(anotherJob))
}

// wantedAimTurnsAll by as much, and as far as an aim may be off the hooks stay within
// what they may read.
func wantedAimTurnsAll(t *trial) {
	i, p := t.stackWith(func(f worked.StackFigures) bool { return len(f.Picks) == 2 }), t.Practice
	if i < 0 {
		return
	}
	off := p.AimTolerance * float64(2*t.Intn(2)-1)
	is := t.changed(func(n tree) {
		n.at("practice").put("aim_tolerance", "0")
		wanted := t.Stacks[i].Aim + off
		n.at("stacks").items()[i].put("aim", quantityText(math.Abs(wanted), "deg")+map[bool]string{true: " up", false: " down"}[wanted < 0])
	})
	if is == nil {
		return
	}
	t.cases++
	turn := plus(calc.Degrees(off))
	b := but{"aim_wanted_deg": turn, "aim_deg": turn, "tilt_deg": turn, "last_aim_deg": turn}
	for _, key := range []string{"points", "picks", "lowest_m", "drop_m", "pick_clear_m", "hook_kg", "slack_mm", "hinge_kn", "hinge_pull_kn", "link_kn"} {
		b[key] = nil
	}
	t.alikeStacks(t.Figures.Stacks[i], is.Figures.Stacks[i], b.and(anyFinding))
	if !t.Stacks[i].Held() || t.Stacks[i].Bar.TiltLimit != nil { // windows are cut, or ends pulled back
		return
	}
	turned := allAloft(is.Stacks[i], is.Figures.Stacks[i])
	for k, s := range allAloft(t.Stacks[i], t.Figures.Stacks[i]) {
		for hook, kg := range turned[k].hooks.Hooks {
			for _, may := range []float64{kg * (1 - p.MassTolerance), kg * (1 + p.MassTolerance)} {
				t.atLeast(s.of+": most, with its aim off", may, s.hooks.High[hook])
				t.atLeast(s.of+": least, with its aim off, turned", -may, -s.hooks.Low[hook])
			}
		}
	}
}
