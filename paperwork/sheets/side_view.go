package sheets

import (
	"fmt"
	"math"

	"hangpack/calc"
	"hangpack/layouts/drawings"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// sideView is the stack from the side, as it hangs at trim, with labels for
// the cabinets of one sheet.
func sideView(h *rig.Hung, labelled say.Span) drawings.Elevation {
	u, s := h.Unit(), h.Finished
	e := sideOf(h, s, h.Raise)
	e.From, e.To = labelled.From, labelled.To
	e.Levels = []drawings.Level{
		{Z: h.Raise + s.HighestPick(), Says: pickLevel(h)},
		{Z: h.Raise + s.Lowest(), Says: []string{"lowest " + u.Length(h.Raise+s.Lowest())}, Under: true},
	}
	return e
}

// sideOf is a state seen from the side, raised by so much.
func sideOf(h *rig.Hung, s *rig.State, raise float64) drawings.Elevation {
	up := func(v calc.Vec) drawings.Place { return drawings.Place{X: v.X, Z: v.Z + raise} }
	e := drawings.Elevation{Ruler: drawings.Ruler{Imperial: h.Job.Imperial}, Centre: up(s.Centre.At), From: 1, To: s.Flown}
	for k, c := range h.Cabinets[:s.Flown] {
		side := drawings.Side{Number: fmt.Sprint(k + 1), Hole: say.Hole(c.Hole.Label, c.Hole.Splay), Looks: say.Aim(s.Poses[k].Aim), Aim: s.Poses[k].Aim}
		for i, corner := range s.Corners[k] {
			side.Corners[i] = up(corner)
		}
		e.Cabinets = append(e.Cabinets, side)
	}
	for _, o := range barOutline(h) {
		e.Bar = append(e.Bar, up(o.Turned(s.Tilt)))
	}
	for _, p := range h.Bar.PickHoles {
		e.Holes = append(e.Holes, up(p.At.Turned(s.Tilt)))
	}
	for _, p := range s.Picks {
		e.Picks = append(e.Picks, up(p))
	}
	return e
}

// pickLevel says how high the picks are, the line next to the mark first.
func pickLevel(h *rig.Hung) []string {
	u := h.Unit()
	if len(h.Picks) == 1 {
		return []string{"pick hole " + u.Length(h.PickHeight(0)), "low hook " + u.Length(h.LowHook(0))}
	}
	return []string{"rear " + u.Length(h.PickHeight(1)), "pick front " + u.Length(h.PickHeight(0))}
}

// barEdge is how far the bar is drawn past its outermost holes, in metres. The
// job gives no outline of a bar: it is drawn around its holes and hinge pin.
const barEdge = 0.03

// barOutline is a bar around its pick holes and its hinge pin.
func barOutline(h *rig.Hung) []calc.Offset {
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

// barStrip is the bar with its pick holes, from the side.
func barStrip(h *rig.Hung) drawings.Strip {
	s := drawings.Strip{Ruler: drawings.Ruler{Imperial: h.Job.Imperial}, Used: h.Holes}
	for i, p := range h.Bar.PickHoles {
		hole := drawings.BarHole{At: drawings.Place{X: -p.At.Behind, Z: -p.At.Below}, Label: p.Label}
		if len(h.Options) > 0 {
			hole.Aim = say.Aim(h.Options[i].Aim)
		}
		s.Holes = append(s.Holes, hole)
	}
	if len(h.Options) > 0 {
		s.Lead = "above each hole: the aim of cabinet 1 it gives"
	}
	return s
}
