// Package paperwork turns a job into a pack: it works out the figures, holds
// them against the rules, turns them into words and hands the sheets to the
// layouts in their order.
package paperwork

import (
	"hangpack/calc"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
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

// OtherFigures is one point of the roof that carries no stack.
type OtherFigures struct {
	ID        string  `json:"id"`
	What      string  `json:"what"`
	StageLeft float64 `json:"stage_left_m"`
	Downstage float64 `json:"downstage_m"`
	Height    float64 `json:"height_m"`
	rig.Carried
}

// figures gathers the figures of a job from its stacks as worked out.
func figures(j *job.Job, stacks []*rules.Checked) Figures {
	f := Figures{Job: JobFigures{j.Title, j.Venue, j.Date, j.Revision, j.Fingerprint}, Others: otherFigures(j)}
	for _, h := range stacks {
		s := stackFigures(h)
		f.Stacks = append(f.Stacks, s)
		f.Total = f.Total.Plus(s.total())
	}
	for _, o := range f.Others {
		f.Total = f.Total.Plus(o.Carried)
	}
	return f
}

// others is what all other points carry.
func (f Figures) others() (sum rig.Carried) {
	for _, o := range f.Others {
		sum = sum.Plus(o.Carried)
	}
	return sum
}

// total is what all points of a stack carry.
func (s StackFigures) total() (sum rig.Carried) {
	for _, p := range s.Points {
		sum = sum.Plus(p.Carried)
	}
	return sum
}

func stackFigures(h *rules.Checked) StackFigures {
	s := h.Finished
	return StackFigures{
		ID: h.ID, Name: h.Name,
		Held: h.Held(), Holds: list(h.Holds), Cautions: list(h.Cautions),
		Mass:      s.Centre.Mass,
		AimWanted: say.Degrees(h.Aim), Aim: say.Degrees(s.Poses[0].Aim), Tilt: say.Degrees(s.Tilt),
		LastAim:         say.Degrees(s.Poses[len(s.Poses)-1].Aim),
		CentreOfGravity: Centre{h.Centre.At.Behind, h.Centre.At.Below},
		Picks:           pickFigures(h), Options: optionFigures(h),
		Lowest:   h.Raise + s.Lowest(),
		Cabinets: cabinetFigures(h), Points: h.Points, Lifts: liftFigures(h),
		HookFigures: hookFigures(h, len(h.Lifts)), Alone: aloneFigures(h),
	}
}

// list is findings, never null.
func list(f []rules.Finding) []rules.Finding { return append([]rules.Finding{}, f...) }

func pickFigures(h *rules.Checked) (picks []PickFigures) {
	for i, hole := range h.Holes {
		kg := h.Finished.Loads[i]
		picks = append(picks, PickFigures{h.Label(hole), kg, kg / h.Finished.Centre.Mass})
	}
	return picks
}

func optionFigures(h *rules.Checked) []OptionFigures {
	options := []OptionFigures{}
	for i, o := range h.Options {
		options = append(options, OptionFigures{h.Label(i), say.Degrees(o.Aim)})
	}
	return options
}

func cabinetFigures(h *rules.Checked) (cabinets []CabinetFigures) {
	for k, c := range h.Cabinets {
		j := h.Finished.Joints[k]
		cabinets = append(cabinets, CabinetFigures{
			Number: k + 1, Type: c.Key, Set: h.Sets.Of(k+1) + 1,
			Splay: c.Hole.Splay, Aim: say.Degrees(h.Finished.Poses[k].Aim),
			Lowest: h.Raise + calc.Lowest(h.Finished.Corners[k]),
			Hinge:  j.Hinge() / 1000, HingePull: j.HingePull / 1000, Link: j.Link / 1000,
		})
	}
	return cabinets
}
