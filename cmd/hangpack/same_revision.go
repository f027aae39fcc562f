package main

import (
	"fmt"
	"strings"

	"hangpack/layouts/paper"
)

// sheetsNamed is how many sheets are named of those that differ.
const sheetsNamed = 12

// mixedUp warns where a whole pack replaced one of the same revision that says something
// else; "" where it did not.
func mixedUp(out string, old, new paper.Colophon) string {
	if old.Kind != paper.WholePack || new.Kind != paper.WholePack || old.Revision != new.Revision {
		return ""
	}
	differ := differing(old.Sheets, new.Sheets)
	if len(differ) == 0 {
		return ""
	}
	more := ""
	if n := len(differ) - sheetsNamed; n > 0 {
		differ, more = differ[:sheetsNamed], fmt.Sprintf(" and %d more", n)
	}
	return fmt.Sprintf("%s replaces a pack of the same revision %s that says something else: %s%s; raise the revision, or sheets of both will be mixed up",
		out, new.Revision, strings.Join(differ, ", "), more)
}

// differing names the sheets that say something else, that are new and that are gone, in
// the order of the pack; the cover last, which differs whenever another does.
func differing(old, new []paper.Identity) (names []string) {
	var cover []string
	was := byName(old)
	for i, s := range new {
		switch before, had := was[s.Name]; {
		case !had:
			names = append(names, s.Name+" (new)")
		case before != s && i == 0:
			cover = []string{s.Name}
		case before != s:
			names = append(names, s.Name)
		}
	}
	is := byName(new)
	for _, s := range old {
		if _, has := is[s.Name]; !has {
			names = append(names, s.Name+" (gone)")
		}
	}
	return append(names, cover...)
}

func byName(sheets []paper.Identity) map[string]paper.Identity {
	all := map[string]paper.Identity{}
	for _, s := range sheets {
		all[s.Name] = s
	}
	return all
}
