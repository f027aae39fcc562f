package sheets

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"hangpack/calc"
	"hangpack/layouts"
	"hangpack/layouts/drawings"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
)

// stepsApart is how far the aim may be off before one of two hoists that runs on
// alone is worth a figure in seconds, in degrees. It is a limit of hangpack's own.
const stepsApart = 3.0

// aloneTable is what each of two hoists holds with the other one slack, and how
// soon two of them are out of step.
func aloneTable(h *rig.Hung) layouts.AloneTable {
	if len(h.Finished.Alone) == 0 {
		return layouts.AloneTable{}
	}
	t := layouts.AloneTable{Heading: "One hoist (motor) alone", Note: fmt.Sprintf(
		"If the other hoist goes slack, what hangs swings until it is below the one. Drawn: the finished stack; worked out: that and every lift, the worst of them here, at rest there, all masses x %s; "+
			"of all but the hoist x %s too (it still runs). The swing itself is not in it. Run both together and watch the tilt. What the point carries so is for the venue to accept.",
		say.Trimmed(1+h.Job.Practice.MassTolerance), say.Trimmed(h.Job.Practice.DynamicFactor))}
	for i, s := range h.Finished.Alone {
		t.Views = append(t.Views, drawings.View{Says: string(h.End(i)) + " hoist alone", Side: sideOf(h, s, 0)})
	}
	t.Rows = append([][]string{bothEnds("cabinet 1 looks", func(i int) (string, string) { return swungAim(h, i) })}, aloneRows(h)...)
	t.Rows = append(t.Rows,
		bothEnds("link most pushed", func(i int) (string, string) { return mostPushed(h, i) }),
		bothEnds("roof point", func(i int) (string, string) { return h.Unit().Both(h.Points[i].AloneDesign), "" }),
		bothEnds(fmt.Sprintf("aim %s° off", say.Trimmed(stepsApart)), func(i int) (string, string) { return outOfStep(h, i) }))
	return t
}

// aloneRows are those of the parts that hold the stack; both ends have the same parts.
func aloneRows(h *rig.Hung) (rows [][]string) {
	checks := [2][]rules.AloneCheck{rules.AloneChecks(h, 0), rules.AloneChecks(h, 1)}
	for n, c := range checks[0] {
		rows = append(rows, bothEnds(c.Part, func(i int) (string, string) { return aloneCell(h, checks[i][n]) }))
	}
	return rows
}

// bothEnds is a row of the table: what at says of the front hoist and of the rear one,
// and of both how much is used, as layouts.AloneTable has its cells.
func bothEnds(of string, at func(i int) (says, used string)) []string {
	front, usedFront := at(0)
	rear, usedRear := at(1)
	return []string{of, front, usedFront, "", rear, usedRear}
}

// aloneCell writes one check: its sum against its limit, and how much of that is used.
func aloneCell(h *rig.Hung, c rules.AloneCheck) (says, used string) {
	at := say.Before(c.Where().String(), ": ")
	if c.Limit == 0 {
		return at + c.Worked() + ". NOT CHECKED: no rating given", "not rated"
	}
	says = at + c.Worked() + " of " + c.LimitWords()
	if c.Over() {
		says = at + c.Worked() + ", MORE THAN " + c.LimitWords()
	}
	if joints := unratedJoints(h); c.Joint >= 0 && joints != "" {
		says += ". NOT CHECKED: " + say.Joints(joints) + ", not rated"
	}
	return says, say.Percent(c.Load / c.Limit)
}

// swungAim is what the stack looks like from pick i alone.
func swungAim(h *rig.Hung, i int) (says, used string) {
	from, to := h.Between(func(v *rig.Hung) float64 { return v.Finished.Alone[i].Poses[0].Aim })
	says = say.Between(from, to, say.Aim)
	least, most := h.Between(func(v *rig.Hung) float64 { return v.Finished.Alone[i].Tilt })
	if l := h.Bar.TiltLimit; l != nil && (most > l.Down+rig.Within || -least > l.Up+rig.Within) {
		says += fmt.Sprintf("; bar %s, PAST its limit", say.Between(least, most, say.Aim))
	}
	if lever, _ := h.Between(func(v *rig.Hung) float64 { return v.Finished.Alone[i].Lever }); lever <= rig.Within {
		says = "it tips over: the centre of gravity is not below the pick hole"
	}
	return says, ""
}

// mostPushed is the link that is pushed most with pick i alone: of those that may
// only be pulled, if there is one.
func mostPushed(h *rig.Hung, i int) (says, used string) {
	if at, force := rules.PushedAlone(h, i, false); force > 0 {
		return fmt.Sprintf("%s: %s; IT MAY ONLY BE PULLED", at, h.Unit().Force(force)), ""
	}
	if at, force := rules.PushedAlone(h, i, true); force > 0 {
		return fmt.Sprintf("%s: %s, which its maker allows", at, h.Unit().Force(force)), ""
	}
	return "none", ""
}

// unratedJoints lists the joints whose pins have no rating, and "" where all have.
func unratedJoints(h *rig.Hung) string {
	return say.Those(len(h.Cabinets), func(n int) bool { return h.Ratings(n-1) == nil })
}

// outOfStep is how soon the aim is off when hoist i runs on and the other stands.
func outOfStep(h *rig.Hung, i int) (says, used string) {
	speed := h.Picks[i].Hoist.Speed
	if speed == 0 {
		return "if it runs on alone: speed " + say.NotGiven, ""
	}
	s := calc.OutOfStep(h.Hole(0), h.Hole(1), h.Finished.Tilt, calc.Radians(stepsApart), speed)
	return fmt.Sprintf("after %s s if it runs on alone at %s", say.Fixed(math.Floor(s*10)/10, 1), h.Unit().Pace(speed)), ""
}

// aloneOver names what could not hold the stack on hoist i alone, of some parts.
func aloneOver(h *rig.Hung, i int, among ...string) (over []string) {
	for _, c := range rules.AloneChecks(h, i) {
		if c.Over() && slices.Contains(among, c.Part) {
			over = append(over, c.Part)
		}
	}
	if _, force := rules.PushedAlone(h, i, false); force > 0 {
		over = append(over, "a link that may only be pulled")
	}
	return over
}

// gearAlone are the parts that hold a stack below its hoist.
var gearAlone = []string{"pick hole", "bar", "hinge pin", "link pin"}

// moreThan says that a load is more than some parts may hold, and "" where there
// are none.
func moreThan(parts []string) string {
	if len(parts) == 0 {
		return ""
	}
	return "MORE THAN " + strings.Join(parts, ", ") + " MAY HOLD"
}

// aloneShort says of each hoist what it could not hold alone, with all that it holds by:
// 'front MORE THAN …; rear MORE THAN …', and "" where there is nothing.
func aloneShort(h *rig.Hung) string {
	var all []string
	for i := range h.Finished.Alone {
		if over := moreThan(aloneOver(h, i, append([]string{"hoist"}, gearAlone...)...)); over != "" {
			all = append(all, string(h.End(i))+" "+over)
		}
	}
	return strings.Join(all, "; ")
}
