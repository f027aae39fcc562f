package sheets

import (
	"strings"

	"hangpack/calc"
	"hangpack/layouts/parts"
	"hangpack/paperwork/job"
	"hangpack/paperwork/say"
)

// PracticeWords writes what a shop checks by, key by key as the table of keys has them:
// the calculation sheet prints it and changes compare it, and neither can leave out a
// key that is new.
func PracticeWords(u say.Units, p job.Practice) (words []parts.Fact) {
	for _, v := range p.Values() {
		words = append(words, parts.Fact{Of: v.Short, Is: practiceValue(u, v)})
	}
	return words
}

// practiceValue writes a value of practice with all its digits.
func practiceValue(u say.Units, v job.PracticeValue) string {
	switch v.Kind {
	case job.Percent:
		return say.Share(v.Value)
	case job.Angle:
		return say.Trimmed(calc.Degrees(v.Value)) + "°"
	case job.Length:
		return u.ExactLength(v.Value)
	case job.Mass:
		return u.ExactMass(v.Value)
	case job.Switch:
		if v.Value == 0 {
			return "no"
		}
		return "yes"
	}
	return say.Trimmed(v.Value)
}

// practiceLine writes all of it in one line.
func practiceLine(u say.Units, p job.Practice) string {
	var all []string
	for _, w := range PracticeWords(u, p) {
		all = append(all, w.Of+": "+w.Is)
	}
	return strings.Join(all, ", ")
}
