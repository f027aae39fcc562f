package paperwork

import (
	"fmt"

	"hangpack/layouts/paper"
)

// Laws of ink that hold on every page of every pack, whatever the job.

// inkSlack is what rounding may do, and a pen that is a hair off, in mm.
const inkSlack = 0.05

// inkFaults are what is wrong with the ink of a paper, page by page.
func inkFaults(pdf paper.Drawn, letter bool) (faults []string) {
	pages, blocks := map[int][]paper.Mark{}, map[int][]paper.Block{}
	for _, m := range pdf.Marks {
		pages[m.Page] = append(pages[m.Page], m)
	}
	for _, b := range pdf.Blocks {
		blocks[b.Page] = append(blocks[b.Page], b)
	}
	for page, marks := range pages {
		p := &inkPage{marks: marks, blocks: blocks[page], w: 210, h: 297}
		if letter {
			p.w, p.h = 215.9, 279.4
		}
		p.look()
		for _, f := range p.faults {
			faults = append(faults, fmt.Sprintf("page %d: %s", page, f))
		}
	}
	return faults
}

// An inkPage is the ink of one page in the order it was drawn, and what is wrong
// with it.
type inkPage struct {
	w, h   float64
	marks  []paper.Mark
	blocks []paper.Block
	faults []string
}

func (p *inkPage) fault(format string, args ...any) {
	p.faults = append(p.faults, fmt.Sprintf(format, args...))
}

func (p *inkPage) look() {
	p.blocksApart()
	var texts []printed
	for i, m := range p.marks {
		p.inItsBlock(m)
		if m.Kind == "text" {
			texts = append(texts, printed{i, m, inkOf(m)})
		}
	}
	for n, t := range texts {
		p.toBeRead(t)
		p.onItsGround(t)
		p.notCrossed(t)
		for _, o := range texts[:n] {
			p.textsApart(o, t)
		}
	}
	p.boxesApart()
}

// blocksApart: every block lies within the page's margins, or in the one that it
// stands in, and no two that stand side by side share paper. Only the boxes of who
// answers for what stand inside another block.
func (p *inkPage) blocksApart() {
	const margin = 10.0
	for i, b := range p.blocks {
		at := area{b.X0, b.Y0, b.X1, b.Y1}
		room := area{margin, margin, p.w - margin, p.h - margin}
		if b.Within >= 0 {
			o := p.blocks[b.Within]
			room = area{o.X0, o.Y0, o.X1, o.Y1}
			if b.Name != "role" {
				p.fault("block %s stands in %s", b.Name, o.Name)
			}
		}
		if !at.within(room.grown(inkSlack)) {
			p.fault("block %s %v leaves its room %v", b.Name, at, room)
		}
		for _, o := range p.blocks[:i] {
			if b.Within == o.Within && at.grown(-inkSlack).meets(area{o.X0, o.Y0, o.X1, o.Y1}) {
				p.fault("blocks %s and %s overlap", o.Name, b.Name)
			}
		}
	}
}

// inItsBlock: ink lies in the room of its block, half the width of its pen apart.
func (p *inkPage) inItsBlock(m paper.Mark) {
	ink, b := area{m.X0, m.Y0, m.X1, m.Y1}, p.blocks[m.In]
	if m.Kind == "text" {
		ink = inBounds(m)
	}
	if !ink.within(area{b.X0, b.Y0, b.X1, b.Y1}.grown(m.Pen/2 + inkSlack)) {
		p.fault("%s %q %v leaves its block %s %v", m.Kind, m.Text, ink, b.Name, area{b.X0, b.Y0, b.X1, b.Y1})
	}
}

// inBounds is where a text is for its block: its ink down the page, and across it
// the way of its pen, which the foot of a j or the head of an f may leave by a hair.
func inBounds(m paper.Mark) area {
	ink := inkOf(m)
	if _, _, turned := baseline(m); turned {
		return area{ink.x0, m.Y0, ink.x1, m.Y1}
	}
	return area{m.X0, ink.y0, m.X1, ink.y1}
}

// toBeRead: no text is under 8.5 pt, and none is nearer to the edge of the paper
// than a printer may print.
func (p *inkPage) toBeRead(t printed) {
	const least, edge = 8.5, 8.0
	if t.Pt < least {
		p.fault("%v is %g pt", t, t.Pt)
	}
	if !t.ink.within(area{edge, edge, p.w - edge, p.h - edge}) {
		p.fault("%v is at the edge of the paper", t)
	}
}

// boxesApart: boxes for a pen do not overlap.
func (p *inkPage) boxesApart() {
	var boxes []area
	for _, m := range p.marks {
		at := area{m.X0, m.Y0, m.X1, m.Y1}
		if side := at.x1 - at.x0; m.Kind != "rect" || m.Fill != 255 || side < 5 || side > 8 || at.y1-at.y0 != side {
			continue
		}
		for _, o := range boxes {
			if at.grown(-inkSlack).meets(o) {
				p.fault("boxes %v and %v overlap", o, at)
			}
		}
		boxes = append(boxes, at)
	}
}
