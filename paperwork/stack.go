package paperwork

import (
	"fmt"
	"math"

	"hangpack/calc"
	"hangpack/paperwork/job"
)

// A hung stack is one stack of a job with all that has been worked out of it.
type hung struct {
	*job.Stack
	job      *job.Job
	body     calc.Stack
	centre   calc.Weight // all of it, in the bar's axes
	options  []option    // one pick: every hole of the bar; else nil
	holes    []int       // the pick holes in use, front first
	start    *state      // two picks: the bar alone, level; nil where it does not hang so
	finished *state
	lifts    []*state // after each set but the last
	swung    []*state // two picks: the whole stack, swung to each of them alone
	third    third    // where unknown centres of gravity are taken
	twin     *hung    // nil where it has none
	corners  []*hung  // the same stack with those in the corners of their middle third
	raise    float64  // height of the bar's hinge at trim, above heights_from
	points   []PointFigures
	holds    []Finding
	cautions []Finding
	uses     []use     // one of each kind of part that has a rating
	measures []measure // one of each kind
}

// An option is a pick hole that a stack with one pick could hang from.
type option struct {
	aim  float64 // of cabinet 1, rad
	tips bool
}

// A state is a stack as it hangs: finished, or after a lift.
type state struct {
	lift    int   // counted from 1; 0 finished
	third   third // where unknown centres of gravity are taken
	flown   int   // cabinets
	tilt    float64
	lever   float64     // how far the centre of gravity lies below the pick, or the line of both; m
	inBar   calc.Weight // all of it, in the bar's axes
	centre  calc.Load
	loads   []float64 // of each pick, kg
	picks   []calc.Vec
	poses   []calc.Pose
	corners [][4]calc.Vec
	joints  []calc.Joint
}

// hang works out one stack of a job.
func hang(j *job.Job, s *job.Stack) (*hung, error) {
	h := &hung{Stack: s, job: j, body: body(s, third{})}
	h.centre = h.body.CentreInBar()
	h.choose()
	if err := h.work(); err != nil {
		return nil, err
	}
	if err := h.workCorners(); err != nil {
		return nil, err
	}
	h.points = h.pointFigures()
	h.check()
	h.takeWorst()
	return h, nil
}

// work works out every state of the stack.
func (h *hung) work() (err error) {
	if h.finished, err = h.state(0, len(h.Cabinets)); err != nil {
		return fmt.Errorf("stack %s: %w", h.ID, err)
	}
	flown := 0
	for k, n := range h.Sets[:len(h.Sets)-1] {
		flown += n
		lift, err := h.state(k+1, flown)
		if err != nil {
			return fmt.Errorf("stack %s, lift %d: %w", h.ID, k+1, err)
		}
		h.lifts = append(h.lifts, lift)
	}
	h.raise = h.atTrim()
	h.workAlone()
	return h.workStart()
}

// choose settles the pick holes. With one pick every hole is worked out; auto
// takes the one whose aim is closest to the wanted one, the earlier of two
// alike, and passes over holes that tip over unless all do.
func (h *hung) choose() {
	for _, p := range h.Picks {
		h.holes = append(h.holes, p.Hole)
	}
	if len(h.Picks) > 1 {
		return
	}
	for _, hole := range h.Bar.PickHoles {
		tilt, lever := calc.Tilt(offset(hole.At), h.centre.At)
		h.options = append(h.options, option{tilt + h.body.Cabinets[0].Splay, lever <= within})
	}
	if h.holes[0] == job.Auto {
		h.holes[0] = closest(h.options, h.Aim)
	}
}

func closest(options []option, wanted float64) int {
	best := 0
	for i, o := range options {
		off, least := math.Abs(o.aim-wanted), math.Abs(options[best].aim-wanted)
		if tips := options[best].tips; o.tips != tips {
			if tips {
				best = i
			}
			continue
		}
		if off < least-within {
			best = i
		}
	}
	return best
}

// state works out the stack with its first n cabinets. One pick: it hangs as
// it settles; two: the hoists hold the tilt of the finished stack.
func (h *hung) state(lift, n int) (*state, error) {
	if len(h.holes) == 1 {
		return h.settled(lift, n, 0), nil
	}
	return h.heldAt(lift, n, h.Aim-h.body.Cabinets[0].Splay)
}

// settled is the stack with its first n cabinets, hung from pick i alone.
func (h *hung) settled(lift, n, i int) *state {
	inBar := h.body.First(n).CentreInBar()
	tilt, lever := calc.Tilt(h.hole(i), inBar.At)
	s := h.tilted(lift, n, tilt, inBar)
	s.lever, s.picks, s.loads = lever, s.picks[i:i+1], []float64{inBar.Mass}
	return s
}

// heldAt is the stack with its first n cabinets, held at a tilt by two hoists.
func (h *hung) heldAt(lift, n int, tilt float64) (*state, error) {
	inBar := h.body.First(n).CentreInBar()
	s := h.tilted(lift, n, tilt, inBar)
	s.lever = calc.BelowPicks(h.hole(0), h.hole(1), inBar.At)
	front, rear, err := h.shared(inBar, tilt)
	s.loads = []float64{front, rear}
	return s, err
}

// shared returns what each of two picks carries of a weight, in kg, with the bar at a
// tilt.
func (h *hung) shared(inBar calc.Weight, tilt float64) (front, rear float64, err error) {
	front, rear, err = calc.TwoPicks(inBar.Mass*calc.G, inBar.At.Turned(tilt).X, h.hole(0).Turned(tilt).X, h.hole(1).Turned(tilt).X)
	return front / calc.G, rear / calc.G, err
}

// tilted is where everything of the first n cabinets is with the bar at a tilt,
// and what its joints carry. What holds it is left open.
func (h *hung) tilted(lift, n int, tilt float64, inBar calc.Weight) *state {
	part := h.body.First(n)
	s := &state{lift: lift, third: h.third, flown: n, tilt: tilt, inBar: inBar, centre: inBar.Turned(tilt)}
	if f := h.finished; f != nil && f.tilt == tilt { // a lift that two hoists hold
		s.poses, s.corners = f.poses[:n:n], f.corners[:n:n]
	} else {
		s.poses = part.Poses(tilt)
		s.corners = part.Corners(s.poses)
	}
	s.joints = part.Joints(s.poses)
	for i := range h.holes {
		s.picks = append(s.picks, h.hole(i).Turned(tilt))
	}
	return s
}

// hole returns the place of pick i on the bar.
func (h *hung) hole(i int) calc.Offset { return offset(h.Bar.PickHoles[h.holes[i]].At) }

// atTrim returns the height of the bar's hinge pin at trim.
func (h *hung) atTrim() float64 {
	if h.Trim.OfPick {
		return h.Trim.Height - h.finished.highestPick()
	}
	return h.Trim.Height - h.finished.lowest()
}

// highestPick returns the height of the highest pick above the hinge pin.
func (s *state) highestPick() float64 {
	high := math.Inf(-1)
	for _, p := range s.picks {
		high = math.Max(high, p.Z)
	}
	return high
}

// lowest returns the height of the lowest corner above the hinge pin.
func (s *state) lowest() float64 {
	low := math.Inf(1)
	for _, c := range s.corners {
		low = min(low, calc.Lowest(c))
	}
	return low
}

// drop returns how far the lowest corner is below the highest pick in use.
func (s *state) drop() float64 { return s.highestPick() - s.lowest() }

// hook returns what hoist i holds, in kg: its pick's load and the rigging below.
func (h *hung) hook(s *state, i int) float64 { return s.loads[i] + h.Picks[i].Below.Mass }

// lowHook returns the height of the hook of hoist i at trim.
func (h *hung) lowHook(i int) float64 { return h.pickHeight(i) + h.Picks[i].Below.Length }

// pickHeight returns the height of pick i at trim.
func (h *hung) pickHeight(i int) float64 { return h.raise + h.finished.picks[i].Z }

// types returns the types of cabinet in the stack, from the top, each once.
func (h *hung) types() (types []*job.Cabinet) {
	seen := map[*job.Cabinet]bool{}
	for _, c := range h.Cabinets {
		if !seen[c.Cabinet] {
			seen[c.Cabinet] = true
			types = append(types, c.Cabinet)
		}
	}
	return types
}
