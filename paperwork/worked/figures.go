package worked

import (
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
)

// Figures is all that is worked out of a job, as data, one object for
// check -json. Numbers are not rounded; angles are degrees, positive down; masses are
// kg, lengths m, forces kN. Held stacks are counted in Total.
type Figures struct {
	Job    JobFigures     `json:"job"`
	Stacks []StackFigures `json:"stacks"`
	Others []OtherFigures `json:"other_points"`
	Total  rig.Carried    `json:"total"`
}

// JobFigures says which job it is.
type JobFigures struct {
	Title       string `json:"title"`
	Venue       string `json:"venue"`
	Date        string `json:"date"`
	Revision    string `json:"revision"`
	Fingerprint string `json:"fingerprint"`
}

// StackFigures are the figures of one stack at trim, and of its lifts. Alone is
// what each of two hooks holds in kg with the other one slack, without tolerance;
// empty with one.
type StackFigures struct {
	ID              string           `json:"id"`
	Name            string           `json:"name"`
	Held            bool             `json:"held"`
	Holds           []rules.Finding  `json:"holds"`
	Cautions        []rules.Finding  `json:"cautions"`
	Mass            float64          `json:"mass_kg"`
	AimWanted       float64          `json:"aim_wanted_deg"`
	Aim             float64          `json:"aim_deg"`
	Tilt            float64          `json:"tilt_deg"`
	LastAim         float64          `json:"last_aim_deg"`
	CentreOfGravity Centre           `json:"centre_of_gravity"`
	Picks           []PickFigures    `json:"picks"`
	Options         []OptionFigures  `json:"pick_hole_options"`
	Lowest          float64          `json:"lowest_m"`
	Cabinets        []CabinetFigures `json:"cabinets"`
	Points          []rig.Point      `json:"points"`
	Lifts           []LiftFigures    `json:"lifts"`
	HookFigures
	Alone []float64 `json:"alone_kg"`
}

// Centre is a centre of gravity in the bar's axes, in metres.
type Centre struct {
	Behind float64 `json:"behind_hinge_m"`
	Below  float64 `json:"below_hinge_m"`
}

// PickFigures is what one pick carries.
type PickFigures struct {
	Hole  rig.Label `json:"pick_hole"`
	Load  float64   `json:"load_kg"`
	Share float64   `json:"share"`
}

// OptionFigures is a pick hole and the aim of cabinet 1 that it gives.
type OptionFigures struct {
	Hole rig.Label `json:"pick_hole"`
	Aim  float64   `json:"aim_deg"`
}

// CabinetFigures is one cabinet and the joint above it. Forces are positive in
// tension, for both sides together; Hinge is the resultant.
type CabinetFigures struct {
	Number    int     `json:"number"`
	Type      string  `json:"type"`
	Set       int     `json:"set"`
	Splay     float64 `json:"splay_deg"`
	Aim       float64 `json:"aim_deg"`
	Lowest    float64 `json:"lowest_m"`
	Hinge     float64 `json:"hinge_kn"`
	HingePull float64 `json:"hinge_pull_kn"`
	Link      float64 `json:"link_kn"`
}

// HookFigures are what hangs from each hook in kg, front first, the rigging below
// included: as worked out, and the least and the most that it may be: see
// rig.Hung.Readings. Of two picks the window of their sum, and by how many mm the
// difference in height of both pick holes has to change before each chain is slack.
type HookFigures struct {
	Hooks   []float64 `json:"hook_kg"`
	Low     []float64 `json:"low_kg"`
	High    []float64 `json:"high_kg"`
	SumLow  *float64  `json:"sum_low_kg,omitempty"`
	SumHigh *float64  `json:"sum_high_kg,omitempty"`
	Slack   []float64 `json:"slack_mm,omitempty"`
}

// LiftFigures is a stack after one of its sets has been joined. SetSum is the sum
// of that set's splays, its first joint included; LastAim is of the lowest cabinet
// flown; PickClear is how high the highest pick hole in use has to be for the next
// dolly to roll in, nil where no dolly is given.
type LiftFigures struct {
	Set      int     `json:"set"`
	Cabinets int     `json:"cabinets_flown"`
	Mass     float64 `json:"mass_kg"`
	HookFigures
	Tilt      float64  `json:"tilt_deg"`
	Aim       float64  `json:"aim_deg"`
	Drop      float64  `json:"drop_m"`
	SetSum    float64  `json:"set_sum_deg"`
	LastAim   float64  `json:"last_aim_deg"`
	PickClear *float64 `json:"pick_clear_m,omitempty"`
}

// OtherFigures is one point of the roof that carries no stack.
type OtherFigures struct {
	ID        string  `json:"id"`
	What      string  `json:"what"`
	StageLeft float64 `json:"stage_left_m"`
	Downstage float64 `json:"downstage_m"`
	Height    float64 `json:"height_m"`
	rig.Carried
}

// OthersTotal is what all other points carry.
func (f Figures) OthersTotal() (sum rig.Carried) {
	for _, o := range f.Others {
		sum = sum.Plus(o.Carried)
	}
	return sum
}

// PointsTotal is what all points of a stack carry.
func (s StackFigures) PointsTotal() (sum rig.Carried) {
	for _, p := range s.Points {
		sum = sum.Plus(p.Carried)
	}
	return sum
}
