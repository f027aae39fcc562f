package rig

import (
	"hangpack/calc"
	"hangpack/paperwork/job"
)

// calcStack gives calc a stack of the job, with unknown centres of gravity at a place
// of their middle third.
func calcStack(s *job.Stack, at Third) calc.Stack {
	b := calc.Stack{Bar: calc.Bar{
		Mass:            s.Bar.Mass,
		CentreOfGravity: s.Bar.CentreOfGravity,
		LinkArm:         s.LinkArm,
	}}
	for _, c := range s.Cabinets {
		b.Cabinets = append(b.Cabinets, calc.Cabinet{
			Mass:            c.Mass,
			CentreOfGravity: at.centre(c.Cabinet),
			Splay:           calc.Radians(c.Hole.Splay),
			HingePitch:      c.HingePitch,
			LinkArm:         c.LinkArm,
			Corners:         calc.Outline(c.Depth, c.FrontHeight, c.BackHeight, c.HingeBehindFront, c.HingeBelowTop),
		})
	}
	for _, e := range s.Extras {
		tied := &b.Bar.Extras
		if e.Cabinet > 0 {
			tied = &b.Cabinets[e.Cabinet-1].Extras
		}
		*tied = append(*tied, calc.Weight{Mass: e.Mass, At: e.At})
	}
	return b
}

// calcHoist gives calc a hoist of the job.
func calcHoist(h *job.Hoist) calc.Hoist {
	return calc.Hoist{Mass: h.Mass, ChainMass: h.ChainMass, ChainLength: h.ChainLength, Falls: h.Falls, Headroom: h.Headroom}
}
