package layouts

import (
	"hangpack/layouts/mm"
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
)

// Cautions is the sheet of what this job's crew must know: first what was found
// in this job, then who answers for what, then what holds for every such lift,
// in the order of the work, and what to look at before use.
type Cautions struct {
	Hoist   string // what 'hoist' means on this sheet
	Stacks  []StackCautions
	Roles   []Role
	Anyone  Advice // who may stop the lift
	General []CautionGroup
	Checks  CheckList
	Rules   []string // in the running face
	Sources string   // what the sources are
}

// StackCautions are the cautions of one stack, or of several that share them.
type StackCautions struct {
	Of    []StackMark
	Items []parts.Remark
}

// A StackMark is what tells a stack from the others.
type StackMark struct{ ID, Name, Shape string }

// A Role is who answers for something, with room for a pen.
type Role struct{ Is, Does string }

// An Advice says what to do, in a few words that stand out, then more of it, and where
// that comes from.
type Advice struct {
	Do, Says, From string
	Picture        parts.Picture // "" for none
}

// A CautionGroup is what holds for every lift of its kind while one part of the
// work lasts.
type CautionGroup struct {
	Head  string // 'while it moves'
	Items []Advice
}

// A CheckList is what to look at before use, with boxes to tick.
type CheckList struct {
	Head   string
	When   Inspection // when to look, and what to do with what is out of use
	Items  []Inspection
	Signed []string // words before the lines for a pen
}

// An Inspection is a thing, what puts it out of use, and where that comes from.
type Inspection struct{ Thing, Out, From string }

// Name is what the sheet is called.
func (Cautions) Name() string { return "CAUTIONS" }

// Pages cuts the sheet.
func (v Cautions) Pages(c *paper.Canvas) []paper.Page {
	var pieces []paper.Piece
	for _, s := range v.Stacks {
		pieces = append(pieces, stackMarks(c, s.Of)...)
		for _, item := range s.Items {
			pieces = append(pieces, item.Row(c))
		}
	}
	pieces = append(pieces, rolesPieces(c, v.Roles, v.Anyone)...)
	for _, g := range v.General {
		pieces = append(pieces, cautionGroup(c, g)...)
	}
	head := parts.PlainHead("CAUTIONS", v.Hoist)
	pieces = append(pieces, lookAt(c, v, pieces, head(nil, c.Body(), "").H)...)
	return paper.Flow(c, "", head, pieces)
}

// lookAt is what to look at before use and what stands under it. Where it has a
// page to itself it is larger.
func lookAt(c *paper.Canvas, v Cautions, before []paper.Piece, height float64) []paper.Piece {
	var end []paper.Piece
	for _, r := range v.Rules {
		end = append(end, paper.Words(c, paper.Text, r, 1.2))
	}
	end = append(end, paper.Words(c, paper.Small, v.Sources, 0))
	list := append(checkList(c, v.Checks, paper.Running), end...)
	large := append(checkList(c, v.Checks, paper.Larger), end...)
	alone := len(paper.IntoPages(append(before[:len(before):len(before)], list...), height)) > len(paper.IntoPages(before, height))
	if alone && paper.HeightOf(large) <= height {
		return large
	}
	return list
}

// stackMarks are the stacks that share some cautions, a line or more each. A
// few stay together; of many the last stays with the first caution.
func stackMarks(c *paper.Canvas, of []StackMark) (pieces []paper.Piece) {
	const few = 8
	for i, s := range of {
		p := stackMark(c, s)
		if last := i == len(of)-1; !last {
			p.H, p.Keep = p.H-2.6, len(of) <= few
		}
		pieces = append(pieces, p)
	}
	return pieces
}

// stackMark is a stack's mark, id and name.
func stackMark(c *paper.Canvas, s StackMark) paper.Piece {
	x := 11 + c.Width(paper.Section, s.ID)
	name := c.Wrap(paper.Text, c.Body().W-x, s.Name)
	return paper.Piece{H: 9.6 + float64(max(len(name), 1)-1)*paper.Text.Lead(), Draw: func(c *paper.Canvas, room mm.Box) {
		paper.SideMark(c, s.Shape, mm.BoxAt(room.X, room.Y+1.6, 5, 5))
		c.Text(room.X+7, room.Y+6, paper.Section, s.ID)
		c.Lines(room.X+x, room.Y+6, paper.Text, name)
	}, Keep: true}
}
