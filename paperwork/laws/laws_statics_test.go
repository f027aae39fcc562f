package laws

import (
	"fmt"
	"math"

	"hangpack/calc"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// Laws of statics, on the figures of each stack. Weights and places are taken from
// the job and turned as complex numbers; no line of calc is used.

const newton = 9.80665

// A weight is a mass where it hangs, from the bar's hinge pin: x forward, z up.
type weight struct {
	kg float64
	at complex128
}

// weights are those of bodies from to n of a stack, 0 the bar, with the bar at a
// tilt, and what is tied to them.
func weights(s *job.Stack, from, n int, tilt float64) (all []weight) {
	turn, pin := tilt, complex128(0)
	for body := range n + 1 {
		kg, centre := s.Bar.Mass, s.Bar.CentreOfGravity
		if body > 0 {
			turn += s.Cabinets[body-1].Hole.Splay * math.Pi / 180
			kg, centre = s.Cabinets[body-1].Mass, s.Cabinets[body-1].CentreOfGravity
		}
		if body >= from {
			all = append(all, weight{kg, pin + trials.At(centre, turn)})
			for _, e := range s.Extras {
				if e.Cabinet == body {
					all = append(all, weight{e.Mass, pin + trials.At(e.At, turn)})
				}
			}
		}
		if body > 0 {
			pin += trials.At(calc.Offset{Below: s.Cabinets[body-1].HingePitch}, turn)
		}
	}
	return all
}

// together is the sum of weights, at their centre of gravity.
func together(all []weight) (sum weight) {
	for _, w := range all {
		sum.kg += w.kg
		sum.at += complex(w.kg, 0) * w.at
	}
	sum.at /= complex(sum.kg, 0)
	return sum
}

// aloft is a stack as it hangs after one of its lifts, the finished one last.
type aloft struct {
	of     string
	flown  int
	mass   float64
	tilt   float64 // rad
	aim    float64 // of cabinet 1, deg
	last   float64 // of the lowest cabinet, deg
	hooks  worked.HookFigures
	lifted *worked.LiftFigures // nil of the finished one
}

func allAloft(h *rules.Checked, f worked.StackFigures) (all []aloft) {
	for i, l := range f.Lifts {
		all = append(all, aloft{fmt.Sprintf("%s, lift %d", f.ID, l.Set), l.Cabinets, l.Mass, calc.Radians(l.Tilt), l.Aim, l.LastAim, l.HookFigures, &f.Lifts[i]})
	}
	return append(all, aloft{f.ID, len(h.Cabinets), f.Mass, calc.Radians(f.Tilt), f.Aim, f.LastAim, f.HookFigures, nil})
}

// eachStack looks at every stack of the job.
func (t *trial) eachStack(look func(h *rules.Checked, f worked.StackFigures)) {
	for i, h := range t.Stacks {
		t.cases++
		look(h, t.Figures.Stacks[i])
	}
}

// eachAloft looks at every stack as it hangs after each of its lifts.
func (t *trial) eachAloft(look func(h *rules.Checked, f worked.StackFigures, s aloft)) {
	for i, h := range t.Stacks {
		for _, s := range allAloft(h, t.Figures.Stacks[i]) {
			t.cases++
			look(h, t.Figures.Stacks[i], s)
		}
	}
}

// picksAt are the places of the pick holes in use, with the bar at a tilt.
func picksAt(h *rules.Checked, f worked.StackFigures, tilt float64) (all []complex128) {
	for _, p := range f.Picks {
		for _, hole := range h.Bar.PickHoles {
			if hole.Label == p.Hole.Text {
				all = append(all, trials.At(hole.At, tilt))
			}
		}
	}
	return all
}

func picksCarryAll(t *trial) {
	t.eachStack(func(h *rules.Checked, f worked.StackFigures) {
		load, share := 0.0, 0.0
		for _, p := range f.Picks {
			load, share = load+p.Load, share+p.Share
			t.near(f.ID+": share of a pick", p.Load/f.Mass, p.Share)
		}
		t.near(f.ID+": loads of picks", f.Mass, load)
		t.near(f.ID+": shares of picks", 1, share)
	})
}

func massIsWhatHangs(t *trial) {
	t.eachAloft(func(h *rules.Checked, f worked.StackFigures, s aloft) {
		t.near(s.of+": mass", together(weights(h.Stack, 0, s.flown, 0)).kg, s.mass)
		hooks := s.mass
		for i, p := range h.Picks {
			hooks += p.Below.Mass
			if s.lifted == nil {
				t.near(s.of+": hook", f.Picks[i].Load+p.Below.Mass, s.hooks.Hooks[i])
			}
		}
		t.near(s.of+": hooks together", hooks, sumOf(s.hooks.Hooks))
	})
}

func sumOf(all []float64) (sum float64) {
	for _, x := range all {
		sum += x
	}
	return sum
}

func centreIsTheMean(t *trial) {
	t.eachStack(func(h *rules.Checked, f worked.StackFigures) {
		c := together(weights(h.Stack, 0, len(h.Cabinets), 0)).at
		t.near(f.ID+": centre behind", -real(c), f.CentreOfGravity.Behind)
		t.near(f.ID+": centre below", -imag(c), f.CentreOfGravity.Below)
	})
}

func momentsBalance(t *trial) {
	t.eachAloft(func(h *rules.Checked, f worked.StackFigures, s aloft) {
		all := together(weights(h.Stack, 0, s.flown, s.tilt))
		picks, up, about := picksAt(h, f, s.tilt), 0.0, 0.0
		for i, kg := range s.hooks.Hooks {
			kg -= h.Picks[i].Below.Mass
			up, about = up+kg, about+kg*real(picks[i])
		}
		t.near(s.of+": level place of what the hooks pull", real(all.at), about/up)
		if len(picks) == 1 {
			t.must(imag(all.at) < imag(picks[0])+rounding, "%s: the centre of gravity hangs above the pick hole", s.of)
		}
	})
}

// jointsCarryWhatHangs: along the joint, across it and about its hinge pin.
func jointsCarryWhatHangs(t *trial) {
	t.eachStack(func(h *rules.Checked, f worked.StackFigures) {
		n, pin, above := len(h.Cabinets), complex128(0), calc.Radians(f.Tilt)
		for k, c := range f.Cabinets {
			t.cases++
			of, turn := fmt.Sprintf("%s, joint %d: ", f.ID, k+1), above+calc.Radians(c.Splay)
			below, mean, arm := together(weights(h.Stack, k+1, n, calc.Radians(f.Tilt))), (above+turn)/2, h.LinkArm
			if k > 0 {
				arm = h.Cabinets[k-1].LinkArm
			}
			arm = math.Min(arm, h.Cabinets[k].LinkArm) * math.Cos(calc.Radians(c.Splay)/2)
			kn := below.kg * newton / 1000
			t.near(of+"hinge and link, along it", kn*math.Cos(mean), c.HingePull+c.Link)
			t.near(of+"hinge", math.Hypot(c.HingePull, kn*math.Sin(mean)), c.Hinge)
			t.near(of+"moment of the link", kn*(real(pin)-real(below.at)), c.Link*arm)
			pin, above = pin+trials.At(calc.Offset{Below: h.Cabinets[k].HingePitch}, turn), turn
		}
		t.cases--
	})
}
