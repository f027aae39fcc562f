package parts

import (
	"strings"

	"hangpack/layouts/paper"
)

// Names of cabinets as they stand in their rows: as they are where there is
// room, else by a letter that a legend explains.
type Names struct {
	short  map[string][]string
	Legend []string
}

// NamesFor measures the names of types for w mm and a number of lines.
func NamesFor(c *paper.Canvas, types []string, f paper.Face, w float64, most int) Names {
	n := Names{short: map[string][]string{}}
	for _, name := range types {
		if n.short[name] != nil {
			continue
		}
		n.short[name] = c.Wrap(f, w, name)
		if len(n.short[name]) > most {
			letter := string(rune('a' + len(n.Legend)%26))
			n.short[name] = []string{"type " + letter}
			n.Legend = append(n.Legend, "type "+letter+": "+name)
		}
	}
	return n
}

// Accented reports whether a name may have capitals with accents, which stand taller.
func Accented(name string) bool {
	return strings.ContainsFunc(name, func(r rune) bool { return r >= 'À' })
}

// Lines are the lines of one name.
func (n Names) Lines(name string) []string { return n.short[name] }
