package rules

import (
	"slices"

	"hangpack/paperwork/rig"
)

// A Wording writes where a check is closest to its limit, what it comes to there, and
// what it may come to. It is asked for words only where they are wanted.
type Wording func() (at rig.Where, worked, most string)

// so adds to what is worked out the condition under which it comes out so.
func (w Wording) so(condition string) Wording {
	return func() (rig.Where, string, string) {
		at, worked, most := w()
		return at, worked + " (" + condition + ")", most
	}
}

// A Use is how much of its rating a kind of part is used, where it is used most: the
// finished stack or a lift.
type Use struct {
	Part  string
	Share float64 // of the rating, as a fraction of one
	Says  Wording
}

// MostUsed is the largest use of each kind of part.
type MostUsed []Use

// more reports whether a use is more than what is kept of its part.
func (m MostUsed) more(part string, share float64) bool {
	i := m.index(part)
	return i < 0 || share > m[i].Share+rig.Within
}

// take keeps a use if it is more than the one of its part.
func (m *MostUsed) take(one Use) {
	if !m.more(one.Part, one.Share) {
		return
	}
	if i := m.index(one.Part); i >= 0 {
		(*m)[i] = one
	} else {
		*m = append(*m, one)
	}
}

func (m MostUsed) index(part string) int {
	return slices.IndexFunc(m, func(one Use) bool { return one.Part == part })
}

// MostOfAll returns the use of the part that is used most. Every stack has a hoist, so
// there is always one.
func (m MostUsed) MostOfAll() Use {
	most := m[0]
	for _, one := range m {
		if one.Share > most.Share+rig.Within {
			most = one
		}
	}
	return most
}

// A Measure is a height, an angle or a number of things held against what it
// may be, where that is closest: the finished stack or a lift.
type Measure struct {
	What  string
	Spare float64 // how far inside its limit, in its own SI unit
	Says  Wording
}

// Closest is the measure of each kind that is closest to its limit.
type Closest []Measure

// closer reports whether a measure is closer to its limit than what is kept of its
// kind.
func (c Closest) closer(what string, spare float64) bool {
	i := c.index(what)
	return i < 0 || spare < c[i].Spare-rig.Within
}

// take keeps a measure if it is closer to its limit than the one of its kind.
func (c *Closest) take(one Measure) {
	if !c.closer(one.What, one.Spare) {
		return
	}
	if i := c.index(one.What); i >= 0 {
		(*c)[i] = one
	} else {
		*c = append(*c, one)
	}
}

func (c Closest) index(what string) int {
	return slices.IndexFunc(c, func(one Measure) bool { return one.What == what })
}
