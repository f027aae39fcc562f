package sheets

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"hangpack/paperwork/report"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/told"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// pointsReadBack finds every point of the figures on the venue's table, its
// figures through their formatters, each in its place.
func pointsReadBack(t *testing.T) (cases int, worst float64) {
	for name, j := range trials.ReadJobs(t) {
		_, pages := paperOf(t, j)
		pdf, u := trials.TextOf(pages, "POINTS"), say.Units{Imperial: j.Imperial}
		for i, s := range j.Figures.Stacks {
			for n, p := range s.Points {
				cases++
				assert.Contains(t, pdf, pointOnPaper(j, u, p, len(s.Points)), "%s: %s", name, p.ID)
				assert.Contains(t, pdf, " = "+u.BareMass(p.Static)+" "+u.MassUnit(), "%s: %s", name, p.ID)
				hoist := j.Stacks[i].Picks[n].Hoist
				assert.Contains(t, pdf, fmt.Sprintf("(%s%s), %s used", hoist.Key, atUse(j), say.Percent(p.HoistUse)), "%s: %s", name, p.ID)
			}
			chainsReadBack(t, j, j.Stacks[i], pdf)
			held := ""
			if s.Held {
				held = ", HELD"
				assert.Contains(t, pdf, s.ID+" HELD: DO NOT FLY. ", name)
			}
			assert.Contains(t, pdf, fmt.Sprintf("Class of %s: %s.", j.Stacks[i].Picks[0].Hoist.Key, say.Given(j.Stacks[i].Picks[0].Hoist.Class)), name)
			c := s.PointsTotal()
			assert.Contains(t, pdf, strings.Join([]string{s.ID + held, say.Count(len(s.Points), "point") + ", " + say.Count(len(s.Points), "hoist"), onPaper(u, c)}, " "), name)
		}
		for _, o := range j.Figures.Others {
			cases++
			assert.Contains(t, pdf, strings.Join([]string{o.ID, u.Across(o.StageLeft), u.UpDown(o.Downstage), u.Load(o.Static), u.Also(o.Static),
				u.Load(o.Design), u.Also(o.Design), u.Load(o.Design), u.Also(o.Design) + map[bool]string{true: " no stack"}[twoHoists(j)], o.What, "hook " + u.Length(o.Height)}, " "), name)
		}
		assert.Contains(t, pdf, onPaper(u, j.Figures.Total), name)
	}
	return cases, 0
}

// chainsReadBack finds what the chain of each point is needed for: once for all where
// that is one place, else in the row.
func chainsReadBack(t *testing.T, j *worked.Job, h *rules.Checked, pdf string) {
	t.Helper()
	words := map[rig.LowKind]string{rig.AtTrim: "at trim", rig.AtRollIn: "to the roll-in after lift ", rig.OntoDolly: "onto the bar on dolly A", rig.OntoFloor: "to the bar on the floor"}
	for i, p := range h.Points {
		if p.ChainNeeded == nil {
			continue
		}
		u, low := h.Unit(), h.LowestOfWays(i)
		inRow := fmt.Sprintf("chain needed %s of %s hook down to %s, %s", u.Length(*p.ChainNeeded), u.Length(h.Picks[i].Hoist.ChainLength), u.Length(low.Hook), words[low.To])
		if len(lowestPlaces(j)) == 1 {
			inRow = "hook at its lowest, " + words[low.To]
		}
		assert.Contains(t, pdf, inRow, p.ID)
	}
}

func atUse(j *worked.Job) string {
	if j.Practice.HoistUse == 1 {
		return ""
	}
	return " at " + say.Share(j.Practice.HoistUse)
}

func onPaper(u say.Units, c rig.Carried) string {
	return u.Load(c.Static) + ", " + u.Also(c.Static) + " " + u.Load(c.Design) + ", " + u.Also(c.Design)
}

// twoHoists reports whether any stack of a job hangs from two.
func twoHoists(j *worked.Job) bool {
	for _, s := range j.Figures.Stacks {
		if len(s.Points) == 2 {
			return true
		}
	}
	return false
}

// pointOnPaper is a point as its row says it.
func pointOnPaper(j *worked.Job, u say.Units, p rig.Point, picks int) string {
	known := func(m *float64) string {
		if m == nil {
			return "not given"
		}
		return u.Length(*m)
	}
	governing, alone := p.Governing.Design, "one hoist"
	switch {
	case picks == 2 && j.Practice.OneMustHold:
		governing, alone = math.Max(governing, p.AloneDesign), "in it"
	case picks == 2:
		alone = u.Load(p.AloneDesign) + " " + u.Also(p.AloneDesign)
	}
	row := []string{p.ID, u.Across(p.StageLeft), u.UpDown(p.Downstage), u.Load(p.Static), u.Also(p.Static), u.Load(p.Design), u.Also(p.Design), u.Load(governing), u.Also(governing)}
	if twoHoists(j) {
		row = append(row, alone)
	}
	if m := p.Most; m.Where != "" {
		row = append(row, "AT "+strings.ToUpper(m.Where)+", more", u.Load(m.Static), u.Also(m.Static), u.Load(m.Design), u.Also(m.Design))
	}
	return strings.Join(append(row, "pick hole "+u.Length(p.PickHeight), "low hook "+u.Length(p.LowHook), "high hook "+known(p.HighHook), "chain needed "+known(p.ChainNeeded)), " ")
}

// TestPointFigures holds a point's figures to sums done by hand: 288 kg hang
// below the hook; the hoist is 52 kg with 24 m of chain at 1.1 kg/m.
func TestPointFigures(t *testing.T) {
	one := trials.OpenJob(t, trials.Plain).Figures.Stacks[0].Points[0]
	assert.InDelta(t, 288+52+26.4, one.Static, 1e-9)
	assert.InDelta(t, 288*1.05/500, one.HoistUse, 1e-9)
	assert.InDelta(t, 14, *one.HighHook, 1e-12)
	const set = 4 * 0.29 * 0.9970195 // four boxes that look 4.4248 degrees up on dolly A
	assert.InDelta(t, 14-0.55-(0.18+set+0.095)+0.3, *one.ChainNeeded, 1e-6, "headroom 0.55 m, reserve 0.3 m, one fall")
	assert.Zero(t, one.Alone, "there is no other hoist")
	two := trials.OpenJob(t, trials.Edited(t, trials.OnePick, trials.TwoPicks+"\n    rigging_below: {mass: 4 kg, length: 200 mm}\n    rigging_above: {mass: 6 kg, length: 0.4 m}")).Figures.Stacks[0]
	alone := pointSheet(trials.OpenJob(t, trials.Edited(t, trials.OnePick, trials.TwoPicks))).Groups[0].Points[0].Sums[3]
	assert.Equal(t, "Other slack: 288 kg + 5 % = 303 kg of 500 kg (hoist), 61 % used; MORE THAN a link that may only be pulled MAY HOLD", alone) // 302.4 / 500
	for _, p := range two.Points {
		assert.InDelta(t, (288+4+52+26.4+6)*1.05, p.Alone, 1e-9, "the whole stack on one point")
		assert.InDelta(t, 13.6, *p.HighHook, 1e-12)
		assert.InDelta(t, 13.6-0.55-(0.095+0.2)+0.3, *p.ChainNeeded, 1e-9, "down to the bar on the floor")
		assert.Less(t, p.Static*1.05, p.Alone)
	}
	used := trials.OpenJob(t, trials.Edited(t, "practice: {", "practice: {hoist_use: 80 %, ")).Figures.Stacks[0].Points[0]
	assert.InDelta(t, 288*1.05/(500*0.8), used.HoistUse, 1e-9, "of what practice allows")
	falls := trials.OpenJob(t, trials.Edited(t, "chain_length: 24 m", "chain_length: 48 m, falls: 2")).Figures.Stacks[0].Points[0]
	assert.InDelta(t, 2*(14-0.55-(0.18+set+0.095))+0.3, *falls.ChainNeeded, 1e-6, "each fall is as long")
	bare := trials.OpenJob(t, trials.Edited(t, "    steel: 14 m\n", "")).Figures.Stacks[0].Points[0]
	assert.Nil(t, bare.HighHook)
	assert.Nil(t, bare.ChainNeeded)
	rolls := trials.OpenJob(t, trials.Edited(t, "    dolly: dolly\n", "")).Figures.Stacks[0].Points[0]
	assert.NotNil(t, rolls.HighHook)
	assert.InDelta(t, 14-0.55-rolls.LowHook+0.3, *rolls.ChainNeeded, 1e-9, "down to trim, and no further is known")
}

// TestPointsAtALift: the stack with 8 of its 12 cabinets, as a job of its own,
// says what the front point carries at lift 2; that is more than finished, and
// stands on every sheet and list that gives the point's load.
func TestPointsAtALift(t *testing.T) {
	text := trials.Text(t, "testdata/jobs/lift-loads-more.yaml")
	cut := strings.Replace(text, "count: 12, splay: [0, 2, 4, 4, 4, 6, 6, 6, 6, 6, 6, 6]", "count: 8, splay: [0, 2, 4, 4, 4, 6, 6, 6]", 1)
	j, built := trials.OpenJob(t, text), trials.OpenJob(t, cut).Figures.Stacks[0].Points[0]
	front, rear := j.Figures.Stacks[0].Points[0], j.Figures.Stacks[0].Points[1]
	assert.Equal(t, rig.MostCarried{Carried: rear.Carried}, rear.Most)
	assert.Equal(t, "lift 2", front.Most.Where)
	assert.InDelta(t, built.Static, front.Most.Static, 1e-9)
	assert.InDelta(t, built.Design, front.Most.Design, 1e-9)
	assert.Greater(t, front.Most.Static, front.Design, "at rest at lift 2: more than the design load finished")
	assert.InDelta(t, built.HoistUse, front.HoistUse, 1e-9, "the hoist is used most there too")
	assert.Equal(t, rig.Governing{Design: front.Governing.Design, Where: "lift 2"}, front.Governing)
	assert.InDelta(t, built.Governing.Design, front.Governing.Design, 1e-9)
	_, pages := paperOf(t, j)
	u := j.Unit()
	static, design := u.Load(built.Static), u.Load(built.Design)
	assert.Contains(t, trials.TextOf(pages, "POINTS"), strings.Join([]string{"AT LIFT 2, more", static, u.Also(built.Static), design, u.Also(built.Design)}, " "))
	assert.Contains(t, trials.TextOf(pages, "COVER"), "AT LIFT 2 "+static+" static, "+design+" design")
	assert.Contains(t, trials.TextOf(pages, "SL PINS"), "MORE AT LIFT 2: "+static+" static, "+design+" design")
	assert.Contains(t, trials.TextOf(pages, "SL CALCULATION"), "prints "+u.Venue(built.Static))
	assert.Regexp(t, `MORE AT LIFT 2: +`+static+` +`+design, report.Points(j))
}

// TestMoreThanItMayHold: the words on the venue's sheet and the caution begin at
// the same load, just past what the hoist may hold. With the other hoist slack,
// 288 kg + 5 % hang on either: 2965.53 N.
func TestMoreThanItMayHold(t *testing.T) {
	for past, want := range map[float64]bool{-0.01: false, 0.01: true, -5: false} {
		capacity := fmt.Sprintf("capacity: %.3f N", 288*1.05*9.80665-past)
		j := trials.OpenJob(t, trials.Edited(t, trials.OnePick, trials.TwoPicks, "capacity: 500 kg", capacity))
		cautions := trials.Found(j.Figures.Stacks[0].Cautions)
		for i, end := range []string{"front", "rear"} {
			assert.Equal(t, want, strings.Contains(aloneSum(j.Stacks[0].Hung, i), "MORE THAN IT MAY HOLD"), "%s, %g N past", end, past)
			assert.Equal(t, want, slices.Contains(cautions, "one_hoist, "+end), "%s, %g N past", end, past)
		}
	}
}

// TestWays: a force of 1 N or less along a joint has no way.
func TestWays(t *testing.T) {
	for n, want := range map[float64]string{0: "none", 1: "none", -1: "none", 1.01: "0.01 kN pull", -1.01: "0.01 kN push", 2500: "2.50 kN pull"} {
		assert.Equal(t, want, way(say.Units{}, n), "%g N", n)
	}
}

// TestPinsUsedOfWhatIsAllowed: half of a rating allowed is twice as much used, in
// the joint table and in the check.
func TestPinsUsedOfWhatIsAllowed(t *testing.T) {
	whole := trials.OpenJob(t, trials.Plain)
	half := trials.OpenJob(t, trials.Edited(t, "practice: {", "practice: {gear_use: 50 %, "))
	for k, c := range whole.Figures.Stacks[0].Cabinets {
		hinge, link := c.Hinge*0.6*1.05*1.25/6, c.Link*0.6*1.05*1.25/4.5 // two pins, ratings of 6 and 4.5 kN
		assert.Equal(t, []string{say.Percent(hinge), say.Percent(link)}, jointRow(whole.Stacks[0].Hung, k)[6:])
		assert.Equal(t, []string{say.Percent(2 * hinge), say.Percent(2 * link)}, jointRow(half.Stacks[0].Hung, k)[6:])
	}
	for i, u := range half.Stacks[0].Uses {
		if u.Part == "hinge pin" || u.Part == "link pin" {
			assert.InDelta(t, 2*whole.Stacks[0].Uses[i].Share, u.Share, 1e-9, u.Part)
		}
	}
}

// TestPassedOverOnPaper: the pin sheet says which pick hole was nearer, and why it was
// passed over; a held stack's one page says nothing of other holes.
func TestPassedOverOnPaper(t *testing.T) {
	j := trials.OpenFile(t, "testdata/jobs/end-of-reach.yaml")
	_, pages := paperOf(t, j)
	assert.Contains(t, trials.TextOf(pages, "AUTO PINS"), told.PassedOverWords(j.Stack("AUTO"))[0])
	assert.NotContains(t, trials.TextOf(pages, "HOIST"), "pick hole")
}
