package sheets

import (
	"fmt"
	"math"

	"hangpack/layouts"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
)

// cellWords say what a load cell's reading counts.
func cellWords(h *rig.Hung) string {
	switch h.LoadCell {
	case job.AboveHoist:
		return "The load cell hangs above the hoist (motor): what it reads counts the hoist, all of its chain and the rigging below."
	case "":
		return "The job does not say where a load cell hangs: readings are of one below the hoist (motor), with the rigging below it counted."
	}
	return "The load cell hangs below the hoist (motor): what it reads counts the rigging below it and neither hoist nor chain."
}

// cellReads are what the load cells should read.
func cellReads(h *rig.Hung, readings []rig.Reading) (reads []layouts.Instrument) {
	u := h.Unit()
	for i, r := range readings {
		own := ownOfHoist(h, i)
		reads = append(reads, layouts.Instrument{Of: label("load cell", h.End(i)), Is: say.Between(r.From+own, r.To+own, within(u, r, own)),
			May: u.Window(math.Max(r.Low, 0)+own, r.High+own)})
	}
	return reads
}

// sumRead is what both load cells together should read after lift k, counted from 0.
func sumRead(h *rules.Checked, k int) layouts.Instrument {
	u, r, own := h.Unit(), h.SumReading(k), ownOfHoist(h.Hung, 0)+ownOfHoist(h.Hung, 1)
	return layouts.Instrument{Of: "both cells together", Is: within(u, r, own)(r.Is + own), May: u.Window(r.Low+own, r.High+own)}
}

// within writes a reading, with what its cell reads besides, so that rounding does not
// take it out of its window.
func within(u say.Units, r rig.Reading, own float64) func(kg float64) string {
	return func(kg float64) string { return u.ReadingIn(kg, math.Max(r.Low, 0)+own, r.High+own) }
}

// slackWords say how far each of two picks may move against the other one before its
// chain is slack in a state: 'Front chain slack when the front pick is 92 mm lower, …'; ""
// where there is one pick.
func slackWords(h *rig.Hung, s *rig.State) string {
	if len(h.Picks) == 1 {
		return ""
	}
	words := say.Capital(say.Listed(slackOf(h, s, 0), slackOf(h, s, 1))) + ": each against the other."
	if len(h.Corners) == 0 {
		return words
	}
	least := func(i int) string {
		mm, _ := h.Between(func(v *rig.Hung) float64 { return math.Abs(v.ToSlack(sameState(v, s), i)) })
		return h.Unit().FineDown(mm)
	}
	return words + fmt.Sprintf(" A centre of gravity is not known: it may be as little as %s and %s.", least(0), least(1))
}

// sameState is the state of another way that a stack may hang.
func sameState(v *rig.Hung, s *rig.State) *rig.State {
	if s.Lift == 0 {
		return v.Finished
	}
	return v.Lifts[s.Lift-1]
}

// slackOf says how far pick i of two may move: 'front chain slack when the front pick is
// 92 mm lower'.
func slackOf(h *rig.Hung, s *rig.State, i int) string {
	rise, way := h.ToSlack(s, i), "lower"
	if rise > 0 {
		way = "higher"
	}
	return fmt.Sprintf("%s chain slack when the %s pick is %s %s", h.End(i), h.End(i), h.Unit().FineDown(math.Abs(rise)), way)
}

// slackReads are of chains that carry their rigging and nothing below it.
func slackReads(h *rig.Hung) (reads []layouts.Instrument) {
	u := h.Unit()
	for i, p := range h.Picks {
		kg := p.Below.Mass + ownOfHoist(h, i)
		reads = append(reads, layouts.Instrument{Of: label("load cell", h.End(i)), Is: u.Reading(kg), May: "at most " + u.Reading(kg+h.Job.Practice.ReadingFloor)})
	}
	return reads
}

// ownOfHoist is what a load cell reads besides the hook's load: above the hoist
// its mass and all of its chain.
func ownOfHoist(h *rig.Hung, i int) float64 {
	if h.LoadCell != job.AboveHoist {
		return 0
	}
	m := h.Picks[i].Hoist
	return m.Mass + m.ChainMass*m.ChainLength
}

// aimReads are of cabinet 1, of the lowest one flown, and their difference.
func aimReads(h *rig.Hung, k int) []layouts.Instrument {
	s := h.Joined(k)
	reads := []layouts.Instrument{aimRead(h, k, 1)}
	if s.Flown == 1 {
		return reads
	}
	return append(reads, aimRead(h, k, s.Flown),
		layouts.Instrument{Of: "difference", Is: say.Angle(s.LastAim() - s.Poses[0].Aim), May: "by the pins alone"})
}

// aimRead is what an inclinometer on cabinet n should read after lift k, counted
// from 0.
func aimRead(h *rig.Hung, k, n int) layouts.Instrument {
	from, to := h.Between(func(v *rig.Hung) float64 { return v.Joined(k).Poses[n-1].Aim })
	least, most := aimWindow(h, k, n)
	return layouts.Instrument{Of: fmt.Sprintf("cabinet %d looks", n), Is: say.Between(from, to, say.Aim), May: say.Aims(least, most)}
}

// aimWindow is the least and the most that cabinet n may look down after lift k, counted
// from 0: over the reach of that state, wherever unknown centres of gravity lie.
func aimWindow(h *rig.Hung, k, n int) (least, most float64) {
	least, _ = h.Between(func(v *rig.Hung) float64 {
		up, _ := v.AimOff(v.Joined(k))
		return v.Joined(k).Poses[n-1].Aim + up
	})
	_, most = h.Between(func(v *rig.Hung) float64 {
		_, down := v.AimOff(v.Joined(k))
		return v.Joined(k).Poses[n-1].Aim + down
	})
	return least, most
}
