package worked

import (
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// A Sum is what some points carry together, in kg.
type Sum struct {
	Of    string // 'SL', 'SR, HELD', 'other points', 'all'
	Count string // '2 points, 2 hoists'
	rig.Carried
}

// Sums are of every stack in the order of the job, of the other points where there are
// any, and of all.
func Sums(j *Job) (sums []Sum) {
	points, hoists := 0, 0
	for i, h := range j.Stacks {
		n := len(h.Picks)
		sums = append(sums, Sum{h.ID + say.After(", ", HeldMark(h)), pointsAndHoists(n, n), j.Figures.Stacks[i].PointsTotal()})
		points, hoists = points+n, hoists+n
	}
	if n := len(j.Figures.Others); n > 0 {
		sums, points = append(sums, Sum{"other points", say.Count(n, "point"), j.Figures.OthersTotal()}), points+n
	}
	return append(sums, Sum{"all" + say.After(", ", j.IncludesHeld()), pointsAndHoists(points, hoists), j.Figures.Total})
}

func pointsAndHoists(points, hoists int) string {
	return say.Count(points, "point") + ", " + say.Count(hoists, "hoist")
}
