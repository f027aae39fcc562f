package laws

import (
	"fmt"
	"math"
	"math/rand"

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
