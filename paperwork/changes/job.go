package changes

import (
	"maps"
	"reflect"
	"slices"

	"hangpack/layouts/parts"
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
	facts := []parts.Fact{{Of: "revision", Is: j.Revision}, {Of: "title", Is: j.Title}, {Of: ofVenueName, Is: j.Venue}, {Of: ofDate, Is: j.Date},
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
		if was, both := old[key]; both && !reflect.DeepEqual(was, new[key]) {
			c.Others = append(c.Others, OtherChange{What: "figures of " + key, From: "as they were", To: "others", ofGear: true})
		}
	}
}

// gearOf is every gear entry that the stacks of a job are made of, by kind and key.
func gearOf(j *worked.Job) map[string]any {
	all := map[string]any{}
	for _, h := range j.Stacks {
		all["bar "+h.Bar.Key] = *h.Bar
		for _, c := range h.Cabinets {
			all["cabinet "+c.Key] = *c.Cabinet
		}
		for _, p := range h.Picks {
			all["hoist "+p.Hoist.Key] = *p.Hoist
		}
		if h.Dolly != nil {
			all["dolly "+h.Dolly.Key] = *h.Dolly
		}
	}
	return all
}
