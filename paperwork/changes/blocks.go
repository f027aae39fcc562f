package changes

import (
	"fmt"
	"slices"

	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
)

// A block is all that is said of one stack, or of the whole job.
type block struct {
	id     string // "" of the whole job
	name   string
	shape  job.Shape
	hung   *rig.Hung // in the new revision; nil where it is in it no more
	orders []string  // which cabinets take the place of others
	joints []JointChange
	says   []string
	points []PointChange
	fate
}

// blocks are those of all stacks, in the order of the new revision and then of the old
// one, and at the end that of the whole job.
func (c List) blocks() ([]block, error) {
	all, err := c.papers()
	if err != nil {
		return nil, err
	}
	var blocks []block
	for _, h := range c.new.Stacks {
		blocks = append(blocks, c.stackBlock(h, *all.of(h.ID)))
	}
	for _, h := range c.old.Stacks {
		if slices.Contains(c.Gone, h.ID) {
			blocks = append(blocks, block{id: h.ID, name: h.Name, shape: h.Shape, says: []string{"This stack is gone."}, fate: *all.of(h.ID)})
		}
	}
	return append(blocks, block{name: "The whole job", says: c.jobWords(), points: c.pointsOf(""), fate: *all.of("")}), nil
}

// stackBlock is all that is said of a stack of the new revision.
func (c List) stackBlock(h *rules.Checked, f fate) block {
	b := block{id: h.ID, name: h.Name, shape: h.Shape, hung: h.Hung, points: c.pointsOf(h.ID), fate: f}
	for _, j := range c.Joints {
		if j.Stack == h.ID {
			b.joints = append(b.joints, j)
		}
	}
	b.orders = c.orders(h.Hung)
	b.says = append(c.stackWords(h.Hung), c.findingWords(h.ID)...)
	return b
}

// pointsOf are the points of a stack whose load or place has changed, or where stack is
// "" those that carry none.
func (c List) pointsOf(stack string) (all []PointChange) {
	for _, p := range c.Points {
		if p.stack == stack {
			all = append(all, p)
		}
	}
	return all
}

// sheetWords say what has to be done with the sheets of a block, and with which.
func (b block) sheetWords() (all [][2]string) {
	add := func(what, which string) {
		if which != "" {
			all = append(all, [2]string{what, which})
		}
	}
	add("throw away", markWords(b.goes))
	add("put up", markWords(b.comes))
	add("keep", markWords(b.stays))
	return all
}

// whyWords say why a joint is set anew.
func (j JointChange) whyWords() string {
	words := map[string]string{otherHole: "hole", otherAbove: "other cabinet above", otherBelow: "other cabinet"}
	if j.Cabinet == 1 {
		words[otherAbove] = "other bar"
	}
	var all []string
	for _, why := range j.Why {
		all = append(all, words[why])
	}
	return say.Listed(all...)
}

// pinWords say how many link pins come out and go in, where that is not the same.
func (j JointChange) pinWords() string {
	if j.out == j.in {
		return ""
	}
	return fmt.Sprintf("link pins: %d out, %d in", j.out, j.in)
}

// holes are the hole that the link of a joint was in and the one it goes to.
func (j JointChange) holes() (from, to job.Hole) {
	return job.Hole{Label: j.FromLabel, Splay: j.From}, job.Hole{Label: j.ToLabel, Splay: j.To}
}

// pointWords are a point's changes in one sentence.
func pointWords(u say.Units, p PointChange) string {
	loads := "finished, loads as they were"
	if p.FromStatic != p.ToStatic || p.From != p.To {
		loads = fmt.Sprintf("static %s, now %s; design %s, now %s: %s", u.Load(p.FromStatic), u.Load(p.ToStatic), u.Load(p.From), u.Load(p.To), u.Difference(p.From, p.To))
	}
	return fmt.Sprintf("point %s: %s; %s%s", p.ID, loads, p.placeWords(u), say.After("; ", mostWords(u, p)))
}
