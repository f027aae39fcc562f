// Package paperwork turns a job into a pack: it works out the figures, holds
// them against the rules, turns them into words and hands the sheets to the
// layouts in their order.
package paperwork

import (
	"encoding/json"

	"hangpack/calc"
	"hangpack/paperwork/job"
)

// Figures is all that is worked out of a job, as data: see README for the
// keys. Numbers are not rounded; angles are degrees, positive down; masses are
// kg, lengths m, forces kN. Held stacks are counted in Total.
type Figures struct {
	Job    JobFigures     `json:"job"`
	Stacks []StackFigures `json:"stacks"`
	Total  Carried        `json:"total"`
}

// JobFigures says which job it is.
type JobFigures struct {
	Title       string `json:"title"`
	Venue       string `json:"venue"`
	Date        string `json:"date"`
	Revision    string `json:"revision"`
	Fingerprint string `json:"fingerprint"`
}

// Carried is what points carry, in kg: at rest, and with the job's factors.
type Carried struct {
	Static float64 `json:"static_kg"`
	Design float64 `json:"design_kg"`
}

// StackFigures are the figures of one stack at trim, and of its lifts.
type StackFigures struct {
	ID              string           `json:"id"`
	Name            string           `json:"name"`
	Held            bool             `json:"held"`
	Holds           []Finding        `json:"holds"`
	Cautions        []Finding        `json:"cautions"`
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
	Points          []PointFigures   `json:"points"`
	Lifts           []LiftFigures    `json:"lifts"`
}

// Centre is a centre of gravity in the bar's axes, in metres.
type Centre struct {
	Behind float64 `json:"behind_hinge_m"`
	Below  float64 `json:"below_hinge_m"`
}

// A Label is a pick hole's label. In JSON it keeps the type it has in the job:
// 19 or "C4".
type Label struct {
	Text   string
	Number bool
}

// MarshalJSON writes the label as a number or as a string.
func (l Label) MarshalJSON() ([]byte, error) {
	if l.Number {
		return []byte(l.Text), nil
	}
	return json.Marshal(l.Text)
}

// PickFigures is what one pick carries.
type PickFigures struct {
	Hole  Label   `json:"pick_hole"`
	Load  float64 `json:"load_kg"`
	Share float64 `json:"share"`
}

// OptionFigures is a pick hole and the aim of cabinet 1 that it gives.
type OptionFigures struct {
	Hole Label   `json:"pick_hole"`
	Aim  float64 `json:"aim_deg"`
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

// PointFigures is one point of the roof.
type PointFigures struct {
	ID         string  `json:"id"`
	StageLeft  float64 `json:"stage_left_m"`
	Downstage  float64 `json:"downstage_m"`
	PickHeight float64 `json:"pick_height_m"`
	LowHook    float64 `json:"low_hook_m"`
	Carried
}

// LiftFigures is a stack after one of its sets has been joined.
type LiftFigures struct {
	Set      int       `json:"set"`
	Cabinets int       `json:"cabinets_flown"`
	Mass     float64   `json:"mass_kg"`
	Hooks    []float64 `json:"hook_kg"`
	Tilt     float64   `json:"tilt_deg"`
	Aim      float64   `json:"aim_deg"`
	Drop     float64   `json:"drop_m"`
}

// figures gathers the figures of a job from its stacks as worked out.
func figures(j *job.Job, stacks []*hung) Figures {
	f := Figures{Job: JobFigures{j.Title, j.Venue, j.Date, j.Revision, j.Fingerprint}}
	for _, h := range stacks {
		s := h.figures()
		f.Stacks = append(f.Stacks, s)
		for _, p := range s.Points {
			f.Total.Static += p.Static
			f.Total.Design += p.Design
		}
	}
	return f
}

func (h *hung) figures() StackFigures {
	s := h.finished
	return StackFigures{
		ID: h.ID, Name: h.Name,
		Held: len(h.holds) > 0, Holds: list(h.holds), Cautions: list(h.cautions),
		Mass:      s.centre.Mass,
		AimWanted: degrees(h.Aim), Aim: degrees(s.poses[0].Aim), Tilt: degrees(s.tilt),
		LastAim:         degrees(s.poses[len(s.poses)-1].Aim),
		CentreOfGravity: Centre{h.centre.At.Behind, h.centre.At.Below},
		Picks:           h.pickFigures(), Options: h.optionFigures(),
		Lowest:   h.raise + s.lowest(),
		Cabinets: h.cabinetFigures(), Points: h.pointFigures(), Lifts: h.liftFigures(),
	}
}

// list is findings, never null.
func list(f []Finding) []Finding { return append([]Finding{}, f...) }

func (h *hung) label(hole int) Label {
	p := h.Bar.PickHoles[hole]
	return Label{p.Label, p.Number}
}

func (h *hung) pickFigures() (picks []PickFigures) {
	for i, hole := range h.holes {
		kg := h.finished.loads[i]
		picks = append(picks, PickFigures{h.label(hole), kg, kg / h.finished.centre.Mass})
	}
	return picks
}

func (h *hung) optionFigures() []OptionFigures {
	options := []OptionFigures{}
	for i, o := range h.options {
		options = append(options, OptionFigures{h.label(i), degrees(o.aim)})
	}
	return options
}

func (h *hung) cabinetFigures() (cabinets []CabinetFigures) {
	for k, c := range h.Cabinets {
		j := h.finished.joints[k]
		cabinets = append(cabinets, CabinetFigures{
			Number: k + 1, Type: c.Key, Set: h.setOf(k + 1),
			Splay: c.Hole.Splay, Aim: degrees(h.finished.poses[k].Aim),
			Lowest: h.raise + calc.Lowest(h.finished.corners[k]),
			Hinge:  j.Hinge() / 1000, HingePull: j.HingePull / 1000, Link: j.Link / 1000,
		})
	}
	return cabinets
}

func (h *hung) pointFigures() (points []PointFigures) {
	for i := range h.Picks {
		left, down := calc.Plan(h.StageLeft, h.Downstage, h.Pan, h.finished.picks[i].X)
		static := h.static(i)
		points = append(points, PointFigures{
			ID: h.pointID(i), StageLeft: left, Downstage: down,
			PickHeight: h.pickHeight(i), LowHook: h.lowHook(i),
			Carried: Carried{static, h.design(static)},
		})
	}
	return points
}

// pointID names a point: SL, or SL-front and SL-rear.
func (h *hung) pointID(i int) string {
	if len(h.Picks) == 1 {
		return h.ID
	}
	return h.ID + "-" + h.end(i)
}

func (h *hung) liftFigures() []LiftFigures {
	lifts := []LiftFigures{}
	for k, s := range h.lifts {
		f := LiftFigures{Set: k + 1, Cabinets: s.flown, Mass: s.centre.Mass,
			Tilt: degrees(s.tilt), Aim: degrees(s.poses[0].Aim), Drop: s.drop()}
		for i := range s.loads {
			f.Hooks = append(f.Hooks, h.hook(s, i))
		}
		lifts = append(lifts, f)
	}
	return lifts
}
