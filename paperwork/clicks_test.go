package paperwork

import (
	"slices"
	"strings"

	"github.com/stretchr/testify/assert"

	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// within are the words of a page that begin in a click.
func (p *readPack) within(c click) (words []trials.Word) {
	const dust = 0.1
	low, high := min(c.Rect[1], c.Rect[3])-dust, max(c.Rect[1], c.Rect[3])+dust
	for _, w := range p.words[c.On-1] {
		if w.X >= c.Rect[0]-dust && w.X < c.Rect[2] && w.Y >= low && w.Y <= high {
			words = append(words, w)
		}
	}
	return words
}

// everyClick: a whole pack's cover has a click on every code, on every stack's row and on
// every name of its list.
func (p *readPack) everyClick(j *worked.Job) int {
	onCover := 0
	for _, c := range p.Clicks {
		if p.sheets[c.On-1] == "COVER" {
			onCover++
		}
	}
	assert.Equal(p, 2*len(j.Stacks)+len(p.first), onCover, "%s: clicks of the cover", p.of)
	return p.clicksLead()
}

// clicksLead: every click leads to the first page of a sheet; on the cover of the one
// that is named there, elsewhere of the one that it stands on.
func (p *readPack) clicksLead() int {
	for _, c := range p.Clicks {
		on, to := p.sheets[c.On-1], p.sheets[c.To-1]
		assert.Equal(p, p.first[to], c.To, "%s: a click on %s leads into the midst of %s", p.of, on, to)
		if on == "COVER" {
			on = p.namedBy(c)
		}
		assert.Equal(p, on, to, "%s: a click at %v of page %d", p.of, c.Rect, c.On)
	}
	return len(p.Clicks)
}

const pointsInMm = 72 / 25.4

// namedBy is the sheet that the cover names at a click: in a line of its list, under a
// code, or in the row of a stack, which is that of the code on its right.
func (p *readPack) namedBy(c click) string {
	wide, tall := c.Rect[2]-c.Rect[0], c.Rect[1]-c.Rect[3]
	switch {
	case tall < 7*pointsInMm:
		return p.listedAt(c)
	case wide-tall < 0.1 && tall-wide < 0.1:
		return p.underCode(c)
	}
	words := p.within(c)
	tallest := slices.MaxFunc(words, func(a, b trials.Word) int { return int(a.Pt*100 - b.Pt*100) })
	for _, code := range p.Clicks {
		if code.On == c.On && code.Rect[0] == c.Rect[2] && code.Rect[1] <= c.Rect[1] && code.Rect[3] >= c.Rect[3] {
			name := p.underCode(code)
			assert.Equal(p, tallest.S, strings.Fields(name)[0], "%s: the row of another stack", p.of)
			return name
		}
	}
	return "no code beside " + tallest.S
}

// underCode is the sheet whose name stands under a code.
func (p *readPack) underCode(c click) string {
	under := c
	under.Rect[0], under.Rect[2] = c.Rect[0]-40*pointsInMm, c.Rect[2]+1
	under.Rect[1], under.Rect[3] = c.Rect[3], c.Rect[3]-4*pointsInMm
	for _, w := range p.within(under) {
		if _, is := p.first[w.S]; is {
			return w.S
		}
	}
	return "no name under the code"
}

// listedAt is the sheet that a line of the list names at a click, with the mark that the
// sheet itself has.
func (p *readPack) listedAt(c click) string {
	words := p.within(c)
	if !assert.Len(p, words, 3, "%s: name, mark and page", p.of) {
		return ""
	}
	mark := nthOfSheet.FindStringSubmatch(p.words[c.To-1][1].S)[1]
	assert.Equal(p, mark, words[1].S, "%s: the mark of %s", p.of, p.sheets[c.To-1])
	return words[0].S
}
