package laws

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"hangpack/calc"
	"hangpack/paperwork/rig"
	"hangpack/testdata/proof"
	"hangpack/testdata/trials"
)

// What the calculation sheet shows of each kind of check is the finished stack
// or the lift that comes closest to its limit. Here every one is worked out
// again and the closest picked by sorting.

// closest is the most of uses and the least of spares, by kind.
type closestOf struct{ most, least map[string]float64 }

func (c closestOf) use(part string, of float64) {
	if had, ok := c.most[part]; !ok || of > had {
		c.most[part] = of
	}
}

func (c closestOf) spare(of string, m float64) {
	if had, ok := c.least[of]; !ok || m < had {
		c.least[of] = m
	}
}

func closestChecks(t *testing.T) (cases int, worst float64) {
	var seen proof.OffBy
	for name, j := range trials.ReadJobs(t) {
		for _, h := range j.Stacks {
			want := closestOf{map[string]float64{}, map[string]float64{}}
			for _, v := range h.Ways() {
				for _, s := range v.States() {
					want.loads(v, s)
					want.pins(v, s)
					want.measures(v, s)
				}
				want.heights(v)
				want.dollies(v)
			}
			for _, u := range h.Uses {
				seen.Cases++
				seen.InDelta(t, want.most[u.Part], u.Share, 1e-8, "%s, %s: %s", name, h.ID, u.Part)
			}
			assert.Len(t, h.Uses, len(want.most), "%s, %s", name, h.ID)
			spares := map[string]float64{}
			for _, m := range h.Measures {
				seen.Cases++
				spares[m.What] = m.Spare
			}
			assert.InDeltaMapValues(t, want.least, spares, 1e-8, "%s, %s", name, h.ID)
			assert.InDelta(t, most(want.most), h.Uses.MostOfAll().Share, 1e-8, "%s, %s", name, h.ID)
		}
	}
	return seen.Cases, seen.Worst
}

func most(of map[string]float64) (m float64) {
	m = math.Inf(-1)
	for _, x := range of {
		m = math.Max(m, x)
	}
	return m
}

func (c closestOf) loads(h *rig.Hung, s *rig.State) {
	p := h.Job.Practice
	both := (1 + p.MassTolerance) * p.DynamicFactor * calc.G
	for _, at := range s.Reach {
		for i, l := range at.Loads {
			kg := l.Is + p.MassTolerance*l.Spread
			c.use("hoist", (kg+h.Picks[i].Below.Mass*(1+p.MassTolerance))*calc.G/(h.Picks[i].Hoist.Capacity*p.HoistUse))
			if h.Bar.PickRating > 0 {
				c.use("pick hole", kg*p.DynamicFactor*calc.G/(h.Bar.PickRating*p.GearUse))
			}
			if len(s.Loads) == 2 {
				c.spare([...]string{"front", "rear"}[i]+" chain", (l.Is-p.MassTolerance*l.Spread)*calc.G-1)
			}
		}
	}
	if h.Bar.Rating > 0 {
		c.use("bar", s.Centre.Mass*both/(h.Bar.Rating*p.GearUse))
	}
}

func (c closestOf) pins(h *rig.Hung, s *rig.State) {
	for _, at := range s.Reach {
		c.joints(h, at)
	}
}

func (c closestOf) joints(h *rig.Hung, at rig.Tilted) {
	p := h.Job.Practice
	both := (1 + p.MassTolerance) * p.DynamicFactor
	for k, j := range at.Joints {
		if rated := h.Ratings(k); rated != nil {
			c.use("hinge pin", calc.PinForce(math.Hypot(j.HingePull, j.HingeSide), h.Cabinets[k].HingePins, p.SideShare)*both/(rated.Hinge*p.GearUse))
			c.use("link pin", calc.PinForce(j.Link, h.Cabinets[k].LinkPins, p.SideShare)*both/(rated.Link*p.GearUse))
		}
		if !h.MayPush(k) {
			c.spare("rear link", j.Link-p.MassTolerance*at.Spread[k])
		}
	}
}

func (c closestOf) measures(h *rig.Hung, s *rig.State) {
	c.spare("centre of gravity", s.Lever)
	if limit := h.Bar.TiltLimit; limit != nil {
		c.spare("bar tilt", limit.Down-s.Tilt)
		c.spare("bar tilt", s.Tilt+limit.Up)
	}
	for i, kg := range s.Loads {
		if len(s.Loads) == 2 {
			c.spare([...]string{"front", "rear"}[i]+" pick's share", kg/s.Centre.Mass-h.Job.Practice.LeastShare)
		}
	}
}

// dollies: how many more a dolly would take than its largest set; and how many
// more cabinets of a type the bar would.
func (c closestOf) dollies(h *rig.Hung) {
	for _, n := range h.Sets {
		if h.Dolly != nil {
			c.spare("dolly", float64(h.Dolly.Takes-n))
		}
	}
	for _, m := range h.Bar.Most {
		n, of := 0, m.Cabinet
		for _, c := range h.Cabinets {
			if c.Key == m.Cabinet || m.Cabinet == "any" {
				n++
			}
		}
		if of == "any" {
			of = "all types together"
		}
		c.spare("number of "+of, float64(m.Count-n))
	}
}

// heights: headroom at trim, for every hoist below steel.
func (c closestOf) heights(h *rig.Hung) {
	p := h.Job.Practice
	c.spare("lowest corner", h.Raise+h.Finished.Lowest()-h.Floor)
	for i, pick := range h.Picks {
		if pick.Steel == nil {
			continue
		}
		high := *pick.Steel - pick.Above.Length
		for k, s := range append([]*rig.State{h.Finished}, h.Lifts...) {
			at := h.Raise + s.Picks[i].Z
			if k > 0 && h.Dolly == nil {
				continue
			}
			if k > 0 {
				at = h.OnDolly(k) + p.Clearance + s.Drop() - (s.HighestPick() - s.Picks[i].Z)
			}
			c.spare("headroom", high-(at+pick.Below.Length+pick.Hoist.Headroom+p.LimitReserve))
		}
		hook := high - pick.Hoist.Headroom - (pick.Hoist.ChainLength-p.LimitReserve)/float64(pick.Hoist.Falls)
		for _, low := range lowHooks(h, i) {
			c.spare("chain reach", low-hook)
		}
	}
}
