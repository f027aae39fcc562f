package layouts

import "hangpack/layouts/mm"

// Cautions is the sheet of what this job's crew must know: first what was found
// in this job, then who answers for what, then what holds for every such lift,
// in the order of the work, and what to look at before use.
type Cautions struct {
	Hoist   string // what 'hoist' means on this sheet
	Stacks  []StackCautions
	Roles   []Role
	Anyone  Anyone
	General []CautionGroup
	Checks  CheckList
	Rules   []string // in the running face
	Sources string   // what the sources are
}

// StackCautions are the cautions of one stack, or of several that share them.
type StackCautions struct {
	Of    []StackMark
	Items []Caution
}

// A StackMark is what tells a stack from the others.
type StackMark struct{ ID, Name, Shape string }

// A Caution is a sentence with where it applies.
type Caution struct{ Where, Says string }

func (v Cautions) pages(c *canvas) []page {
	var pieces []piece
	for _, s := range v.Stacks {
		pieces = append(pieces, stackMarks(c, s.Of)...)
		for _, item := range s.Items {
			pieces = append(pieces, remarkRow(c, item))
		}
	}
	pieces = append(pieces, rolesPieces(c, v.Roles, v.Anyone)...)
	for _, g := range v.General {
		pieces = append(pieces, cautionGroup(c, g)...)
	}
	head := revHead("CAUTIONS", v.Hoist)
	pieces = append(pieces, lookAt(c, v, pieces, head(nil, c.body(), "").H)...)
	return Flow(c, "cautions", "CAUTIONS", "", head, pieces)
}

// lookAt is what to look at before use and what stands under it. Where it has a
// page to itself it is larger.
func lookAt(c *canvas, v Cautions, before []piece, height float64) []piece {
	var end []piece
	for _, r := range v.Rules {
		end = append(end, Words(c, text, r, 1.2))
	}
	end = append(end, Words(c, small, v.Sources, 0))
	list := append(checkList(c, v.Checks, running), end...)
	large := append(checkList(c, v.Checks, larger), end...)
	alone := len(cut(append(before[:len(before):len(before)], list...), height)) > len(cut(before, height))
	if alone && heightOf(large) <= height {
		return large
	}
	return list
}

// stackMarks are the stacks that share some cautions, a line or more each. A
// few stay together; of many the last stays with the first caution.
func stackMarks(c *canvas, of []StackMark) (pieces []piece) {
	const few = 8
	for i, s := range of {
		p := stackMark(c, s)
		if last := i == len(of)-1; !last {
			p.h, p.keep = p.h-2.6, len(of) <= few
		}
		pieces = append(pieces, p)
	}
	return pieces
}

func stackMark(c *canvas, s StackMark) piece {
	x := 11 + c.width(section, s.ID)
	name := c.wrap(text, c.body().W-x, s.Name)
	return piece{h: 9.6 + float64(max(len(name), 1)-1)*text.lead(), draw: func(c *canvas, room mm.Box) {
		SideMark(c, s.Shape, mm.BoxAt(room.X, room.Y+1.6, 5, 5))
		c.text(room.X+7, room.Y+6, section, s.ID)
		c.lines(room.X+x, room.Y+6, text, name)
	}, keep: true}
}

func remarkRow(c *canvas, item Caution) piece {
	const at = 46.0
	where, says := c.wrap(small, at-4, item.Where), c.wrap(reading, c.body().W-at, item.Says)
	h := max(float64(len(where))*small.lead(), float64(len(says))*reading.lead()) + 2.4
	return piece{h: h, draw: func(c *canvas, room mm.Box) {
		c.lines(room.X, room.Y+4.6, small, where)
		c.lines(room.X+at, room.Y+4.6, reading, says)
		c.line(room.X, room.Bottom(), room.Right(), room.Bottom(), light)
	}}
}
