package worked

import (
	"math"

	"hangpack/calc"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
)

// FiguresOf gathers the figures of a job from its stacks as worked out, which stand in
// the order of the job.
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

// stackFigures are those of one stack, held or not.
func stackFigures(h *rules.Checked) StackFigures {
	s := h.Finished
	return StackFigures{
		ID: h.ID, Name: h.Name,
		Held: h.Held(), Holds: neverNull(h.Holds), Cautions: neverNull(h.Cautions),
		Mass:      s.Centre.Mass,
		AimWanted: calc.Degrees(h.Aim), Aim: calc.Degrees(s.Poses[0].Aim), Tilt: calc.Degrees(s.Tilt),
		LastAim:         calc.Degrees(s.LastAim()),
		CentreOfGravity: Centre{h.Centre.At.Behind, h.Centre.At.Below},
		Picks:           pickFigures(h.Hung), Options: optionFigures(h.Hung),
		Lowest:   h.Raise + s.Lowest(),
		Cabinets: cabinetFigures(h.Hung), Points: h.Points, Lifts: liftFigures(h),
		HookFigures: hookFigures(h, len(h.Lifts)), Alone: aloneFigures(h.Hung),
	}
}

// neverNull copies findings to a list that is written as [] where there are none.
func neverNull(f []rules.Finding) []rules.Finding { return append([]rules.Finding{}, f...) }

// pickFigures are of the picks, front first.
func pickFigures(h *rig.Hung) (picks []PickFigures) {
	for i, hole := range h.Holes {
		kg := h.Finished.Loads[i]
		picks = append(picks, PickFigures{h.Label(hole), kg, kg / h.Finished.Centre.Mass})
	}
	return picks
}

// optionFigures are of every hole of the bar with one pick, and empty with two.
func optionFigures(h *rig.Hung) []OptionFigures {
	options := []OptionFigures{}
	for i, o := range h.Options {
		options = append(options, OptionFigures{h.Label(i), calc.Degrees(o.Aim)})
	}
	return options
}

// cabinetFigures are of the finished stack, from the top.
func cabinetFigures(h *rig.Hung) (cabinets []CabinetFigures) {
	for k, c := range h.Cabinets {
		j := h.Finished.Joints[k]
		cabinets = append(cabinets, CabinetFigures{
			Number: k + 1, Type: c.Key, Set: h.Sets.Of(k+1) + 1,
			Splay: c.Hole.Splay, Aim: calc.Degrees(h.Finished.Poses[k].Aim),
			Lowest: h.Raise + calc.Lowest(h.Finished.Corners[k]),
			Hinge:  j.Hinge() / 1000, HingePull: j.HingePull / 1000, Link: j.Link / 1000,
		})
	}
	return cabinets
}

// liftFigures are of every lift but the last, after which the stack is finished.
func liftFigures(h *rules.Checked) []LiftFigures {
	lifts := []LiftFigures{}
	for k, s := range h.Lifts {
		f := LiftFigures{Set: k + 1, Cabinets: s.Flown, Mass: s.Centre.Mass, HookFigures: hookFigures(h, k),
			Tilt: calc.Degrees(s.Tilt), Aim: calc.Degrees(s.Poses[0].Aim), Drop: s.Drop(), SetSum: rig.SetSum(h.Hung, k), LastAim: calc.Degrees(s.LastAim())}
		if h.Dolly != nil {
			clear := h.RollIn(k)
			f.PickClear = &clear
		}
		lifts = append(lifts, f)
	}
	return lifts
}

// hookFigures are of the stack after lift k, counted from 0.
func hookFigures(h *rules.Checked, k int) (f HookFigures) {
	for i, r := range h.Readings(k) {
		f.Hooks, f.Low, f.High = append(f.Hooks, r.Is), append(f.Low, r.Low), append(f.High, r.High)
		if len(h.Picks) == 2 {
			f.Slack = append(f.Slack, math.Abs(h.ToSlack(h.Joined(k), i))*1000)
		}
	}
	if len(h.Picks) == 2 {
		sum := h.SumReading(k)
		f.SumLow, f.SumHigh = &sum.Low, &sum.High
	}
	return f
}

// aloneFigures are what each of two hooks holds with the other one slack, in kg.
func aloneFigures(h *rig.Hung) []float64 {
	alone := []float64{}
	for i := range h.Finished.Alone {
		alone = append(alone, h.AloneOnHook(i))
	}
	return alone
}

// otherFigures are of the points that carry no stack, as the job gives them.
func otherFigures(j *job.Job) []OtherFigures {
	others := []OtherFigures{}
	for _, o := range j.OtherPoints {
		others = append(others, OtherFigures{ID: o.ID, What: o.What, StageLeft: o.StageLeft, Downstage: o.Downstage,
			Height: o.Height, Carried: rig.Carried{Static: o.Mass, Design: j.Practice.Design(o.Mass)}})
	}
	return others
}
