package laws

import (
	"fmt"
	"math"
	"math/cmplx"
	"slices"
	"strings"
	"testing"

	"hangpack/paperwork/job"
	"hangpack/testdata/deep"
	"hangpack/testdata/trials"
)

// notRead are the rules that no reading tells of, and so may find something:
//
//   - heights and dollies: the state is worked as a stack of its own, high up, without
//     steel, floor or dolly.
//   - light_pick is of the nominal tilt, and least_share is a share of practice, not
//     what anything holds.
var notRead = []string{"headroom", "chain_reach", "below_floor", "light_pick"}

// whatMayBeRead: whatever hangs at a tilt inside the reach of a state, with every
// reading within its printed window, is not held: neither with masses as light nor as
// heavy, all together, as the windows let pass. It is worked as a job of its own, with
// the cabinets flown and their extras, its pick holes as they are, every mass times one
// factor (rigging below too), and no tolerance. Two hoists hold any tilt: the job asks
// for its aim. One pick settles where it does, so the bar has one hole moved level to
// where the same stack settles at that tilt: no load changes by that. Left out are
// stacks that are held, whose windows are not cut, and the rules of notRead. An unknown
// centre lies in its middle or in a corner, which of them is drawn. Each stack is tried
// as it is drawn, and with gear that is up to little more than it.
func whatMayBeRead(t *trial) {
	for i, h := range t.Stacks {
		if h.Held() {
			continue
		}
		plain := t.one(4) // each day one of both
		if plain || deep.On() {
			t.readAnything(i)
		}
		if plain && !deep.On() {
			continue
		}
		sharp := t.tree.copied()
		newReacher(new(testing.T), h).sharpen(sharp, i, t.Rand)
		if j := t.opened(sharp.text()); j != nil && !j.Stacks[0].Held() {
			with := &trial{base: &base{Job: j, tree: sharp}, Rand: t.Rand}
			with.readAnything(0)
			t.cases, t.faults = t.cases+with.cases, append(t.faults, with.faults...)
		}
	}
}

// readAnything tries what may be read of one stack.
func (t *trial) readAnything(i int) {
	h := t.Stacks[i]
	r, j := newReacher(nil, h), printed(t.Figures.Stacks[i])
	mixes, flights := trials.Mixes(r.unknown()), flightsOf(h.Stack)
	if !deep.On() && len(flights) > 2 {
		flights = []flight{flights[0], flights[1+t.Intn(len(flights)-1)]}
	}
	for _, a := range flights {
		t.readings(r, i, a, j.of(a), mixes[t.Intn(len(mixes))])
	}
}

// readings tries one state at tilts inside its reach.
func (t *trial) readings(r *reacher, i int, a flight, may jsonHooks, mix trials.Mix) {
	nominal, kg, centre, _ := r.nominal(a, mix)
	tilts := r.reach(nominal)
	for range deep.Of(1, 3) {
		tilts = append(tilts, tilts[1]+t.Float64()*(tilts[2]-tilts[1]))
	}
	for _, tilt := range tilts {
		least, most := r.factors(may, r.reads(kg, centre, tilt))
		if least > most {
			continue // no window lets it pass
		}
		factors := []float64{least, most}
		if deep.On() {
			factors = append(factors, least+t.Float64()*(most-least))
		}
		for _, factor := range factors {
			t.cases++
			is := t.changed(func(n tree) {
				s := n.at("stacks").items()[i]
				n.inFull(s)
				n.keepStacks(i)
				r.hangAt(n, s, a, mix, centre, tilt, factor)
			})
			if is == nil {
				return
			}
			for _, f := range is.Stacks[0].Holds {
				t.must(slices.Contains(notRead, f.Rule), "%s, %d flown, bar at %.4f°, all masses x %.6f, %v: %s, %s: %s", r.ID, a.flown, tilt*180/math.Pi, factor, mixWords(mix), f.Rule, f.Where, f.Says)
			}
		}
	}
}

func mixWords(m trials.Mix) (all []string) {
	for c, corner := range m {
		all = append(all, fmt.Sprint(c.Key, " in corner ", corner))
	}
	return all
}

// reads are what the hooks hold at a tilt, in kg.
func (r *reacher) reads(kg float64, centre complex128, tilt float64) []float64 {
	if len(r.Holes) == 1 {
		return []float64{kg + r.Picks[0].Below.Mass}
	}
	level := func(at complex128) float64 { return real(at * cmplx.Exp(complex(0, -tilt))) }
	front, rear := level(r.hole(0)), level(r.hole(1))
	share := (level(centre) - rear) / (front - rear)
	return []float64{kg*share + r.Picks[0].Below.Mass, kg*(1-share) + r.Picks[1].Below.Mass}
}

// factors are how light and how heavy all may be together so that every reading is
// within its window, and both together within theirs.
func (r *reacher) factors(may jsonHooks, reads []float64) (least, most float64) {
	most, sum := math.Inf(1), 0.0
	for i, kg := range reads {
		least, most = math.Max(least, may.Low[i]/kg), math.Min(most, may.High[i]/kg)
		sum += kg
	}
	if len(reads) == 2 {
		least, most = math.Max(least, may.SumLow/sum), math.Min(most, may.SumHigh/sum)
	}
	return least, most
}

// hangAt makes a job of one state at a tilt.
func (r *reacher) hangAt(n, s tree, a flight, mix trials.Mix, centre complex128, tilt, factor float64) {
	for _, key := range []string{"mass_tolerance", "aim_tolerance", "least_share"} {
		n.at("practice").put(key, "0")
	}
	s.cutTo(a.flown)
	for _, key := range []string{"sets", "dolly", "steel", "floor", "pins_set"} {
		s.drop(key)
	}
	s.put("trim", "{highest_pick: 100 m}")
	r.knowAs(n, mix)
	r.pickAt(n, s, centre, tilt)
	n.each(func(path string, row job.Key, v tree) {
		of, isMass := strings.CutSuffix(path, ".mass")
		if isMass && v.Value != "0" && (of == "gear.cabinets.*" || of == "gear.bars.*" || of == "stacks[].extras[]" || strings.HasPrefix(of, "stacks[].rigging_below")) {
			v.set(v.si()*factor, v.unitSI())
		}
	})
}

// pickAt has the stack hang at a tilt.
func (r *reacher) pickAt(n, s tree, centre complex128, tilt float64) {
	if len(r.Holes) == 2 {
		aim := tilt + r.Cabinets[0].Hole.Splay*math.Pi/180
		way := map[bool]string{false: " down", true: " up"}[aim < 0]
		s.put("aim", quantityText(math.Abs(aim), "deg")+way)
		return
	}
	below := -imag(r.hole(0))
	behind := -real(centre) + (-imag(centre)-below)*math.Tan(tilt)
	n.at("gear", "bars", r.Bar.Key).put("pick_holes", fmt.Sprintf("[{label: X, behind_hinge: %s, below_hinge: %s}]", quantityText(behind, "m"), quantityText(below, "m")))
	s.at("hang").put("pick_hole", "X")
}

// knowAs gives the centres of gravity that are not known.
func (r *reacher) knowAs(n tree, mix trials.Mix) {
	for _, c := range r.unknown() {
		at := trials.Places(c)[mix[c]]
		n.at("gear", "cabinets", c.Key).put("centre_of_gravity", fmt.Sprintf("{behind_hinge: %s, below_hinge: %s}", quantityText(at.Behind, "m"), quantityText(at.Below, "m")))
	}
}
