package paperwork

import (
	"fmt"

	"hangpack/layouts"
)

// sheet is the sheet of changes, for the crew that has set its pins already and
// for the venue.
func (c Changes) sheet() (layouts.Changes, error) {
	paper, err := c.paperWords()
	s := layouts.Changes{
		Says:     fmt.Sprintf("REV %s %s, now REV %s %s", c.old.job.Revision, c.Old, c.new.job.Revision, c.New),
		Warnings: c.warnings(), Job: c.jobWords(), Venue: c.venueWords(), Paper: paper, Closing: c.closing() + ".",
	}
	for _, id := range c.changedStacks() {
		s.Stacks = append(s.Stacks, c.stackBlock(c.new.stack(id)))
	}
	u := c.new.unit()
	for _, p := range c.Points {
		moved := "where it was"
		if p.Moved {
			moved = "MOVED: see POINTS"
		}
		if most := u.mostWords(p); most != "" {
			moved += "; " + most
		}
		s.Points = append(s.Points, []string{p.ID, u.load(p.FromStatic), u.load(p.ToStatic), u.load(p.From), u.load(p.To), u.differenceOf(p.From, p.To), moved})
	}
	return s, err
}

// stackBlock is what changes of one stack.
func (c Changes) stackBlock(h *hung) layouts.ChangedStack {
	s := layouts.ChangedStack{ID: h.ID, Name: h.Name, Shape: string(h.Shape), Says: c.stackWords(h)}
	was := c.old.stack(h.ID)
	for _, j := range c.Joints {
		if j.Stack != h.ID {
			continue
		}
		k, above := j.Cabinet-1, fmt.Sprint(j.Cabinet-1)
		if k == 0 {
			above = "bar"
		}
		s.Joints = append(s.Joints, layouts.ChangedJoint{
			Above: above, Below: fmt.Sprint(j.Cabinet), Type: h.Cabinets[k].Name, Pins: h.Cabinets[k].LinkPins,
			From: hole(was.Cabinets[k].Hole), To: hole(h.Cabinets[k].Hole), Dolly: h.setName(h.setOf(j.Cabinet) - 1),
		})
	}
	return s
}
