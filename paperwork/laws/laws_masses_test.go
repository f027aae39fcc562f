package laws

import (
	"fmt"
	"math"
	"slices"

	"hangpack/paperwork/job"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/worked"
)

// Laws of jobs whose masses, ratings and factors are changed.

// heavy are the figures that go as masses do.
func heavy(change func(float64) float64) but {
	b := but{}
	for _, key := range []string{"mass_kg", "load_kg", "hook_kg", "low_kg", "high_kg", "static_kg", "design_kg", "alone_kg", "alone_design_kg", "hinge_kn", "hinge_pull_kn", "link_kn"} {
		b[key] = change
	}
	return b
}

func twiceTheMass(t *trial) {
	double := t.changedInPlace(func(n tree) {
		n.giveDefaults("") // the floor of readings is a mass, given or not
		n.times(2, job.Mass, job.MassPerLength, job.Load)
	})
	// where most is carried, and which way a small force goes, is a matter of newtons,
	// which are twice as many too
	t.alike(double, heavy(times(2)).and(but{"most": nil, "hoist_use": nil}).and(anyFinding).and(anotherJob))
	if double == nil {
		return
	}
	for i, s := range double.Figures.Stacks {
		was, is := placesOf(notOfNewtons(findingsOf(t.Figures.Stacks[i]))), placesOf(notOfNewtons(findingsOf(s)))
		t.must(slices.Equal(was, is), "%s: found are %q, have to be %q", s.ID, is, was)
	}
}

// notOfNewtons are the findings that do not turn on one newton, which is the play of a
// force's sign, nor on being a twin: a stack that is written in full is none.
func notOfNewtons(findings []rules.Finding) []rules.Finding {
	return slices.DeleteFunc(findings, func(f rules.Finding) bool {
		return slices.Contains([]string{"link_pushed", "hinge_turns", "one_hoist_gear", "slack", "twin_differs"}, f.Rule)
	})
}

func heavierIsNeverLighter(t *trial) {
	const more = 5.0
	heavier := t.changed(func(n tree) {
		var masses []tree
		n.eachOf(func(path string, v tree) {
			if path != "practice.reading_floor" {
				masses = append(masses, v)
			}
		}, job.Mass)
		v := masses[t.Intn(len(masses))]
		v.set(v.si()+more, "kg")
	})
	if heavier == nil {
		return
	}
	t.cases++
	gained := heavier.Figures.Total.Static - t.Figures.Total.Static
	t.near("times that the total has gained it", math.Round(gained/more), gained/more)
	t.atLeast("total", t.Figures.Total.Static, heavier.Figures.Total.Static)
	for i, is := range heavier.Figures.Stacks {
		was := t.Figures.Stacks[i]
		t.atLeast(is.ID+": mass", was.Mass, is.Mass)
		t.atLeast(is.ID+": all its points", was.PointsTotal().Static, is.PointsTotal().Static)
		t.atLeast(is.ID+": all its points, design", was.PointsTotal().Design, is.PointsTotal().Design)
		for k, l := range is.Lifts {
			t.atLeast(is.ID+": mass at a lift", was.Lifts[k].Mass, l.Mass)
		}
	}
}

// tieTo ties a mass to a cabinet of a stack, numbered from 1, or to the bar.
func (n tree) tieTo(cabinet int, kg, behind, below float64) {
	on := ""
	if cabinet > 0 {
		on = fmt.Sprintf("on_cabinet: %d, ", cabinet)
	}
	n.add("extras", fmt.Sprintf("{name: more, mass: %s, %sbehind_hinge: %s, below_hinge: %s}", quantityText(kg, "kg"), on, quantityText(behind, "m"), quantityText(below, "m")))
}

// stacksInFull are the stacks that are no twins.
func (n tree) stacksInFull() (all []tree) {
	for _, s := range n.at("stacks").items() {
		if s.at("twin_of").Node == nil {
			all = append(all, s)
		}
	}
	return all
}

// places for one more thing on every stack: its cabinet, 0 for the bar, and where.
type tie struct {
	cabinet       int
	behind, below float64
}

// ties draws a place on each stack that is no twin.
func (t *trial) ties() (all []tie) {
	for _, h := range t.Stacks {
		if h.TwinOf == "" {
			all = append(all, tie{t.Intn(len(h.Cabinets) + 1), t.Float64() - 0.3, t.Float64() - 0.5})
		}
	}
	return all
}

// partsAtOnePlace: whole at the end of the list of extras, in parts and turned about
// with it.
func partsAtOnePlace(t *trial) {
	ties, kg := t.ties(), 20*t.Float64()
	tied := func(turned bool, parts ...float64) *worked.Job {
		return t.changed(func(n tree) {
			for i, s := range n.stacksInFull() {
				for _, part := range parts {
					s.tieTo(ties[i].cabinet, kg*part, ties[i].behind, ties[i].below)
				}
				if turned {
					slices.Reverse(s.at("extras").Content)
				}
			}
		})
	}
	t.between(tied(false, 1), tied(true, 0.5, 0.25, 0.25), anotherJob)
}

// between holds the figures of one changed job to those of another.
func (t *trial) between(was, is *worked.Job, b but) {
	if was != nil && is != nil {
		own := *t.base
		own.Job = was
		of := trial{base: &own}
		of.alike(is, b)
		t.cases, t.worst, t.faults = t.cases+of.cases, math.Max(t.worst, of.worst), append(t.faults, of.faults...)
	}
}

func nothingWeighsNothing(t *trial) {
	ties := t.ties()
	t.alike(t.changed(func(n tree) {
		for i, s := range n.stacksInFull() {
			s.tieTo(ties[i].cabinet, 0, ties[i].behind, ties[i].below)
		}
	}), anotherJob)
}

// extraAtTheCentre: what is tied to each cabinet of a type, where its own centre of
// gravity is, is as much of the cabinet.
func extraAtTheCentre(t *trial) {
	const kg = 4.0
	c := t.Stacks[0].Cabinets[t.Intn(len(t.Stacks[0].Cabinets))].Cabinet
	if c.CentreUnknown {
		return // it lies in another place for each check
	}
	heavier := t.changed(func(n tree) {
		mass := n.at("gear", "cabinets", c.Key, "mass")
		mass.set(mass.si()+kg, "kg")
	})
	tied := t.changed(func(n tree) {
		full := n.stacksInFull()
		for _, h := range t.Stacks {
			if h.TwinOf != "" {
				continue
			}
			for k, placed := range h.Cabinets {
				if placed.Cabinet == c {
					full[0].tieTo(k+1, kg, c.CentreOfGravity.Behind, c.CentreOfGravity.Below)
				}
			}
			full = full[1:]
		}
	})
	t.between(heavier, tied, anotherJob)
}
