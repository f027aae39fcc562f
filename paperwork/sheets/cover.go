package sheets

import (
	"fmt"
	"slices"
	"strings"

	"hangpack/calc"
	"hangpack/layouts"
	"hangpack/layouts/parts"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/told"
	"hangpack/paperwork/worked"
)

// coverSheet is the first sheet.
func coverSheet(j *worked.Job, others []Sheet) layouts.Cover {
	u, t := j.Unit(), j.Figures.Total
	c := layouts.Cover{
		Title: j.Title, Facts: jobFacts(j), Open: openItems(j),
		Total: fmt.Sprintf("Roof total: %s static, %s design%s%s.", u.Both(t.Static), u.Both(t.Design), includesOthers(j), say.After("; ", j.IncludesHeld())),
		Alone: aloneWords(j), Again: approvedAgain,
		Sheets: sheetGroups(j, others), Venue: venueReads(j),
		Note: Version + ", job " + j.Fingerprint + ". A hold is a reason not to fly. Planning data: it approves nothing.",
	}
	for _, h := range j.Stacks {
		c.Stacks = append(c.Stacks, coverRow(h))
	}
	return c
}

// sheetGroups are the sheets of a pack, its cover among them: those of the whole job, then those
// of each stack.
func sheetGroups(j *worked.Job, others []Sheet) []layouts.SheetGroup {
	groups := []layouts.SheetGroup{{Sheets: []string{layouts.Cover{}.Name()}}}
	of := ""
	for _, s := range others {
		g := &groups[len(groups)-1]
		switch {
		case s.Stack == "":
			g = &groups[0]
		case s.Stack != of:
			groups = append(groups, layouts.SheetGroup{Shape: string(j.Stack(s.Stack).Shape)})
			of, g = s.Stack, &groups[len(groups)-1]
		}
		g.Sheets = append(g.Sheets, s.Name())
	}
	return groups
}

// venueReads says which sheets are the venue's.
func venueReads(j *worked.Job) string {
	words := "for the venue: COVER, POINTS, PLAN, CAUTIONS"
	if slices.ContainsFunc(j.Stacks, func(h *rules.Checked) bool { return !h.Held() }) {
		words += ", CALCULATION"
	}
	if j.Held() {
		words += ", DO NOT FLY"
	}
	return words
}

// approvedAgain is what the venue has to accept anew. Common practice: venues ask
// that any addition or deviation is approved before it flies.
const approvedAgain = "Ask the venue again, with a new revision, before it flies if any of these changes: a point's place or load; a hoist, its class or its rigging; " +
	"what a stack is made of or how many cabinets it has; a pick hole; a trim or the height of the steel; a secondary; the date or the hall."

// includesOthers says that the total counts other points too, where there are any.
func includesOthers(j *worked.Job) string {
	if len(j.Figures.Others) == 0 {
		return ""
	}
	return fmt.Sprintf("; %s in it, %s", say.Count(len(j.Figures.Others), "other point"), j.Unit().Load(j.Figures.OthersTotal().Static))
}

// aloneWords name the stacks that one of their two hoists could not hold alone, with
// all that it holds by, and "" where there are none.
func aloneWords(j *worked.Job) string {
	var ids []string
	for _, h := range j.Stacks {
		if !h.Held() && aloneShort(h.Hung) != "" {
			ids = append(ids, h.ID)
		}
	}
	if len(ids) == 0 {
		return ""
	}
	return "One hoist (motor) alone: MORE THAN it or its gear MAY HOLD at " + strings.Join(ids, ", ") + ": see LIFTS."
}

// jobFacts are what the cover says of the job.
func jobFacts(j *worked.Job) []parts.Fact {
	facts := []parts.Fact{
		{Of: "Venue, date", Is: j.Venue + ", " + j.Date},
		{Of: "Prepared by", Is: say.Given(j.PreparedBy) + "; contact " + say.Given(j.Contact)},
		{Of: "Datum of the plan", Is: datumOf(j)},
		{Of: "Heights above", Is: j.HeightsFrom},
	}
	if j.Note != "" {
		facts = append(facts, parts.Fact{Of: "Note", Is: j.Note})
	}
	return facts
}

// coverRow is one stack on the cover.
func coverRow(h *rules.Checked) layouts.StackRow {
	u, s := h.Unit(), h.Finished
	r := layouts.StackRow{ID: h.ID, Name: h.Name, Shape: string(h.Shape), Verdict: told.ShortVerdict(h), Held: h.Held(), Code: codeOf(h)}
	r.Facts = []parts.Fact{{Of: "Cabinets", Is: fmt.Sprintf("%d, %s below the hooks", len(h.Cabinets), u.Load(s.Centre.Mass))}}
	for _, p := range h.Points {
		is := fmt.Sprintf("%s static, %s design", u.Load(p.Static), u.Load(p.Design))
		if len(h.Picks) == 2 {
			is = fmt.Sprintf("%s static, %s governing, %s alone", u.Load(p.Static), u.Load(p.Governing.Design), u.Load(p.AloneDesign))
		}
		if m := p.Most; m.Where != "" {
			is += fmt.Sprintf(", AT %s %s static, %s design", strings.ToUpper(m.Where), u.Load(m.Static), u.Load(m.Design))
		}
		r.Facts = append(r.Facts, parts.Fact{Of: "Point " + p.ID, Is: is + say.After(", ", worked.HeldMark(h))})
	}
	if r.Held {
		r.Facts = append(r.Facts, noteFacts(h)...)
		return r
	}
	r.Facts[0].Is += "; lowest corner " + u.Length(h.Raise+s.Lowest())
	r.Facts = append(r.Facts,
		parts.Fact{Of: "Looks", Is: fmt.Sprintf("%s to %s (top wanted %s)", aimOf(h.Hung, 1), aimOf(h.Hung, len(s.Poses)), say.Aim(h.Aim))},
		parts.Fact{Of: "Most used", Is: h.MostUsedWords()})
	r.Facts = append(r.Facts, noteFacts(h)...)
	return r
}

// noteFacts are a stack's note in its row, if it has one.
func noteFacts(h *rules.Checked) []parts.Fact {
	if h.Note == "" {
		return nil
	}
	return []parts.Fact{{Is: noteOf(h)}}
}

// openItems gathers what is not settled, held stacks first. What is said alike of
// several stacks or gear entries is said once.
func openItems(j *worked.Job) (items []parts.Remark) {
	for _, h := range j.Stacks {
		for _, l := range told.Gathered(h.Holds) {
			items = append(items, parts.Remark{Where: h.ID, Says: "HELD: " + l.OnPaper() + " (" + told.WhereWords(l.At...) + ")"})
		}
	}
	for _, h := range j.Stacks {
		if words := rules.TwinWords(h); words != "" && h.TwinOf != "" {
			items = append(items, parts.Remark{Where: h.Twin.ID + ", " + h.ID, Says: "Twins differ: " + words + ". On purpose? See the cautions"})
		}
	}
	if j.Datum == "" {
		items = append(items, parts.Remark{Where: "job", Says: "Not known: the datum that every place in plan is measured from"})
	}
	if strings.Contains(j.URL, "{page}") {
		items = append(items, parts.Remark{Where: "job", Says: "Codes lead to pages of this pack, as job.url has {page}: on a sheet that is kept through a revision they may lead to another sheet. Without {page} they go by name"})
	}
	return append(items, openOfStacks(j)...)
}

// itemMost is the most stacks or gear entries that stand together at one open
// item: a row of the cover is not cut.
const itemMost = 12

// openOfStacks gathers what is not settled of stacks and gear.
func openOfStacks(j *worked.Job) (items []parts.Remark) {
	at := map[string]int{}            // of each sentence, its latest place among the items
	listed := map[parts.Remark]bool{} // what is in them
	for _, h := range j.Stacks {
		for _, o := range openOf(h) {
			if listed[o] {
				continue
			}
			listed[o] = true
			if i, seen := at[o.Says]; seen && strings.Count(items[i].Where, ", ")+1 < itemMost {
				items[i].Where += ", " + o.Where
				continue
			}
			at[o.Says] = len(items)
			items = append(items, o)
		}
	}
	return items
}

// openOf is what is not settled of one stack. What belongs to a gear entry stands
// under its key, so that stacks that share it list it once.
func openOf(h *rules.Checked) (items []parts.Remark) {
	add := func(where, says string) { items = append(items, parts.Remark{Where: where, Says: says}) }
	for _, c := range h.Cautions {
		switch {
		case c.Rule == rules.NotChecked && c.Where.Gear != "":
			add(c.Where.Gear, c.Says)
		case c.Rule == rules.NotChecked || c.Rule == rules.AimMissed:
			add(h.ID, c.Says)
		}
	}
	return slices.Concat(items, openHanging(h.Hung), openGear(h.Hung))
}

// openHanging is what is not settled of how a stack is hung and made up.
func openHanging(h *rig.Hung) (items []parts.Remark) {
	add := func(where, says string) { items = append(items, parts.Remark{Where: where, Says: says}) }
	if len(h.Picks) == 1 {
		add(h.ID, "Not known: who steers it; nothing in this paper keeps it from turning")
	}
	if h.Secondary == nil {
		add(h.ID, "Not known: no secondary named: ask the venue")
	} else if h.Secondary.Rating < h.Finished.Centre.Mass*calc.G {
		add(h.ID, fmt.Sprintf("Secondary rated %s is less than the stack, %s: ask who chose it", h.Unit().Limit(h.Secondary.Rating), h.Unit().Load(h.Finished.Centre.Mass)))
	}
	for _, p := range h.Picks {
		if p.Hoist.Class == "" {
			add(p.Hoist.Key, "Not known: class of the hoist; may it hold over people? Ask the venue")
		}
	}
	if h.PinsSet == "" {
		add(h.ID, "Not known: whether link pins are set on the dolly, at the hoist (motor) or in the air")
	}
	return items
}

// openGear is what is not settled of a stack's gear.
func openGear(h *rig.Hung) (items []parts.Remark) {
	add := func(where, says string) { items = append(items, parts.Remark{Where: where, Says: says}) }
	for _, t := range h.Unknown() {
		add(t.Key, "Not known: its centre of gravity; worked out from the middle of its outline and over its middle third. Weigh it or ask its maker")
	}
	for _, g := range gearEntries(h) {
		if g.Source == "" || g.Source == job.Estimate {
			add(g.key, g.openWords())
		}
	}
	for _, t := range h.Types() {
		if t.Transport == nil {
			add(t.Key, "Not known: the hole for the truck")
		}
	}
	return items
}
