// Package plan is the sheet of all points of the roof from above: one drawing or more,
// each with tags for its points, the words and the key around it, and tape checks.
package plan

import "hangpack/layouts/drawings"

// A Sheet is the sheet of all points of the roof as seen from above, for the
// venue's head rigger and for who chalks them on the floor. Its places are
// metres from the datum, and not as in other drawings: X is positive to stage
// left, which is to the right of the page, and Z is positive downstage, which
// is down the page, where the audience is.
type Sheet struct {
	Ruler  drawings.Ruler
	Datum  string  // what 0,0 is
	Points []Point // all of them, in the job's order; at least one
	Stacks []Stack
	Checks []TapeCheck
	// Rounding is how far a tape check may differ because offsets are rounded:
	// '15 mm'.
	Rounding string
}

// A Point is one point of the roof.
type Point struct {
	ID     string
	At     drawings.Place
	Across string // 'stage left 11.40 m' or '0.00 m across'
	UpDown string // 'upstage 0.60 m' or '0.00 m up or down'
	Held   bool   // its stack must not be flown as described
	Other  bool   // not a stack's: a cable pick
}

// A Stack is the outline of a stack from above, at its pan.
type Stack struct {
	Corners [4]drawings.Place
	Front   [2]drawings.Place // the edge that looks at the audience
	Held    bool
}

// A TapeCheck is a distance of two points along the floor, in words.
type TapeCheck struct{ From, To, Is string }

// Name is what the sheet is called.
func (Sheet) Name() string { return "PLAN" }
