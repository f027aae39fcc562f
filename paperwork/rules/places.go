package rules

import (
	"fmt"

	"hangpack/calc"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// pointsMeet: two points that are not of one stack are next to each other in plan. It is
// held against all points of a job once its stacks are checked: see CompareStacks.
var pointsMeet = Rule{ID: "points_meet", Title: "Points meet", Severity: Caution, Grave: Strikes}

// stacksOverlap: the outlines of two stacks cross in plan, as they hang finished. It is
// held against each two stacks of a job, as pointsMeet is.
var stacksOverlap = Rule{ID: "stacks_overlap", Title: "Stacks overlap", Severity: Caution, Grave: Strikes}

// pointsApart is how near two points may come in plan, in metres, before it is worth a
// caution. It is a limit of hangpack's own.
const pointsApart = 0.3

// CompareStacks holds the stacks of a job against each other: twins, points, outlines.
func CompareStacks(j *job.Job, stacks []*Checked) {
	compareTwins(stacks)
	for _, h := range stacks {
		comparePoints(h, stacks, otherPoints(j))
	}
	for _, h := range stacks {
		for _, other := range stacks {
			if h != other {
				compareOutlines(h, other)
			}
		}
	}
}

// A roofPoint is where something hangs from the roof in plan.
type roofPoint struct {
	id         string
	left, down float64
}

// comparePoints cautions a stack of each point that one of its own meets: of another
// stack, or of none.
func comparePoints(h *Checked, stacks []*Checked, others []roofPoint) {
	c := &check{h, &pointsMeet}
	for _, other := range stacks {
		if other != h {
			meets(c, pointsOf(other))
		}
	}
	meets(c, others)
}

// meets cautions a stack of those of some points that its own meet.
func meets(c *check, points []roofPoint) {
	for _, p := range pointsOf(c.Checked) {
		for _, q := range points {
			if words := meetWords(c.Job, p, q); words != "" {
				c.caution(rig.Where{}, "%s", words)
			}
		}
	}
}

// pointsOf are the points of a stack, front first.
func pointsOf(h *Checked) (all []roofPoint) {
	for _, p := range h.Points {
		all = append(all, roofPoint{p.ID, p.StageLeft, p.Downstage})
	}
	return all
}

// meetWords say that two points meet, and "" where they do not.
func meetWords(j *job.Job, p, q roofPoint) string {
	apart := calc.Tape(q.left-p.left, q.down-p.down)
	if apart > pointsApart+rig.Within {
		return ""
	}
	u := say.Units{Imperial: j.Imperial}
	return fmt.Sprintf("%s and %s are %s apart in plan, within %s: hoists and chains may touch, and the roof takes both loads at one place; move one, or ask the venue",
		p.id, q.id, u.Length(apart), u.Length(pointsApart))
}

// otherPoints are the points that carry no stack.
func otherPoints(j *job.Job) (all []roofPoint) {
	for _, o := range j.OtherPoints {
		all = append(all, roofPoint{o.ID, o.StageLeft, o.Downstage})
	}
	return all
}

// OthersMeet says which points that carry no stack meet one another: they are no stack's
// caution, so this is the venue's to know.
func OthersMeet(j *job.Job) (lines []string) {
	all := otherPoints(j)
	for i, p := range all {
		for _, q := range all[i+1:] {
			if words := meetWords(j, p, q); words != "" {
				lines = append(lines, words)
			}
		}
	}
	return lines
}

// compareOutlines cautions a stack that another one crosses in plan.
func compareOutlines(h, other *Checked) {
	a, b := h.Outline(), other.Outline()
	if rig.Whole(a).Overlap(rig.Whole(b)) <= rig.Within {
		return
	}
	most, at, against := rig.Within, "", ""
	for _, p := range a {
		for _, q := range b {
			if by := p.Overlap(q.Plot); by > most {
				most, at, against = by, p.Body, q.Body
			}
		}
	}
	if at != "" {
		(&check{h, &stacksOverlap}).caution(rig.Where{}, "%s of %s and %s of %s cross in plan by %s as they hang finished%s: one may foul the other as it rises, turns or swings; move one, or ask who placed them",
			at, h.ID, against, other.ID, h.Unit().Fine(most), aboveWords(h.Hung, other.Hung))
	}
}

// aboveWords say of two stacks that cross in plan by how much one hangs above the other,
// and "" where they share a height.
func aboveWords(h, other *rig.Hung) string {
	low, high := h.Heights()
	otherLow, otherHigh := other.Heights()
	switch u := h.Unit(); {
	case low > otherHigh+rig.Within:
		return fmt.Sprintf("; %s hangs %s above %s, whose chains go up past it", h.ID, u.Length(low-otherHigh), other.ID)
	case otherLow > high+rig.Within:
		return fmt.Sprintf("; %s hangs %s above %s, whose chains go up past it", other.ID, u.Length(otherLow-high), h.ID)
	}
	return ""
}
