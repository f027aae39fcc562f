package changes

import (
	"slices"
	"strings"

	"hangpack/paperwork/rules"
)

// ofVenue are the parts of a stack that the venue accepts anew when they change,
// ofVenueJob those of the job: what approvedAgain of package sheets asks for.
var (
	ofVenue    = []string{ofCabinets, ofPlace, rules.OfBar, rules.OfTrim, rules.OfHoist, rules.OfSteel, rules.OfRiggingBelow, rules.OfRiggingAbove, rules.OfSecondary}
	ofVenueJob = []string{ofVenueName, ofDate, ofDatum, ofHeights}
)

// venueWords say what the venue has to accept anew.
func (c List) venueWords() []string {
	again := c.again()
	if len(again) == 0 {
		return []string{"Nothing that the cover wants accepted again has changed. The venue may want the new revision all the same: ask."}
	}
	return []string{"Ask the venue again, before it flies: " + strings.Join(again, ", ") + "."}
}

// again is what the venue has to accept anew.
func (c List) again() (again []string) {
	for _, p := range c.Points {
		again = append(again, "point "+p.ID)
	}
	for _, id := range slices.Concat(c.PointsAdded, c.PointsGone) {
		again = append(again, "point "+id)
	}
	for _, p := range c.Picks {
		again = append(again, "pick holes of "+p.Stack)
	}
	for _, o := range c.Others {
		switch {
		case o.Stack != "" && slices.Contains(ofVenue, o.What):
			again = append(again, o.What+" of "+o.Stack)
		case o.Stack == "" && (slices.Contains(ofVenueJob, o.What) || o.ofGear || o.ofPoint):
			again = append(again, o.What)
		}
	}
	return again
}
