// Package job reads a job file: one YAML document that describes the stacks
// of a show, the gear they are made of and the practice they are checked by.
//
// Read walks the YAML tree node by node, so that every complaint still has
// its line and column, and returns a Job in which every name has been looked
// up, every default filled in and every quantity turned into SI units (m, kg,
// N, rad; splays alone stay in degrees, as they are stamped). The keys, their
// units, ranges and defaults stand in one table, keys.go.
package job

import "hangpack/calc"

// Job is a job file that has no complaint.
type Job struct {
	Title, Venue string
	Date         string  // YYYY-MM-DD, a day that exists
	Revision     string  // 1 to 6 of A-Z a-z 0-9 . -
	PreparedBy   string  // "" when not given
	Contact      string  // "" when not given
	Note         string  // "" when not given
	Datum        string  // "" when not given
	HeightsFrom  string  // "the floor" when not given
	URL          string  // "" when not given
	Spares       float64 // of pins, as a share of one
	Letter       bool    // Letter paper; else A4
	Imperial     bool    // feet and pounds on paper; else metric
	Practice     Practice
	Stacks       []Stack      // in the order of the file; at least one
	OtherPoints  []OtherPoint // in the order of the file; nil when not given
	Fingerprint  string       // 8 hex digits over all that the job and its gear files give
	GearFiles    []string     // paths of the gear files read; nil when not given
}

// Hole is one hole of a joint: its label as stamped, and the splay it sets,
// in degrees.
type Hole struct {
	Label string
	Splay float64
}

// PinRatings are the working load limits of one pin with its ironwork, in
// newtons.
type PinRatings struct{ Hinge, Link float64 }

// Origin is where the figures of a gear entry come from, and of which day they
// are.
type Origin struct {
	Source Source
	AsOf   string // YYYY-MM-DD; "" when not given
}

// Source is data_sheet, label, weighed, drawing, estimate, or "" when not given.
type Source string

// Estimate is the Source of figures that nobody has looked up or weighed.
const Estimate Source = "estimate"

// Cabinet is one type of loudspeaker.
type Cabinet struct {
	Origin
	Key, Name                             string
	Mass                                  float64 // kg
	Width, Depth, FrontHeight, BackHeight float64 // m
	HingeBehindFront, HingeBelowTop       float64 // m
	HingePitch                            float64 // m, top hinge pin to bottom hinge pin
	CentreOfGravity                       calc.Offset
	CentreUnknown                         bool    // CentreOfGravity is the middle of the outline, in place of one not known
	LinkArm                               float64 // m
	Holes                                 []Hole  // of the joint that its list is for
	HolesForJointAbove                    bool    // the list is for the joint above; else for the joint below
	Transport                             *Hole   // one of Holes; nil when not given
	HingePins, LinkPins                   int     // 1 or 2 pins a joint share its force
	PinRatings                            *PinRatings
	LinkPushes                            bool // its maker lets the link take compression
}

// PickHole is one hole of the bar's row. Number says that the job gives the
// label as a plain number, so that figures print it as one.
type PickHole struct {
	Label  string
	Number bool
	At     calc.Offset // in the bar's axes
}

// Bar is one type of bar.
type Bar struct {
	Origin
	Key                string
	Mass               float64 // kg
	CentreOfGravity    calc.Offset
	PickHoles          []PickHole // as in the job; at least one
	LinkArm            float64    // m; 0 when not given: the first cabinet's is used
	Holes              []Hole     // of joint 1, unless cabinet 1 brings its own
	Rating, PickRating float64    // N; 0 when not given
	Most               []Most     // by keys, that of all types last; nil when not given
	TiltLimit          *TiltLimit // nil when not given
	PinRatings         *PinRatings
}

// Most is the most cabinets of one type, or of all types together, that a bar's
// maker allows below it.
type Most struct {
	Cabinet string // key, or OfAnyType
	Count   int
}

// OfAnyType stands in Most for all types of cabinet together. No type is called so.
const OfAnyType = "any"

// TiltLimit is how far a bar may tilt, in radians, both positive.
type TiltLimit struct{ Down, Up float64 }

// Dolly is one type of dolly.
type Dolly struct {
	Origin
	Key        string
	Takes      int
	Mass       float64 // kg
	DeckHeight float64 // m
	Plumb      bool    // what stands on it has the front of its lowest cabinet plumb; else it rests flat on it
}

// Hoist is one type of hoist.
type Hoist struct {
	Origin
	Key         string
	Capacity    float64 // N
	Mass        float64 // kg, without its chain
	ChainMass   float64 // kg/m
	ChainLength float64 // m, all of it
	Falls       int
	Headroom    float64 // m, hook to hook, run right up
	Speed       float64 // m/s, of its hook; 0 when not given
	Class       string  // in the shop's own words: may it hold over people?; "" when not given
}

// Shape is the side mark of a stack: square, circle, triangle, diamond, or ""
// when not given.
type Shape string

// NotKnown stands in a job for a centre of gravity that nobody knows.
const NotKnown = "not_known"

// LoadCell says where a load cell hangs: below_hoist, above_hoist, or "" when
// not given.
type LoadCell string

// AboveHoist is the LoadCell that has hoist and chain below it.
const AboveHoist LoadCell = "above_hoist"

// PinsSet says how the link pins within a set come to be in their holes:
// on_dolly, at_the_hoist, in_the_air, or "" when not given.
type PinsSet string

// The values of PinsSet.
const (
	OnDolly    PinsSet = "on_dolly"     // set before the set rolls in
	AtTheHoist PinsSet = "at_the_hoist" // rolls in as it was in the truck, and is set joint by joint below the hoist
	InTheAir   PinsSet = "in_the_air"   // hinges alone until it is raised clear
)

// Stack is one column of cabinets under its bar.
type Stack struct {
	ID, Name             string
	Note                 string // "" when not given
	TwinOf               string // ID of the stack that it is a twin of; "" when not given
	Shape                Shape
	StageLeft, Downstage float64 // m, of the bar's hinge pin
	Pan                  float64 // rad, from straight downstage towards stage left
	Bar                  *Bar
	LinkArm              float64  // m, the bar's own, or the first cabinet's
	Cabinets             []Placed // from the top; 1 to 40
	Dolly                *Dolly   // nil when not given
	Sets                 Sets     // how many cabinets on each dolly, from the top; at least one
	PinsSet              PinsSet  // its own, or that of practice
	Aim                  float64  // rad, positive down
	Picks                []Pick   // one, or front and rear
	LoadCell             LoadCell
	Trim                 Trim
	Floor                float64 // m
	Extras               []Extra
	Secondary            *Secondary // nil when not given
}

// Secondary is what would hold a stack if its hoists or their rigging failed.
type Secondary struct {
	What   string
	Rating float64 // N
}

// OtherPoint is something else on the roof that this job hangs, and that no
// stack carries: a cable pick, a drape.
type OtherPoint struct {
	ID, What             string  // an ID of no stack and of no other point
	StageLeft, Downstage float64 // m
	Height               float64 // m, of the hook that takes it
	Mass                 float64 // kg, all that the point carries at rest
}

// Placed is one cabinet of a stack with the joint between it and what is
// above it.
type Placed struct {
	*Cabinet
	Hole  Hole   // where the joint's link is pinned; one of Joint
	Joint []Hole // all holes of that joint, as listed
}

// Pick is where one hoist takes the bar.
type Pick struct {
	Hole  int // index into Bar.PickHoles; Auto when the figures are to choose
	Hoist *Hoist
	Steel *float64 // m; nil when not given
	Below Rigging  // between hook and bar
	Above Rigging  // between steel and hoist
}

// Auto stands for a pick hole that the figures are to choose.
const Auto = -1

// Rigging is what hangs between two things: its mass in kg and its length in m.
type Rigging struct{ Mass, Length float64 }

// Trim is the height at which a stack stays, in metres: of its lowest corner,
// or of its highest pick hole in use.
type Trim struct {
	Height float64
	OfPick bool
}

// Extra is something else that hangs with a stack, placed where it is tied.
type Extra struct {
	Name    string
	Mass    float64     // kg
	Cabinet int         // from 1; 0 when it is tied to the bar
	At      calc.Offset // in the axes of the bar or of that cabinet
}
