package laws

import (
	"fmt"
	"math"
	"math/cmplx"
	"slices"

	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// How low hooks have to come, from the corners and the pins of cabinets in the complex
// plane: x forward is real, z up imaginary.

// hooksAndChainReach: the chain that a hoist needs is the one that just comes down to the
// lowest place that its hook has to come to, and the stack is held where it has less.
func hooksAndChainReach(t *trial) {
	t.eachPoint(func(h *rules.Checked, f worked.StackFigures, i int, p rig.Point) {
		pick := h.Picks[i]
		t.near(p.ID+": low hook", p.PickHeight+pick.Below.Length, p.LowHook)
		t.must((p.HighHook == nil) == (pick.Steel == nil), "%s: high hook without steel", p.ID)
		t.must((p.ChainNeeded == nil) == (pick.Steel == nil), "%s: chain without steel", p.ID)
		held := slices.Contains(placesOf(f.Holds), say.Listed("chain_reach", string(h.End(i))))
		if p.HighHook == nil {
			t.must(!held, "%s: held for its chain without steel", p.ID)
			return
		}
		t.near(p.ID+": high hook", *pick.Steel-pick.Above.Length, *p.HighHook)
		lowest := math.Inf(1)
		for _, v := range h.Ways() {
			want, places := lowHooks(v, i), v.LowPlaces(i)
			lowest = math.Min(lowest, slices.Min(want))
			t.must(len(want) == len(places), "%s: %d places to come down to, have to be %d", p.ID, len(places), len(want))
			for n, at := range places {
				t.near(fmt.Sprintf("%s: place %d to come down to", p.ID, n), want[n], at.Hook)
			}
		}
		hangs := *p.HighHook - pick.Hoist.Headroom - (pick.Hoist.ChainLength-t.Practice.LimitReserve)/float64(pick.Hoist.Falls)
		t.must(held == (hangs > lowest) || math.Abs(hangs-lowest) < 1e-6, "%s: held for its chain: %v, which comes down to %v of %v m", p.ID, held, hangs, lowest)
		reaches := *p.HighHook - pick.Hoist.Headroom - (*p.ChainNeeded-t.Practice.LimitReserve)/float64(pick.Hoist.Falls)
		if *p.ChainNeeded > t.Practice.LimitReserve+rounding {
			t.near(p.ID+": how low its hook comes with the chain needed", lowest, reaches)
		} else { // run right up it hangs lower already
			t.atLeast(p.ID+": the lowest place", reaches, lowest)
		}
	})
}

// lowHooks are the heights that hook i has to come down to: at trim, at each roll-in,
// onto the bar on the first dolly, and to the bar of two picks on the floor.
func lowHooks(h *rig.Hung, i int) (all []float64) {
	below, level := h.Picks[i].Below.Length, imag(trials.At(h.Bar.PickHoles[h.Holes[i]].At, 0))
	trim := aboveLowest(h, h.Finished, i)
	if h.Trim.OfPick {
		trim = imag(trials.At(h.Bar.PickHoles[h.Holes[i]].At, h.Finished.Tilt)) - highestHole(h, h.Finished.Tilt)
	}
	all = append(all, h.Trim.Height+trim+below)
	if h.Dolly != nil {
		deck := h.Floor + h.Dolly.DeckHeight
		for k, s := range h.Lifts {
			rolls := deck + h.Job.Practice.Clearance
			for _, c := range h.Cabinets[s.Flown : s.Flown+h.Sets[k+1]] {
				rolls += c.HingePitch
			}
			all = append(all, rolls+aboveLowest(h, s, i)+below)
		}
		all = append(all, deck+imag(hingeOnDolly(h.Stack))+level+below)
	}
	if len(h.Picks) == 2 {
		all = append(all, h.Floor+level+below)
	}
	return all
}

// aboveLowest is how high pick i is above the lowest corner of what hangs.
func aboveLowest(h *rig.Hung, s *rig.State, i int) float64 {
	low := math.Inf(1)
	for _, corners := range trials.Outline(h.Stack, s.Flown, s.Tilt) {
		low = math.Min(low, lowestOf(corners))
	}
	return imag(trials.At(h.Bar.PickHoles[h.Holes[i]].At, s.Tilt)) - low
}

// highestHole is how high the higher of the pick holes in use is above the bar's hinge.
func highestHole(h *rig.Hung, tilt float64) float64 {
	high := math.Inf(-1)
	for _, hole := range h.Holes {
		high = math.Max(high, imag(trials.At(h.Bar.PickHoles[hole].At, tilt)))
	}
	return high
}

// hingeOnDolly is where the top hinge of the first set stands, from the bottom hinge of
// its lowest cabinet. That one is turned until its under side, or its front, lies as the
// deck holds it; each one above is turned back by the joint below it.
func hingeOnDolly(s *job.Stack) complex128 {
	set := s.Cabinets[:s.Sets[0]]
	low := set[len(set)-1]
	turn := complex128(1)
	if !s.Dolly.Plumb {
		under := complex(-low.Depth, (low.FrontHeight-low.BackHeight)/2) // from its front to its rear, on level ground
		turn = -complex(cmplx.Abs(under), 0) / under
	}
	at := complex128(0)
	for n := len(set) - 1; n >= 0; n-- {
		at += complex(0, set[n].HingePitch) * turn
		if n > 0 {
			turn *= cmplx.Rect(1, standsAt(s, set[n-1], set[n])*math.Pi/180)
		}
	}
	return at
}

// standsAt is the splay, in degrees, of the joint between two cabinets of a set that
// stands on its dolly before anybody opens a joint at the hoist.
func standsAt(s *job.Stack, upper, lower job.Placed) float64 {
	if s.PinsSet == "on_dolly" {
		return lower.Hole.Splay
	}
	truck := upper.Transport
	if lower.HolesForJointAbove {
		truck = lower.Transport
	}
	if truck == nil {
		return 0
	}
	return truck.Splay
}
