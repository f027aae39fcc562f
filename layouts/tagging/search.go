package tagging

import (
	"cmp"
	"math"
	"slices"

	"hangpack/layouts/mm"
)

// A search places tags on a ground. It starts with every tag where it would
// stand best if it were alone, and moves one at a time; at first moves for the
// worse are let pass, then less and less so. Costs are whole tenths of a
// millimetre of leader and the moves come from a generator of its own, so that
// the same plan comes out the same.
type search struct {
	ground *Ground
	datum  mm.Spot // where centre line and datum line cut each other
	strict bool    // no tag on the wrong side of the centre line, no long leader
	tags   []Tag
	places [][]corner // of each tag: where it may stand, best first
	clash  [][]bool   // of each pair of tags: that they cannot be told apart
	row    []bool     // of the tag that is being tried
	counts []int      // of each tag: with how many others it clashes
	moves  uint64     // state of the generator
}

// Costs, in tenths of a millimetre of leader.
const (
	longest   = 550   // the most where placing is strict
	sideCost  = 800   // a tag on the wrong side of the centre line
	overCost  = 80    // a leader over an outline, or over a mark that has no tag here
	clashCost = 3000  // two tags that cannot be told apart, at first
	clashMost = 10000 // and in the end
	heat      = 3000  // what a move may cost at first
	picks     = 3     // tries to find a tag that clashes
	movesEach = 2000  // moves for each tag
	axisReach = 6     // mm; a leader that runs so near along an axis costs twice its length
)

// Place places tags on a settled ground, or reports false. datum is where the two
// lines cut each other that the figures in tags are measured from; strict allows no
// tag on the wrong side of the upright one, and no long leader.
func Place(g *Ground, datum mm.Spot, strict bool, tags []Tag) ([]Tag, bool) {
	need := 0.0
	for _, t := range tags {
		b := t.At.Grown(tagAir / 2)
		need += b.W * b.H
	}
	p := search{ground: g, datum: datum, strict: strict, tags: tags}
	if free := g.room.W*g.room.H - float64(g.count(g.room)); need > free*0.5 || !p.solve() {
		return nil, false
	}
	return p.tags, true
}

// solve places all tags, or reports false.
func (p *search) solve() bool {
	for i := range p.tags {
		places := p.placesOf(&p.tags[i])
		if len(places) == 0 {
			return false
		}
		p.places = append(p.places, places)
		p.tags[i].stand(places[0])
	}
	p.compare()
	steps := movesEach * len(p.tags)
	for left := steps; left > 0; left-- {
		clash := clashMost - (clashMost-clashCost)*left/steps
		p.move(p.pick(), clash, heat*left/steps*left/steps)
	}
	return !slices.ContainsFunc(p.counts, func(n int) bool { return n > 0 })
}

// compare finds out which tags clash where all stand at first.
func (p *search) compare() {
	n := len(p.tags)
	p.clash, p.counts, p.row = make([][]bool, n), make([]int, n), make([]bool, n)
	for i := range p.tags {
		p.counts[i] = p.against(i, &p.tags[i])
		p.clash[i] = slices.Clone(p.row)
	}
}

// move tries a tag at another place, the better ones more often, and leaves it
// there if that costs no more than may be lost.
func (p *search) move(i, clash, lose int) {
	there := p.tags[i]
	there.stand(p.places[i][p.below(1+p.below(len(p.places[i])))])
	more := there.cost - p.tags[i].cost
	if more > lose+clash*len(p.tags) {
		return
	}
	if n := p.against(i, &there); more+clash*(n-p.counts[i]) <= lose {
		p.tags[i], p.counts[i] = there, n
		p.note(i)
	}
}

// note keeps with which others the tag that was tried clashes now, for it and for
// them.
func (p *search) note(i int) {
	for k, now := range p.row {
		switch was := p.clash[k][i]; {
		case now && !was:
			p.counts[k]++
		case was && !now:
			p.counts[k]--
		}
		p.clash[k][i] = now
	}
	copy(p.clash[i], p.row)
}

// pick chooses the next tag to move: one that clashes, if one is soon found.
func (p *search) pick() (i int) {
	for range picks {
		if i = p.below(len(p.tags)); p.counts[i] > 0 {
			break
		}
	}
	return i
}

// against tells with which other tags the i-th clashes where it would stand (row),
// and with how many.
func (p *search) against(i int, t *Tag) (n int) {
	for k := range p.tags {
		p.row[k] = k != i && !t.clearOf(&p.tags[k])
		if p.row[k] {
			n++
		}
	}
	return n
}

// below returns the next number of the generator, from 0 to n-1 (a linear
// congruential generator; D. E. Knuth's MMIX constants).
func (p *search) below(n int) int {
	p.moves = p.moves*6364136223846793005 + 1442695040888963407
	return int(p.moves >> 33 * uint64(n) >> 31)
}

// placesOf lists where a tag may stand, best first, on a grid so that tags of
// a sheet line up.
func (p *search) placesOf(t *Tag) (places []corner) {
	const across, down, edge = 4.0, 2.0, 0.4
	r, dots := p.ground.room, p.minded(t)
	for y := r.Y + edge; y+t.At.H < r.Bottom(); y += down {
		for x := r.X + edge; x+t.At.W < r.Right(); x += across {
			if p.ground.count(mm.BoxAt(x, y, t.At.W, t.At.H)) > 0 {
				continue
			}
			t.stand(corner{mm.At(x, y), 0})
			cost := p.cost(t)
			if !math.IsInf(cost, 1) {
				cost += p.over(t, dots)
			}
			if !math.IsInf(cost, 1) {
				places = append(places, corner{mm.At(x, y), int(math.Round(cost))})
			}
		}
	}
	slices.SortStableFunc(places, func(a, b corner) int { return cmp.Compare(a.cost, b.cost) })
	return places
}

// cost tells how good a tag's place is: short leaders are, upright or level
// ones that do not run along an axis, and tags on their point's side of the
// centre line. It is infinite where strictness forbids the place.
func (p *search) cost(t *Tag) float64 {
	from, to := t.Leader.A, t.To.Spot
	dx, dy := math.Abs(from.X-to.X), math.Abs(from.Y-to.Y)
	cost := 10 * (math.Hypot(dx, dy) + 0.3*min(dx, dy))
	nearX := max(math.Abs(from.X-p.datum.X), math.Abs(to.X-p.datum.X))
	nearY := max(math.Abs(from.Y-p.datum.Y), math.Abs(to.Y-p.datum.Y))
	if min(nearX, nearY) < axisReach {
		cost *= 2
	}
	side := to.X - p.datum.X
	wrong := math.Abs(side) > 1 && side*(t.At.X+t.At.W/2-p.datum.X) < 0
	switch {
	case p.strict && (wrong || cost > longest):
		return math.Inf(1)
	case wrong:
		cost += sideCost
	}
	return cost
}

// minded lists the marks that the leader of a tag keeps clear of: all but
// those that touch its own.
func (p *search) minded(t *Tag) (dots []Dot) {
	for _, d := range p.ground.dots {
		if mm.Distance(d.Spot, t.To.Spot) > t.To.R+d.R+0.1 {
			dots = append(dots, d)
		}
	}
	return dots
}

// over returns what it costs that the leader of a tag runs over other marks,
// outlines or words: pale marks and outlines something, all else too much.
func (p *search) over(t *Tag, dots []Dot) (cost float64) {
	for _, d := range dots {
		switch {
		case t.Leader.From(d.Spot) >= d.R+lineAir/2:
		case d.Pale:
			cost += overCost
		default:
			return math.Inf(1)
		}
	}
	for _, o := range p.ground.outlines {
		if !o.Grown(1).Holds(t.To.Spot) && t.Leader.Hits(o) {
			cost += overCost
		}
	}
	for _, w := range p.ground.words {
		if t.Leader.Hits(w.Grown(lineAir / 2)) {
			return math.Inf(1)
		}
	}
	return cost
}
