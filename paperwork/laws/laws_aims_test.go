package laws

import (
	"fmt"
	"math"
	"math/cmplx"
	"slices"
	"strings"

	"hangpack/calc"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// Laws of how a stack hangs: upright, from which hole, and how far its cabinets look
// down.

// tipsOver: below one pick, with the bar level; below the line through two.
func tipsOver(t *trial) {
	t.eachAloft(func(h *rules.Checked, f worked.StackFigures, s aloft) {
		if len(h.Unknown()) > 0 {
			return
		}
		centre, picks := together(weights(h.Stack, 0, s.flown, 0)).at, picksAt(h, f, 0)
		below := imag(picks[0]) - imag(centre)
		if len(picks) == 2 {
			line, to := picks[1]-picks[0], centre-picks[0]
			below = (real(line)*imag(to) - imag(line)*real(to)) / cmplx.Abs(line)
		}
		if math.Abs(below) > 1e-6 {
			found := slices.Contains(placesOf(f.Holds), say.Listed("tips_over", strings.TrimPrefix(s.of, f.ID+", "))) || s.lifted == nil && slices.Contains(placesOf(f.Holds), "tips_over")
			t.must(found == (below < 0), "%s: tips over: %v, with its centre of gravity %v m below", s.of, found, below)
		}
	})
}

func optionsHangPlumb(t *trial) {
	t.eachStack(func(h *rules.Checked, f worked.StackFigures) {
		all := together(weights(h.Stack, 0, len(h.Cabinets), 0)).at
		t.must(len(f.Options) == map[bool]int{true: len(h.Bar.PickHoles)}[len(h.Picks) == 1], "%s: %d options", f.ID, len(f.Options))
		for i, o := range f.Options {
			turn := cmplx.Exp(complex(0, -calc.Radians(o.Aim-h.Cabinets[0].Hole.Splay)))
			hole, centre := trials.At(h.Bar.PickHoles[i].At, 0)*turn, all*turn
			t.near(fmt.Sprintf("%s: centre of gravity from pick hole %s, level", f.ID, o.Hole.Text), real(hole), real(centre))
			t.must(imag(centre) < imag(hole)+rounding, "%s: centre of gravity above pick hole %s", f.ID, o.Hole.Text)
		}
	})
}

func closestHoleIsTaken(t *trial) {
	t.eachStack(func(h *rules.Checked, f worked.StackFigures) {
		if h.Picks[0].Hole != job.Auto {
			return
		}
		tips := func(o worked.OptionFigures) bool { return math.Abs(o.Aim-h.Cabinets[0].Hole.Splay) > 90 }
		if len(h.PassedOver) > 0 {
			nearestFirst(t, h, f)
			return
		}
		off, taken, all := math.Inf(1), math.NaN(), true
		for _, o := range f.Options {
			all = all && tips(o)
		}
		for _, o := range f.Options {
			if !tips(o) || all {
				off = math.Min(off, math.Abs(o.Aim-f.AimWanted))
			}
			if o.Hole == f.Picks[0].Hole {
				taken = math.Abs(o.Aim - f.AimWanted)
				t.near(f.ID+": aim of the hole taken", o.Aim, f.Aim)
			}
		}
		t.near(f.ID+": how far the hole taken is off the wanted aim", off, taken)
	})
}

// nearestFirst: holes that were passed over are the closest ones, and each of them is
// held where the job names it; the one taken is not.
func nearestFirst(t *trial, h *rules.Checked, f worked.StackFigures) {
	off := -1.0
	for _, p := range h.PassedOver {
		now := math.Abs(f.Options[p.Hole].Aim - f.AimWanted)
		t.atLeast(f.ID+": how far a hole passed over is off", off, now)
		off = now
	}
	t.atLeast(f.ID+": how far the hole taken is off", off, math.Abs(f.Aim-f.AimWanted))
	t.must(!f.Held, "%s: passed over holes and is held", f.ID)
	for _, o := range f.Options {
		passed := slices.ContainsFunc(h.PassedOver, func(p rules.PassedOver) bool { return f.Options[p.Hole].Hole == o.Hole })
		t.must(passed || math.Abs(o.Aim-f.AimWanted) >= math.Abs(f.Aim-f.AimWanted)-rounding || math.Abs(o.Aim-h.Cabinets[0].Hole.Splay) > 90, "%s: pick hole %s is closer", f.ID, o.Hole.Text)
	}
}

func twoPicksHoldTheAim(t *trial) {
	t.eachAloft(func(h *rules.Checked, f worked.StackFigures, s aloft) {
		t.near(f.ID+": aim wanted", calc.Degrees(h.Aim), f.AimWanted)
		if len(h.Picks) == 2 {
			t.near(s.of+": aim", f.AimWanted, s.aim)
		}
	})
}

func aimsFollowSplays(t *trial) {
	t.eachAloft(func(h *rules.Checked, f worked.StackFigures, s aloft) {
		t.near(s.of+": aim of cabinet 1", calc.Degrees(s.tilt)+h.Cabinets[0].Hole.Splay, s.aim)
		t.near(s.of+": aim of the lowest cabinet", calc.Degrees(trials.Looks(h.Stack, s.flown, s.tilt)), s.last)
		if s.lifted != nil {
			return
		}
		for k, c := range f.Cabinets {
			t.near(fmt.Sprintf("%s: aim of cabinet %d", s.of, k+1), calc.Degrees(trials.Looks(h.Stack, k+1, s.tilt)), c.Aim)
			t.near(fmt.Sprintf("%s: splay of cabinet %d", s.of, k+1), h.Cabinets[k].Hole.Splay, c.Splay)
			t.must(c.Number == k+1 && c.Type == h.Cabinets[k].Key, "%s: cabinet %d is %d, %s", s.of, k+1, c.Number, c.Type)
		}
	})
}
