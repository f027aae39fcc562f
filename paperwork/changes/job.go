package changes

import (
	"cmp"
	"maps"
	"reflect"
	"slices"

	"hangpack/layouts/parts"
	"hangpack/paperwork/job"
	"hangpack/paperwork/say"
	"hangpack/paperwork/sheets"
	"hangpack/paperwork/worked"
)

// compareJobs compares what is of the whole job.
func (c *List) compareJobs() {
	u := c.new.Unit()
	now := jobFacts(c.new, u)
	for i, was := range jobFacts(c.old, u) {
		if was.Is != now[i].Is {
			c.Others = append(c.Others, OtherChange{What: was.Of, From: was.Is, To: now[i].Is})
		}
	}
}

// What of a job has changed, where the venue has to accept it anew.
const (
	ofVenueName = "venue"
	ofDate      = "date"
	ofDatum     = "datum"
	ofHeights   = "heights above"
)

// jobFacts are what is of the whole job, with practice in some units: the same facts in
// the same order for every job.
func jobFacts(j *worked.Job, u say.Units) []parts.Fact {
	units := "metric"
	if j.Imperial {
		units = "imperial"
	}
	facts := []parts.Fact{{Of: "title", Is: j.Title}, {Of: "note", Is: cmp.Or(j.Note, "none")}, {Of: "prepared by", Is: say.Given(j.PreparedBy)}, {Of: "contact", Is: say.Given(j.Contact)},
		{Of: "address", Is: say.Given(j.URL)}, {Of: ofVenueName, Is: j.Venue}, {Of: ofDate, Is: j.Date},
		{Of: ofDatum, Is: say.Given(j.Datum)}, {Of: ofHeights, Is: j.HeightsFrom}, {Of: "units", Is: units}}
	for _, p := range sheets.PracticeWords(j.Practice, u.ExactLength, u.ExactMass) {
		facts = append(facts, parts.Fact{Of: "practice, " + p.Of, Is: p.Is})
	}
	return facts
}

// compareGear names the gear that both revisions use and whose figures have changed:
// a speed or a rating may change with no load, hole or place.
func (c *List) compareGear() {
	old, new := gearOf(c.old), gearOf(c.new)
	for _, key := range slices.Sorted(maps.Keys(new)) {
		was, both := old[key]
		switch now := new[key]; {
		case both && !reflect.DeepEqual(was.figures, now.figures):
			c.Others = append(c.Others, OtherChange{What: "figures of " + key, From: "as they were", To: "others", ofGear: true})
		case both && was.from != now.from:
			c.Others = append(c.Others, OtherChange{What: "where the figures of " + key + " come from", From: "as it was", To: "elsewhere, or of another day"})
		}
	}
}

// A gearEntry is the figures of an entry of the gear, and where they come from.
type gearEntry struct {
	figures any
	from    job.Origin
}

// gearOf is every gear entry that the stacks of a job are made of, by kind and key.
func gearOf(j *worked.Job) map[string]gearEntry {
	all := map[string]gearEntry{}
	for _, h := range j.Stacks {
		bar := *h.Bar
		bar.Origin = job.Origin{}
		all["bar "+bar.Key] = gearEntry{bar, h.Bar.Origin}
		for _, c := range h.Types() {
			cabinet := *c
			cabinet.Origin = job.Origin{}
			all["cabinet "+c.Key] = gearEntry{cabinet, c.Origin}
		}
		for _, p := range h.Picks {
			hoist := *p.Hoist
			hoist.Origin = job.Origin{}
			all["hoist "+hoist.Key] = gearEntry{hoist, p.Hoist.Origin}
		}
		if h.Dolly != nil {
			dolly := *h.Dolly
			dolly.Origin = job.Origin{}
			all["dolly "+dolly.Key] = gearEntry{dolly, h.Dolly.Origin}
		}
	}
	return all
}
