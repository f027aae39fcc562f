package laws

import (
	"fmt"
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/testdata/proof"
	"hangpack/testdata/trials"
)

// needs are what hangs from hooks, bar and pins needs of them, in newtons, as the system
// gives it over the reach of every state and all places of unknown centres.
type needs struct {
	hoists            map[string]float64
	bar, pick         float64
	hingePin, linkPin float64
}

func (r *reacher) needs() needs {
	n, p := needs{hoists: map[string]float64{}}, r.Job.Practice
	design := (1 + p.MassTolerance) * p.DynamicFactor / p.GearUse
	for _, mix := range trials.Mixes(r.unknown()) {
		for _, a := range flightsOf(r.Stack) {
			for _, c := range r.state(a, mix).at {
				n.bar = math.Max(n.bar, c.kg*gravity*design)
				for i, pick := range r.Picks {
					hook := (c.most[i] + pick.Below.Mass*gravity*(1+p.MassTolerance)) / p.HoistUse
					n.hoists[pick.Hoist.Key] = math.Max(n.hoists[pick.Hoist.Key], hook)
					n.pick = math.Max(n.pick, c.most[i]*p.DynamicFactor/p.GearUse)
				}
				for k := range c.Links {
					ofHinge, ofLink := pinShares(r.Stack, p, k)
					n.hingePin = math.Max(n.hingePin, math.Hypot(c.Pull[k], c.Side[k])*ofHinge*design)
					n.linkPin = math.Max(n.linkPin, math.Abs(c.Links[k])*ofLink*design)
				}
			}
		}
	}
	return n
}

// sharpen makes a job of one stack whose gear is up to what hangs from it by little, each
// thing in half of the jobs, with wide windows and no rating besides: so that windows are
// cut, now by this and now by that.
func (r *reacher) sharpen(n tree, i int, draw *rand.Rand) {
	s := n.at("stacks").items()[i]
	n.inFull(s)
	n.keepStacks(i)
	n.at("practice").put("reading_floor", "90 kg")
	need, bar := r.needs(), n.at("gear", "bars", r.Bar.Key)
	little := func(newtons float64) string { return quantityText(newtons*(1+0.1*draw.Float64()), "N") }
	for _, key := range n.at("gear", "hoists").names() {
		newtons, used := need.hoists[key]
		if !used {
			continue
		}
		hoist := n.at("gear", "hoists", key)
		if hoist.put("capacity", "900 kN"); draw.Intn(2) == 0 {
			hoist.put("capacity", little(newtons))
		}
	}
	for k, key := range []string{"rating", "pick_rating"} {
		if bar.drop(key); draw.Intn(2) == 0 {
			bar.put(key, little([...]float64{need.bar, need.pick}[k]))
		}
	}
	pins := fmt.Sprintf("{hinge: %s, link: %s}", little(need.hingePin), little(need.linkPin))
	bodies := append(n.at("gear", "cabinets").items(), bar)
	given := draw.Intn(2) == 0
	for _, b := range bodies {
		if b.drop("pin_ratings"); given {
			b.put("pin_ratings", pins)
		}
	}
}

// TestWindowsOfEachHoistAlone: where each of two hoists has to hold the stack alone, what
// may be read ends where a hoist, a pick hole or a pin would be at its limit then, wherever
// unknown centres lie. All gear is up to 900 kN, then one thing to a hundredth more than
// it needs.
func TestWindowsOfEachHoistAlone(t *testing.T) {
	n := asTree(trials.UnknownJob(t))
	n.keepStacks(1)
	n.at("practice").put("one_must_hold", "yes")
	n.at("practice").put("reading_floor", "90 kg")
	n.rate(map[string]float64{})
	uses := mostAlone(newReacher(t, trials.OpenJob(t, n.text()).Stacks[0]))
	for _, part := range []string{"hoist", "pick hole", "hinge pin", "link pin"} {
		n.rate(map[string]float64{part: 1.01 * uses[part]})
		j := trials.OpenJob(t, n.text())
		require.Empty(t, j.Stacks[0].Holds, part)
		is, seen := printed(j.Figures.Stacks[0]), proof.OffBy{}
		newReacher(t, j.Stacks[0]).windows(&seen, is)
		assert.Less(t, is.High[0]-is.Hooks[0], 89.0, "%s cuts no window", part)
		assert.Less(t, is.High[1]-is.Hooks[1], 89.0, "%s cuts no window", part)
	}
}

// rate rates all gear for 900 kN, or for a share of that.
func (n tree) rate(share map[string]float64) {
	rating := func(part string) string {
		if s, little := share[part]; little {
			return quantityText(900_000*s, "N")
		}
		return "900 kN"
	}
	bar := n.at("gear", "bars", "bar")
	bar.put("rating", "900 kN")
	bar.put("pick_rating", rating("pick hole"))
	n.at("gear", "hoists", "half-tonne").put("capacity", rating("hoist"))
	for _, body := range append(n.at("gear", "cabinets").items(), bar) {
		body.put("pin_ratings", fmt.Sprintf("{hinge: %s, link: %s}", rating("hinge pin"), rating("link pin")))
	}
}

// mostAlone is how much each kind of part is used with either of two hoists alone.
func mostAlone(r *reacher) map[string]float64 {
	uses := map[string]float64{}
	for i := range r.Picks {
		for _, mix := range trials.Mixes(r.unknown()) {
			for _, a := range flightsOf(r.Stack) {
				r.alone(newVerdicts(), uses, a, mix, i)
			}
		}
	}
	return uses
}
