package paperwork

import (
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
)

func otherFigures(j *job.Job) []OtherFigures {
	others := []OtherFigures{}
	for _, o := range j.OtherPoints {
		others = append(others, OtherFigures{ID: o.ID, What: o.What, StageLeft: o.StageLeft, Downstage: o.Downstage,
			Height: o.Height, Carried: rig.Carried{Static: o.Mass, Design: j.Practice.Design(o.Mass)}})
	}
	return others
}
