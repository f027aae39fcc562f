package paperwork

import (
	"fmt"

	"hangpack/calc"
	"hangpack/layouts"
)

const notGiven = "not given"

// cover is the first sheet.
func (j *Job) cover() layouts.Cover {
	u, t := units{j.job.Imperial}, j.Figures.Total
	c := layouts.Cover{
		Title: j.job.Title, Revision: j.job.Revision, Facts: j.facts(), Open: j.openItems(),
		Total: fmt.Sprintf("Roof total: %s static, %s design (x %s)%s.", u.load(t.Static), u.load(t.Design), j.stacks[0].factors(), j.includesHeld()),
		Note:  Version + ". Points carry hoist, chain and rigging. Loads are rounded up; the total is the true sum rounded up. This pack is planning data and approves nothing.",
	}
	for _, h := range j.stacks {
		c.Stacks = append(c.Stacks, h.coverRow())
	}
	return c
}

func (j *Job) facts() []layouts.Fact {
	given := func(s string) string {
		if s == "" {
			return notGiven
		}
		return s
	}
	p := j.job.Practice
	return []layouts.Fact{
		{Of: "Venue, date", Is: j.job.Venue + ", " + j.job.Date},
		{Of: "Prepared by", Is: given(j.job.PreparedBy) + "; contact " + given(j.job.Contact)},
		{Of: "Datum of the plan", Is: given(j.job.Datum)},
		{Of: "Heights above", Is: j.job.HeightsFrom},
		{Of: "Checked with", Is: fmt.Sprintf("masses + %s, dynamic factor %s (not on hoists), hoists to %s of capacity, gear to %s of rating, %s of a joint on one side",
			share(p.MassTolerance), trimmed(p.DynamicFactor), share(p.HoistUse), share(p.GearUse), share(p.SideShare))},
	}
}

// coverRow is one stack on the cover.
func (h *hung) coverRow() layouts.StackRow {
	u, s := h.unit(), h.finished
	r := layouts.StackRow{ID: h.ID, Name: h.Name, Shape: string(h.Shape), Verdict: h.verdict(), Held: len(h.holds) > 0, To: h.target(), Code: h.code()}
	r.Facts = []layouts.Fact{{Of: "Cabinets, mass", Is: fmt.Sprintf("%d, %s below the hooks", len(h.Cabinets), u.load(s.centre.Mass))}}
	for _, p := range h.pointFigures() {
		r.Facts = append(r.Facts, layouts.Fact{Of: "Point " + p.ID,
			Is: fmt.Sprintf("%s static, %s design%s", u.load(p.Static), u.load(p.Design), heldMark(r.Held))})
	}
	if r.Held {
		return r
	}
	return h.flownFacts(r)
}

func heldMark(held bool) string {
	if held {
		return ", HELD"
	}
	return ""
}

func (h *hung) flownFacts(r layouts.StackRow) layouts.StackRow {
	u, s := h.unit(), h.finished
	last := s.poses[len(s.poses)-1].Aim
	r.Facts = append(r.Facts,
		layouts.Fact{Of: "Looks", Is: fmt.Sprintf("cabinet 1 %s (wanted %s), cabinet %d %s", aim(s.poses[0].Aim), aim(h.Aim), len(s.poses), aim(last))},
		layouts.Fact{Of: "Lowest corner", Is: u.length(h.raise+s.lowest()) + " above " + h.job.HeightsFrom},
		layouts.Fact{Of: "Most used", Is: h.mostUsedWords()},
	)
	return r
}

// openItems gathers what is not settled, held stacks first.
func (j *Job) openItems() (items []layouts.OpenItem) {
	for _, h := range j.stacks {
		for _, f := range h.holds {
			items = append(items, layouts.OpenItem{Where: h.ID, Says: "HELD: " + h.findingWords(f)})
		}
	}
	seen := map[string]bool{}
	for _, h := range j.stacks {
		for _, o := range h.open() {
			if !seen[o.Where+o.Says] {
				items = append(items, o)
			}
			seen[o.Where+o.Says] = true
		}
	}
	return items
}

// open is what is not settled of one stack. What belongs to a gear entry stands
// under its key, so that stacks that share it list it once.
func (h *hung) open() (items []layouts.OpenItem) {
	add := func(where, format string, args ...any) {
		items = append(items, layouts.OpenItem{Where: where, Says: fmt.Sprintf(format, args...)})
	}
	for _, c := range h.cautions {
		switch {
		case c.Rule == "not_checked" && c.Where != "":
			add(c.Where, "%s", c.Says)
		case c.Rule == "not_checked" || c.Rule == "aim_missed":
			add(h.ID, "%s", c.Says)
		}
	}
	if len(h.Picks) == 1 {
		add(h.ID, "Not known: who steers it; nothing in this paper keeps it from turning")
	}
	if h.PinsSet == "" {
		add(h.ID, "Not known: whether link pins are set on the dolly or in the air")
	}
	for _, t := range h.types() {
		if t.Transport == nil {
			add(t.Key, "Not known: the hole for the truck")
		}
	}
	return items
}

// loadSheet is what each joint carries, and what to read after each dolly.
func (h *hung) loadSheet() layouts.Loads {
	l := layouts.Loads{Sheet: h.ID + " LOADS", Head: h.head(), Notes: h.loadNotes()}
	for k := range h.Cabinets {
		l.Joints = append(l.Joints, h.jointRow(k))
	}
	for _, s := range h.lifts {
		l.Lifts = append(l.Lifts, h.liftRow("dolly "+letter(h.setOf(s.flown)-1), s))
	}
	after := "dolly " + letter(len(h.Sets)-1)
	if !h.hasDollies() {
		after = "all"
	}
	l.Lifts = append(l.Lifts, h.liftRow(after, h.finished))
	for i, p := range h.pointFigures() {
		u := h.unit()
		l.Points = append(l.Points, layouts.PointRow{ID: p.ID, Place: u.across(p.StageLeft) + ", " + u.upDown(p.Downstage),
			Pick: u.length(p.PickHeight), Hook: u.length(p.LowHook), Carries: u.load(h.finished.loads[i]), Static: u.load(p.Static), Design: u.load(p.Design)})
	}
	return l
}

func (h *hung) jointRow(k int) layouts.JointRow {
	u, s, j := h.unit(), h.finished, h.finished.joints[k]
	r := layouts.JointRow{
		Joint: fmt.Sprint(k + 1), Looks: aim(s.poses[k].Aim), Lowest: u.length(h.raise + calc.Lowest(s.corners[k])),
		Hinge: u.force(j.Hinge()), Along: way(u, j.HingePull), Link: way(u, j.Link),
		HingeUse: "no rating", LinkUse: "no rating",
	}
	if rated := h.ratings(k); rated != nil {
		c := h.Cabinets[k]
		r.HingeUse = h.pinUse(j.Hinge(), c.HingePins, rated.Hinge)
		r.LinkUse = h.pinUse(j.Link, c.LinkPins, rated.Link)
	}
	return r
}

// way writes a force along a joint and which way it goes.
func way(u units, n float64) string {
	switch {
	case n > alike:
		return u.force(n) + " pull"
	case n < -alike:
		return u.force(n) + " push"
	}
	return "none"
}

// pinUse is how much one pin is used at the design load.
func (h *hung) pinUse(force float64, pins int, rating float64) string {
	return percent(h.design(calc.PinForce(force, pins, h.job.Practice.SideShare)) / (rating * h.job.Practice.GearUse))
}

func (h *hung) liftRow(after string, s state) layouts.LiftRow {
	u := h.unit()
	return layouts.LiftRow{After: after, Flown: count(s.flown, "cabinet"), Mass: u.load(s.centre.Mass), Hook: h.hookReading(s),
		Looks: aim(s.poses[0].Aim), Bar: aim(s.tilt), Drop: u.length(s.drop())}
}

// hookReading is what a load cell below the hoist should show.
func (h *hung) hookReading(s state) string {
	if len(s.loads) == 1 {
		return h.hookWords(s)
	}
	u := h.unit()
	return fmt.Sprintf("front %s, rear %s", u.reading(h.hook(s, 0)), u.reading(h.hook(s, 1)))
}

func (h *hung) loadNotes() []string {
	tilts := "with two picks the bar is held at the tilt of the finished stack"
	if len(h.Picks) == 1 {
		tilts = "with one pick the bar tilts as the stack settles, so it looks another way at each lift"
	}
	return []string{
		"Hook reads: a load cell between hoist and rigging, which is counted in it; " + tilts + ". If a reading differs: stop, lower, find out why.",
		fmt.Sprintf("Used: of one pin's rating, at design load (x %s); with a pin each side the worse side takes %s. 'Pull' along a joint holds the bodies together; 'push' presses them.", h.factors(), share(h.job.Practice.SideShare)),
		"Static: at rest, with hoist, the whole of its chain and all rigging. Design: static x " + h.factors() + ". Heights above " + h.job.HeightsFrom + ".",
	}
}
