package sheets

import (
	"math"
	"math/cmplx"

	"hangpack/calc"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rules"
	"hangpack/testdata/trials"
)

// What governs is worked out here once more, straight from the job, part by part as
// complex numbers, in every state at every tilt that the sheets let pass and in every
// corner of unknown centres of gravity; and held against the figures and the sheet.

// A massAt is a mass where it hangs, x forward and z up, and its cabinet from 1, 0 of
// the bar.
type massAt struct {
	kg      float64
	at      complex128
	cabinet int
}

// ownParts are the masses of the first n cabinets and the hinges above them, with the
// bar at a tilt; sixths move the centre of gravity of a type.
func ownParts(s *job.Stack, n int, tilt float64, sixths map[*job.Cabinet][2]float64) (masses []massAt, hinges []complex128) {
	masses = append(masses, massAt{s.Bar.Mass, trials.At(s.Bar.CentreOfGravity, tilt), 0})
	aim, pin := []float64{tilt}, []complex128{0}
	for k, c := range s.Cabinets[:n] {
		turned := aim[k] + c.Hole.Splay*math.Pi/180
		so, cg := sixths[c.Cabinet], c.CentreOfGravity
		cg.Behind, cg.Below = cg.Behind+so[0]*c.Depth/6, cg.Below+so[1]*c.FrontHeight/6
		masses = append(masses, massAt{c.Mass, pin[k] + trials.At(cg, turned), k + 1})
		hinges = append(hinges, pin[k])
		aim, pin = append(aim, turned), append(pin, pin[k]+trials.At(calc.Offset{Below: c.HingePitch}, turned))
	}
	for _, e := range s.Extras {
		if e.Cabinet <= n {
			masses = append(masses, massAt{e.Mass, pin[max(e.Cabinet-1, 0)] + trials.At(e.At, aim[e.Cabinet]), e.Cabinet})
		}
	}
	return masses, hinges
}

// ownCorners are all places of unknown centres of gravity, the middle first.
func ownCorners(s *job.Stack) []map[*job.Cabinet][2]float64 {
	all := []map[*job.Cabinet][2]float64{{}}
	for _, c := range s.Cabinets {
		if _, has := all[len(all)-1][c.Cabinet]; !c.CentreUnknown || has {
			continue
		}
		var more []map[*job.Cabinet][2]float64
		for _, so := range all {
			for _, at := range [][2]float64{{-1, -1}, {-1, 1}, {1, -1}, {1, 1}} {
				with := map[*job.Cabinet][2]float64{c.Cabinet: at}
				for of, is := range so {
					with[of] = is
				}
				more = append(more, with)
			}
		}
		all = more
	}
	if len(all) > 1 {
		all = append([]map[*job.Cabinet][2]float64{{}}, all...)
	}
	return all
}

func ownCentre(masses []massAt) (kg float64, at complex128) {
	for _, m := range masses {
		kg, at = kg+m.kg, at+complex(m.kg, 0)*m.at
	}
	return kg, at / complex(kg, 0)
}

// plumbBelow is the tilt at which masses, placed with the bar level, hang plumb below a hole.
func plumbBelow(masses []massAt, hole calc.Offset) float64 {
	_, g := ownCentre(masses)
	return cmplx.Phase((g - trials.At(hole, 0)) / -1i)
}

// ownGoverns are the most on each pick and the least in a link that may only be pulled,
// in kg and kN; infinite where there is none.
func ownGoverns(h *rules.Checked) (most []float64, least float64) {
	s, t := h.Stack, h.Job.Practice.MassTolerance
	most, least = make([]float64, len(h.Holes)), math.Inf(1)
	for i := range most {
		most[i] = math.Inf(-1)
	}
	flown := 0
	for _, set := range h.Sets {
		flown += set
		for _, sixths := range ownCorners(s) {
			tilt := s.Aim - s.Cabinets[0].Hole.Splay*math.Pi/180
			if len(h.Holes) == 1 {
				level, _ := ownParts(s, flown, 0, sixths)
				tilt = plumbBelow(level, h.Hole(0))
			}
			for _, at := range ownReach(h, tilt) {
				masses, hinges := ownParts(s, flown, at, sixths)
				for i := range most {
					most[i] = math.Max(most[i], ownMost(h, masses, i, at, t))
				}
				for k, hinge := range hinges {
					if !ownMayPush(s, k) {
						least = math.Min(least, ownLeast(s, masses, k, hinge, t))
					}
				}
			}
		}
	}
	return most, least
}

// ownReach are the tilts that the sheets let pass around one.
func ownReach(h *rules.Checked, tilt float64) []float64 {
	off := h.Job.Practice.AimTolerance
	up, down := tilt-off, tilt+off
	if l := h.Bar.TiltLimit; l != nil && tilt < l.Down+1e-9 && tilt > -l.Up-1e-9 {
		up, down = math.Max(up, math.Min(-l.Up, tilt)), math.Min(down, math.Max(l.Down, tilt))
	}
	return []float64{tilt, up, down}
}

func ownMost(h *rules.Checked, masses []massAt, i int, tilt, t float64) (most float64) {
	for _, m := range masses {
		share := 1.0
		if len(h.Holes) == 2 {
			own, other := real(trials.At(h.Hole(i), tilt)), real(trials.At(h.Hole(1-i), tilt))
			share = (real(m.at) - other) / (own - other)
		}
		most += m.kg * math.Max(share*(1+t), share*(1-t))
	}
	return most
}

func ownMayPush(s *job.Stack, k int) bool {
	return s.Cabinets[k].LinkPushes && (k == 0 || s.Cabinets[k-1].LinkPushes)
}

func ownLeast(s *job.Stack, masses []massAt, k int, hinge complex128, t float64) (kn float64) {
	arm := math.Min(s.LinkArm, s.Cabinets[0].LinkArm)
	if k > 0 {
		arm = math.Min(s.Cabinets[k-1].LinkArm, s.Cabinets[k].LinkArm)
	}
	arm *= math.Cos(s.Cabinets[k].Hole.Splay * math.Pi / 360)
	for _, m := range masses {
		if m.cabinet > k {
			behind := real(hinge - m.at)
			kn += m.kg * 9.80665 / 1000 / arm * math.Min(behind*(1+t), behind*(1-t))
		}
	}
	return kn
}
