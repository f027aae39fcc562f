package laws

import (
	"encoding/json"
	"math"
	"math/cmplx"
	"testing"

	"hangpack/paperwork/job"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// How a stack hangs over its reach, solved as one linear system of bar and cabinets:
// each part alone, so that each may be as light or as heavy as it is worst. It takes
// the job, and which pick holes are in use, from the program, and nothing else.

const gravity = 9.80665

// A flight is the stack with some of its cabinets flown; lift 0 is the finished one.
type flight struct{ lift, flown int }

func flightsOf(s *job.Stack) []flight {
	all := []flight{{0, len(s.Cabinets)}}
	flown := 0
	for k, n := range s.Sets[:len(s.Sets)-1] {
		flown += n
		all = append(all, flight{k + 1, flown})
	}
	return all
}

// carried is what hooks and joints carry at one tilt, in newtons: with masses as the
// job gives them, and with each part as much lighter or heavier as is worst.
type carried struct {
	trials.System
	most, least []float64 // of hooks
	leastLinks  []float64
	kg          float64
}

// carriedBy adds up what parts bear.
func carriedBy(parts []trials.Part, mix trials.Mix, tolerance float64) carried {
	asGiven := func(trials.Part) float64 { return 1 }
	c := carried{System: trials.Together(parts, mix, asGiven)}
	for i, sum := range c.Hooks {
		apart := 0.0
		for _, p := range parts {
			apart += math.Abs(p.Bears[mix[p.Type]].Hooks[i])
		}
		c.most, c.least = append(c.most, sum+tolerance*apart), append(c.least, sum-tolerance*apart)
	}
	for k, sum := range c.Links {
		apart := 0.0
		for _, p := range parts {
			apart += math.Abs(p.Bears[mix[p.Type]].Links[k])
		}
		c.leastLinks = append(c.leastLinks, sum-tolerance*apart)
	}
	for _, p := range parts {
		c.kg += p.Kg
	}
	return c
}

// reached is a state at its nominal tilt and at both ends of its reach; over is true
// where it tips over.
type reached struct {
	flight
	tilts []float64 // nominal, furthest up, furthest down
	at    []carried
	over  bool
}

// A reacher works out states of a stack, and keeps what two picks have in common.
type reacher struct {
	t *testing.T
	*rules.Checked
	parts map[tilted][]trials.Part
}

type tilted struct {
	flown int
	tilt  float64
}

func newReacher(t *testing.T, h *rules.Checked) *reacher {
	return &reacher{t, h, map[tilted][]trials.Part{}}
}

// nominal is the tilt at which a state hangs, with its mass and where its centre of
// gravity is with the bar level, and whether it tips over.
func (r *reacher) nominal(a flight, mix trials.Mix) (tilt, kg float64, centre complex128, over bool) {
	kg, centre = trials.Centre(r.Stack, a.flown, mix)
	if len(r.Holes) == 1 {
		return trials.Plumb(r.hole(0), centre), kg, centre, imag(centre) >= imag(r.hole(0))
	}
	over = imag(cmplx.Conj(r.hole(0)-r.hole(1))*(centre-r.hole(1))) >= 0
	return r.Aim - r.Cabinets[0].Hole.Splay*math.Pi/180, kg, centre, over
}

// state is one state with the unknown centres in some places.
func (r *reacher) state(a flight, mix trials.Mix) reached {
	nominal, _, _, over := r.nominal(a, mix)
	s := reached{flight: a, tilts: r.reach(nominal), over: over}
	for _, tilt := range s.tilts {
		key := tilted{a.flown, tilt}
		if r.parts[key] == nil {
			r.parts[key] = trials.Parts(r.t, r.Stack, a.flown, r.Holes, tilt)
		}
		s.at = append(s.at, carriedBy(r.parts[key], mix, r.Job.Practice.MassTolerance))
	}
	return s
}

// hole is where pick i is with the bar level.
func (r *reacher) hole(i int) complex128 { return trials.At(r.Bar.PickHoles[r.Holes[i]].At, 0) }

// reach is a nominal tilt and the ends of what may hang about it.
func (r *reacher) reach(nominal float64) []float64 {
	off := r.Job.Practice.AimTolerance
	up, down := nominal-off, nominal+off
	if l := r.Bar.TiltLimit; l != nil && nominal >= -l.Up && nominal <= l.Down {
		up, down = math.Max(up, -l.Up), math.Min(down, l.Down)
	}
	return []float64{nominal, up, down}
}

// unknown are the types whose centre of gravity is not known, each once.
func (r *reacher) unknown() (types []*job.Cabinet) {
	seen := map[*job.Cabinet]bool{}
	for _, c := range r.Cabinets {
		if c.CentreUnknown && !seen[c.Cabinet] {
			seen[c.Cabinet] = true
			types = append(types, c.Cabinet)
		}
	}
	return types
}

// pinRated is what one pin of joint k is rated, the lower of both bodies, 0 where
// neither gives any.
func pinRated(s *job.Stack, k int) (hinge, link float64) {
	bodies := []*job.PinRatings{s.Bar.PinRatings, s.Cabinets[k].PinRatings}
	if k > 0 {
		bodies[0] = s.Cabinets[k-1].PinRatings
	}
	hinge, link = math.Inf(1), math.Inf(1)
	for _, b := range bodies {
		if b != nil {
			hinge, link = math.Min(hinge, b.Hinge), math.Min(link, b.Link)
		}
	}
	return hinge, link
}

// pinShares are what one pin of joint k takes of its force.
func pinShares(s *job.Stack, p job.Practice, k int) (hinge, link float64) {
	share := map[int]float64{1: 1, 2: p.SideShare}
	return share[s.Cabinets[k].HingePins], share[s.Cabinets[k].LinkPins]
}

func mayPush(s *job.Stack, k int) bool {
	return s.Cabinets[k].LinkPushes && (k == 0 || s.Cabinets[k-1].LinkPushes)
}

// A jsonStack is a stack as check -json prints it, as far as the reach bears on it.
type jsonStack struct {
	Held            bool
	Holds, Cautions []struct{ Rule, Where string }
	Points          []struct {
		Governing struct {
			Design float64 `json:"design_kg"`
			Where  string
		}
		AloneDesign float64 `json:"alone_design_kg"`
	}
	jsonHooks
	Lifts []jsonHooks
}

type jsonHooks struct {
	Hooks   []float64 `json:"hook_kg"`
	Low     []float64 `json:"low_kg"`
	High    []float64 `json:"high_kg"`
	SumLow  float64   `json:"sum_low_kg"`
	SumHigh float64   `json:"sum_high_kg"`
	Slack   []float64 `json:"slack_mm"`
	Tilt    float64   `json:"tilt_deg"`
}

// of are the hooks of a state.
func (j jsonStack) of(a flight) jsonHooks {
	if a.lift == 0 {
		return j.jsonHooks
	}
	return j.Lifts[a.lift-1]
}

// printed is a stack's figures as check -json prints them.
func printed(figures worked.StackFigures) (j jsonStack) {
	text, err := json.Marshal(figures)
	if err == nil {
		err = json.Unmarshal(text, &j)
	}
	if err != nil {
		panic(err)
	}
	return j
}
