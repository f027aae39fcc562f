package sheets

import (
	"fmt"
	"slices"
	"strings"

	"hangpack/layouts"
	"hangpack/layouts/parts"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/worked"
)

// pointSheet is the venue's table of all points.
func pointSheet(j *worked.Job) layouts.Points {
	to := lowestPlaces(j)
	s := layouts.Points{Facts: pointFacts(j, to), Notes: pointNotes(j)}
	for _, h := range j.Stacks {
		s.Groups = append(s.Groups, pointGroup(h, len(to) > 1))
	}
	if len(j.Figures.Others) > 0 {
		s.Groups = append(s.Groups, otherGroup(j))
	}
	s.Totals = totalRows(j)
	if !anyTwo(j) {
		for _, g := range s.Groups {
			for i := range g.Points {
				g.Points[i].Loads = g.Points[i].Loads[:3]
			}
		}
	}
	return s
}

// lowestPlaces are what chain is needed for at the points of a job, each once.
func lowestPlaces(j *worked.Job) (all []string) {
	for _, h := range j.Stacks {
		for i, p := range h.Points {
			if to := rules.LowFor(h.LowestOfWays(i)); p.ChainNeeded != nil && !slices.Contains(all, to) {
				all = append(all, to)
			}
		}
	}
	return all
}

// pointFacts say what the figures of the table are; to is what chain is needed for.
func pointFacts(j *worked.Job, to []string) []parts.Fact {
	p, low := j.Practice, "which each row names"
	if len(to) == 1 {
		low = to[0]
	}
	facts := []parts.Fact{
		{Of: "Datum of the plan", Is: strings.TrimRight(datumOf(j), ".") + ". Stage left is the audience's right"},
		{Of: "Heights above", Is: j.HeightsFrom},
		{Of: "Static", Is: "the finished stack at rest, with hoist (motor), all of its chain and all rigging"},
		{Of: "Design", Is: fmt.Sprintf("static x %s (masses may be %s more) x %s (starting, stopping)",
			say.Trimmed(1+p.MassTolerance), say.Share(p.MassTolerance), say.Trimmed(p.DynamicFactor))},
		{Of: "Governing", Is: "the largest design load over every lift and all tilts that the sheets let pass, each mass off to its worse side. Hold this against the limit"},
		{Of: "Chain needed", Is: fmt.Sprintf("hook at its lowest, %s: on all falls, and %s never used", low, j.Unit().Length(p.LimitReserve))},
	}
	if anyTwo(j) {
		facts = append(facts, parts.Fact{Of: "If other chain slack", Is: fmt.Sprintf("the whole stack with this hoist, its chain and its rigging, all x %s. Hold this against the limit too", rules.FactorWords(p))})
	}
	if anyPeaks(j) {
		facts = append(facts, parts.Fact{Of: "AT …, more", Is: "this point carries more at that lift, or with a centre of gravity that is not known elsewhere, than the finished stack as worked out. Hold the larger against the limit"})
	}
	if held := j.IncludesHeld(); held != "" {
		facts = append(facts, parts.Fact{Of: "HELD", Is: j.HeldWords() + ". It must not be flown as described; its points stand here and in every total"})
	}
	return facts
}

// anyTwo reports whether any stack of a job hangs from two hoists.
func anyTwo(j *worked.Job) bool {
	return slices.ContainsFunc(j.Stacks, func(h *rules.Checked) bool { return len(h.Picks) == 2 })
}

// pointNotes say what the table leaves out.
func pointNotes(j *worked.Job) []string {
	if anyTwo(j) {
		return append(slices.Clone(notesOfPoints), "With one hoist slack the stack swings until it hangs below the other: what hoist, pick hole, bar and pins hold there stands on the stack's LIFTS sheet.")
	}
	return notesOfPoints
}

// notesOfPoints are those of every job.
var notesOfPoints = []string{
	"Rows are rounded up; a total is the true sum of finished stacks rounded up. Sums in a row show tenths, so their last figure may differ by one.",
	"Chains are taken as plumb: no bridle, no side pull, no wind is in these figures. What is not known says 'not given': ask before it hangs.",
	"A hoist's use counts the most on its hook at any lift and at any tilt that the sheets let pass, with mass tolerance and without dynamic factor, against what practice allows of its capacity. Design loads are for roof and gear.",
	"The empty boxes are for the venue: its limit at that place, accepted or not, initials. A figure of this pack is no leave to hang.",
}

// pointGroup is the points of a stack.
func pointGroup(h *rules.Checked, named bool) layouts.PointGroup {
	g := layouts.PointGroup{ID: h.ID, Name: h.Name, Shape: string(h.Shape), Held: h.Held(), Says: []string{secondaryWords(h.Hung), classWords(h.Hung) + " Steel: " + steelWords(h.Hung) + "."}}
	for i, p := range h.Points {
		g.Points = append(g.Points, venuePoint(h.Hung, i, p, named))
	}
	return g
}

// secondaryWords name what holds the stack if its hoists do not.
func secondaryWords(h *rig.Hung) string {
	if h.Secondary == nil {
		return "Secondary: not given; ask the venue whether it wants one."
	}
	return fmt.Sprintf("Secondary: %s; the stack is %s. Whether it holds a fall is not worked out.", rules.SecondaryWords(h), h.Unit().Load(h.Finished.Centre.Mass))
}

// venuePoint is point i of a stack in words; named says what its chain is needed for.
func venuePoint(h *rig.Hung, i int, p rig.Point, named bool) layouts.VenuePoint {
	u := h.Unit()
	governing, alone, sums := inBoth(u, p.Governing.Design), layouts.Load{Is: "one hoist"}, staticSums(h, i)
	if len(h.Picks) == 2 {
		alone, sums = inBoth(u, p.AloneDesign), append(sums, aloneSum(h, i))
	}
	if h.Job.Practice.OneMustHold && len(h.Picks) == 2 { // one figure, which has both in it
		governing, alone = inBoth(u, max(p.Governing.Design, p.AloneDesign)), layouts.Load{Is: "in it"}
	}
	return layouts.VenuePoint{
		ID:    p.ID,
		Where: []string{u.Across(p.StageLeft), u.UpDown(p.Downstage)},
		Loads: []layouts.Load{inBoth(u, p.Static), inBoth(u, p.Design), governing, alone},
		Heights: append([]string{"pick hole " + u.Length(p.PickHeight), "low hook " + u.Length(p.LowHook),
			"high hook " + u.Known(p.HighHook)}, chainWords(h, i, p, named)...),
		Sums: sums, Lift: p.Most.Where, AtLift: atLift(u, p.Most),
	}
}

// anyPeaks reports whether any point carries more at a lift than finished.
func anyPeaks(j *worked.Job) bool {
	for _, s := range j.Figures.Stacks {
		for _, p := range s.Points {
			if p.Most.Where != "" {
				return true
			}
		}
	}
	return false
}

// atLift writes what a point carries at the lift that loads it most; nil where no lift
// loads it more than it carries finished.
func atLift(u say.Units, m rig.MostCarried) []layouts.Load {
	if m.Where == "" {
		return nil
	}
	return []layouts.Load{inBoth(u, m.Static), inBoth(u, m.Design)}
}

// chainWords write how much chain a hoist needs of what it has; named says for what.
func chainWords(h *rig.Hung, i int, p rig.Point, named bool) []string {
	if p.ChainNeeded == nil {
		return []string{"chain needed " + say.NotGiven}
	}
	u := h.Unit()
	words := []string{fmt.Sprintf("chain needed %s of %s", u.Length(*p.ChainNeeded), u.Length(h.Picks[i].Hoist.ChainLength))}
	if named {
		words = append(words, "hook down to "+rules.LowWords(h, h.LowestOfWays(i)))
	}
	return words
}

// inBoth writes a load in both units.
func inBoth(u say.Units, kg float64) layouts.Load {
	return layouts.Load{Is: u.Load(kg), Also: u.Also(kg)}
}

// staticSums write what a point's static load includes, finished and at the lift
// that loads it more, and what its hoist holds.
func staticSums(h *rig.Hung, i int) []string {
	sums := []string{staticSum(h, h.Finished, i, "Static")}
	if peak := h.Peak(i); peak.Words() != "" {
		sums = append(sums, staticSum(h, peak, i, "Static at "+peak.Words()))
	}
	if len(h.Picks) == 2 { // with one it is the design load
		sums = append(sums, governingSum(h, i))
	}
	return append(sums, "Hoist at most: "+rules.HoistSum(h, i))
}

// governingSum writes what the governing load of point i is the sum of.
func governingSum(h *rig.Hung, i int) string {
	u, p := h.Unit(), h.Job.Practice
	s, at := h.Heaviest(i)
	return fmt.Sprintf("Governing%s: (most of pick %s + its line %s x %s) x %s = %s %s", say.After(", ", say.Listed(s.Words(), strings.TrimPrefix(rules.TiltWords(at), " "))),
		u.BareMass(h.Most(at.Loads[i])), u.BareMass(h.InLine(i)), say.Trimmed(1+p.MassTolerance), say.Trimmed(p.DynamicFactor), u.BareMass(h.Points[i].Governing.Design), u.MassUnit())
}

// staticSum writes what a point's static load includes in a state.
func staticSum(h *rig.Hung, s *rig.State, i int, of string) string {
	u, p := h.Unit(), h.Picks[i]
	return fmt.Sprintf(of+": pick %s + rigging %s + hoist %s + chain %s + rigging %s = %s %s",
		u.BareMass(s.Loads[i]), u.BareMass(p.Below.Mass), u.BareMass(p.Hoist.Mass), u.BareMass(p.Hoist.ChainMass*p.Hoist.ChainLength),
		u.BareMass(p.Above.Mass), u.BareMass(h.Static(s, i)), u.MassUnit())
}

// steelWords write how high the steel is, over each pick where that differs.
func steelWords(h *rig.Hung) string {
	at := func(i int) string { return h.Unit().Known(h.Picks[i].Steel) }
	if len(h.Picks) == 1 || at(0) == at(1) {
		return at(0)
	}
	return "front " + at(0) + ", rear " + at(1)
}

// aloneSum writes what a hoist would hold with the other one slack.
func aloneSum(h *rig.Hung, i int) string {
	load := rig.AloneLoad(h.Finished)
	used := say.Percent(h.UseOf(i, load)) + " used"
	if rig.Over(h.MostOnHook(i, load), h.HoistMost(i)) {
		used = say.Percent(h.UseOf(i, load)) + ": MORE THAN IT MAY HOLD"
	}
	return fmt.Sprintf("Other slack: %s of %s, %s%s", rules.OnHookSum(h, i, load), rules.HoistLimit(h, h.Picks[i].Hoist), used, say.After("; ", moreThan(aloneOver(h, i, gearAlone...))))
}

// classWords name the class of each hoist of a stack, in the shop's own words.
func classWords(h *rig.Hung) string {
	var all []string
	for _, p := range h.Picks {
		words := fmt.Sprintf("Class of %s: %s.", p.Hoist.Key, say.Given(p.Hoist.Class))
		if !slices.Contains(all, words) {
			all = append(all, words)
		}
	}
	return strings.Join(all, " ")
}

// otherGroup is what hangs from the roof and belongs to no stack.
func otherGroup(j *worked.Job) layouts.PointGroup {
	u := j.Unit()
	g := layouts.PointGroup{ID: "Others", Name: "what this job hangs besides its stacks", Says: rules.OthersMeet(j.Job)}
	for _, o := range j.Figures.Others {
		g.Points = append(g.Points, layouts.VenuePoint{ID: o.ID,
			Where:   []string{u.Across(o.StageLeft), u.UpDown(o.Downstage)},
			Loads:   []layouts.Load{inBoth(u, o.Static), inBoth(u, o.Design), inBoth(u, o.Design), {Is: "no stack"}},
			Heights: []string{o.What, "hook " + u.Length(o.Height)},
			Sums:    []string{"Static as the job gives it, all that this point carries at rest."},
		})
	}
	return g
}

// totalRows are the sums in words.
func totalRows(j *worked.Job) (rows []layouts.PointTotal) {
	u := j.Unit()
	for _, s := range worked.Sums(j) {
		rows = append(rows, layouts.PointTotal{Of: s.Of, Count: s.Count,
			Static: u.Load(s.Static) + ", " + u.Also(s.Static), Design: u.Load(s.Design) + ", " + u.Also(s.Design)})
	}
	return rows
}
