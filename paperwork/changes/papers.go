package changes

import (
	"strings"

	"hangpack/layouts/paper"
	"hangpack/paperwork/sheets"
	"hangpack/paperwork/worked"
)

// papers are the sheets of both revisions, by stack: "" for those of the whole job.
type papers map[string]*fate

// A fate is what has to be done with the sheets of a stack: which say something else now
// or are gone, which stand in their place or are new, which stay.
type fate struct{ goes, comes, stays []paper.Identity }

// comparePapers cuts both packs and compares what their sheets say.
func comparePapers(old, new *worked.Job) (papers, error) {
	was, err := sheetsOf(old)
	if err != nil {
		return nil, err
	}
	now, err := sheetsOf(new)
	if err != nil {
		return nil, err
	}
	all := papers{}
	for _, s := range now {
		f := all.of(s.stack)
		switch before := called(was, s.Name); {
		case before == nil:
			f.comes = append(f.comes, s.Identity)
		case before.Digest == s.Digest:
			f.stays = append(f.stays, s.Identity)
		default:
			f.goes, f.comes = append(f.goes, before.Identity), append(f.comes, s.Identity)
		}
	}
	for _, s := range was {
		if called(now, s.Name) == nil {
			f := all.of(s.stack)
			f.goes = append(f.goes, s.Identity)
		}
	}
	return all, nil
}

// of returns the sheets of a stack.
func (p papers) of(stack string) *fate {
	if p[stack] == nil {
		p[stack] = &fate{}
	}
	return p[stack]
}

// A stackSheet is a sheet with the stack that it belongs to.
type stackSheet struct {
	paper.Identity
	stack string
}

// sheetsOf are the sheets of a pack in their order.
func sheetsOf(j *worked.Job) (all []stackSheet, err error) {
	laid, list, err := sheets.Lay(j)
	if err != nil {
		return nil, err
	}
	for i, identity := range laid.Identities() {
		all = append(all, stackSheet{identity, list[i].Stack})
	}
	return all, nil
}

// called finds a sheet by its name, nil where there is none.
func called(all []stackSheet, name string) *stackSheet {
	for i := range all {
		if all[i].Name == name {
			return &all[i]
		}
	}
	return nil
}

// markWords list sheets with their marks: 'SL PINS: 22LG, SL DOLLY B: V275'.
func markWords(all []paper.Identity) string {
	var words []string
	for _, s := range all {
		words = append(words, s.Name+": "+s.Mark)
	}
	return strings.Join(words, ", ")
}
