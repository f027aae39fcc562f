package worked

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

// FiguresOf gathers the figures of a job from its stacks as worked out.
func FiguresOf(j *job.Job, stacks []*rules.Checked) Figures {
	f := Figures{Job: JobFigures{j.Title, j.Venue, j.Date, j.Revision, j.Fingerprint}, Others: otherFigures(j)}
	for _, h := range stacks {
		s := stackFigures(h)
		f.Stacks = append(f.Stacks, s)
		f.Total = f.Total.Plus(s.PointsTotal())
	}
	for _, o := range f.Others {
		f.Total = f.Total.Plus(o.Carried)
	}
	return f
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

func stackFigures(h *rules.Checked) StackFigures {
	s := h.Finished
	return StackFigures{
		ID: h.ID, Name: h.Name,
		Held: h.Held(), Holds: list(h.Holds), Cautions: list(h.Cautions),
		Mass:      s.Centre.Mass,
		AimWanted: say.Degrees(h.Aim), Aim: say.Degrees(s.Poses[0].Aim), Tilt: say.Degrees(s.Tilt),
		LastAim:         say.Degrees(s.Poses[len(s.Poses)-1].Aim),
		CentreOfGravity: Centre{h.Centre.At.Behind, h.Centre.At.Below},
		Picks:           pickFigures(h.Hung), Options: optionFigures(h.Hung),
		Lowest:   h.Raise + s.Lowest(),
		Cabinets: cabinetFigures(h.Hung), Points: h.Points, Lifts: liftFigures(h.Hung),
		HookFigures: hookFigures(h.Hung, len(h.Lifts)), Alone: aloneFigures(h.Hung),
	}
}

// list is findings, never null.
func list(f []rules.Finding) []rules.Finding { return append([]rules.Finding{}, f...) }

func pickFigures(h *rig.Hung) (picks []PickFigures) {
	for i, hole := range h.Holes {
		kg := h.Finished.Loads[i]
		picks = append(picks, PickFigures{h.Label(hole), kg, kg / h.Finished.Centre.Mass})
	}
	return picks
}

func optionFigures(h *rig.Hung) []OptionFigures {
	options := []OptionFigures{}
	for i, o := range h.Options {
		options = append(options, OptionFigures{h.Label(i), say.Degrees(o.Aim)})
	}
	return options
}

func cabinetFigures(h *rig.Hung) (cabinets []CabinetFigures) {
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

// HookFigures are what hangs from each hook in kg, front first, the rigging below
// included: as worked out, and the least and the most over masses and, with two
// picks, tilts within their tolerance, no closer to it than practice.reading_floor.
type HookFigures struct {
	Hooks []float64 `json:"hook_kg"`
	Low   []float64 `json:"low_kg"`
	High  []float64 `json:"high_kg"`
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

func liftFigures(h *rig.Hung) []LiftFigures {
	lifts := []LiftFigures{}
	for k, s := range h.Lifts {
		f := LiftFigures{Set: k + 1, Cabinets: s.Flown, Mass: s.Centre.Mass, HookFigures: hookFigures(h, k),
			Tilt: say.Degrees(s.Tilt), Aim: say.Degrees(s.Poses[0].Aim), Drop: s.Drop(), SetSum: rig.SetSum(h, k), LastAim: say.Degrees(s.LastAim())}
		if h.Dolly != nil {
			clear := h.RollIn(k)
			f.PickClear = &clear
		}
		lifts = append(lifts, f)
	}
	return lifts
}

// hookFigures are of the stack after lift k, counted from 0.
func hookFigures(h *rig.Hung, k int) (f HookFigures) {
	for _, r := range h.Readings(k) {
		f.Hooks, f.Low, f.High = append(f.Hooks, r.Is), append(f.Low, r.Low), append(f.High, r.High)
	}
	return f
}

// aloneFigures are what each of two hooks holds with the other one slack, in kg.
func aloneFigures(h *rig.Hung) []float64 {
	alone := []float64{}
	for i := range h.Swung {
		alone = append(alone, h.AloneOnHook(i))
	}
	return alone
}
