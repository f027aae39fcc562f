package sheets

import (
	"fmt"

	"hangpack/calc"
	"hangpack/layouts"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// A part is one mass of a stack with the bar level, in the bar's axes.
type part struct {
	name    string
	mass    float64
	turned  float64     // rad, with its cabinet
	hinge   calc.Offset // of its cabinet
	at      calc.Offset
	cabinet int         // from 1; 0 of the bar
	extra   bool        // tied to it
	moved   calc.Offset // of a cabinet, in its own axes: from where the table has its centre of gravity, where that is not known
}

// massParts are all masses of a stack, bar first, extras after what they are tied to;
// unknown centres of gravity lie as they do in the stack that is given.
func massParts(h *rig.Hung) []part {
	all := append([]part{{name: "bar " + h.Bar.Key, mass: h.Bar.Mass, at: h.Bar.CentreOfGravity}}, extraParts(h, 0, calc.Pose{})...)
	for k, pose := range h.Body.Poses(0) {
		c := h.Cabinets[k]
		centre := h.Body.Cabinets[k].CentreOfGravity
		p := placedPart(pose, centre)
		p.name, p.mass, p.cabinet = fmt.Sprintf("%d %s", k+1, c.Key), c.Mass, k+1
		p.moved = calc.Offset{Behind: centre.Behind - c.CentreOfGravity.Behind, Below: centre.Below - c.CentreOfGravity.Below}
		all = append(append(all, p), extraParts(h, k+1, pose)...)
	}
	return all
}

// extraParts are the extras of a cabinet, counted from 1, or of the bar with 0, that
// hangs as pose says.
func extraParts(h *rig.Hung, cabinet int, pose calc.Pose) (parts []part) {
	for _, e := range h.Extras {
		if e.Cabinet != cabinet {
			continue
		}
		p := placedPart(pose, e.At)
		p.name, p.mass, p.cabinet, p.extra = e.Name, e.Mass, cabinet, true
		parts = append(parts, p)
	}
	return parts
}

// placedPart places what is at a place of a body that hangs as pose says.
func placedPart(pose calc.Pose, at calc.Offset) part {
	g := pose.Hinge.Add(at.Turned(pose.Aim))
	return part{turned: pose.Aim, hinge: calc.Offset{Behind: -pose.Hinge.X, Below: -pose.Hinge.Z}, at: calc.Offset{Behind: -g.X, Below: -g.Z}}
}

// moments sums the masses of parts and their first moments, in kg and kg m.
func moments(parts []part) (mass, behind, below float64) {
	for _, p := range parts {
		mass, behind, below = mass+p.mass, behind+p.mass*p.at.Behind, below+p.mass*p.at.Below
	}
	return mass, behind, below
}

// partTable is the table of all masses with their moments, and the sums of both.
func partTable(h *rig.Hung, all []part) layouts.Table {
	u := h.Unit()
	t := layouts.Table{
		Heads: []string{"part", "mass " + u.MassUnit(), "turned °", "hinge behind " + u.SmallUnit(), "hinge below " + u.SmallUnit(), "centre behind " + u.SmallUnit(), "centre below " + u.SmallUnit(), "mass x behind " + u.MomentUnit(), "mass x below " + u.MomentUnit()},
		Note: "All in the bar's axes: behind and below its hinge pin. A cabinet is turned by the sum of the splays down to it. What lies b behind and d below its hinge lies b cos t + d sin t behind and " +
			"d cos t - b sin t below that hinge once turned by t; each next hinge lies one hinge pitch below, along the cabinet. An extra stands where it is tied, below its cabinet.",
	}
	if len(h.Unknown()) > 0 {
		t.Note += " Where a centre of gravity that is not known is taken b_1 further behind and d_1 further below, in its cabinet's own axes, sums of rows change as the formula says: T_b, T_d are those of this table, " +
			"m_1 is one cabinet, C_1 and S_1 are sums of cos and sin of what the rows of its type are turned."
	}
	for _, p := range all {
		t.Rows = append(t.Rows, []string{p.name, u.BareMass(p.mass), say.Fixed(calc.Degrees(p.turned), 2), u.BareGearLength(p.hinge.Behind), u.BareGearLength(p.hinge.Below),
			u.BareGearLength(p.at.Behind), u.BareGearLength(p.at.Below), u.BareMoment(p.mass * p.at.Behind), u.BareMoment(p.mass * p.at.Below)})
	}
	mass, behind, below := moments(all)
	t.Rows = append(t.Rows, []string{"sum", u.BareMass(mass), "", "", "", "", "", u.BareMoment(behind), u.BareMoment(below)})
	return t
}
