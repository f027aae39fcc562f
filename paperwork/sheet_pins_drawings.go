package paperwork

import (
	"fmt"
	"math"

	"hangpack/calc"
	"hangpack/layouts"
)

// elevation is the stack from the side, as it hangs at trim, with labels for
// the cabinets of one sheet.
func (h *hung) elevation(labelled span) layouts.Elevation {
	u, s := h.unit(), h.finished
	e := h.sideOf(s, h.raise)
	e.From, e.To = labelled.from, labelled.to
	e.Levels = []layouts.Level{
		{Z: h.raise + s.highestPick(), Says: h.pickLevel()},
		{Z: h.raise + s.lowest(), Says: []string{"lowest " + u.length(h.raise+s.lowest())}, Under: true},
	}
	return e
}

// sideOf is a state seen from the side, raised by so much.
func (h *hung) sideOf(s *state, raise float64) layouts.Elevation {
	up := func(v calc.Vec) layouts.Place { return layouts.Place{X: v.X, Z: v.Z + raise} }
	e := layouts.Elevation{Ruler: layouts.Ruler{Imperial: h.job.Imperial}, Centre: up(s.centre.At), From: 1, To: s.flown}
	for k, c := range h.Cabinets[:s.flown] {
		side := layouts.Side{Number: fmt.Sprint(k + 1), Hole: c.Hole.Label, Looks: aim(s.poses[k].Aim), Aim: s.poses[k].Aim}
		for i, corner := range s.corners[k] {
			side.Corners[i] = up(corner)
		}
		e.Cabinets = append(e.Cabinets, side)
	}
	for _, o := range h.barOutline() {
		e.Bar = append(e.Bar, up(o.Turned(s.tilt)))
	}
	for _, p := range h.Bar.PickHoles {
		e.Holes = append(e.Holes, up(offset(p.At).Turned(s.tilt)))
	}
	for _, p := range s.picks {
		e.Picks = append(e.Picks, up(p))
	}
	return e
}

// pickLevel says how high the picks are, the line next to the mark first.
func (h *hung) pickLevel() []string {
	u := h.unit()
	if len(h.Picks) == 1 {
		return []string{"pick hole " + u.length(h.pickHeight(0)), "low hook " + u.length(h.lowHook(0))}
	}
	return []string{"rear " + u.length(h.pickHeight(1)), "pick front " + u.length(h.pickHeight(0))}
}

// barEdge is how far the bar is drawn past its outermost holes, in metres. The
// job gives no outline of a bar: it is drawn around its holes and hinge pin.
const barEdge = 0.03

// barOutline is a bar around its pick holes and its hinge pin.
func (h *hung) barOutline() []calc.Offset {
	lo, hi := calc.Offset{}, calc.Offset{}
	for _, p := range h.Bar.PickHoles {
		lo = calc.Offset{Behind: math.Min(lo.Behind, p.At.Behind), Below: math.Min(lo.Below, p.At.Below)}
		hi = calc.Offset{Behind: math.Max(hi.Behind, p.At.Behind), Below: math.Max(hi.Below, p.At.Below)}
	}
	return []calc.Offset{
		{Behind: lo.Behind - barEdge, Below: lo.Below - barEdge}, {Behind: hi.Behind + barEdge, Below: lo.Below - barEdge},
		{Behind: hi.Behind + barEdge, Below: hi.Below}, {Behind: lo.Behind - barEdge, Below: hi.Below},
	}
}

// strip is the bar with its pick holes, from the side.
func (h *hung) strip() layouts.Strip {
	s := layouts.Strip{Ruler: layouts.Ruler{Imperial: h.job.Imperial}, Used: h.holes}
	for i, p := range h.Bar.PickHoles {
		hole := layouts.StripHole{At: layouts.Place{X: -p.At.Behind, Z: -p.At.Below}, Label: p.Label}
		if len(h.options) > 0 {
			hole.Aim = aim(h.options[i].aim)
		}
		s.Holes = append(s.Holes, hole)
	}
	if len(h.options) > 0 {
		s.Lead = "above each hole: the aim of cabinet 1 it gives"
	}
	return s
}
