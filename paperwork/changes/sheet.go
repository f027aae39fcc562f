package changes

import (
	"fmt"
	"slices"

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
	blocks, err := c.blocks()
	if err != nil {
		return layouts.Changes{}, err
	}
	s := layouts.Changes{Says: c.revisions(), Warnings: c.warnings(), Venue: c.venueWords(), Closing: c.closing() + ".", Keep: keepWords}
	for _, b := range blocks {
		s.Stacks = append(s.Stacks, b.onPaper(c.new.Unit()))
	}
	return s, nil
}

// onPaper is a block as layouts has it.
func (b block) onPaper(u say.Units) layouts.ChangedStack {
	s := layouts.ChangedStack{ID: b.id, Name: b.name, Shape: string(b.shape), Orders: b.orders, Says: b.says}
	for _, j := range b.joints {
		s.Joints = append(s.Joints, j.onPaper(b.hung))
	}
	for _, p := range b.points {
		s.Points = append(s.Points, changedPoint(u, p))
	}
	s.Sheets = b.changedSheets()
	return s
}

// changedSheets are the sheets of a fate with the marks that go and those that come.
func (f fate) changedSheets() (all []layouts.ChangedSheet) {
	for _, s := range f.comes {
		all = append(all, layouts.ChangedSheet{Name: s.Name, In: s.Mark})
	}
	for _, s := range f.goes {
		i := slices.IndexFunc(all, func(c layouts.ChangedSheet) bool { return c.Name == s.Name })
		if i < 0 {
			all, i = append(all, layouts.ChangedSheet{Name: s.Name}), len(all)
		}
		all[i].Out = s.Mark
	}
	for _, s := range f.stays {
		all = append(all, layouts.ChangedSheet{Name: s.Name, Out: s.Mark, In: s.Mark})
	}
	return all
}

// onPaper is a joint of a stack of the new revision.
func (j JointChange) onPaper(h *rig.Hung) layouts.ChangedJoint {
	at := h.Cabinets[j.Cabinet-1]
	from, to := j.holes()
	why := j.whyWords()
	if why == otherHole {
		why = "" // which the two tabs show
	}
	return layouts.ChangedJoint{
		Above: sheets.Above(j.Cabinet), Below: fmt.Sprint(j.Cabinet), Type: fmt.Sprintf("joint %d, %s", j.Cabinet, at.Name), Why: say.After("why: ", why), OutIn: j.pinWords(), Pins: at.LinkPins,
		From: sheets.JointHole(from), To: sheets.JointHole(to), Dolly: sheets.SetName(h, h.Sets.Of(j.Cabinet)),
	}
}

// changedPoint is a point's row, cell by cell as layouts.Changes has them.
func changedPoint(u say.Units, p PointChange) []string {
	return []string{p.ID, u.Load(p.FromStatic), u.Load(p.ToStatic), u.Load(p.From), u.Load(p.To), u.Difference(p.From, p.To), p.placeWords(u) + say.After("; ", mostWords(u, p))}
}
