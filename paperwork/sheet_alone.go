package paperwork

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"hangpack/calc"
	"hangpack/layouts"
	"hangpack/paperwork/say"
)

// stepsApart is how far the aim may be off before one of two hoists that runs on
// alone is worth a figure in seconds. Common practice.
const stepsApart = 3.0 // degrees

// aloneTable is what each of two hoists holds with the other one slack, and how
// soon two of them are out of step.
func (h *hung) aloneTable() layouts.AloneTable {
	if len(h.swung) == 0 {
		return layouts.AloneTable{}
	}
	t := layouts.AloneTable{Heading: "One hoist (motor) alone", Note: fmt.Sprintf(
		"If the other hoist goes slack, the finished stack swings until it hangs below the one. Worked out at rest there, all masses x %s, no dynamic factor; its swing there is not in it. "+
			"Run both together and watch the tilt. What the point carries so is for the venue to accept.", say.Trimmed(1+h.job.Practice.MassTolerance))}
	for i, s := range h.swung {
		t.Views = append(t.Views, layouts.View{Says: string(h.end(i)) + " hoist alone", Side: h.sideOf(s, 0)})
	}
	t.Rows = append([][]string{h.bothEnds("cabinet 1 looks", h.swungAim)}, h.aloneRows()...)
	t.Rows = append(t.Rows,
		h.bothEnds("link most pushed", h.mostPushed),
		h.bothEnds("roof point", func(i int) (string, string) { return h.unit().Both(h.points[i].Alone), "" }),
		h.bothEnds(fmt.Sprintf("aim %s° off", say.Trimmed(stepsApart)), h.outOfStep))
	return t
}

// aloneRows are those of the parts that hold the stack; both ends have the same parts.
func (h *hung) aloneRows() (rows [][]string) {
	checks := [2][]aloneCheck{h.aloneChecks(0), h.aloneChecks(1)}
	for n, c := range checks[0] {
		rows = append(rows, h.bothEnds(c.part, func(i int) (string, string) { return h.aloneCell(checks[i][n]) }))
	}
	return rows
}

// bothEnds is a row of the table.
func (h *hung) bothEnds(of string, at func(i int) (says, used string)) []string {
	front, usedFront := at(0)
	rear, usedRear := at(1)
	return []string{of, front, usedFront, "", rear, usedRear}
}

// aloneCell writes one check.
func (h *hung) aloneCell(c aloneCheck) (says, used string) {
	at := ""
	if c.joint >= 0 {
		at = joint(c.joint) + ": "
	}
	if c.limit == 0 {
		return at + c.worked() + ". NOT CHECKED: no rating given", "not rated"
	}
	says = at + c.worked() + " of " + c.most()
	if c.over() {
		says = at + c.worked() + ", MORE THAN " + c.most()
	}
	if joints := h.unratedJoints(); at != "" && joints != "" {
		says += ". NOT CHECKED: " + jointsWord(joints) + ", not rated"
	}
	return says, say.Percent(c.load / c.limit)
}

// swungAim is what the stack looks like from pick i alone.
func (h *hung) swungAim(i int) (says, used string) {
	from, to := h.over(func(v *hung) float64 { return v.swung[i].poses[0].Aim })
	says = h.unit().Between(from, to, say.Aim)
	least, most := h.over(func(v *hung) float64 { return v.swung[i].tilt })
	if l := h.Bar.TiltLimit; l != nil && (most > l.Down+within || -least > l.Up+within) {
		says += fmt.Sprintf("; bar %s, PAST its limit", h.unit().Between(least, most, say.Aim))
	}
	if lever, _ := h.over(func(v *hung) float64 { return v.swung[i].lever }); lever <= within {
		says = "it tips over: the centre of gravity is not below the pick hole"
	}
	return says, ""
}

// mostPushed is the link that is pushed most with pick i alone: of those that may
// only be pulled, if there is one.
func (h *hung) mostPushed(i int) (says, used string) {
	if at, force := pushedAlone(h.ways(), i, false); at >= 0 {
		return fmt.Sprintf("%s: %s; IT MAY ONLY BE PULLED", joint(at), h.unit().Force(force)), ""
	}
	if at, force := pushedAlone(h.ways(), i, true); at >= 0 {
		return fmt.Sprintf("%s: %s, which its maker allows", joint(at), h.unit().Force(force)), ""
	}
	return "none", ""
}

// unratedJoints lists the joints whose pins have no rating, and "" where all have.
func (h *hung) unratedJoints() string {
	var runs []string
	for k := 0; k < len(h.Cabinets); k++ {
		from := k
		for k < len(h.Cabinets) && h.ratings(k) == nil {
			k++
		}
		if k > from {
			runs = append(runs, jointRun(from+1, k))
		}
	}
	return strings.Join(runs, ", ")
}

// outOfStep is how soon the aim is off when hoist i runs on and the other stands.
func (h *hung) outOfStep(i int) (says, used string) {
	speed := h.Picks[i].Hoist.Speed
	if speed == 0 {
		return "if it runs on alone: speed " + say.NotGiven, ""
	}
	s := calc.OutOfStep(h.hole(0), h.hole(1), h.finished.tilt, say.Radians(stepsApart), speed)
	return fmt.Sprintf("after %s s if it runs on alone at %s", say.Fixed(math.Floor(s*10)/10, 1), h.unit().Pace(speed)), ""
}

// aloneOver names what could not hold the stack on hoist i alone, of some parts.
func (h *hung) aloneOver(i int, among ...string) (over []string) {
	for _, c := range h.aloneChecks(i) {
		if c.over() && slices.Contains(among, c.part) {
			over = append(over, c.part)
		}
	}
	if at, _ := pushedAlone(h.ways(), i, false); at >= 0 {
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

// aloneShort says it of both hoists: 'front MORE THAN …; rear MORE THAN …'.
func (h *hung) aloneShort() string {
	var all []string
	for i := range h.swung {
		if over := moreThan(h.aloneOver(i, append([]string{"hoist"}, gearAlone...)...)); over != "" {
			all = append(all, string(h.end(i))+" "+over)
		}
	}
	return strings.Join(all, "; ")
}
