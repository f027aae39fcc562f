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

// A Use is how much of its rating a kind of part is used, as a fraction of one,
// where it is used most: the finished stack or a lift.
type Use struct {
	Part string
	Of   float64
	Says Wording
}

// Uses are one of each kind of part.
type Uses []Use

// more reports whether a use is more than what is kept of its part.
func (u Uses) more(part string, of float64) bool {
	i := u.index(part)
	return i < 0 || of > u[i].Of+rig.Within
}

// take keeps a use if it is more than the one of its part.
func (u *Uses) take(one Use) {
	if !u.more(one.Part, one.Of) {
		return
	}
	if i := u.index(one.Part); i >= 0 {
		(*u)[i] = one
	} else {
		*u = append(*u, one)
	}
}

func (u Uses) index(part string) int {
	return slices.IndexFunc(u, func(one Use) bool { return one.Part == part })
}

// Most returns the use of the part that is used most. Every stack has a hoist, so
// there is always one.
func (u Uses) Most() Use {
	most := u[0]
	for _, one := range u {
		if one.Of > most.Of+rig.Within {
			most = one
		}
	}
	return most
}

// A Measure is a height, an angle or a number of things held against what it
// may be, where that is closest: the finished stack or a lift.
type Measure struct {
	Of    string
	Spare float64 // how far inside its limit, in its own SI unit
	Says  Wording
}

// Measures are one of each kind.
type Measures []Measure

// closer reports whether a measure is closer to its limit than what is kept of its
// kind.
func (m Measures) closer(of string, spare float64) bool {
	i := m.index(of)
	return i < 0 || spare < m[i].Spare-rig.Within
}

// take keeps a measure if it is closer to its limit than the one of its kind.
func (m *Measures) take(one Measure) {
	if !m.closer(one.Of, one.Spare) {
		return
	}
	if i := m.index(one.Of); i >= 0 {
		(*m)[i] = one
	} else {
		*m = append(*m, one)
	}
}

func (m Measures) index(of string) int {
	return slices.IndexFunc(m, func(one Measure) bool { return one.Of == of })
}
