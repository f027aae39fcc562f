package worked

import (
	"hangpack/calc"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
)

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

func otherFigures(j *job.Job) []OtherFigures {
	others := []OtherFigures{}
	for _, o := range j.OtherPoints {
		others = append(others, OtherFigures{ID: o.ID, What: o.What, StageLeft: o.StageLeft, Downstage: o.Downstage,
			Height: o.Height, Carried: rig.Carried{Static: o.Mass, Design: j.Practice.Design(o.Mass)}})
	}
	return others
}
