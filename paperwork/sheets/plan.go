package sheets

import (
	"cmp"
	"math"
	"slices"

	"hangpack/calc"
	"hangpack/layouts/drawings"
	"hangpack/layouts/plan"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/worked"
)

// A chalk is a point as it is marked on the floor.
type chalk struct {
	id         string
	left, down float64
}

// planSheet is all points from above, with what a tape should read between them.
func planSheet(j *worked.Job) plan.Sheet {
	u := j.Unit()
	p := plan.Sheet{Ruler: drawings.Ruler{Imperial: u.Imperial}, Datum: datumOf(j), Checks: tapeChecksOf(j), Rounding: u.TapeRounding()}
	for _, h := range j.Stacks {
		p.Stacks = append(p.Stacks, footprintOf(h))
		for _, f := range h.Points {
			p.Points = append(p.Points, plan.Point{ID: f.ID, At: drawings.Place{X: f.StageLeft, Z: f.Downstage},
				Across: u.Across(f.StageLeft), UpDown: u.UpDown(f.Downstage), Held: h.Held()})
		}
	}
	for _, o := range j.Figures.Others {
		p.Points = append(p.Points, plan.Point{ID: o.ID, At: drawings.Place{X: o.StageLeft, Z: o.Downstage},
			Across: u.Across(o.StageLeft), UpDown: u.UpDown(o.Downstage), Other: true})
	}
	return p
}

// footprintOf is a stack from above as it hangs: from its rearmost corner to its
// foremost, as wide as its widest cabinet, at its pan.
func footprintOf(h *rules.Checked) plan.Stack {
	rear, front, half := math.Inf(1), math.Inf(-1), 0.0
	for k, corners := range h.Finished.Corners {
		for _, c := range corners {
			rear, front = math.Min(rear, c.X), math.Max(front, c.X)
		}
		half = math.Max(half, h.Cabinets[k].Width/2)
	}
	at := func(x, beside float64) drawings.Place {
		left, down := h.Plan(x)
		left, down = calc.Plan(left, down, h.Pan+math.Pi/2, beside)
		return drawings.Place{X: left, Z: down}
	}
	return plan.Stack{Held: h.Held(), Front: [2]drawings.Place{at(front, half), at(front, -half)},
		Corners: [4]drawings.Place{at(front, half), at(front, -half), at(rear, -half), at(rear, half)}}
}

// tapeChecksOf are what a tape should read along the floor: from front to rear of
// each stack, from each stack to the next one across, both ways and diagonally,
// and from the datum to every point.
func tapeChecksOf(j *worked.Job) (checks []plan.TapeCheck) {
	u := j.Unit()
	add := func(from, to chalk) {
		checks = append(checks, plan.TapeCheck{From: from.id, To: to.id, Is: u.Tape(calc.Tape(to.left-from.left, to.down-from.down))})
	}
	stacks := slices.Clone(j.Stacks)
	slices.SortStableFunc(stacks, func(a, b *rules.Checked) int { return cmp.Compare(b.StageLeft, a.StageLeft) })
	for i, h := range stacks {
		marks := chalksOf(h.Hung)
		if len(marks) == 2 {
			add(marks[0], marks[1])
		}
		if i+1 == len(stacks) {
			break
		}
		for _, from := range marks {
			for _, to := range chalksOf(stacks[i+1].Hung) {
				add(from, to)
			}
		}
	}
	for _, mark := range allChalks(j) {
		add(chalk{id: "datum"}, mark)
	}
	return checks
}

// chalksOf are the points of a stack, front first.
func chalksOf(h *rig.Hung) (marks []chalk) {
	for _, p := range h.Points {
		marks = append(marks, chalk{p.ID, p.StageLeft, p.Downstage})
	}
	return marks
}

// allChalks are the points of all stacks, then the others.
func allChalks(j *worked.Job) (marks []chalk) {
	for _, h := range j.Stacks {
		marks = append(marks, chalksOf(h.Hung)...)
	}
	for _, o := range j.Figures.Others {
		marks = append(marks, chalk{o.ID, o.StageLeft, o.Downstage})
	}
	return marks
}
