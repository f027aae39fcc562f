package paperwork

import (
	"fmt"
	"strings"

	"hangpack/layouts/paper"
)

// What has to hold of a text beside all other ink of its page.

// A printed text is the n-th mark of its page, with where its ink is.
type printed struct {
	n int
	paper.Mark
	ink area
}

func (t printed) String() string { return fmt.Sprintf("%q %v in %s", t.Text, t.ink, t.Block) }

// onItsGround: every part of a text is black on white or light grey, or white on
// black, and nothing filled is drawn over it.
func (p *inkPage) onItsGround(t printed) {
	for _, m := range p.marks[t.n+1:] {
		if m.Fill >= 0 && t.ink.meets(area{m.X0, m.Y0, m.X1, m.Y1}) && p.over(m, t) {
			p.fault("%v is hidden under %s %v", t, m.Kind, area{m.X0, m.Y0, m.X1, m.Y1})
		}
	}
	var under []paper.Mark
	for _, m := range p.marks[:t.n] {
		if m.Fill >= 0 && t.ink.meets(area{m.X0, m.Y0, m.X1, m.Y1}) {
			under = append(under, m)
		}
	}
	for _, at := range t.places() {
		ground := 255
		for _, m := range under {
			if covers(m, at[0], at[1]) {
				ground = m.Fill
			}
		}
		if dark := ground < 200; dark != t.White {
			p.fault("%v stands on a ground of %d", t, ground)
			return
		}
	}
}

func (p *inkPage) over(m paper.Mark, t printed) bool {
	for _, at := range t.places() {
		if covers(m, at[0], at[1]) {
			return true
		}
	}
	return false
}

// places are spread over the ink of a text.
func (t printed) places() (all [][2]float64) {
	n := max(2, int((t.ink.x1-t.ink.x0)/1.5))
	rows := max(2, int((t.ink.y1-t.ink.y0)/1.5))
	for i := range n + 1 {
		for k := range rows + 1 {
			all = append(all, [2]float64{
				t.ink.x0 + (t.ink.x1-t.ink.x0)*float64(i)/float64(n),
				t.ink.y0 + (t.ink.y1-t.ink.y0)*float64(k)/float64(rows),
			})
		}
	}
	return all
}

// notCrossed: no line runs through a text, nor does a code. A line over which
// something filled was drawn before the text is no longer there.
func (p *inkPage) notCrossed(t printed) {
	const hair = 0.1
	for n, m := range p.marks {
		if m.Kind == "text" || !t.ink.meets(area{m.X0 - 1, m.Y0 - 1, m.X1 + 1, m.Y1 + 1}) || crossedOnPurpose(m, t) {
			continue
		}
		if m.Kind == "code" && t.ink.meets(area{m.X0, m.Y0, m.X1, m.Y1}) {
			p.fault("%v is on a code", t)
		}
		for _, s := range strokes(m) {
			if lo, hi, some := t.ink.grown(m.Pen/2-hair).clip(s[0], s[1]); some && p.seen(n, t.n, s, lo, hi) {
				p.fault("%v is crossed by a %s %v of %s", t, m.Kind, area{m.X0, m.Y0, m.X1, m.Y1}, m.Block)
				break
			}
		}
	}
}

// seen reports whether a part of a stroke is not covered when a text is written.
func (p *inkPage) seen(drawn, written int, s [2][2]float64, lo, hi float64) bool {
	for i := range 5 {
		k := lo + (hi-lo)*(0.1+0.2*float64(i))
		x, y := s[0][0]+(s[1][0]-s[0][0])*k, s[0][1]+(s[1][1]-s[0][1])*k
		covered := false
		for n := drawn + 1; n < written; n++ {
			covered = covered || covers(p.marks[n], x, y)
		}
		if !covered {
			return true
		}
	}
	return false
}

// crossedOnPurpose: on the sheet of changes the old hole is struck through.
func crossedOnPurpose(m paper.Mark, t printed) bool {
	return m.Kind == "line" && m.Pen > 0.7 && m.Corners[0][1] != m.Corners[1][1] && strings.HasPrefix(t.Block, "piece")
}

// textsApart: no two texts overlap, and on one line they are a blank apart.
func (p *inkPage) textsApart(a, b printed) {
	if a.ink.grown(-inkSlack).meets(b.ink) {
		p.fault("%v and %v overlap", a, b)
		return
	}
	_, ya, turned := baseline(a.Mark)
	_, yb, _ := baseline(b.Mark)
	blank := 0.15 * min(a.Pt, b.Pt) * 25.4 / 72
	if !turned && ya == yb && a.ink.x0-blank < b.ink.x1 && b.ink.x0-blank < a.ink.x1 {
		p.fault("%v and %v run together", a, b)
	}
}
