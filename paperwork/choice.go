package paperwork

import (
	"fmt"
	"slices"
	"strings"

	"hangpack/paperwork/job"
	"hangpack/paperwork/sheets"
	"hangpack/paperwork/worked"
)

// A Choice is some sheets of a pack: kinds of sheets and ids of stacks. Without
// kinds it is every sheet of its stacks, without either every sheet.
type Choice struct{ Kinds, Stacks []string }

// Kinds returns the words by which sheets are chosen, in the order of the pack.
func Kinds() (names []string) {
	for _, k := range sheets.Order {
		names = append(names, k.Name)
	}
	return names
}

// Choose reads a choice as it is written, kinds and ids parted by commas, "" where
// there are none. It returns an error that says what there is where it names
// something else.
func Choose(j *worked.Job, only, stacks string) (c Choice, err error) {
	var ids []string
	for _, h := range j.Stacks {
		ids = append(ids, h.ID)
	}
	if c.Kinds, err = among("kind of sheet", only, Kinds()); err == nil {
		c.Stacks, err = among("stack", stacks, ids)
	}
	return c, err
}

// among reads words parted by commas, each of which has to be a known one.
func among(what, written string, known []string) (words []string, err error) {
	if written == "" {
		return nil, nil
	}
	for _, w := range strings.Split(written, ",") {
		w = strings.TrimSpace(w)
		if !slices.Contains(known, w) {
			return nil, fmt.Errorf("there is no %s %q; %s", what, w, meantAmong(w, known))
		}
		words = append(words, w)
	}
	return words, nil
}

// meantAmong says which of the known words may be meant, or which there are.
func meantAmong(word string, known []string) string {
	if word == "plan" {
		return "the plan goes with points"
	}
	if meant := job.Near(word, known); meant != "" {
		return "did you mean " + meant + "?"
	}
	return "there is " + strings.Join(known, ", ")
}

// takes reports whether a sheet is chosen. Sheets of the whole job are, where their
// kind is named, or where nothing is; a held stack's one sheet is, where any sheet
// of a stack is.
func (c Choice) takes(s sheets.Sheet) bool {
	ofJob := s.Stack == ""
	switch {
	case ofJob && len(c.Kinds) == 0:
		return len(c.Stacks) == 0
	case ofJob:
		return slices.Contains(c.Kinds, s.Kind)
	case len(c.Stacks) > 0 && !slices.Contains(c.Stacks, s.Stack):
		return false
	case s.Kind == sheets.DoNotFly:
		return len(c.Kinds) == 0 || c.ofStacks()
	}
	return len(c.Kinds) == 0 || slices.Contains(c.Kinds, s.Kind)
}

// ofStacks reports whether any kind that is named is of stacks.
func (c Choice) ofStacks() bool {
	for _, k := range sheets.Order {
		if !k.OfJob && slices.Contains(c.Kinds, k.Name) {
			return true
		}
	}
	return false
}
