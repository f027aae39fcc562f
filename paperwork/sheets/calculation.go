package sheets

import (
	"fmt"
	"slices"
	"strings"

	"hangpack/layouts"
	"hangpack/layouts/parts"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/told"
)

// calculationSheet is the sheet that a checker follows with a pencil.
func calculationSheet(h *rules.Checked) layouts.Calculation {
	w, k := mostUsedJoint(h.Hung)
	c := layouts.Calculation{
		Sheet: calculationName(h.Hung), Head: stackHead(h.Hung), Inputs: inputFacts(h.Hung), Parts: partTable(h.Hung, massParts(h.Hung)),
		Hangs: hangSteps(h.Hung), Slack: slackSteps(h.Hung), Joint: layouts.Steps{Heading: "The joint most used, in full: " + say.Joint(k), How: w.words(), Formulas: jointSteps(w, k)}, Link: closestLink(h.Hung, w, k),
		Nominal: nominal(h.Hung).words(), Picks: pickSteps(h.Hung), Points: pointSteps(h.Hung), Checks: checkRows(h), Unchecked: h.Unchecked(), Most: "Most used: " + h.MostUsedWords() + ".", Limits: modelLimits(h.Hung),
	}
	for k := range h.Cabinets {
		c.Joints = append(c.Joints, jointRow(h.Hung, k))
	}
	return c
}

// inputFacts are what the job gives and the calculation uses.
func inputFacts(h *rig.Hung) []parts.Fact {
	u := h.Unit()
	facts := []parts.Fact{{Of: "Bar " + h.Bar.Key, Is: fmt.Sprintf("%s; centre of gravity %s; %s; link arm %s; %s", u.FineMass(h.Bar.Mass), u.Place(h.Bar.CentreOfGravity), pickPlaces(h), u.GearLength(h.LinkArm), originWords(h.Bar.Origin))}}
	for _, t := range h.Types() {
		facts = append(facts, parts.Fact{Of: t.Key, Is: cabinetInputs(h, t)})
	}
	for i, pick := range h.Picks {
		facts = append(facts, parts.Fact{Of: strings.TrimSpace("Hoist " + string(h.End(i))), Is: hoistInputs(h, pick)})
	}
	wanted := fmt.Sprintf("cabinet 1 %s; trim: %s at %s; heights above %s, dollies roll at %s", say.Aim(h.Aim), rules.TrimWords(h), u.Length(h.Trim.Height), h.Job.HeightsFrom, u.Length(h.Floor))
	return append(facts,
		parts.Fact{Of: "Splays, top down", Is: splayList(h)},
		parts.Fact{Of: "Wanted", Is: wanted},
		parts.Fact{Of: "Practice", Is: practiceLine(u, h.Job.Practice)})
}

// pickPlaces writes which pick holes are used and where they are.
func pickPlaces(h *rig.Hung) string {
	var all []string
	for i, hole := range h.Holes {
		all = append(all, strings.TrimSpace(fmt.Sprintf("%s pick hole %s, %s", h.End(i), h.Label(hole).Text, h.Unit().Place(h.Bar.PickHoles[hole].At))))
	}
	return strings.Join(all, "; ")
}

// cabinetInputs are the figures of a type of cabinet.
func cabinetInputs(h *rig.Hung, t *job.Cabinet) string {
	u := h.Unit()
	rated := "no pin rating given"
	if t.PinRatings != nil {
		rated = fmt.Sprintf("one pin rated %s hinge, %s link", u.ForceLimit(t.PinRatings.Hinge), u.ForceLimit(t.PinRatings.Link))
	}
	centre := u.Place(t.CentreOfGravity)
	if t.CentreUnknown {
		centre = fmt.Sprintf("NOT KNOWN, the middle of the outline %s taken, and up to %s and %s from it", centre, u.GearLength(t.Depth/6), u.GearLength(t.FrontHeight/6))
	}
	return fmt.Sprintf("%s; centre of gravity %s; hinge pitch %s; link arm %s; pins a joint: hinge %d, link %d; %s; %s",
		u.FineMass(t.Mass), centre, u.GearLength(t.HingePitch), u.GearLength(t.LinkArm), t.HingePins, t.LinkPins, rated, originWords(t.Origin))
}

// hoistInputs are the figures of a pick's hoist and of the rigging in its line.
func hoistInputs(h *rig.Hung, p job.Pick) string {
	u, m := h.Unit(), p.Hoist
	return fmt.Sprintf("%s: capacity %s, %s without chain, chain %s, %s, %s, headroom %s; rigging below %s, %s, above %s, %s; steel at %s; %s",
		m.Key, u.Limit(m.Capacity), u.FineMass(m.Mass), u.PerLength(m.ChainMass), u.ChainLength(m.ChainLength), say.Count(m.Falls, "fall"), u.Length(m.Headroom),
		u.FineMass(p.Below.Mass), u.Length(p.Below.Length), u.FineMass(p.Above.Mass), u.Length(p.Above.Length), u.Known(p.Steel), originWords(m.Origin))
}

// splayList is the splay of every joint, from the top.
func splayList(h *rig.Hung) string {
	var all []string
	for _, c := range h.Cabinets {
		all = append(all, say.Splay(c.Hole.Splay)+"°")
	}
	return strings.Join(all, ", ")
}

// checkRows are every check with its sum and its percent.
func checkRows(h *rules.Checked) (rows [][]string) {
	row := func(of string, says rules.Wording, used string) {
		at, worked, most := says()
		rows = append(rows, []string{of, told.WhereWords(at), worked, most, used})
	}
	for _, u := range h.Uses {
		row(u.Part, u.Says, say.Percent(u.Share))
	}
	for _, u := range h.Alone {
		row(u.Part+", alone", u.Says, say.Percent(u.Share))
	}
	for _, m := range h.Measures {
		row(m.What, m.Says, "-")
	}
	return rows
}

// modelLimits say what the calculation does not see.
func modelLimits(h *rig.Hung) []string {
	lines := []string{
		"The stack is taken as rigid and still: no swing, no wind, no play in pins, no bend in bar or ironwork. Chains hang plumb: no bridle and no side pull.",
		"A link is taken to lie along the mean of its two bodies. A real link that leans 20 degrees from that pulls 6 % more (1 / cos 20°) and pushes its hinge sideways by 36 % of what it would pull (tan 20°): compare with the maker's drawing.",
		fmt.Sprintf("A joint's force is shared %s to %s between its two sides; what the sides really share depends on fit. Nothing is said of welds, tabs, the bar's own strength or cabinets' walls: ratings are the maker's.",
			say.Share(h.Job.Practice.SideShare), say.Share(1-h.Job.Practice.SideShare)),
		"Masses and centres of gravity are those the job gives. What is tied on and is not in the job is not in the sums.",
	}
	if len(h.Picks) == 2 {
		lines = append(lines, "Two picks share by moments as the bar is held at its tilt; hoists out of step tilt it and change the shares. "+
			"With one hoist slack the finished stack and every lift are worked out too, at rest below the other one: 'alone' in the table of checks, and "+h.ID+" LIFTS. The swing there is not.")
	}
	return lines
}

// A hanging is a stack in one state at one tilt of its reach, with unknown centres of
// gravity as they lie in that state.
type hanging struct {
	of *rig.Hung // or a way that those lie
	s  *rig.State
	at *rig.Tilted
}

// nominal is the finished stack as it is meant to hang.
func nominal(h *rig.Hung) hanging { return hanging{h, h.Finished, &h.Finished.Reach[0]} }

// hangings are a stack in every state at every tilt of its reach, wherever unknown
// centres of gravity lie: as it is meant to hang first.
func hangings(h *rig.Hung) (all []hanging) {
	for _, v := range h.Ways() {
		for _, s := range v.States() {
			for i := range s.Reach {
				all = append(all, hanging{v, s, &s.Reach[i]})
			}
		}
	}
	return all
}

// tilt is that of the bar, rad.
func (w hanging) tilt() float64 { return w.s.Tilt + w.at.Off }

// tiltSymbol is that in sums: tilt, or tilt_e at an end of reach.
func (w hanging) tiltSymbol() symbol {
	if w.at.Off == 0 {
		return symbol{"tilt", say.FineAngle(w.s.Tilt)}
	}
	return symbol{"tilt_e", say.FineAngle(w.tilt())}
}

// parts are the masses that hang.
func (w hanging) parts() []part {
	all := massParts(w.of)
	if n := slices.IndexFunc(all, func(p part) bool { return p.cabinet > w.s.Flown }); n >= 0 {
		return all[:n]
	}
	return all
}

// asTable reports whether what hangs is all of the table of masses, as it stands there.
func (w hanging) asTable() bool { return w.s.Lift == 0 && w.s.Third.Name == "" }

// words say which state and which tilt it is.
func (w hanging) words() string {
	tilt := "nominal tilt"
	if off := strings.TrimPrefix(rules.TiltWords(w.at), " at "); off != "" {
		tilt = off + " than nominal"
	}
	return say.Capital(say.Listed(told.WhereWords(rig.Where{Lift: w.s.Lift}), tilt, say.After("centre of gravity that is not known: ", w.s.Third.Name)))
}

// whole is the sum of all that hangs.
func (w hanging) whole() rowsSum {
	of := "centre of gravity behind the hinge, from the table's sums"
	if !w.asTable() {
		of = ofRows(fmt.Sprintf("the bar, %s and all extras on them", say.Span{From: 1, To: w.s.Flown}.Cabinets()), "")
	}
	return sumRows(of, "", "G", w.parts(), nil)
}

// tiltSteps go to the bar's tilt from what stands under 'How it hangs'.
func (w hanging) tiltSteps() (steps []layouts.Formula) {
	if len(w.of.Picks) == 1 && !w.asTable() {
		steps = append(w.whole().placeSteps(w.of.Unit()), settledStep(w.of, w.s))
	}
	if w.at.Off != 0 {
		t := w.tiltSymbol()
		steps = append(steps, step("bar's tilt, off by the most that the sheets let pass", t.name+" = tilt + off", t.is, "",
			symbol{"tilt", say.FineAngle(w.s.Tilt)}, symbol{"off", say.FineAngle(w.at.Off)}))
	}
	return steps
}
