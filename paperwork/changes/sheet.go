package changes

import (
	"fmt"

	"hangpack/layouts"
	"hangpack/layouts/paper"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
	"hangpack/paperwork/sheets"
)

// Paper sets the changes on paper. It draws both packs to tell which sheets change, and
// returns an error where one of them, or the sheet, does not fit.
func (c List) Paper() (paper.Drawn, error) {
	sheet, err := c.sheet()
	if err != nil {
		return paper.Drawn{}, err
	}
	pack, err := sheets.PackOf(c.new, []paper.Sheet{sheet})
	if err != nil {
		return paper.Drawn{}, err
	}
	pack.Changes = true
	return paper.DrawAll(pack)
}

// sheet is the sheet of changes, for the crew that has set its pins already and
// for the venue.
func (c List) sheet() (layouts.Changes, error) {
	words, err := c.paperWords()
	if err != nil {
		return layouts.Changes{}, err
	}
	s := layouts.Changes{
		Says: c.revisions(), Warnings: c.warnings(), Job: c.jobWords(), Venue: c.venueWords(), Paper: words, Closing: c.closing() + ".",
	}
	for _, id := range c.changedStacks() {
		s.Stacks = append(s.Stacks, c.stackBlock(c.new.Stack(id).Hung))
	}
	for _, p := range c.Points {
		s.Points = append(s.Points, changedPoint(c.new.Unit(), p))
	}
	return s, nil
}

// changedPoint is a point's row, cell by cell as layouts.Changes has them.
func changedPoint(u say.Units, p PointChange) []string {
	place := "where it was"
	if p.Moved {
		place = "MOVED: see POINTS"
	}
	return []string{p.ID, u.Load(p.FromStatic), u.Load(p.ToStatic), u.Load(p.From), u.Load(p.To), u.Difference(p.From, p.To), place + say.After("; ", mostWords(u, p))}
}

// stackBlock is what changes of one stack.
func (c List) stackBlock(h *rig.Hung) layouts.ChangedStack {
	s := layouts.ChangedStack{ID: h.ID, Name: h.Name, Shape: string(h.Shape), Says: c.stackWords(h)}
	was := c.old.Stack(h.ID)
	for _, j := range c.jointsOf(h.ID) {
		k := j.Cabinet - 1
		s.Joints = append(s.Joints, layouts.ChangedJoint{
			Above: sheets.Above(j.Cabinet), Below: fmt.Sprint(j.Cabinet), Type: h.Cabinets[k].Name, Pins: h.Cabinets[k].LinkPins,
			From: sheets.JointHole(was.Cabinets[k].Hole), To: sheets.JointHole(h.Cabinets[k].Hole), Dolly: sheets.SetName(h, h.Sets.Of(j.Cabinet)),
		})
	}
	return s
}
