package sheets

import (
	"strings"

	"hangpack/calc"
	"hangpack/layouts/parts"
	"hangpack/paperwork/job"
	"hangpack/paperwork/say"
)

// PracticeWords writes what a shop checks by, key by key as the table of keys has them;
// length and mass write values in m and kg. The calculation sheet prints it and changes
// compare it, with all digits, and neither can leave out a key that is new.
func PracticeWords(p job.Practice, length, mass func(float64) string) (words []parts.Fact) {
	for _, v := range p.Values() {
		words = append(words, parts.Fact{Of: v.Short, Is: practiceValue(v, length, mass)})
	}
	return words
}

// practiceValue writes a value of practice.
func practiceValue(v job.PracticeValue, length, mass func(float64) string) string {
	switch v.Kind {
	case job.Percent:
		return say.Share(v.Value)
	case job.Angle:
		return say.Trimmed(calc.Degrees(v.Value)) + "°"
	case job.Length:
		return length(v.Value)
	case job.Mass:
		return mass(v.Value)
	case job.Switch:
		if v.Value == 0 {
			return "no"
		}
		return "yes"
	case job.Word:
		return say.Given(v.Word)
	}
	return say.Trimmed(v.Value)
}

// practiceLine writes all of it in one line.
func practiceLine(u say.Units, p job.Practice) string {
	var all []string
	for _, w := range PracticeWords(p, u.Fine, u.Reading) {
		all = append(all, w.Of+": "+w.Is)
	}
	return strings.Join(all, ", ")
}
