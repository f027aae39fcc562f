package trials

import (
	"math/cmplx"
	"testing"

	"hangpack/calc"
	"hangpack/paperwork/job"
)

// A Part is bar, cabinet or extra, and what all the others would carry of it alone if
// they weighed nothing: once where it is known where its centre of gravity lies, else
// for the middle of its outline and for each corner of the middle third of that.
type Part struct {
	Type  *job.Cabinet // nil but for a cabinet whose centre of gravity is not known
	Kg    float64
	Bears []System
}

// A Mix says where the centres of gravity that are not known lie, type by type: 0 in
// the middle, 1 to 4 in a corner.
type Mix map[*job.Cabinet]int

// A load is some mass at a place of a body, 0 the bar.
type load struct {
	body int
	kg   float64
	at   complex128
}

// Places are where the centre of gravity of a cabinet may lie, in its own axes.
func Places(c *job.Cabinet) []calc.Offset {
	if !c.CentreUnknown {
		return []calc.Offset{c.CentreOfGravity}
	}
	all := []calc.Offset{{Behind: c.Depth/2 - c.HingeBehindFront, Below: c.FrontHeight/2 - c.HingeBelowTop}}
	for _, behind := range []float64{-c.Depth / 6, c.Depth / 6} {
		for _, below := range []float64{-c.FrontHeight / 6, c.FrontHeight / 6} {
			all = append(all, calc.Offset{Behind: all[0].Behind + behind, Below: all[0].Below + below})
		}
	}
	return all
}

// Mixes are all ways in which the centres of gravity of some types may lie: in the
// middle, or each in any of its corners.
func Mixes(unknown []*job.Cabinet) []Mix {
	corners := []Mix{{}}
	for _, c := range unknown {
		var more []Mix
		for _, m := range corners {
			for corner := 1; corner <= 4; corner++ {
				with := Mix{c: corner}
				for k, v := range m {
					with[k] = v
				}
				more = append(more, with)
			}
		}
		corners = more
	}
	if len(unknown) == 0 {
		return corners
	}
	return append([]Mix{{}}, corners...)
}

// Parts hangs the first n cabinets of a stack by some of its pick holes with the bar at
// a tilt, each part alone.
func Parts(t *testing.T, s *job.Stack, n int, holes []int, tilt float64) (parts []Part) {
	t.Helper()
	b := balanceOf(s, n, holes, tilt)
	var loads []load
	add := func(of *job.Cabinet, body int, kg float64, at ...complex128) {
		parts = append(parts, Part{Type: of, Kg: kg, Bears: make([]System, len(at))})
		for _, a := range at {
			loads = append(loads, load{body, kg, a})
		}
	}
	add(nil, 0, s.Bar.Mass, At(s.Bar.CentreOfGravity, tilt))
	for k, c := range s.Cabinets[:n] {
		of, at := (*job.Cabinet)(nil), []complex128{}
		for _, o := range Places(c.Cabinet) {
			at = append(at, b.pins[k]+At(o, b.turns[k]))
		}
		if len(at) > 1 {
			of = c.Cabinet
		}
		add(of, k+1, c.Mass, at...)
	}
	for _, e := range s.Extras {
		switch {
		case e.Cabinet == 0:
			add(nil, 0, e.Mass, At(e.At, tilt))
		case e.Cabinet <= n:
			add(nil, e.Cabinet, e.Mass, b.pins[e.Cabinet-1]+At(e.At, b.turns[e.Cabinet-1]))
		}
	}
	solved := b.systems(t, loads)
	for i := range parts {
		solved = solved[copy(parts[i].Bears, solved):]
	}
	return parts
}

// Together is what the parts give where the unknown centres lie, each with its mass
// times more.
func Together(parts []Part, mix Mix, more func(Part) float64) System {
	first := parts[0].Bears[0]
	n := len(first.Links)
	sum := System{Hooks: make([]float64, len(first.Hooks)), Links: make([]float64, n), Pull: make([]float64, n), Side: make([]float64, n)}
	for _, p := range parts {
		w, by := p.Bears[mix[p.Type]], more(p)
		sum.Level, sum.Turn = sum.Level+by*w.Level, sum.Turn+by*w.Turn
		for i := range w.Hooks {
			sum.Hooks[i] += by * w.Hooks[i]
		}
		for k := range w.Links {
			sum.Links[k], sum.Pull[k], sum.Side[k] = sum.Links[k]+by*w.Links[k], sum.Pull[k]+by*w.Pull[k], sum.Side[k]+by*w.Side[k]
		}
	}
	return sum
}

// Centre is the mass of the first n cabinets under their bar, and where its centre of
// gravity lies with the bar level.
func Centre(s *job.Stack, n int, mix Mix) (kg float64, at complex128) {
	kg, at = s.Bar.Mass, At(s.Bar.CentreOfGravity, 0)*complex(s.Bar.Mass, 0)
	hang := func(mass float64, where complex128) {
		kg, at = kg+mass, at+where*complex(mass, 0)
	}
	b := balanceOf(s, n, []int{0}, 0)
	for k, c := range s.Cabinets[:n] {
		hang(c.Mass, b.pins[k]+At(Places(c.Cabinet)[mix[c.Cabinet]], b.turns[k]))
	}
	for _, e := range s.Extras {
		switch {
		case e.Cabinet == 0:
			hang(e.Mass, At(e.At, 0))
		case e.Cabinet <= n:
			hang(e.Mass, b.pins[e.Cabinet-1]+At(e.At, b.turns[e.Cabinet-1]))
		}
	}
	return kg, at / complex(kg, 0)
}

// Plumb is the tilt at which a centre of gravity settles below a pick hole, both as
// they lie with the bar level.
func Plumb(hole, centre complex128) float64 { return cmplx.Phase((centre - hole) * 1i) }
